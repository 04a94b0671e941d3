import { conditions as schema } from '../../../shared/formats/reading-sheet.v1.ts';
import { useAct, useIsKept, usePending, useSheet } from '../../state/hooks.ts';
import { useText, type Text } from '../../text/index.ts';
import { QuantityField } from '../../ui/quantity-field.tsx';
import { rangeOf, type Quantity } from '../../ui/quantity.ts';
import styles from './run.module.css';

export type Measure = keyof Text['run']['measures'];

const QUANTITY: Record<Measure, Quantity> = {
  distanceKm: 'distance', hours: 'time', ambientC: 'temperature', altitudeM: 'altitude', coolantC: 'temperature', lambda: 'lambda', egtC: 'temperature',
  boostKPa: 'pressure', advanceDeg: 'angle', speedRpm: 'speed',
};
export const ON_THESE_PLUGS: readonly Measure[] = ['distanceKm', 'hours'];
export const WHILE_RUNNING: readonly Measure[] = ['speedRpm', 'lambda', 'advanceDeg', 'boostKPa', 'egtC', 'coolantC', 'ambientC', 'altitudeM'];

function MeasureField({ field }: { field: Measure }) {
  const act = useAct();
  const text = useText().run.measures[field];
  const value = useSheet().conditions?.[field];
  const path = `conditions.${field}`;
  return (
    <div data-field={field}>
      <QuantityField label={text.label} quantity={QUANTITY[field]} range={rangeOf(schema.shape[field])} value={value} raw={usePending(path)}
        disabled={useIsKept()} {...(text.hint !== undefined && { hint: text.hint })}
        onEntry={(next, raw) => act({ type: 'condition', field, value: next }, { path, raw })} />
    </div>
  );
}

/** Numbers of the run, each with its unit. */
export const MeasureFields = ({ fields }: { fields: readonly Measure[] }) => (
  <div className={styles.measures}>{fields.map((field) => <MeasureField key={field} field={field} />)}</div>
);
