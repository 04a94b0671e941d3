import type { CylinderCheck } from '../../../shared/formats/reading-sheet.v1.ts';
import { takeNumber, unitOf, type Range, type Taken, type Units } from '../../ui/quantity.ts';

export type Differential = NonNullable<CylinderCheck['differential']>;

const RANGES = { held: [0, 1500], supply: [50, 1500] } as const satisfies Record<string, Range>;
export const SUPPLY_RANGE: Range = RANGES.supply;

/** What is lost of the air supplied, in percent of the supply. @param differential both in kPa, supply above 0 */
export const lossPercent = ({ heldKPa, supplyKPa }: Differential): number => 100 * (1 - heldKPa / supplyKPa);

export type TakenDifferential = { readonly kind: 'empty' } | { readonly kind: 'problem' } | { readonly kind: 'value'; readonly value: Differential };

const numberIn = (taken: Taken): number | undefined => (taken.kind === 'value' ? taken.value : undefined);

/** 'held/supply' as the trade writes it, in the units shown: 72/80 in psi, 500/550 in kPa. */
export function takeDifferential(raw: string, units: Units): TakenDifferential {
  if (raw.trim() === '') return { kind: 'empty' };
  const unit = unitOf('pressure', units);
  const [held = '', supply = '', ...more] = raw.split('/');
  const heldKPa = numberIn(takeNumber(held, unit, RANGES.held));
  const supplyKPa = numberIn(takeNumber(supply, unit, RANGES.supply));
  if (more.length > 0 || heldKPa === undefined || supplyKPa === undefined || heldKPa > supplyKPa) return { kind: 'problem' };
  return { kind: 'value', value: { heldKPa, supplyKPa } };
}
