import type { PlugKey } from '../../../core/domain/plugs.ts';
import type { PlugFindings } from '../../../shared/formats/findings.v1.ts';
import { keyOf } from '../../state/places.ts';
import { toneOf, type Tone } from '../../ui/judgement.tsx';

const GRAVITY: Record<Tone, number> = { stop: 4, act: 3, watch: 2, open: 1, sound: 0 };
const gravity = ({ verdict, preIgnitionRisk }: PlugFindings): number => (preIgnitionRisk === 'stop' ? 10 : 0) + GRAVITY[toneOf(verdict)];

/** The plug to look at first: one that a stop rule names, then the gravest, then the surest, then the first in the tray. */
export function worstPlug(plugs: readonly PlugFindings[]): PlugKey | undefined {
  const [worst] = [...plugs].sort((a, b) => gravity(b) - gravity(a) || b.belief - a.belief);
  return worst === undefined ? undefined : keyOf(worst);
}
