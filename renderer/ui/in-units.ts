import { formatNumber } from '../text/numbers.ts';
import { toShown, unitOf, type Quantity, type Units } from './quantity.ts';

/** The units in which the knowledge and the inference write, and what they measure. */
const WRITTEN: Readonly<Record<string, Quantity>> = { kPa: 'pressure', mm: 'length', '°C': 'temperature', 'N·m': 'torque', km: 'distance', m: 'altitude' };

const NUMBER = /\d{1,3}(?:[ \u00a0]\d{3})+|\d+(?:\.\d+)?/;
/** One number, or several that share a unit: `345 to 690 kPa`, `500/550 kPa`, `500 and 5000 km`. */
const AMOUNT = new RegExp(`(?:${NUMBER.source})(?:(?: to | and | or |/|–)(?:${NUMBER.source}))*[ \u00a0](?:kPa|mm|°C|N·m|km|m)(?![\\p{L}\\d/])`, 'gu');
const ALL_NUMBERS = new RegExp(NUMBER.source, 'g');

/** Digits that carry meaning: two in `690`, three in `1150` and `0.71`. */
const digitsOf = (number: string): number => number.replace('.', '').replace(/^0+/, '').replace(/0+$/, '').length;

/** As many digits as the number had, at least two; lengths to a thousandth of an inch, temperatures whole. */
function rounded(value: number, quantity: Quantity, digits: number): string {
  if (quantity === 'temperature') return formatNumber(value, 0);
  if (quantity === 'length') return formatNumber(value, 3);
  return formatNumber(Number(value.toPrecision(Math.max(2, digits))), 3);
}

/** A sentence with its amounts in the person's units. Temperatures in it are temperatures, never differences. */
export function inUnits(sentence: string, units: Units): string {
  if (units === 'metric') return sentence;
  return sentence.replace(AMOUNT, (amount) => {
    const at = Math.max(amount.lastIndexOf(' '), amount.lastIndexOf('\u00a0'));
    const quantity = WRITTEN[amount.slice(at + 1)];
    if (quantity === undefined) return amount;
    const unit = unitOf(quantity, units);
    const numbers = amount.slice(0, at).replace(ALL_NUMBERS, (number) => rounded(toShown(Number(number.replace(/[ \u00a0]/g, '')), unit), quantity, digitsOf(number.replace(/[ \u00a0]/g, ''))));
    return `${numbers} ${unit.name}`;
  });
}
