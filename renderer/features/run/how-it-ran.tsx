import { DUTIES, FUELS, STOPS } from '../../../shared/vocabulary/conditions.ts';
import { useAct, useIsKept, useSheet } from '../../state/hooks.ts';
import { useText } from '../../text/index.ts';
import { Choice } from '../../ui/choice.tsx';
import { MeasureFields, ON_THESE_PLUGS } from './measure-fields.tsx';
import styles from './run.module.css';

const WARM = ['yes', 'no'] as const;

/** Fuel, load, the stop and the warmth: what decides how far a tip can be read. */
export function HowItRan() {
  const text = useText().run;
  const act = useAct();
  const disabled = useIsKept();
  const { conditions = {} } = useSheet();
  const warm = conditions.warm === undefined ? undefined : conditions.warm ? 'yes' : 'no';
  return (
    <section className={styles.block} aria-labelledby="how-it-ran">
      <h2 id="how-it-ran">{text.howItRan}</h2>
      <Choice label={text.fuel} options={FUELS} value={conditions.fuel} nameOf={(fuel) => text.fuels[fuel]} disabled={disabled}
        onChange={(value) => act({ type: 'condition', field: 'fuel', value })} />
      <Choice label={text.duty} options={DUTIES} value={conditions.duty} nameOf={(duty) => text.duties[duty]} disabled={disabled}
        onChange={(value) => act({ type: 'condition', field: 'duty', value })} />
      <div className={styles.beside}>
        <Choice label={text.stop} options={STOPS} value={conditions.stop} nameOf={(stop) => text.stops[stop]} disabled={disabled}
          onChange={(value) => act({ type: 'condition', field: 'stop', value })} />
        <Choice label={text.warm} options={WARM} value={warm} nameOf={(word) => text.warmChoices[word]} disabled={disabled}
          onChange={(value) => act({ type: 'condition', field: 'warm', value: value === undefined ? undefined : value === 'yes' })} />
      </div>
      <MeasureFields fields={ON_THESE_PLUGS} />
    </section>
  );
}
