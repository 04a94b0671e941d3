import { fastest, heatEngine, lambdaReached, type Setting, type Slider } from '../../../core/heat/setting.ts';
import type { Engine } from '../../../shared/formats/engine.ts';
import { MODEL_FUELS } from '../../../shared/vocabulary/heat.ts';
import { useText } from '../../text/index.ts';
import { formatNumber } from '../../text/numbers.ts';
import { Button } from '../../ui/button.tsx';
import { SelectField } from '../../ui/select-field.tsx';
import { Slider as SliderField } from '../../ui/slider.tsx';
import { useQuantity } from '../../ui/use-quantity.ts';
import styles from './heat.module.css';
import { Assumptions } from './pieces.tsx';

type Reach = { readonly least: number; readonly most: number; readonly step: number };

const REACHES: Record<Exclude<Slider, 'rpm'>, Reach> = {
  load: { least: 0.3, most: 1, step: 0.01 }, lambda: { least: 0.7, most: 1.3, step: 0.01 }, advance: { least: 0, most: 45, step: 1 },
  boost: { least: 0, most: 150, step: 5 }, inlet: { least: -20, most: 80, step: 1 }, coolant: { least: 20, most: 200, step: 5 },
  altitude: { least: 0, most: 4000, step: 50 }, heatStep: { least: -2, most: 2, step: 1 }, gap: { least: 0.3, most: 1.5, step: 0.01 },
  coil: { least: 10, most: 45, step: 1 },
};
const ORDER: readonly Slider[] = ['load', 'rpm', 'lambda', 'advance', 'boost', 'inlet', 'coolant', 'altitude', 'heatStep', 'gap', 'coil'];

/** Each value as people read it. */
function useShown(): (slider: Slider, value: number) => string {
  const quantity = useQuantity();
  const { heat } = useText();
  return (slider, value) => {
    switch (slider) {
      case 'load': return quantity('share', Math.round(100 * value));
      case 'rpm': return quantity('speed', value);
      case 'lambda': return formatNumber(value);
      case 'advance': return quantity('angle', value);
      case 'boost': return quantity('pressure', value);
      case 'inlet': case 'coolant': return quantity('temperature', value);
      case 'altitude': return quantity('altitude', value);
      case 'heatStep': return heat.steps(value);
      case 'gap': return quantity('length', value);
      case 'coil': return quantity('voltage', value);
    }
  };
}

type Props = { readonly engine: Engine; readonly setting: Setting; readonly usual: Setting; readonly onChange: (setting: Setting) => void };

/** All that can be moved, each with how far to trust what it does. */
export function Sliders({ engine, setting, usual, onChange }: Props) {
  const { heat } = useText();
  const shown = useShown();
  const top = fastest(heatEngine(engine).engine);
  const reached = lambdaReached(engine, setting);
  return (
    <section className={styles.sliders} aria-label={heat.setting}>
      <div className={styles.line}><h2>{heat.setting}</h2><Button look="quiet" onClick={() => onChange(usual)}>{heat.reset}</Button></div>
      <p className={styles.soft}>{heat.settingHelp}</p>
      {ORDER.map((slider) => {
        const reach = slider === 'rpm' ? { least: 600, most: Math.max(top, setting.rpm), step: 50 } : REACHES[slider];
        return (
          <SliderField key={slider} label={heat.sliders[slider]} remark={heat.grades[slider]} value={setting[slider]} shown={shown(slider, setting[slider])}
            {...reach} onChange={(value) => onChange({ ...setting, [slider]: value })} />
        );
      })}
      <div className={styles.fuel}>
        <SelectField label={heat.fuel} options={MODEL_FUELS} value={setting.fuel} none={heat.fuel} nameOf={(fuel) => heat.fuelNames[fuel]}
          onChange={(fuel) => { if (fuel) onChange({ ...setting, fuel }); }} />
        <span className={styles.soft}>{heat.grades.fuel}</span>
      </div>
      {Math.abs(reached - setting.lambda) > 0.005 && <p className={styles.soft}>{heat.reached(formatNumber(reached))}</p>}
      <Assumptions engine={engine} />
    </section>
  );
}
