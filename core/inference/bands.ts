import type { Engine } from '../../shared/formats/engine.ts';
import type { CylinderCheck, PlugReading, ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import type { CylinderFindingName, PlugFindingName } from '../knowledge/findings.ts';

/**
 * Numbers become findings here. A band edge is soft: with the instrument's repeatability as one standard deviation,
 * each band gets the share of the measurement that may belong to it.
 */
export type Banded<F extends string> = {
  readonly finding: F;
  readonly field: string;
  readonly shown: string;
  readonly weights: Readonly<Record<string, number>>;
};
type Band = { readonly is: string; readonly upTo: number };

/** Normal distribution function, also at ±Infinity. Abramowitz and Stegun 7.1.26, absolute error below 1.5e-7. */
export function normalCdf(z: number): number {
  const t = 1 / (1 + (0.3275911 * Math.abs(z)) / Math.SQRT2);
  const tails = t * (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429)))) * Math.exp((-z * z) / 2);
  return 0.5 + (Math.sign(z) * (1 - tails)) / 2;
}

/**
 * Share of a measurement in each band.
 * @param sigma repeatability, in the unit of the value, above 0
 * @param bands by rising limit, the last one open; a band whose limit lies below the one before is empty
 */
export function shares(value: number, sigma: number, bands: readonly Band[]): Record<string, number> {
  let below = 0;
  return Object.fromEntries(
    bands.map(({ is, upTo }) => {
      const from = below;
      below = Math.max(from, normalCdf((upTo - value) / sigma));
      return [is, below - from];
    }),
  );
}

/** Least tightening torque of a clean dry plug, N·m, by diameter of the metric thread and seat. Source S36 (university extension table), M8 from memory. */
const LEAST_TORQUE: Readonly<Record<number, { readonly gasket: number; readonly conical: number }>> = {
  8: { gasket: 8, conical: 8 },
  10: { gasket: 9.5, conical: 9.5 },
  12: { gasket: 15, conical: 9.5 },
  14: { gasket: 20, conical: 9.5 },
  18: { gasket: 34, conical: 20 },
};

/** Repeatability of a wire gauge 0.02 mm and of the strap's setting, common practice. Renewal limits 0.2 and 0.4 mm over new: W1. */
function gapBand(plug: PlugReading, engine: Engine): Banded<PlugFindingName> | undefined {
  const gap = plug.measured?.gapMm;
  const asNew = plug.fitted?.gapNewMm ?? engine.fitment?.gapMm;
  if (gap === undefined || (asNew === undefined && gap > 0.25 && gap < 1.6)) return undefined;
  const bands =
    asNew === undefined
      ? [
          { is: 'closed', upTo: 0.15 },
          { is: 'narrow', upTo: 0.3 },
          { is: 'as set', upTo: 1.5 },
          { is: 'wide', upTo: 1.8 },
          { is: 'far too wide', upTo: Infinity },
        ]
      : [
          { is: 'closed', upTo: 0.15 },
          { is: 'narrow', upTo: asNew - 0.1 },
          { is: 'as set', upTo: asNew + 0.2 },
          { is: 'wide', upTo: asNew + 0.4 },
          { is: 'far too wide', upTo: Infinity },
        ];
  const against = asNew === undefined ? '' : ` (new ${asNew} mm)`;
  return { finding: 'gap', field: 'measured.gapMm', shown: `gap ${gap} mm${against}`, weights: shares(gap, 0.03, bands) };
}

/** Resistor plugs: 3 to 7.5 kΩ on the road, to 5 kΩ in aircraft (S58, S54); a plug without resistor reads near nothing. Scatter 5 %. */
function resistorBand(plug: PlugReading, engine: Engine): Banded<PlugFindingName> | undefined {
  const kOhm = plug.measured?.resistorKOhm;
  if (kOhm === undefined) return undefined;
  const least = plug.fitted?.resistor === true ? (engine.use === 'aircraft' ? 0.6 : 2) : 0;
  const most = engine.use === 'aircraft' ? 5 : 8;
  const bands = [
    { is: 'low', upTo: least },
    { is: 'in range', upTo: most },
    { is: 'high', upTo: 100 },
    { is: 'open', upTo: Infinity },
  ];
  return { finding: 'resistor', field: 'measured.resistorKOhm', shown: `resistor ${kOhm} kΩ`, weights: shares(kOhm, 0.05 * kOhm + 0.05, bands) };
}

/** 10 MΩ or more is good (W1); below about 1 MΩ a coil ignition is shunted (from memory). Judged on a log scale, a third of a decade of scatter. */
function insulationBand(plug: PlugReading): Banded<PlugFindingName> | undefined {
  const mOhm = plug.measured?.insulationMOhm;
  if (mOhm === undefined) return undefined;
  const bands = [
    { is: 'shunted', upTo: 0 },
    { is: 'low', upTo: 1 },
    { is: 'good', upTo: Infinity },
  ];
  return {
    finding: 'insulation',
    field: 'measured.insulationMOhm',
    shown: `insulation ${mOhm} MΩ`,
    weights: shares(Math.log10(Math.max(mOhm, 1e-3)), 0.15, bands),
  };
}

/** Loose: less than half of the least tightening torque for the thread, as `M14x1.25`; taken as M14 where none is noted. Common practice, no source. */
function torqueBand(plug: PlugReading, engine: Engine): Banded<PlugFindingName> | undefined {
  const torque = plug.measured?.removalTorqueNm;
  const metric = /^\s*M\s*(\d+)/i.exec(plug.fitted?.thread ?? engine.fitment?.thread ?? 'M14');
  const row = LEAST_TORQUE[Number(metric?.[1])];
  if (torque === undefined || row === undefined) return undefined;
  const least = row[plug.fitted?.seat ?? engine.fitment?.seat ?? 'gasket'];
  const bands = [
    { is: 'loose', upTo: least / 2 },
    { is: 'as fitted', upTo: Infinity },
  ];
  return {
    finding: 'removalTorque',
    field: 'measured.removalTorqueNm',
    shown: `removal torque ${torque} N·m`,
    weights: shares(torque, 0.1 * least, bands),
  };
}

export const plugBands = (plug: PlugReading, engine: Engine): Banded<PlugFindingName>[] =>
  [gapBand(plug, engine), resistorBand(plug, engine), insulationBand(plug), torqueBand(plug, engine)].filter((band) => band !== undefined);

/** Against the best cylinder: 90 % and more good, under 75 % low (S15, W19). Alone: under 690 kPa low (W4). Gauge 3 %. */
function compressionBand(check: CylinderCheck, all: readonly CylinderCheck[], engine: Engine): Banded<CylinderFindingName> | undefined {
  const kPa = check.compressionKPa;
  if (kPa === undefined) return undefined;
  const measured = all.flatMap((other) => other.compressionKPa ?? []);
  const shown = `compression ${kPa} kPa`;
  if (measured.length < 2) {
    const limit = engine.cycle === 'two-stroke' || (engine.compressionRatio ?? 8) < 7 ? 480 : 690;
    return {
      finding: 'compression',
      field: 'compressionKPa',
      shown,
      weights: shares(kPa, 0.03 * limit, [
        { is: 'low', upTo: limit },
        { is: 'watch', upTo: 1.15 * limit },
        { is: 'good', upTo: Infinity },
      ]),
    };
  }
  const best = Math.max(...measured, 1);
  const bands = [
    { is: 'low', upTo: 0.75 },
    { is: 'watch', upTo: 0.9 },
    { is: 'good', upTo: Infinity },
  ];
  return { finding: 'compression', field: 'compressionKPa', shown: `${shown}, best ${best} kPa`, weights: shares(kPa / best, 0.02, bands) };
}

/** A spoonful of oil lifts it by 69 kPa or more: rings (S15, S18). */
function wetBand(check: CylinderCheck): Banded<CylinderFindingName> | undefined {
  const { compressionKPa: dry, compressionWetKPa: wet } = check;
  if (dry === undefined || wet === undefined) return undefined;
  return {
    finding: 'compressionWet',
    field: 'compressionWetKPa',
    shown: `compression with oil ${wet} kPa, dry ${dry} kPa`,
    weights: shares(wet - dry, 20, [
      { is: 'unchanged', upTo: 69 },
      { is: 'rises', upTo: Infinity },
    ]),
  };
}

/**
 * Cars: under 10 % good, over 30 % fault (S58, W20).
 * Aircraft differential: 60 of 80 held, a loss of 25 %, is the limit where the maker says nothing else (S06).
 */
function leakBand(check: CylinderCheck): Banded<CylinderFindingName> | undefined {
  if (check.leakDownPercent !== undefined) {
    const bands = [
      { is: 'good', upTo: 10 },
      { is: 'fair', upTo: 20 },
      { is: 'worn', upTo: 30 },
      { is: 'fault', upTo: Infinity },
    ];
    return {
      finding: 'leakDown',
      field: 'leakDownPercent',
      shown: `leak-down ${check.leakDownPercent} %`,
      weights: shares(check.leakDownPercent, 2, bands),
    };
  }
  if (check.differential === undefined) return undefined;
  const { heldKPa, supplyKPa } = check.differential;
  const bands = [
    { is: 'good', upTo: 10 },
    { is: 'fair', upTo: 18 },
    { is: 'worn', upTo: 25 },
    { is: 'fault', upTo: Infinity },
  ];
  return {
    finding: 'leakDown',
    field: 'differential',
    shown: `differential ${heldKPa} kPa of ${supplyKPa} kPa held`,
    weights: shares(100 * (1 - heldKPa / supplyKPa), 1.5, bands),
  };
}

/** Against the median of the others, 40 K either way. Common practice, no source. */
function exhaustBand(check: CylinderCheck, all: readonly CylinderCheck[]): Banded<CylinderFindingName> | undefined {
  const others = all
    .filter((other) => other !== check)
    .flatMap((other) => other.egtC ?? [])
    .sort((a, b) => a - b);
  const middle = others[Math.floor(others.length / 2)];
  if (check.egtC === undefined || middle === undefined) return undefined;
  const bands = [
    { is: 'colder', upTo: -40 },
    { is: 'like the others', upTo: 40 },
    { is: 'hotter', upTo: Infinity },
  ];
  return {
    finding: 'exhaustTemperature',
    field: 'egtC',
    shown: `exhaust ${check.egtC} °C, the others ${middle} °C`,
    weights: shares(check.egtC - middle, 12, bands),
  };
}

export function cylinderBands(check: CylinderCheck, sheet: ReadingSheet): Banded<CylinderFindingName>[] {
  const { cylinderChecks: all = [] } = sheet;
  return [compressionBand(check, all, sheet.engine), wetBand(check), leakBand(check), exhaustBand(check, all)].filter((band) => band !== undefined);
}
