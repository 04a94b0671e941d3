import type { Engine } from '../../../shared/formats/engine.ts';
import { useText } from '../../text/index.ts';
import { formatNumber } from '../../text/numbers.ts';
import { Button } from '../../ui/button.tsx';
import { SelectField } from '../../ui/select-field.tsx';
import { Slider as SliderField } from '../../ui/slider.tsx';
import { useQuantity } from '../../ui/use-quantity.ts';
import styles from './heat.module.css';
import { fastest, FUEL_NAMES, heatEngine, lambdaReached, usualSetting, type Setting, type Slider } from './setting.ts';

type Reach = { readonly least: number; readonly most: number; readonly step: number };

const REACHES: Record<Exclude<Slider, 'rpm'>, Reach> = {
  load: { least: 0.35, most: 1, step: 0.01 }, lambda: { least: 0.7, most: 1.3, step: 0.01 }, advance: { least: 0, most: 45, step: 1 },
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
      case 'load': return quantity('share', 100 * value);
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

function Assumptions({ engine }: { engine: Engine }) {
  const { heat } = useText();
  const quantity = useQuantity();
  const { assumed, engine: { cylinder } } = heatEngine(engine);
  if (assumed.length === 0) return null;
  const value = { bore: quantity('length', cylinder.bore), stroke: quantity('length', cylinder.stroke), compressionRatio: formatNumber(cylinder.compressionRatio) };
  return <p className={styles.soft}>{heat.assumed(assumed.map((name) => heat.assumedNames[name](value[name])))}</p>;
}

type Props = { readonly engine: Engine; readonly setting: Setting; readonly onChange: (setting: Setting) => void };

/** All that can be moved, each with how far to trust what it does. */
export function Sliders({ engine, setting, onChange }: Props) {
  const { heat } = useText();
  const shown = useShown();
  const top = fastest(heatEngine(engine).engine);
  const reached = lambdaReached(engine, setting);
  return (
    <section className={styles.sliders}>
      <h2>{heat.setting}</h2>
      {ORDER.map((slider) => {
        const reach = slider === 'rpm' ? { least: 600, most: top, step: 50 } : REACHES[slider];
        return (
          <SliderField key={slider} label={heat.sliders[slider]} remark={heat.grades[slider]} value={setting[slider]} shown={shown(slider, setting[slider])}
            {...reach} onChange={(value) => onChange({ ...setting, [slider]: value })} />
        );
      })}
      <SelectField label={heat.fuel} options={FUEL_NAMES} value={setting.fuel} none={heat.fuel}
        onChange={(fuel) => { if (fuel) onChange({ ...setting, fuel }); }} />
      {Math.abs(reached - setting.lambda) > 0.005 && <p className={styles.soft}>{heat.reached(formatNumber(reached))}</p>}
      <Assumptions engine={engine} />
      <div><Button onClick={() => onChange(usualSetting(engine))}>{heat.reset}</Button></div>
    </section>
  );
}
