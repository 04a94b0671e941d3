import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { conclude } from '../../../../core/inference/conclude.ts';
import { diagnose } from '../../../../core/inference/diagnose.ts';
import { KNOWLEDGE } from '../../../../core/knowledge/index.ts';
import type { Fact, Findings } from '../../../../shared/formats/findings.v1.ts';
import type { ReadingSheet, Tip } from '../../../../shared/formats/reading-sheet.v1.ts';

const tan: Tip = { noseColour: 'light tan', noseSurface: 'fine powder', deposit: 'light dusting', centreElectrode: 'lightly worn' };
const sooty: Tip = { noseColour: 'black', noseSurface: 'matt soot', deposit: 'dry soot', shellRim: 'even soot' };
const oily: Tip = { noseColour: 'black', noseSurface: 'wet', deposit: 'wet oil', shellRim: 'wet oil' };

const four = (tips: readonly Tip[], extra: Partial<ReadingSheet> = {}): ReadingSheet => ({
  format: 'corenose.reading-sheet',
  version: 1,
  engine: { use: 'road', cylinders: 4, layout: 'inline', cycle: 'four-stroke' },
  plugs: tips.map((tip, i) => ({ cylinder: i + 1, tip })) as ReadingSheet['plugs'],
  ...extra,
});
const read = (sheet: ReadingSheet): Findings => diagnose(sheet, { knowledge: KNOWLEDGE, digest: 'test' });
const verdicts = ({ plugs }: Findings): string[] => plugs.map((plug) => plug.verdict);

describe('a set of plugs read together', () => {
  it('blames one shared cause for a whole sooty set, not four separate faults', () => {
    const { engine, plugs } = read(four([sooty, sooty, sooty, sooty]));
    const shared = engine.causes.reduce((sum, c) => sum + c.belief, 0);
    const own = Math.max(...plugs.flatMap((plug) => plug.causes.filter((c) => c.scope !== 'engine').map((c) => c.belief)), 0);
    expect(shared).toBeGreaterThan(0.65);
    expect(own).toBeLessThan(0.2);
  });

  it('blames one cylinder for one oily plug among clean ones', () => {
    // PT-ONE-OIL: ring, bore, guide or seal of that cylinder. US Army TM 10-3930-653 (S16).
    const findings = read(four([tan, tan, oily, tan]));
    expect(verdicts(findings)).toEqual(['normal', 'normal', 'oil fouling', 'normal']);
    expect(findings.plugs[2]?.causes[0]?.cylinders).toEqual([3]);
    expect(findings.summary).toMatch(/^Cylinder 3 is wet with oil; the other three look normal\./);
    expect(findings.heat.step).toBe(0);
  });

  it('lets a seen cause explain others away', () => {
    const alone = read(four([sooty, sooty, sooty, sooty])).engine.causes.find((c) => c.id === 'mixture-rich')?.belief ?? 0;
    const found = read(four([sooty, sooty, sooty, sooty], { conditions: { tags: ['choke sticking'] } })).engine.causes;
    expect(found[0]?.name.toLowerCase()).toContain('choke');
    expect(found.find((c) => c.id === 'mixture-rich')?.belief ?? 0).toBeLessThan(Math.max(alone, 0.001));
  });

  it('reads a relabelled engine the same, relabelled', () => {
    const order = [2, 0, 3, 1];
    const tips = [oily, tan, sooty, tan];
    const engine: ReadingSheet['engine'] = { use: 'road', cylinders: 4, layout: 'radial', adjacent: [] };
    const straight = conclude({ ...four(tips), engine }, KNOWLEDGE);
    const turned = conclude({ ...four(order.map((i) => tips[i] as Tip)), engine }, KNOWLEDGE);
    order.forEach((from, to) => {
      expect(turned.judged[to]?.judgement.verdict).toBe(straight.judged[from]?.judgement.verdict);
      expect(turned.judged[to]?.judgement.belief).toBeCloseTo(straight.judged[from]?.judgement.belief ?? NaN, 6);
    });
  });

  it('says nothing of plugs nobody looked at', () => {
    expect(verdicts(read(four([{}, {}, {}, {}])))).toEqual(['undetermined', 'undetermined', 'undetermined', 'undetermined']);
  });

  it('says once for the engine, not on every plug, what spoils the whole reading', () => {
    const { engine, plugs } = read(four([tan, tan, tan, tan], { conditions: { stop: 'idled before stop' } }));
    expect(engine.doubts).toHaveLength(1);
    expect(engine.doubts?.[0]).toMatch(/idl/i);
    expect(plugs.flatMap(({ doubts }) => doubts)).toEqual([]);
    expect(read(four([tan, tan, tan, tan])).engine.doubts?.join() ?? '').not.toMatch(/idl/i);
  });

  it('counts a doubted value for less than a sure one', () => {
    fc.assert(
      fc.property(fc.constantFrom(sooty, oily), (tip) => {
        const fault = tip === sooty ? 'dry carbon fouling' : 'oil fouling';
        const belief = (unsure: boolean): number =>
          conclude(
            four([{ deposit: tip.deposit, ...(unsure ? { unsure: ['deposit'] } : {}) }, tan, tan, tan]),
            KNOWLEDGE,
          ).judged[0]?.judgement.beliefs.get(fault) ?? 0;
        expect(belief(true)).toBeLessThan(belief(false));
      }),
      { numRuns: 2 },
    );
  });

  const odds = (p: number): number => Math.log2(p / (1 - p));
  /** The leading cause of the plug of cylinder 3, with what its reasons say and by how much its log-odds change when the facets are taken away. */
  function takenAway(tip: Tip): { readonly facts: readonly Fact[]; readonly change: number } {
    const top = read(four([tan, tan, tip, tan])).plugs[2]!.causes[0]!;
    const without = conclude(four([tan, tan, {}, tan]), KNOWLEDGE).solution;
    const instance = [...without.network.shared, ...without.network.local.get(3)!].find(({ id }) => id === top.id)!;
    return { facts: [...top.supports, ...top.speaksAgainst], change: odds(top.belief) - odds(without.belief(instance)) };
  }

  it('explains each cause by the arithmetic itself: taking the observation away moves its log-odds by the stated bits', () => {
    const { facts, change } = takenAway({ deposit: 'wet oil' });
    // Weights are reckoned among the likely worlds; two hundredths of a bit is what that may cost.
    expect(Math.abs(change - facts.find(({ text }) => text === 'cylinder 3: deposit wet oil')!.bits)).toBeLessThan(0.02);
  });

  it('tells findings that repeat each other as one, with what they say together', () => {
    const { facts, change } = takenAway(oily);
    const together = facts.find(({ text }) => text === 'cylinder 3: nose colour black, nose surface wet, deposit wet oil and shell rim wet oil, taken together');
    expect(Math.abs(change - (together?.bits ?? NaN))).toBeLessThan(0.1);
    expect(facts.filter(({ text }) => text !== together?.text && text.startsWith('cylinder 3: '))).toEqual([]);
  });

  it('counts more than six plugs that look alike instead of naming them', () => {
    const many: ReadingSheet = {
      ...four(Array.from({ length: 8 }, (_, i): Tip => (i === 0 ? tan : { deposit: 'dry soot' }))),
      engine: { use: 'road', cylinders: 8, cycle: 'four-stroke' },
    };
    const texts = read(many).engine.causes.flatMap(({ supports }) => supports.map(({ text }) => text));
    expect(texts).toContain('7 of 8 plugs: deposit dry soot');
  });
});
