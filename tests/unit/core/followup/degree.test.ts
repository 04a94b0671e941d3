import { describe, expect, it } from 'vitest';
import { degreeOf, type Degree, type Looked } from '../../../../core/followup/degree.ts';

const NEITHER: Degree = { milder: [], graver: [] };

/** How far the same fault went. Common practice, no source. */
describe('two looks at the same fault', () => {
  it.each<[string, Looked, Looked]>([
    ['at only one of them', { tip: { coverage: 'full' } }, { tip: {} }],
    ['at only the other', { tip: {} }, { tip: { coverage: 'full' } }],
    ['without a tip at all', {}, { tip: { coverage: 'full' } }],
    ['with a value that has no degree', { tip: { coverage: 'one-sided' } }, { tip: { coverage: 'light' } }],
    ['with one that has none now', { tip: { coverage: 'light' } }, { tip: { coverage: 'one-sided' } }],
    ['with the insulation measured once', { measured: { insulationMOhm: 2 } }, { measured: {} }],
    ['with the insulation measured once, later', {}, { measured: { insulationMOhm: 2 } }],
    ['with insulation within a factor of three', { measured: { insulationMOhm: 2 } }, { measured: { insulationMOhm: 5 } }],
    ['that agree', { tip: { coverage: 'full', sootRing: 'wide' } }, { tip: { coverage: 'full', sootRing: 'wide' } }],
    ['of which one is of the metal', { tip: { centreElectrode: 'sharp', specks: 'none' } }, { tip: { centreElectrode: 'eroded', specks: 'grey metallic' } }],
  ])('tell nothing of a deposit %s', (_, before, now) => { expect(degreeOf(['oil fouling'], before, now)).toEqual(NEITHER); });

  it.each<[string, Looked, Looked]>([
    ['with the gap measured once', { measured: { gapMm: 0.9 } }, {}],
    ['with the gap measured once, later', { measured: {} }, { measured: { gapMm: 0.9 } }],
    ['within the wire gauge', { measured: { gapMm: 0.9 } }, { measured: { gapMm: 0.94 } }],
    ['of which one is of a deposit', { tip: { coverage: 'none' } }, { tip: { coverage: 'full' } }],
  ])('tell nothing of wear %s', (_, before, now) => { expect(degreeOf(['worn'], before, now)).toEqual(NEITHER); });

  it('tell of both when both faults are there', () => {
    expect(degreeOf(['oil fouling', 'worn'], { tip: { coverage: 'full', groundElectrode: 'as new' } }, { tip: { coverage: 'light', groundElectrode: 'worn thin' } })).toEqual({
      milder: ['coverage full, now light'], graver: ['ground electrode as new, now worn thin'],
    });
  });

  it('take a dead short for the gravest insulation, not for an error', () => {
    expect(degreeOf(['bridged'], { measured: { insulationMOhm: 0 } }, { measured: { insulationMOhm: 1 } }).milder).toEqual(['insulation 0 MΩ, now 1 MΩ']);
    expect(degreeOf(['bridged'], { measured: { insulationMOhm: 1 } }, { measured: { insulationMOhm: 0 } }).graver).toEqual(['insulation 1 MΩ, now 0 MΩ']);
  });
});
