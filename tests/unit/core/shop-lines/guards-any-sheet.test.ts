import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { conclude } from '../../../../core/inference/conclude.ts';
import { concludeWith } from '../../../../core/inference/conclude-with.ts';
import { diagnose } from '../../../../core/inference/diagnose.ts';
import { barsFor } from '../../../../core/inference/stop-rules.ts';
import { KNOWLEDGE } from '../../../../core/knowledge/index.ts';
import { withShopLines } from '../../../../core/shop-lines/with-shop-lines.ts';
import type { PlugFindings } from '../../../../shared/formats/findings.v1.ts';
import type { ReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';
import type { ShopLine } from '../../../../shared/formats/shop-lines.v1.ts';
import { RISKS } from '../../../../shared/vocabulary/verdicts.ts';
import { anySheet } from '../inference/any-sheet.ts';
import { disturbedSet } from '../inference/disturbed-set.ts';
import { sooty } from '../inference/guarded.ts';
import { anyLines, line } from './any-lines.ts';

const RUNS = 150;

function concluded(sheet: ReadingSheet, lines: readonly ShopLine[]) {
  const { knowledge, active } = withShopLines(KNOWLEDGE, lines);
  return concludeWith(sheet, knowledge, active.length === 0 ? undefined : { lines: active, without: KNOWLEDGE });
}

/** Lines that push as hard toward a hotter plug as words allow: nobody's rings wear here, every sooty set is on too cold a plug. */
const REASONS_FOR_HOTTER: readonly ShopLine[] = [
  line({ kind: 'moved', of: 'plugs-too-cold', when: { use: 'road' }, how: 'far likelier' }, { id: 'cold' }),
  ...KNOWLEDGE.causes.filter(({ kind, heatStep }) => kind !== 'harmless' && heatStep === undefined)
    .map(({ id }): ShopLine => line({ kind: 'moved', of: id, when: { use: 'road' }, how: 'ruled out' }, { id: `not-${id}` })),
];

describe('with lines of a workshop', () => {
  it.each([['sheets drawn freely', anySheet], ['sooty sets disturbed in a few places', disturbedSet]] as const)('no step is hotter than without them, and every stop and bar stands: %s', (_what, sheets) => {
    let moved = 0;
    fc.assert(fc.property(sheets, anyLines(5), (sheet, lines) => {
      const own = conclude(sheet, KNOWLEDGE);
      const { heat, stops, solution, guard } = concluded(sheet, lines);
      expect(heat.step).toBeLessThanOrEqual(own.heat.step);
      expect(stops.map(({ rule, cylinder }) => [rule.id, cylinder])).toEqual(own.stops.map(({ rule, cylinder }) => [rule.id, cylinder]));
      const bars = barsFor(KNOWLEDGE.barsOnHotter, solution.evidence);
      if (stops.length > 0 || bars.length > 0 || sheet.engine.use === 'aircraft') expect(heat.step).toBeLessThan(1);
      if (heat.step !== 0) expect(heat.first.length).toBeGreaterThanOrEqual(5);
      if (guard !== undefined && guard.solution.belief !== solution.belief) moved += 1;
    }), { numRuns: RUNS });
    expect(moved).toBeGreaterThan(RUNS / 2);
  }, 600_000);

  it('a hotter plug that they alone would ask for is held back, and it says so', () => {
    const oiled: ReadingSheet = { ...sooty, plugs: sooty.plugs.map((plug) => ({ ...plug, fitted: { heatStepsFromSpecified: 0 } })) };
    const { knowledge, active } = withShopLines(KNOWLEDGE, REASONS_FOR_HOTTER);
    expect(conclude(oiled, KNOWLEDGE).heat.step).toBe(0);
    expect(conclude(oiled, knowledge).heat.step).toBe(1);
    const { heat } = concludeWith(oiled, knowledge, { lines: active, without: KNOWLEDGE });
    expect(heat.step).toBe(0);
    expect(heat.why[0]).toContain('does not allow it');
  });

  it('the findings name them, and a plug’s risk is never told smaller', () => {
    fc.assert(fc.property(anySheet, anyLines(4), (sheet, lines) => {
      const { knowledge, active } = withShopLines(KNOWLEDGE, lines);
      const own = diagnose(sheet, { knowledge: KNOWLEDGE, digest: 'own' });
      const findings = diagnose(sheet, { knowledge, digest: 'theirs', shop: { lines: active, without: KNOWLEDGE } });
      expect(findings.knowledge.shopLines).toEqual(active);
      const grave = ({ preIgnitionRisk }: PlugFindings): number => RISKS.indexOf(preIgnitionRisk);
      findings.plugs.forEach((plug, i) => { expect(grave(plug)).toBeGreaterThanOrEqual(grave(own.plugs[i]!)); });
    }), { numRuns: 25 });
  }, 600_000);
});
