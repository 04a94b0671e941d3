import type { ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import { evidenceOf } from '../inference/evidence.ts';
import { barsFor } from '../inference/stop-rules.ts';
import type { Bar } from '../knowledge/types.ts';
import { earlierSheet } from './earlier-reading.ts';
import { heatValueChanged } from './heat-step-taken.ts';

const ONE_STEP_A_TRIAL: Bar = {
  id: 'step-taken-since',
  sign: 'a heat step taken since the reading before',
  anyOf: [],
  because: 'One step a trial: this reading judges that step, and no second one follows from it.',
  source: 'S14',
};

/**
 * Bars on a hotter plug that the reading before sets: a sign seen then counts until two readings in a row are free of it, whatever was put right
 * between them, and a step just taken is judged before the next.
 * @param now the bars that this reading sets by itself; they need no second telling
 */
export function barsFromBefore(bars: readonly Bar[], sheet: ReadingSheet, now: readonly Bar[]): Bar[] {
  const before = earlierSheet(sheet);
  if (before === undefined) return [];
  const told = new Set(now.map(({ sign }) => sign));
  const seenThen = barsFor(bars, evidenceOf(before)).filter(({ sign }) => !told.has(sign)).map((bar) => ({ ...bar, sign: `${bar.sign}, at the reading before` }));
  return [...seenThen, ...(heatValueChanged(sheet) ? [ONE_STEP_A_TRIAL] : [])];
}
