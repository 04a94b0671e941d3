import { useStore } from '../state/store.ts';
import { formatNumber } from '../text/numbers.ts';
import { toShown, unitOf, type Quantity } from './quantity.ts';

/** Writes a value of the sheet with its unit, in the units the person set: `0.7 mm`, `0.028 in`. */
export function useQuantity(): (quantity: Quantity, value: number) => string {
  const units = useStore((state) => state.settings.units);
  return (quantity, value) => {
    const unit = unitOf(quantity, units);
    return `${formatNumber(toShown(value, unit), unit.decimals)} ${unit.name}`.trim();
  };
}
