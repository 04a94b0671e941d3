import type { Strength } from './strengths.ts';
import { COMMON_PRACTICE, type Cause, type SourceId } from './types.ts';

/** How far a cure, once carried out, can be trusted to have removed its cause. Expert estimate: no counted repairs were found. */
export type CureTrust = { readonly holds: Strength; readonly because: string; readonly source: SourceId };

const trust = (holds: Strength, because: string): CureTrust => ({ holds, because, source: COMMON_PRACTICE });

const PARTS = trust('usually', 'A part was set, mended or renewed; now and then the wrong one, or not the whole fault.');
const EXCHANGED = trust('almost always', 'What was wrong has been exchanged or put as it should be.');
const HABITS = trust('often', 'Running changes slowly, and the engine remembers the old one for a while.');

/** Plugs that were neither cleaned nor renewed still carry what was there before the cure: it counts for so much. Expert estimate. */
export const UNCLEANED = 0.5;

/** By the kind of the cause. Nothing cures what is harmless. */
export const CURE_TRUST: { readonly [K in Exclude<Cause['kind'], 'harmless'>]: CureTrust } = {
  fitting: EXCHANGED,
  age: EXCHANGED,
  'heat value': EXCHANGED,
  mixture: PARTS,
  ignition: PARTS,
  oil: PARTS,
  fuel: PARTS,
  coolant: PARTS,
  mechanical: PARTS,
  detonation: PARTS,
  'pre-ignition': PARTS,
  temperature: PARTS,
  deposit: HABITS,
  use: HABITS,
};
