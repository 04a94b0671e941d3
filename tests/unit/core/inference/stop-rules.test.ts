import { describe, expect, it } from 'vitest';
import { evidenceOf, type Evidence } from '../../../../core/inference/evidence.ts';
import { barsFor, cautionsFor, stopLines, stopsFor } from '../../../../core/inference/stop-rules.ts';
import type { Bar, Caution, StopRule, Term } from '../../../../core/knowledge/types.ts';
import type { ReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';
import { sheetOf } from './sheet-of.ts';

const grounds = { because: 'made up for a test', source: 'S16' } as const;
const rule = (...anyOf: (readonly Term[])[]): StopRule => ({ id: 'rule', words: 'Stop.', anyOf, ...grounds });
const bar = (...anyOf: Term[]): Bar => ({ id: 'bar', sign: 'a sign', anyOf, ...grounds });
const caution = (words: string, when?: readonly Term[]): Caution => ({ id: words, words, ...(when && { when }), ...grounds });

const melted: Term = { plug: 'centreElectrode', is: ['melted', 'missing'] };
const water: Term = { cylinder: 'borescope', is: ['wet with water'] };
const knock: Term = { symptom: 'knock under load' };
const boosted: Term = { circumstance: { aspiration: 'boosted' } };
const onCylinders = (...numbers: number[]): ReadingSheet['plugs'] => numbers.map((cylinder) => ({ cylinder, tip: { centreElectrode: 'melted' } }));

const oneOfTwo: Partial<ReadingSheet> = {
  engine: { use: 'road', cylinders: 2, plugsPerCylinder: 2 }, plugs: [{ cylinder: 2, position: 'lower', tip: { centreElectrode: 'melted' } }],
};

const placesOf = (rules: readonly StopRule[], sheet: Partial<ReadingSheet>): [number, string[]][] =>
  stopsFor(rules, evidenceOf(sheetOf(sheet))).map(({ cylinder, plugs }) => [cylinder, plugs.map(({ key }) => key)]);
const bars = (one: Bar, sheet: Partial<ReadingSheet>): string[] => barsFor([one], evidenceOf(sheetOf(sheet))).map(({ sign }) => sign);
const linesOf = (rules: readonly StopRule[], sheet: Partial<ReadingSheet>) => stopLines(stopsFor(rules, evidenceOf(sheetOf(sheet))));

describe('a stop rule', () => {
  it('fires on each cylinder with a plug that shows one of its values, doubted or not', () => {
    expect(placesOf([rule([melted])], { plugs: onCylinders(1, 3) })).toEqual([[1, ['1']], [3, ['3']]]);
    expect(placesOf([rule([melted])], { plugs: [{ cylinder: 2, tip: { centreElectrode: 'missing', unsure: ['centreElectrode'] } }] })).toEqual([[2, ['2']]]);
    expect(placesOf([rule([melted])], { plugs: [{ cylinder: 2, tip: { centreElectrode: 'blued', groundElectrode: 'melted' } }] })).toEqual([]);
  });

  it('names every plug of the cylinder that shows it', () => {
    const engine = { use: 'road', cylinders: 2, plugsPerCylinder: 2 } as const;
    const plugs = (['upper', 'lower'] as const).map((position) => ({ cylinder: 2, position, tip: { centreElectrode: 'melted' as const } }));
    expect(placesOf([rule([melted])], { engine, plugs })).toEqual([[2, ['2 upper', '2 lower']]]);
    expect(placesOf([rule([melted])], { engine, plugs: plugs.slice(1) })).toEqual([[2, ['2 lower']]]);
  });

  it('fires on what was found in a cylinder', () => {
    expect(placesOf([rule([water])], { cylinderChecks: [{ cylinder: 3, borescope: 'wet with water' }, { cylinder: 2, borescope: 'clean', spark: 'weak' }] })).toEqual([[3, ['3']]]);
  });

  it('does not take the like word of another finding for it', () => {
    const noSpark: Term = { cylinder: 'spark', is: ['none'] };
    expect(placesOf([rule([noSpark])], { cylinderChecks: [{ cylinder: 1, speedDropWhenCut: 'none' }, { cylinder: 2, spark: 'none' }] })).toEqual([[2, ['2']]]);
  });

  it('fires on a symptom of the engine everywhere, on one of a cylinder there', () => {
    expect(placesOf([rule([knock])], { symptoms: [{ what: 'knock under load' }] }).map(([n]) => n)).toEqual([1, 2, 3, 4]);
    expect(placesOf([rule([knock])], { symptoms: [{ what: 'knock under load', cylinder: 4 }] }).map(([n]) => n)).toEqual([4]);
    expect(placesOf([rule([knock])], { symptoms: [{ what: 'misfire' }] })).toEqual([]);
  });

  it('fires on a circumstance that is recorded, of a plug only there', () => {
    expect(placesOf([rule([boosted])], { engine: { use: 'road', cylinders: 2, aspiration: 'boosted' } }).map(([n]) => n)).toEqual([1, 2]);
    expect(placesOf([rule([boosted])], {})).toEqual([]);
    const hotter: Term = { circumstance: { fitted: 'hotter' } };
    expect(placesOf([rule([hotter])], { plugs: [{ cylinder: 1 }, { cylinder: 2, fitted: { heatStepsFromSpecified: 2 } }] }).map(([n]) => n)).toEqual([2]);
    expect(placesOf([rule([{ circumstance: { position: ['only'] } }])], { plugs: [{ cylinder: 3 }] }).map(([n]) => n)).toEqual([3]);
  });

  it('needs all terms of one way, at one plug and its cylinder; one way of several is enough', () => {
    const both = rule([melted, water]);
    const checks = (cylinder: number): Partial<ReadingSheet> => ({ plugs: onCylinders(1), cylinderChecks: [{ cylinder, borescope: 'wet with water' }] });
    expect(placesOf([both], checks(1))).toEqual([[1, ['1']]]);
    expect(placesOf([both], checks(2))).toEqual([]);
    expect(placesOf([rule([melted, water], [melted])], checks(2))).toEqual([[1, ['1']]]);
  });

  it('of which nothing is asked never fires', () => {
    expect(placesOf([rule([]), rule()], { plugs: onCylinders(1) })).toEqual([]);
  });
});

describe('the lines of the stops', () => {
  it('name the cylinder of a rule that fired at one', () => {
    expect(linesOf([rule([melted])], { plugs: onCylinders(2) })).toEqual([{ rule: 'rule', cylinder: 2, why: 'Cylinder 2: Stop.' }]);
    expect(linesOf([rule([water])], { cylinderChecks: [{ cylinder: 2, borescope: 'wet with water' }] })).toEqual([{ rule: 'rule', cylinder: 2, why: 'Cylinder 2: Stop.' }]);
  });

  it('are one for a rule that fired at several, with all of them', () => {
    expect(linesOf([rule([melted]), { ...rule([water]), id: 'other' }], { plugs: onCylinders(1, 3), cylinderChecks: [{ cylinder: 3, borescope: 'wet with water' }] })).toEqual([
      { rule: 'rule', why: 'Cylinders 1 and 3: Stop.' }, { rule: 'other', cylinder: 3, why: 'Cylinder 3: Stop.' },
    ]);
  });

  it('name no place for a rule about the engine, even in one with a single cylinder', () => {
    expect(linesOf([rule([knock])], { engine: { use: 'road', cylinders: 1 }, symptoms: [{ what: 'knock under load' }] })).toEqual([{ rule: 'rule', why: 'Stop.' }]);
    expect(linesOf([rule([knock], [knock, melted])], { symptoms: [{ what: 'knock under load', cylinder: 2 }] })).toEqual([{ rule: 'rule', cylinder: 2, why: 'Cylinder 2: Stop.' }]);
  });

  it('are none where nothing fired', () => {
    expect(linesOf([rule([melted])], {})).toEqual([]);
  });
});

describe('a bar on a hotter plug', () => {
  it('is set by any one of its terms, anywhere', () => {
    expect(bars(bar(knock, melted), { plugs: onCylinders(4) })).toEqual(['a sign']);
    expect(bars(bar(knock, melted), { symptoms: [{ what: 'knock under load', cylinder: 3 }] })).toEqual(['a sign']);
    expect(bars(bar(knock, melted), {})).toEqual([]);
  });

  it('is set by one plug of two in a cylinder', () => {
    expect(bars(bar(melted), oneOfTwo)).toEqual(['a sign']);
  });
});

describe('a caution', () => {
  const told = (cautions: readonly Caution[], evidence: Evidence): string[] => cautionsFor(cautions, evidence);

  it('stands always, or where one of its terms holds somewhere', () => {
    const cautions = [caution('always'), caution('when melted', [knock, melted]), caution('never', [])];
    expect(told(cautions, evidenceOf(sheetOf()))).toEqual(['always']);
    for (const sheet of [{ plugs: onCylinders(4) }, oneOfTwo]) expect(told(cautions, evidenceOf(sheetOf(sheet)))).toEqual(['always', 'when melted']);
  });
});
