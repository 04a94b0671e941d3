import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { conclude } from '../../../../core/inference/conclude.ts';
import { diagnose } from '../../../../core/inference/diagnose.ts';
import { KNOWLEDGE } from '../../../../core/knowledge/index.ts';
import { findings as findingsFormat } from '../../../../shared/formats/findings.v1.ts';
import { parseReadingSheet, type ReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';
import { anySheet } from './any-sheet.ts';

/** Runs of the cheap properties: what is concluded, without its explanation. */
const RUNS = 20_000;
const MINUTES = 60_000;

/** Signs that bar a hotter plug, read straight off the sheet, not off beliefs. Source: product rule; the appearances after S16, S14, W6, W10. */
const FORBIDDING: Readonly<Record<string, readonly string[]>> = {
  deposit: ['wet oil', 'metal spray', 'water'],
  specks: ['grey metallic'],
  centreElectrode: ['melted', 'missing', 'blistered'],
  groundElectrode: ['melted', 'broken off'],
  noseDamage: ['cracked', 'chipped', 'broken away'],
  noseSurface: ['blistered'],
  contact: ['closed by piston', 'debris marks'],
};

const forbids = (sheet: ReadingSheet): boolean =>
  sheet.plugs.some(({ tip = {} }) =>
    Object.entries(tip).some(
      ([facet, value]) => typeof value === 'string' && !(tip.unsure ?? []).includes(facet as never) && (FORBIDDING[facet] ?? []).includes(value),
    ),
  );

const hotter = (sheet: ReadingSheet, extra: Partial<ReadingSheet> = {}): number => conclude({ ...sheet, ...extra }, KNOWLEDGE).heat.step;

/** A whole sooty set of a plug found too cold: the one picture that may lead to a hotter plug. */
const sooty: ReadingSheet = {
  format: 'corenose.reading-sheet',
  version: 1,
  engine: { use: 'road', cylinders: 4, cycle: 'four-stroke' },
  conditions: { fuel: 'petrol', duty: 'mixed', warm: true, lambda: 1, stop: 'clean cut' },
  plugs: [1, 2, 3, 4].map((cylinder) => ({
    cylinder,
    fitted: { heatStepsFromSpecified: -2 },
    tip: { noseColour: 'black', noseSurface: 'matt soot', deposit: 'dry soot', sootRing: 'wide', heatLine: 'near the end' },
  })),
};

describe('what the program must never do', () => {
  it('draws only sheets that the strict format takes', () => {
    fc.assert(
      fc.property(anySheet, (sheet) => {
        expect(parseReadingSheet(sheet)).toMatchObject({ ok: true });
      }),
      { numRuns: 2000 },
    );
  });

  it(
    'holds over random sheets: one step at most, never hotter under a sign that forbids it, never hotter in an aircraft, beliefs that are beliefs',
    () => {
      let hot = 0;
      fc.assert(
        fc.property(anySheet, (sheet) => {
          const { heat, stops, judged } = conclude(sheet, KNOWLEDGE);
          if (heat.step === 1) hot += 1;
          expect([-1, 0, 1]).toContain(heat.step);
          if (stops.length > 0 || forbids(sheet) || sheet.engine.use === 'aircraft') expect(heat.step).not.toBe(1);
          if (heat.step !== 0) expect(heat.first.length).toBeGreaterThanOrEqual(5);
          for (const {
            judgement: { thermal, beliefs },
          } of judged) {
            expect(thermal.tooCold + thermal.inWindow + thermal.tooHot).toBeCloseTo(1, 9);
            for (const p of beliefs.values()) {
              expect(p).toBeGreaterThanOrEqual(0);
              expect(p).toBeLessThanOrEqual(1);
            }
          }
        }),
        { numRuns: RUNS },
      );
      console.log(`guards: ${RUNS} random sheets, ${hot} of them advised one step hotter`);
    },
    40 * MINUTES,
  );

  it('is not held by silence: a whole sooty set of plugs colder than specified may get one step hotter, and each forbidding sign takes it back', () => {
    const withSign = (facet: string, value: string): ReadingSheet['plugs'] =>
      sooty.plugs.map((plug, i) => (i === 2 ? { ...plug, tip: { ...plug.tip, [facet]: value } } : plug));
    expect(hotter(sooty)).toBe(1);
    for (const [facet, values] of Object.entries(FORBIDDING))
      for (const value of values) expect(hotter(sooty, { plugs: withSign(facet, value) }), `${facet} ${value}`).not.toBe(1);
    expect(hotter(sooty, { symptoms: [{ what: 'knock under load' }] })).not.toBe(1);
    expect(hotter(sooty, { symptoms: [{ what: 'blue smoke' }] })).not.toBe(1);
    expect(hotter({ ...sooty, engine: { ...sooty.engine, use: 'aircraft' } })).not.toBe(1);
    expect(hotter({ ...sooty, plugs: sooty.plugs.map((plug) => ({ ...plug, fitted: { heatStepsFromSpecified: 1 } })) })).not.toBe(1);
  });

  it(
    'gives findings that follow their format, the same bytes every time',
    () => {
      fc.assert(
        fc.property(anySheet, (sheet) => {
          const first = diagnose(sheet, { knowledge: KNOWLEDGE, digest: 'digest' });
          expect(findingsFormat.safeParse(first).error).toBeUndefined();
          expect(JSON.stringify(diagnose(sheet, { knowledge: KNOWLEDGE, digest: 'digest' }))).toBe(JSON.stringify(first));
        }),
        { numRuns: 60 },
      );
    },
    10 * MINUTES,
  );
});
