import type { Measured, Tip } from '../../shared/formats/reading-sheet.v1.ts';
import { TIP_FACETS, type FacetName } from '../../shared/vocabulary/tip.ts';
import type { Verdict } from '../../shared/vocabulary/verdicts.ts';
import { PLUG_FINDING_WORDS } from '../domain/words.ts';

/** What can be compared of one plug at two readings. */
export type Looked = { readonly tip?: Tip | undefined; readonly measured?: Measured | undefined };
/** Signs of the same fault that grew milder, or graver, each as `coverage full, now light`. */
export type Degree = { readonly milder: readonly string[]; readonly graver: readonly string[] };

/** Values from mild to grave, where the vocabulary's own order is not one of degree. Values left out are not compared. Common practice, no source. */
const GRADES = {
  coverage: ['none', 'light', 'partial', 'full'],
  sootRing: TIP_FACETS.sootRing,
  shellRim: ['bare metal', 'light grey', 'even soot', 'heavy soot'],
  bridge: TIP_FACETS.bridge,
  centreElectrode: ['sharp', 'lightly worn', 'rounded', 'eroded', 'melted', 'missing'],
  groundElectrode: ['as new', 'lightly worn', 'worn thin', 'melted', 'broken off'],
  noseDamage: TIP_FACETS.noseDamage,
  specks: ['none', 'dark pepper', 'grey metallic'],
} as const satisfies { readonly [F in FacetName]?: readonly string[] };

type Graded = keyof typeof GRADES;
const DEPOSIT: readonly Graded[] = ['coverage', 'sootRing', 'shellRim', 'bridge'];
const METAL: readonly Graded[] = ['centreElectrode', 'groundElectrode', 'noseDamage', 'specks'];

/** What the degree of a fault is seen by: deposits by their spread, wear and heat by what they did to metal and nose. */
const FOULED: readonly Verdict[] = [
  'too cold', 'dry carbon fouling', 'oil fouling', 'fuel wet', 'lead fouling', 'ash deposits', 'glazing', 'additive deposits', 'bridged', 'not firing',
];
const WORN: readonly Verdict[] = ['too hot', 'detonation damage', 'pre-ignition damage', 'worn', 'mechanical damage', 'insulator damage', 'reversed polarity'];

/** Least difference that is more than the gauge: 0.05 mm of gap, a factor of 3 of insulation. Common practice, no source. */
const GAP_STEP_MM = 0.05;
const INSULATION_STEP = Math.log(3);

/** Which way a pair of values went: above 0 graver, below 0 milder. */
type Step = { readonly words: string; readonly way: number };

function facetStep(facet: Graded, before: Looked, now: Looked): Step[] {
  const grades: readonly string[] = GRADES[facet];
  const [was, is] = [before.tip?.[facet], now.tip?.[facet]];
  if (was === undefined || is === undefined || !grades.includes(was) || !grades.includes(is)) return [];
  return [{ words: `${PLUG_FINDING_WORDS[facet]} ${was}, now ${is}`, way: grades.indexOf(is) - grades.indexOf(was) }];
}

function gapStep({ measured: was }: Looked, { measured: is }: Looked): Step[] {
  if (was?.gapMm === undefined || is?.gapMm === undefined) return [];
  const change = is.gapMm - was.gapMm;
  return [{ words: `gap ${was.gapMm} mm, now ${is.gapMm} mm`, way: Math.abs(change) < GAP_STEP_MM ? 0 : change }];
}

function insulationStep({ measured: was }: Looked, { measured: is }: Looked): Step[] {
  if (was?.insulationMOhm === undefined || is?.insulationMOhm === undefined) return [];
  const change = Math.log((was.insulationMOhm + 0.01) / (is.insulationMOhm + 0.01));
  return [{ words: `insulation ${was.insulationMOhm} MΩ, now ${is.insulationMOhm} MΩ`, way: Math.abs(change) < INSULATION_STEP ? 0 : change }];
}

/** How the signs of these faults moved between two readings of one plug. Signs that were not looked at both times are left out. */
export function degreeOf(faults: readonly Verdict[], before: Looked, now: Looked): Degree {
  const [fouled, worn] = [FOULED, WORN].map((group) => faults.some((fault) => group.includes(fault)));
  const steps = [
    ...(fouled ? [...DEPOSIT.flatMap((facet) => facetStep(facet, before, now)), ...insulationStep(before, now)] : []),
    ...(worn ? [...METAL.flatMap((facet) => facetStep(facet, before, now)), ...gapStep(before, now)] : []),
  ];
  return { milder: steps.filter(({ way }) => way < 0).map(({ words }) => words), graver: steps.filter(({ way }) => way > 0).map(({ words }) => words) };
}
