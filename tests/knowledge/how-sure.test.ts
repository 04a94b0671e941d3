import { describe, expect, it } from 'vitest';
import { conclude, type Conclusion } from '../../core/inference/conclude.ts';
import { PLUG_FINDINGS } from '../../core/knowledge/findings.ts';
import { KNOWLEDGE } from '../../core/knowledge/index.ts';
import type { ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import { FACET_NAMES } from '../../shared/vocabulary/tip.ts';

/*
 * How sure one may be of how much: near one only with several independent findings, and signs of one and the same thing count once. Bounds of the product's
 * own rule, not of a source; no counted failures are known to set them by.
 */
const SURE = 0.95;
const SURE_OF_CAUSE = 0.75;

type Tip = NonNullable<ReadingSheet['plugs'][number]['tip']>;

const read = (tip: Tip): Conclusion =>
  conclude({ format: 'corenose.reading-sheet', version: 1, engine: { use: 'road', cylinders: 4, cycle: 'four-stroke' }, plugs: [{ cylinder: 1, tip }] }, KNOWLEDGE);
const causesOf = ({ solution: { network } }: Conclusion) => [...network.shared, ...(network.local.get(1) ?? [])];
const bits = (p: number): number => Math.log2(p / (1 - p));

const ALONE = FACET_NAMES.flatMap((facet) => PLUG_FINDINGS[facet].map((value) => ({ facet, value })));

describe('one finding alone', () => {
  it.each(ALONE)('makes nothing sure: $facet $value', ({ facet, value }) => {
    const reading = read({ [facet]: value });
    for (const [verdict, belief] of reading.judged[0]?.judgement.beliefs ?? []) if (verdict !== 'normal') expect(belief).toBeLessThan(SURE);
    for (const one of causesOf(reading)) if (one.prior < 0.5) expect(reading.solution.belief(one)).toBeLessThan(SURE_OF_CAUSE);
  });
});

describe('signs of one and the same thing', () => {
  const SOOT: Tip = { noseColour: 'black', noseSurface: 'matt soot', deposit: 'dry soot', shellRim: 'heavy soot' };
  const alone = Object.entries(SOOT).map(([facet, value]) => read({ [facet]: value }));
  const together = read(SOOT);
  const soot = ({ judged }: Conclusion): number => judged[0]?.judgement.beliefs.get('dry carbon fouling') ?? 0;
  const gain = ({ solution, ...rest }: Conclusion, id: string): number => {
    const one = causesOf({ solution, ...rest }).find((cause) => cause.id === id);
    if (one === undefined) throw new Error(`no cause ${id} on this engine`);
    return bits(solution.belief(one)) - bits(one.prior);
  };

  it('make it surer that it is there', () => {
    expect(soot(together)).toBeGreaterThan(Math.max(...alone.map(soot)));
  });

  it.each(['mixture-rich', 'ignition-weak'])('tell of %s once: four of them hardly more than the best of them', (id) => {
    const best = Math.max(...alone.map((reading) => gain(reading, id)));
    expect(best).toBeGreaterThan(1);
    expect(gain(together, id)).toBeLessThan(1.25 * best);
  });
});
