import { fitment } from '../../../shared/formats/engine.ts';
import { PROJECTIONS, RESISTOR_RULES, SEATS } from '../../../shared/vocabulary/engine.ts';
import { useText } from '../../text/index.ts';
import { DraftChoice, DraftNumber, DraftText } from './draft-fields.tsx';
import { useEditing } from './editing.ts';
import styles from './engine-editor.module.css';

/** The plug that the engine's maker asks for. */
export function FitmentPart() {
  const { edit, kinds } = useText().engines;
  const { problemAt } = useEditing();
  const { reachMm, hexMm, gapMm } = fitment.shape;
  const heatProblem = problemAt('fitment.heat');
  return (
    <div className={styles.part}>
      <div className={styles.grid}>
        <DraftText path="fitment.thread" label={edit.thread} hint={edit.threadHint} limit={30} />
        <DraftNumber path="fitment.reachMm" label={edit.reach} quantity="length" schema={reachMm} />
        <DraftNumber path="fitment.hexMm" label={edit.hex} quantity="length" schema={hexMm} />
        <DraftNumber path="fitment.gapMm" label={edit.gap} quantity="length" schema={gapMm} />
        <DraftText path="fitment.heat.scale" label={edit.heatScale} hint={edit.heatScaleHint} limit={60} />
        <DraftText path="fitment.heat.value" label={edit.heatValue} limit={20} />
      </div>
      {heatProblem !== undefined && <p className={styles.problem} data-problem="">{edit.heatBoth}</p>}
      <div className={styles.choices}>
        <DraftChoice path="fitment.seat" label={edit.seat} options={SEATS} nameOf={(kind) => kinds[kind]} />
        <DraftChoice path="fitment.resistor" label={edit.resistor} options={RESISTOR_RULES} nameOf={(kind) => kinds[kind]} />
        <DraftChoice path="fitment.projection" label={edit.projection} options={PROJECTIONS} nameOf={(kind) => kinds[kind]} />
      </div>
    </div>
  );
}
