import type { z } from 'zod';
import { FAHRENHEIT_AT_0_C, PER_UNIT } from '../../core/units.ts';
import type { Settings } from '../../shared/channels.ts';

export type Units = Settings['units'];
type Unit = { readonly name: string; readonly decimals: number; readonly perUnit: number; readonly zeroAt?: number };

const same = (name: string, decimals: number) => ({ metric: { name, decimals, perUnit: 1 }, inch: { name, decimals, perUnit: 1 } });

/** Units of each quantity. `perUnit`: what one of it is in the sheet's own unit. */
export const QUANTITIES = {
  length: { metric: { name: 'mm', decimals: 2, perUnit: 1 }, inch: { name: 'in', decimals: 3, perUnit: PER_UNIT.inch } },
  pressure: { metric: { name: 'kPa', decimals: 0, perUnit: 1 }, inch: { name: 'psi', decimals: 1, perUnit: PER_UNIT.psi } },
  temperature: {
    metric: { name: '°C', decimals: 0, perUnit: 1 },
    inch: { name: '°F', decimals: 0, perUnit: PER_UNIT.fahrenheit, zeroAt: FAHRENHEIT_AT_0_C },
  },
  torque: { metric: { name: 'N·m', decimals: 1, perUnit: 1 }, inch: { name: 'lb-ft', decimals: 1, perUnit: PER_UNIT.poundFoot } },
  force: { metric: { name: 'kN', decimals: 1, perUnit: 1 }, inch: { name: 'lbf', decimals: 0, perUnit: PER_UNIT.poundForce } },
  distance: { metric: { name: 'km', decimals: 0, perUnit: 1 }, inch: { name: 'mi', decimals: 0, perUnit: PER_UNIT.mile } },
  altitude: { metric: { name: 'm', decimals: 0, perUnit: 1 }, inch: { name: 'ft', decimals: 0, perUnit: PER_UNIT.foot } },
  resistance: same('kΩ', 2),
  insulation: same('MΩ', 2),
  voltage: same('kV', 0),
  share: same('%', 1),
  speed: same('r/min', 0),
  angle: same('°', 1),
  time: same('h', 1),
  lambda: same('λ', 3),
  ratio: same(': 1', 2),
  count: same('', 0),
} as const satisfies Record<string, { readonly metric: Unit; readonly inch: Unit }>;
export type Quantity = keyof typeof QUANTITIES;

export const unitOf = (quantity: Quantity, units: Units): Unit => QUANTITIES[quantity][units];

/** From the sheet's unit (mm, kPa, °C, N·m, km, m) to the unit shown. */
export const toShown = (value: number, unit: Unit): number => value / unit.perUnit + (unit.zeroAt ?? 0);

/** From the unit shown to the sheet's, to a millionth, so that 0.028 in is 0.7112 mm and not 0.7111999. */
export const fromShown = (shown: number, unit: Unit): number => Number(((shown - (unit.zeroAt ?? 0)) * unit.perUnit).toFixed(6));

export type Range = readonly [low: number, high: number];

/** The bounds that the format sets for a field, so that the screen and the format cannot differ. */
export function rangeOf(schema: z.ZodOptional<z.ZodNumber> | z.ZodNumber): Range {
  const number = 'unwrap' in schema ? schema.unwrap() : schema;
  return [number.minValue ?? -Infinity, number.maxValue ?? Infinity];
}

export type Taken =
  | { readonly kind: 'empty' }
  | { readonly kind: 'value'; readonly value: number }
  | { readonly kind: 'problem'; readonly what: 'unreadable' | 'two meanings' | 'out of range' };

const TWO_MEANINGS = /^-?[1-9]\d{0,2},\d{3}$/;
const NUMBER = /^-?(\d+([.,]\d*)?|[.,]\d+)$/;

/**
 * A number as people type it: decimal comma or point, spaces between thousands, a true minus. `1,200` is not taken: it is 1.2 to one
 * reader and 1200 to another. `range` is in the sheet's unit.
 */
export function takeNumber(raw: string, unit: Unit, [low, high]: Range): Taken {
  const text = raw.replace(/[\s\u00a0\u2009\u202f]/g, '').replace('\u2212', '-');
  if (text === '') return { kind: 'empty' };
  if (TWO_MEANINGS.test(text)) return { kind: 'problem', what: 'two meanings' };
  if (!NUMBER.test(text)) return { kind: 'problem', what: 'unreadable' };
  const value = fromShown(Number(text.replace(',', '.')), unit);
  return value < low || value > high ? { kind: 'problem', what: 'out of range' } : { kind: 'value', value };
}
