import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { criticalQ, differentialLoss, dixonQ, medianDistance, modifiedScore, oddCylinder } from '../../../../core/statistics/odd-cylinder.ts';
import { studentQuantile } from '../../../../core/statistics/student.ts';
import { checkAgainstOutside, inputsOf } from '../../../fixtures/check-values.ts';

const values = (id: string): readonly number[] => inputsOf(id).values as unknown as readonly number[];
const critical = (id: string) => (): number => criticalQ(inputsOf(id).n!, inputsOf(id).level === 0.95 ? 95 : 90) ?? NaN;

describe('statistics of a set against the outside', () => {
  checkAgainstOutside('G', {
    G01: () => dixonQ(values('G01'), 'lowest'),
    G02: critical('G02'), G03: critical('G03'), G04: critical('G04'),
    G05: () => medianDistance(values('G05')),
    G06: () => modifiedScore(92, values('G06')),
    G07: () => 100 * differentialLoss(inputsOf('G07').kPaOrPsi!, inputsOf('G07').supply!),
  });

  it.each([[1, 12.706], [2, 4.303], [3, 3.182], [4, 2.776], [8, 2.306], [30, 2.042]])(
    'knows Student’s t for %i degrees of freedom: %f (any table of the two-sided 5 % point, from memory)', (freedom, t) => {
      expect(studentQuantile(0.975, freedom)).toBeCloseTo(t, 3);
    });
});

describe('the odd cylinder', () => {
  it('is shown when one of four is far off and the others agree', () => {
    expect(oddCylinder([1200, 1190, 800, 1210], 36)).toEqual({ verdict: 'shown', index: 2 });
  });

  it('is not shown for a tenth less on one of four: small sets hide real losses', () => {
    expect(oddCylinder([1200, 1150, 1080, 1210], 36)).toEqual({ verdict: 'not shown' });
  });

  it('is not looked for among three', () => {
    expect(oddCylinder([1200, 700, 1210], 36)).toEqual({ verdict: 'too few' });
  });

  it('is not made of gauge noise: readings within its repeatability never show one', () => {
    fc.assert(fc.property(fc.array(fc.double({ min: 0.99, max: 1.01, noNaN: true }), { minLength: 4, maxLength: 18 }), (set) => {
      expect(oddCylinder(set, 0.03).verdict).toBe('not shown');
    }));
  });

  it('is the same one in whatever unit the gauge reads', () => {
    const readings = fc.array(fc.integer({ min: 500, max: 1500 }), { minLength: 4, maxLength: 10 });
    fc.assert(fc.property(readings, (set) => {
      expect(oddCylinder(set.map((kPa) => kPa / 6.894757), 36 / 6.894757)).toEqual(oddCylinder(set, 36));
    }));
  });
});
