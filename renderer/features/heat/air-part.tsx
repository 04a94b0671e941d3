import { useState } from 'react';
import { airDensity, airPressure, airTemperature, densityAltitude, standardDensity } from '../../../core/mixture/atmosphere.ts';
import { jetDiameterFactor, lambdaOnOtherAir, lambdaOnOtherFuel } from '../../../core/mixture/carburettor.ts';
import { ethanolBlend, FUELS, stoichiometricRatio } from '../../../core/mixture/fuels.ts';
import { celsiusToKelvin, kelvinToCelsius } from '../../../core/units.ts';
import type { Celsius, Kelvin, Metre } from '../../../shared/quantities.ts';
import { MODEL_FUELS, type ModelFuel } from '../../../shared/vocabulary/heat.ts';
import { useText } from '../../text/index.ts';
import { formatNumber } from '../../text/numbers.ts';
import { SelectField } from '../../ui/select-field.tsx';
import { Slider } from '../../ui/slider.tsx';
import { useQuantity } from '../../ui/use-quantity.ts';
import type { HeatBench } from './bench.ts';
import styles from './heat.module.css';
import { Rows } from './pieces.tsx';

type Air = {
  readonly altitude: number; readonly warmer: number; readonly lambda: number; readonly was: ModelFuel; readonly is: ModelFuel; readonly ethanol: number;
};

/** Air at a height, `warmer` K than the standard one. */
function airOf({ altitude, warmer }: Air) {
  const pressure = airPressure(altitude as Metre);
  const kelvin = airTemperature(altitude as Metre) + warmer;
  return { pressure, kelvin, ratio: airDensity(pressure, kelvin) / standardDensity(0 as Metre), standard: airTemperature(altitude as Metre) };
}

function AirRows({ air }: { air: Air }) {
  const { heat: { air: words } } = useText();
  const quantity = useQuantity();
  const { pressure, kelvin, ratio, standard } = airOf(air);
  const onAir = lambdaOnOtherAir(air.lambda, ratio);
  const onBoth = lambdaOnOtherFuel(onAir, FUELS[air.was], FUELS[air.is]);
  return (
    <>
      <Rows label={words.title} rows={[
        [words.rows.pressure, quantity('pressure', pressure / 1000)], [words.rows.standard, quantity('temperature', kelvinToCelsius(standard as Kelvin))],
        [words.rows.density, words.times(formatNumber(ratio, 3))], [words.rows.densityAltitude, quantity('altitude', densityAltitude(pressure, kelvin))],
        [words.rows.lambda, formatNumber(onAir)], ...(air.was === air.is ? [] : [[words.rows.both, formatNumber(onBoth)] as const]),
        [words.rows.jet, words.times(formatNumber(jetDiameterFactor(ratio), 3))],
      ]} />
      {onBoth > air.lambda + 0.01 && <p><strong>{words.leaner}</strong></p>}
    </>
  );
}

function FuelRows({ ethanol }: { ethanol: number }) {
  const { heat: { air: words, fuelNames } } = useText();
  const blend = ethanolBlend(ethanol / 100);
  const ratio = (value: number): string => words.ratio(formatNumber(value, 1));
  return (
    <Rows label={words.fuels} rows={[
      ...(blend.ok ? [[words.rows.blendRatio, ratio(stoichiometricRatio(blend.value))] as const] : []),
      ...MODEL_FUELS.map((name) => [fuelNames[name], ratio(stoichiometricRatio(FUELS[name]))] as const),
    ]} />
  );
}

/** What height, weather and fuel do to the mixture of a plain carburettor. */
export function AirPart({ engine, setting }: HeatBench) {
  const { heat: { air: words, fuelNames } } = useText();
  const quantity = useQuantity();
  const first = engine.use === 'aircraft' ? 'avgas' : 'petrol';
  const [air, setAir] = useState<Air>(() => ({
    altitude: Math.max(0, setting.altitude), warmer: 0, lambda: Number(setting.lambda.toFixed(2)), was: first, is: setting.fuel, ethanol: 10,
  }));
  const change = (more: Partial<Air>): void => setAir({ ...air, ...more });
  const celsius = kelvinToCelsius(airOf(air).kelvin as Kelvin);
  const fuel = (label: string, value: ModelFuel, onChange: (next: ModelFuel) => void) => (
    <SelectField label={label} options={MODEL_FUELS} value={value} none={label} nameOf={(name) => fuelNames[name]}
      onChange={(next) => { if (next) onChange(next); }} />
  );
  return (
    <>
      <section className={styles.verdict}><h2>{words.title}</h2><p className={styles.lead}>{words.about} {words.rule}</p></section>
      <div className={styles.tried}>
        <section className={styles.sliders} aria-label={words.title}>
          <Slider label={words.altitude} remark={words.grades.altitude} value={air.altitude} shown={quantity('altitude', air.altitude)}
            least={0} most={5000} step={50} onChange={(altitude) => change({ altitude })} />
          <Slider label={words.temperature} remark={words.grades.temperature} value={Math.round(celsius)} shown={quantity('temperature', Math.round(celsius))}
            least={-30} most={45} step={1} onChange={(next) => change({ warmer: celsiusToKelvin(next as Celsius) - airTemperature(air.altitude as Metre) })} />
          <Slider label={words.set} remark={words.grades.set} value={air.lambda} shown={formatNumber(air.lambda)} least={0.7} most={1.2} step={0.01}
            onChange={(lambda) => change({ lambda })} />
          {fuel(words.was, air.was, (was) => change({ was }))}
          {fuel(words.fuel, air.is, (is) => change({ is }))}
          <Slider label={words.blend} remark={words.grades.blend} value={air.ethanol} shown={quantity('share', air.ethanol)} least={0} most={100} step={1}
            onChange={(ethanol) => change({ ethanol })} />
        </section>
        <div className={styles.answers}>
          <AirRows air={air} />
          <h3>{words.fuels}</h3>
          <FuelRows ethanol={air.ethanol} />
          <p className={styles.soft}>{words.law}</p>
        </div>
      </div>
    </>
  );
}
