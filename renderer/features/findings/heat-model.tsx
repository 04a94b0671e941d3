import type { Findings } from '../../../shared/formats/findings.v1.ts';
import { useText } from '../../text/index.ts';
import { useQuantity } from '../../ui/use-quantity.ts';
import styles from './heat-step.module.css';

type Model = NonNullable<Findings['heat']['model']>;

function ModelTable({ model: { tips, tipsStep } }: { model: Model }) {
  const text = useText().findings.heatModel;
  const quantity = useQuantity();
  const full = tips.find(({ step, at }) => step === 0 && at === 'full load');
  const isOther = ({ lowC, highC }: Model['tips'][number]): boolean => lowC !== full?.lowC || highC !== full.highC;
  const shown = tips.filter((tip) => (tip.at === 'full load' ? tip.step === 0 || tipsStep === 0 || tip.step === tipsStep : tip.step === 0 && isOther(tip)));
  return (
    <table className={styles.model} aria-label={text.model}>
      <thead><tr><td /><th scope="col">{text.heads.plug}</th><th scope="col">{text.heads.cold}</th><th scope="col">{text.heads.hot}</th></tr></thead>
      <tbody>
        {shown.map(({ step, at, lowC, highC, tooCold, tooHot }) => (
          <tr key={`${step} ${at}`}>
            <th scope="row">{text.row(text.plugs[step], text.at[at])}</th>
            <td>{text.range(quantity('temperature', lowC), quantity('temperature', highC))}</td><td>{text.chance(tooCold)}</td><td>{text.chance(tooHot)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** The two parts of the advice side by side: what the tips ask for, what the thermal model computes, and whether they agree. */
export function HeatModel({ model }: { model: Model }) {
  const text = useText().findings.heatModel;
  const { missing, assumed, tips } = model;
  return (
    <>
      <div className={styles.part}><h3>{text.tips}</h3><p>{text.tipsStep(model.tipsStep)}</p></div>
      <div className={styles.part}>
        <h3>{text.model}</h3>
        {missing.length > 0 ? <p>{text.missing(missing)}</p> : <p>{text.says[model.says]} {tips.length > 0 && model.says !== 'overridden' && <strong>{text.standing(model)}</strong>}</p>}
        {tips.length > 0 && <ModelTable model={model} />}
        {assumed.length > 0 && <p className={styles.soft}>{text.assumed(assumed)}</p>}
        {tips.length > 0 && <p className={styles.soft}>{text.caution}</p>}
      </div>
    </>
  );
}
