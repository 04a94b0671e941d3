import { useState } from 'react';
import type { AnchorStep, TipReading } from '../../../core/thermal/anchor.ts';
import type { Band } from '../../../core/band.ts';
import type { GasAtPlug } from '../../../core/thermal/tip.ts';
import type { Celsius } from '../../../shared/quantities.ts';
import { useText } from '../../text/index.ts';
import { Button } from '../../ui/button.tsx';
import { QuantityField } from '../../ui/quantity-field.tsx';
import { toShown, unitOf } from '../../ui/quantity.ts';
import { useQuantity } from '../../ui/use-quantity.ts';
import { useStore } from '../../state/store.ts';
import { formatNumber } from '../../text/numbers.ts';
import styles from './heat.module.css';

const THERMOCOUPLE_RANGE = [-50, 1200] as const;
const SIGNS = ['soot kept', 'self-cleaned', 'not blistered', 'blistered', 'melted', 'known good'] as const;

type Props = {
  readonly gas: GasAtPlug;
  readonly heatStep: number;
  readonly steps: readonly AnchorStep[];
  readonly onRead: (reading: TipReading) => void;
  readonly onForget: () => void;
};

/** The arithmetic of one reading: the band before, what was read, the band after. */
function Arithmetic({ step }: { step: AnchorStep }) {
  const { heat } = useText();
  const quantity = useQuantity();
  const units = useStore((state) => state.settings.units);
  const band = ({ low, middle, high }: Band<number>): string =>
    heat.band(quantity('temperature', middle), quantity('temperature', low), quantity('temperature', high));
  const { about, celsius, deviation } = step.says;
  const unit = unitOf('temperature', units);
  const spread = `${formatNumber(toShown(1.645 * deviation, { ...unit, zeroAt: 0 }), 0)} ${unit.name}`;
  const says = about === 'value' ? heat.says.value(quantity('temperature', celsius), spread) : heat.says[about](quantity('temperature', celsius));
  return <li><strong>{heat.showed[step.kind]}.</strong> {heat.arithmetic(band(step.before), says, band(step.after))}</li>;
}

/** The engine's own tips correct the model. */
export function Readings({ gas, heatStep, steps, onRead, onForget }: Props) {
  const { heat } = useText();
  const [entry, setEntry] = useState<{ readonly value?: number | undefined; readonly raw?: string | undefined }>({});
  const read = (showed: TipReading['showed']): void => onRead({ gas, seat: { heatStep, seat: 1 }, showed });
  const readThermocouple = (): void => {
    if (entry.value !== undefined) read({ kind: 'thermocouple', value: entry.value as Celsius });
    setEntry({});
  };
  return (
    <section className={styles.readings}>
      <h2>{heat.readings}</h2>
      <p className={styles.soft}>{heat.readingsHelp}</p>
      <div className={styles.tools}>
        {SIGNS.map((kind) => <Button key={kind} onClick={() => read({ kind })}>{heat.showed[kind]}</Button>)}
      </div>
      <ol className={styles.arithmetic}>{steps.map((step, i) => <Arithmetic key={i} step={step} />)}</ol>
      <div className={styles.tools}>
        <QuantityField label={heat.showed.thermocouple} quantity="temperature" range={THERMOCOUPLE_RANGE} value={entry.value} raw={entry.raw}
          onEntry={(value, raw) => setEntry({ value, raw })} />
        <Button disabled={entry.value === undefined} onClick={readThermocouple}>{heat.take}</Button>
        {steps.length > 0 && <Button look="quiet" onClick={onForget}>{heat.forget}</Button>}
      </div>
    </section>
  );
}
