import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  celsiusToFahrenheit, celsiusToKelvin, fahrenheitToCelsius, inchToMm, kelvinToCelsius, kmToMile, kPaToPsi, lbFtToNm, mileToKm, mmToInch, nmToLbFt, psiToKPa,
} from '../../../core/units.ts';
import {
  celsius, fahrenheit, inch, kelvin, kilometre, kilopascal, mile, millimetre, newtonMetre, poundFoot, psi,
} from '../../../shared/quantities.ts';

describe('units agree with NIST Special Publication 811, appendix B (figures from memory)', () => {
  it.each([
    ['one inch is 25.4 mm exactly', inchToMm(inch.parse(1)), 25.4],
    ['one mile is 1.609344 km exactly', mileToKm(mile.parse(1)), 1.609344],
    ['one pound-force per square inch is 6.894757 kPa', psiToKPa(psi.parse(1)), 6.894757],
    ['one pound-force foot is 1.355818 N·m', lbFtToNm(poundFoot.parse(1)), 1.355818],
    ['0 °C is 273.15 K', celsiusToKelvin(celsius.parse(0)), 273.15],
    ['0 K is -273.15 °C', kelvinToCelsius(kelvin.parse(0)), -273.15],
    ['water boils at 212 °F', celsiusToFahrenheit(celsius.parse(100)), 212],
    ['minus forty is the same in both', fahrenheitToCelsius(fahrenheit.parse(-40)), -40],
    ['a pound-force foot is twelve times 4.4482216152605 N on 25.4 mm', lbFtToNm(poundFoot.parse(1)), 12 * 4.4482216152605 * 0.0254],
  ])('%s', (_, converted, expected) => expect(converted).toBeCloseTo(expected, 6));
});

it('reads a workshop table as the workshop does', () => {
  // 0.025 in of gap is set with a 0.64 mm blade; 18 lb-ft is written 24 N·m; 150 psi is about 10 atmospheres: common practice, no source.
  expect(inchToMm(inch.parse(0.025)).toFixed(2)).toBe('0.64');
  expect(lbFtToNm(poundFoot.parse(18)).toFixed(0)).toBe('24');
  expect((psiToKPa(psi.parse(150)) / 101.325).toFixed(1)).toBe('10.2');
});

it('comes back to the same number there and back', () => {
  const size = fc.double({ min: 0, max: 1e6, noNaN: true });
  fc.assert(fc.property(size, (n) => {
    const back = [
      inchToMm(mmToInch(millimetre.parse(n))), mileToKm(kmToMile(kilometre.parse(n))), psiToKPa(kPaToPsi(kilopascal.parse(n))),
      lbFtToNm(nmToLbFt(newtonMetre.parse(n))), kelvinToCelsius(celsiusToKelvin(celsius.parse(n))), fahrenheitToCelsius(celsiusToFahrenheit(celsius.parse(n))),
    ];
    for (const value of back) expect(Math.abs(value - n)).toBeLessThanOrEqual(1e-9 * Math.max(1, n));
  }));
});

it('refuses a temperature below absolute zero and a negative length', () => {
  expect(celsius.safeParse(-273.16).success).toBe(false);
  expect(fahrenheit.safeParse(-459.68).success).toBe(false);
  expect(kelvin.safeParse(-0.01).success).toBe(false);
  expect(millimetre.safeParse(-1).success).toBe(false);
});
