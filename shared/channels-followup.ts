import { z } from 'zod';
import { measured, since, tip } from './formats/reading-sheet.v1.ts';
import { cylinderNumber } from './formats/engine.ts';
import { oneOf, record, text } from './formats/strict.ts';
import { POSITIONS } from './vocabulary/engine.ts';
import { CHANGES, CURE_OUTCOMES } from './vocabulary/follow-up.ts';
import { VERDICTS } from './vocabulary/verdicts.ts';

const id = z.uuid();

/** One plug at one kept reading. `change`: against the reading that stands before it; null at the first. */
const plugThen = record({
  cylinder: cylinderNumber, position: oneOf(POSITIONS), tip: tip.optional(), measured: measured.optional(), verdict: oneOf(VERDICTS),
  also: z.array(oneOf(VERDICTS)), change: oneOf(CHANGES).nullable(), why: text(2000),
});
export type PlugAtReading = z.output<typeof plugThen>;

/** `cures`: those carried out before this reading, and what it says of them. */
const readingThen = record({
  id, title: text(200), date: text(40).nullable(), plugs: z.array(plugThen),
  cures: z.array(record({ name: text(2000), cylinders: z.array(cylinderNumber), outcome: oneOf(CURE_OUTCOMES) })),
});
export type ReadingInTime = z.output<typeof readingThen>;

/** Calls about readings of one engine that follow each other. */
export const followUpChannels = {
  /** The kept readings of an engine, the oldest first, each plug against the reading before. */
  'reading.timeline': { input: record({ engineId: id }), output: z.array(readingThen) },
  /** A kept reading in the form in which a later sheet carries it. */
  'reading.since': { input: record({ id }), output: since },
} as const;
