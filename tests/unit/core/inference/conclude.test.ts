import { describe, expect, it } from 'vitest';
import { conclude, ranked, type Conclusion } from '../../../../core/inference/conclude.ts';
import type { Instance } from '../../../../core/inference/network.ts';
import type { Solution } from '../../../../core/inference/posterior.ts';
import type { Cause, Knowledge, Term } from '../../../../core/knowledge/types.ts';
import type { Findings } from '../../../../shared/formats/findings.v1.ts';
import type { ReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';
import { sheetOf } from './sheet-of.ts';
import { cause, condition, knowledge, makes, shows } from './small-knowledge.ts';

const grounds = { because: 'made up for a test', source: 'common practice' } as const;
const soot = condition('soot', { thermal: 'cold', shows: [shows('deposit', 'dry soot', 'almost always')] });
const burnt = condition('burnt', { verdict: 'too hot', thermal: 'hot', shows: [shows('noseColour', 'white', 'almost always'), shows('deposit', 'glaze', 'often')] });
const sooting = (id: string, parts: Partial<Cause> = {}): Cause => cause(id, { makes: [makes('soot', 'almost always')], ...parts });
const tooCold = sooting('plugs-too-cold', { kind: 'heat value', heatStep: 'hotter' });
const tooHot = cause('plugs-too-hot', { kind: 'heat value', heatStep: 'colder', makes: [makes('burnt', 'almost always')] });
/** Noted as found: hardly in doubt, whatever else is seen. */
const found: Partial<Cause> = { moved: [{ by: { use: ['road'] }, how: 'found', ...grounds }] };

const tips = (...all: readonly ReadingSheet['plugs'][number]['tip'][]): Partial<ReadingSheet> => ({ plugs: all.map((tip, i) => ({ cylinder: i + 1, ...(tip && { tip }) })) });
const sooty = tips(...[1, 2, 3, 4].map(() => ({ deposit: 'dry soot' as const })));
const white = tips({ noseColour: 'white' }, { noseColour: 'white' }, { noseColour: 'light tan' }, { noseColour: 'white' });
const decide = (sheet: Partial<ReadingSheet>, causes: readonly Cause[], more: Partial<Knowledge> = {}): Conclusion =>
  conclude(sheetOf(sheet), { ...knowledge([soot, burnt], causes), ...more });
const heat = (...given: Parameters<typeof decide>): Findings['heat'] => decide(...given).heat;
const ruledOut = ({ first }: Findings['heat']): string[] => first.filter((words) => words.startsWith('Rule out')).map((words) => words.slice(10));

describe('a plug', () => {
  const verdicts = (sheet: Partial<ReadingSheet>): string[] => decide(sheet, [tooCold]).judged.map(({ judgement }) => judgement.verdict);

  it('is judged where something was seen of it, found on its cylinder or felt there', () => {
    expect(verdicts({})).toEqual(['undetermined', 'undetermined', 'undetermined', 'undetermined']);
    expect(verdicts(tips({ deposit: 'dry soot' }))).toEqual(['dry carbon fouling', 'undetermined', 'undetermined', 'undetermined']);
    expect(verdicts({ cylinderChecks: [{ cylinder: 2, spark: 'strong' }] })).toEqual(['undetermined', 'normal', 'undetermined', 'undetermined']);
    expect(verdicts({ symptoms: [{ what: 'misfire', cylinder: 3 }] })).toEqual(['undetermined', 'undetermined', 'normal', 'undetermined']);
  });

  it('is judged by all that is known, though it look like another', () => {
    const { judged } = decide({ ...tips({ deposit: 'none' }, { deposit: 'none' }, {}, {}), cylinderChecks: [{ cylinder: 4, spark: 'strong' }] }, [tooCold]);
    expect(judged.map(({ judgement }) => judgement.verdict)).toEqual(['normal', 'normal', 'undetermined', 'normal']);
  });
});

describe('causes by belief', () => {
  it('stand strongest first, then by id, down to the least that is asked for', () => {
    const beliefs: Readonly<Record<string, number>> = { a: 0.2, b: 0.5, c: 0.2, d: 0.1, e: 0.09 };
    const instance = (id: string): Instance => ({ id, cause: cause(id, {}), group: '', cylinders: [1], plugs: ['1'], prior: 0.1, moves: [] });
    const solution: Partial<Solution> = { belief: ({ id }) => beliefs[id]! };
    expect(ranked(['e', 'c', 'd', 'a', 'b'].map(instance), solution as Solution, 0.1).map(({ id }) => id)).toEqual(['b', 'a', 'c', 'd']);
    expect(ranked(['a', 'c'].map(instance), solution as Solution, 0.1).map(({ id }) => id)).toEqual(['a', 'c']);
  });
});

describe('the heat step', () => {
  it('follows the belief in a heat value that is too low, or too high', () => {
    expect([heat(sooty, [tooCold]).step, heat(white, [tooHot]).step]).toEqual([1, -1]);
    expect(heat(sooty, [tooCold]).belief).toBeGreaterThan(0.8);
    expect([heat(sooty, [sooting('rich')]).step, heat(sooty, [{ ...tooCold, heatStep: 'colder' }]).step]).toEqual([0, 0]);
    expect(heat(white, [tooHot]).why).toEqual(['Overheated tips on cylinders 1, 2 and 4; the plug’s heat value is the likeliest cause.']);
  });

  it('goes by the strongest place where the heat value may be wrong', () => {
    const belief = ({ solution }: Conclusion): number[] => [...solution.network.local.values()].flat().map(solution.belief);
    const local = decide(tips({ noseColour: 'white', deposit: 'glaze' }, { noseColour: 'light tan' }), [{ ...tooHot, scope: 'plug' }]);
    expect(local.heat).toMatchObject({ step: -1, belief: Math.max(...belief(local)) });
  });

  it('counts only plugs of which something was seen: a set with one unread is not whole', () => {
    expect(heat({ plugs: sooty.plugs!.slice(0, 3) }, [tooCold]).step).toBe(0);
  });

  it.each(['oil', 'detonation', 'pre-ignition', 'mechanical'] as const)('is barred toward hotter by a cause of the kind %s', (kind) => {
    const other = (of: Cause['kind']): Cause => sooting('other', { name: 'Another cause', kind: of, prior: 'rare' });
    const barred = heat(sooty, [tooCold, other(kind)]);
    expect(barred.step).toBe(0);
    expect(barred.why).toContain('A possible cause is another cause; a hotter plug would hide it or make it worse.');
    expect(heat(sooty, [tooCold, other('fuel')]).step).toBe(1);
  });

  it('comes after other causes believed a tenth, the strongest first, four at most, each name once', () => {
    const cold = { ...tooCold, ...found };
    const rivals = ['e', 'd', 'c', 'b', 'a'].map((id) => sooting(id, { ...found, kind: 'mixture', prior: 'occasional' }));
    expect(ruledOut(heat(sooty, [cold, ...rivals]))).toEqual(['a', 'b', 'c', 'd']);
    const jets = sooting('jets', { ...found, scope: 'cylinder', prior: 'occasional' });
    expect(ruledOut(heat(sooty, [cold, jets, sooting('z', { ...found, prior: 'occasional' })]))).toEqual(['z', 'jets']);
    expect(ruledOut(heat(sooty, [cold, sooting('unlikely', { prior: 'very rare' })]))).toEqual([]);
  });

  it('does not come after what does no harm', () => {
    expect(ruledOut(heat(sooty, [{ ...tooCold, ...found }, sooting('first-run', { ...found, harmless: true, kind: 'harmless' })]))).toEqual([]);
  });

  it('is barred toward hotter by a sign at this reading or at the one before, and by a stop', () => {
    const terms: Term[] = [{ symptom: 'knock under load' }];
    const barsOnHotter = [{ id: 'knock', sign: 'knock', anyOf: terms, ...grounds }];
    const stopRules = [{ id: 'knock', words: 'Stop.', anyOf: [terms], ...grounds }];
    const knocking: Partial<ReadingSheet> = { ...sooty, symptoms: [{ what: 'knock under load' }] };
    const before: Partial<ReadingSheet> = { ...sooty, since: { reading: { plugs: [{ cylinder: 1 }], symptoms: [{ what: 'knock under load' }] } } };
    expect([heat(sooty, [tooCold], { barsOnHotter }).step, heat(knocking, [tooCold]).step]).toEqual([1, 1]);
    expect(heat(knocking, [tooCold], { barsOnHotter })).toMatchObject({ step: 0 });
    expect(heat(before, [tooCold], { barsOnHotter }).why.join()).toContain('Noted: knock, at the reading before.');
    expect(heat(knocking, [tooCold], { stopRules }).why).toContain('A stop rule fired: no step until its cause is found.');
    expect(decide(knocking, [tooCold], { stopRules }).stops.map(({ cylinder }) => cylinder)).toEqual([1, 2, 3, 4]);
  });
});
