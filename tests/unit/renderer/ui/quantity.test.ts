import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { measured } from '../../../../shared/formats/reading-sheet.v1.ts';
import { fromShown, QUANTITIES, rangeOf, takeNumber, toShown, unitOf, type Quantity } from '../../../../renderer/ui/quantity.ts';

const anything = [-1e9, 1e9] as const;
const taken = (raw: string) => takeNumber(raw, unitOf('length', 'metric'), anything);

describe('units', () => {
  // Factors and worked values: NIST Special Publication 811 (2008), appendix B.8 and section 8; 1 in = 25.4 mm and 1 mi = 1.609344 km are exact.
  it.each([
    ['length', 0.028, 0.7112], ['length', 1, 25.4], ['pressure', 1, 6.894757], ['torque', 1, 1.355818], ['distance', 1, 1.609344],
    ['altitude', 1, 0.3048], ['temperature', 212, 100], ['temperature', 32, 0], ['temperature', -40, -40],
  ] as const)('%s: %d in inch units is %d in the unit of the sheet', (quantity, shown, stored) => {
    const unit = unitOf(quantity, 'inch');
    expect(fromShown(shown, unit)).toBeCloseTo(stored, 6);
    expect(toShown(stored, unit)).toBeCloseTo(shown, 6);
  });

  it('shows what was typed again, in either set of units', () => {
    fc.assert(fc.property(fc.constantFrom(...(Object.keys(QUANTITIES) as Quantity[])), fc.constantFrom('metric' as const, 'inch' as const), fc.integer({ min: 1, max: 99_999 }), (quantity, units, digits) => {
      const unit = unitOf(quantity, units);
      const typed = Number((digits / 10 ** unit.decimals).toFixed(unit.decimals));
      expect(Number(toShown(fromShown(typed, unit), unit).toFixed(unit.decimals))).toBe(typed);
    }));
  });
});

describe('a number as it is typed', () => {
  it.each([['0,7', 0.7], ['0.7', 0.7], ['.7', 0.7], ['1 200', 1200], ['1\u202f200,5', 1200.5], ['\u22125', -5], ['0,750', 0.75], ['12.', 12]])('%s is taken as %d', (raw, value) => {
    expect(taken(raw)).toEqual({ kind: 'value', value });
  });

  it('is not guessed at when a comma could part thousands or decimals', () => {
    expect(taken('1,200')).toEqual({ kind: 'problem', what: 'two meanings' });
  });

  it.each(['x', '0.7x', '1.2.3', '1e3', '--1', '0x10'])('%s is not taken', (raw) => {
    expect(taken(raw)).toEqual({ kind: 'problem', what: 'unreadable' });
  });

  it('keeps within the bounds that the sheet format sets, whatever the units', () => {
    expect(rangeOf(measured.shape.gapMm)).toEqual([0, 5]);
    expect(takeNumber('0.3', unitOf('length', 'inch'), rangeOf(measured.shape.gapMm))).toEqual({ kind: 'problem', what: 'out of range' });
    expect(takeNumber('0.028', unitOf('length', 'inch'), rangeOf(measured.shape.gapMm))).toEqual({ kind: 'value', value: 0.7112 });
  });

  it('may be nothing at all', () => {
    expect(taken('  ')).toEqual({ kind: 'empty' });
  });
});
