import { describe, expect, it } from 'vitest';
import { besideText, patternText, verdictSentence } from '../../../../core/inference/summary.ts';
import type { Engine } from '../../../../shared/formats/engine.ts';
import type { Position } from '../../../../shared/vocabulary/engine.ts';
import { VERDICTS, type Verdict } from '../../../../shared/vocabulary/verdicts.ts';

type Named = Parameters<typeof verdictSentence>[0][number];
const set = (...verdicts: readonly Verdict[]): Named[] => verdicts.map((verdict, i) => ({ cylinder: i + 1, position: 'only', verdict }));
const twin = (...plugs: readonly (readonly [cylinder: number, position: Position, verdict: Verdict])[]): Named[] =>
  plugs.map(([cylinder, position, verdict]) => ({ cylinder, position, verdict }));
const many = (n: number, verdict: Verdict): Verdict[] => Array.from({ length: n }, () => verdict);

describe('the sentence on a set of plugs', () => {
  it('has words for every judgement, of one plug and of several, and no two the same', () => {
    const one = VERDICTS.map((verdict) => verdictSentence(set(verdict)));
    const several = VERDICTS.map((verdict) => verdictSentence(set(verdict, verdict)));
    for (const words of one) expect(words).toMatch(/^Cylinder 1 [a-z]+ [a-z].*\.$/);
    for (const words of several) expect(words).toMatch(/^Both plugs [a-z]+ [a-z].*\.$/);
    expect(new Set([...one, ...several]).size).toBe(2 * VERDICTS.length);
  });

  it('names the faults first in the order of the tray, then the sound plugs, then what cannot be judged', () => {
    expect(verdictSentence(set('undetermined', 'normal', 'worn', 'oil fouling', 'worn'))).toBe(
      'Cylinders 3 and 5 are worn out; cylinder 4 is wet with oil; cylinder 2 looks normal; cylinder 1 cannot be judged yet.',
    );
  });

  it('says the other ones where all that are not at fault look normal', () => {
    expect(verdictSentence(set('normal', 'oil fouling', 'normal'))).toBe('Cylinder 2 is wet with oil; the other two look normal.');
    expect(verdictSentence(set('normal', 'oil fouling'))).toBe('Cylinder 2 is wet with oil; cylinder 1 looks normal.');
    expect(verdictSentence(set('normal', 'normal', 'oil fouling', 'worn'))).toBe('Cylinder 3 is wet with oil; cylinder 4 is worn out; cylinders 1 and 2 look normal.');
  });

  it('counts more than four plugs that nobody looks for, and lists all that are at fault', () => {
    expect(verdictSentence(set('worn', 'glazing', ...many(4, 'normal')))).toMatch(/; cylinders 3, 4, 5 and 6 look normal\.$/);
    expect(verdictSentence(set('worn', 'glazing', ...many(5, 'normal')))).toMatch(/; five others look normal\.$/);
    expect(verdictSentence(set('worn', ...many(5, 'undetermined')))).toBe('Cylinder 1 is worn out; five others cannot be judged yet.');
    expect(verdictSentence(set('normal', ...many(5, 'worn')))).toBe('Cylinders 2, 3, 4, 5 and 6 are worn out; cylinder 1 looks normal.');
  });

  it('says all where all are alike', () => {
    expect(verdictSentence(set(...many(3, 'worn')))).toBe('All three plugs are worn out.');
    expect(verdictSentence(set(...many(6, 'normal')))).toBe('All six plugs look normal.');
  });

  it('names the place of a plug where there are two in the cylinder', () => {
    expect(verdictSentence(twin([1, 'upper', 'worn'], [1, 'lower', 'normal']))).toBe('Cylinder 1 upper is worn out; cylinder 1 lower looks normal.');
  });
});

describe('what stands out in a set of plugs', () => {
  const four: Engine = { use: 'road', cylinders: 4, layout: 'inline' };
  const pattern = (plugs: readonly Named[], engine: Engine = four): string => patternText(plugs, engine);

  it('is nothing where no plug could be judged, or where all look normal', () => {
    expect(pattern(set('undetermined', 'undetermined'))).toBe('Nothing stands out yet: no plug could be judged.');
    expect(pattern(set('normal', 'normal'))).toBe('All plugs that were read look normal.');
    expect(pattern(set('normal', 'undetermined'))).toBe('The plugs that could be judged look normal.');
  });

  it('is nothing to compare with on a single cylinder', () => {
    expect(pattern(set('worn'), { use: 'small', cylinders: 1 })).toBe('One cylinder: there is no neighbour to compare with.');
  });

  it('is a set that is alike, among those that could be judged', () => {
    const alike = 'The whole set is alike: look for one cause that all cylinders share.';
    expect(pattern(set('worn', 'worn'))).toBe(alike);
    expect(pattern(set('worn', 'worn', 'undetermined'))).toBe(alike);
    expect(pattern(set('worn', 'worn', 'normal'))).not.toBe(alike);
    expect(pattern(set('worn', 'glazing'))).not.toBe(alike);
  });

  it('is a cylinder that differs alone', () => {
    expect(pattern(set('normal', 'worn', 'normal', 'normal'))).toBe('Cylinder 2 alone differs: look for a cause of that cylinder before any shared one.');
    expect(pattern(set('undetermined', 'worn'))).toMatch(/^Cylinder 2 alone/);
    expect(pattern(twin([3, 'upper', 'worn'], [3, 'lower', 'glazing'], [1, 'upper', 'normal']))).toMatch(/^Cylinder 3 alone/);
  });

  it('is one position of two, where the plugs of the other were read as well', () => {
    const lower = twin([1, 'lower', 'oil fouling'], [2, 'lower', 'oil fouling'], [1, 'upper', 'normal']);
    const words = 'Only the lower plugs are at fault: look for what sets them apart before any cause of the whole engine.';
    expect(pattern(lower)).toBe(words);
    expect(pattern(twin([1, 'lower', 'oil fouling'], [2, 'upper', 'oil fouling'], [1, 'upper', 'normal']))).not.toBe(words);
    expect(pattern(twin([1, 'lower', 'oil fouling'], [2, 'lower', 'worn']))).not.toMatch(/^Only/);
  });

  it('is every cylinder, each with its own fault', () => {
    expect(pattern(set('worn', 'glazing', 'worn', 'worn'))).toBe('Every cylinder has a plug at fault, but not all alike.');
  });

  it('is what the cylinders at fault share, if the engine record names it', () => {
    const grouped: Engine = { ...four, mixture: { kind: 'carburettor', groups: [[1, 3], [2, 4]] } };
    expect(pattern(set('worn', 'normal', 'worn', 'normal'), grouped)).toBe('Cylinders 1 and 3 differ from the rest: they share carburettor of cylinders 1 and 3.');
    expect(pattern(set('worn', 'normal', 'worn', 'normal'))).toBe('Cylinders 1 and 3 differ from the rest: compare what they share.');
    expect(pattern(set('worn', 'worn', 'worn', 'normal'), grouped)).toBe('Cylinders 1, 2 and 3 differ from the rest: compare what they share.');
    const wasted: Engine = { ...four, ignition: { kind: 'wasted spark' } };
    expect(pattern(set('worn', 'normal', 'normal', 'glazing'), wasted)).toMatch(/they share coil of cylinders 1 and 4\.$/);
    const magneto: Engine = { ...four, layout: 'radial', ignition: { kind: 'magneto', sets: [{ name: 'left', plugs: [1, 2].map((cylinder) => ({ cylinder, position: 'only' as const })) }] } };
    expect(pattern(set('worn', 'worn', 'normal', 'normal'), magneto)).toMatch(/compare what they share\.$/);
  });
});

describe('what stands out beside the plugs', () => {
  it('is what was found on cylinders whose plugs do not show it, and what is felt and shows on none', () => {
    const [one, two] = ['What was found on cylinder 2 speaks of a fault that no plug shows.', 'What was found on cylinders 2 and 3 speaks of a fault that no plug shows.'];
    const felt = 'No plug shows what is behind the misfire and oil use: it may lie anywhere in the engine.';
    expect([besideText([2], []), besideText([2, 3], [])]).toEqual([[one], [two]]);
    expect([besideText([], ['misfire', 'oil use']), besideText([2], ['misfire', 'oil use'])]).toEqual([[felt], [one, felt]]);
    expect(besideText([], [])).toEqual([]);
  });
});
