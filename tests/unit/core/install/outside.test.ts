import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  axialTravel, clampLoad, lubricatedTorqueFactor, nutFactor, PLUG_JOINTS, torqueOfNutFactor, torquePerLoad,
} from '../../../../core/install/clamp-load.ts';
import type { Millimetre, NewtonMetre } from '../../../../shared/quantities.ts';
import { checkAgainstOutside, inputsOf } from '../../../fixtures/check-values.ts';

function bolt(id: string) {
  return (): number => {
    const { threadMm, pitchMm, muThread, muBearing, bearingOuterMm, holeMm, preloadKN } = inputsOf(id);
    const joint = { diameter: threadMm!, pitch: pitchMm!, bearingOuter: bearingOuterMm!, bearingInner: holeMm!, faceAngle: 90 };
    return torquePerLoad(joint, muThread!, muBearing) * preloadKN! * 1000;
  };
}
const simple = (id: string) => (): number => torqueOfNutFactor(inputsOf(id).K!, inputsOf(id).diameterIn!, inputsOf(id).preloadLbf!);

describe('torque and clamp load against the outside', () => {
  checkAgainstOutside('E', {
    E01: bolt('E01'), E02: bolt('E02'), E03: bolt('E03'), E04: bolt('E04'), E05: bolt('E05'), E06: bolt('E06'), E07: bolt('E07'), E08: bolt('E08'),
    E09: bolt('E09'), E10: simple('E10'), E11: simple('E11'), E12: simple('E12'),
    E13: () => nutFactor(PLUG_JOINTS['M14 gasket'], inputsOf('E13').mu!),
    E14: () => lubricatedTorqueFactor(PLUG_JOINTS['M14 gasket']),
    E15: () => axialTravel(inputsOf('E15').turns!, inputsOf('E15').pitchMm as Millimetre),
  });

  it('is a range: friction in the user’s hands is not known', () => {
    fc.assert(fc.property(fc.constantFrom(...Object.values(PLUG_JOINTS)), fc.double({ min: 5, max: 60, noNaN: true }), (joint, torque) => {
      const { low, middle, high } = clampLoad(joint, torque as NewtonMetre);
      expect(low).toBeLessThan(middle);
      expect(middle).toBeLessThan(high);
      expect(clampLoad(joint, (2 * torque) as NewtonMetre).middle).toBeCloseTo(2 * middle, 9);
    }));
  });

  it('asks more torque of a cone than of a gasket for the same load', () => {
    expect(nutFactor(PLUG_JOINTS['M14 cone'], 0.15)).toBeGreaterThan(nutFactor(PLUG_JOINTS['M14 gasket'], 0.15));
  });
});
