import type { Findings } from '../../shared/formats/findings.v1.ts';
import type { ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import type { Verdict } from '../../shared/vocabulary/verdicts.ts';
import { inSentence, placesWords } from '../domain/words.ts';
import type { Bar } from '../knowledge/types.ts';
import { modelAdvice, type ModelPart } from './model-advice.ts';

/** What the advice needs to know of one plug. */
export type PlugHeat = {
  readonly where: string;
  readonly verdict: Verdict;
  readonly beliefs: ReadonlyMap<Verdict, number>;
  readonly thermal: { readonly tooCold: number; readonly tooHot: number };
  readonly read: boolean;
};

/** Belief in causes by what they ask for, each between 0 and 1. */
export type HeatGrounds = {
  readonly sheet: ReadingSheet;
  readonly plugs: readonly PlugHeat[];
  readonly stopped: boolean;
  /** Bars set by something on the sheet. */
  readonly bars: readonly Bar[];
  /** Belief that the plug's own heat value is too low, or too high, for the work. */
  readonly plugTooCold: number;
  readonly plugTooHot: number;
  /** The strongest belief in any oil, detonation, pre-ignition or mechanical cause. */
  readonly barring: { readonly name: string; readonly belief: number } | undefined;
  /** Names of other causes that must be put right first, strongest first. */
  readonly rivals: readonly string[];
};

/** Any of these at this belief is a sign, and no sign lets a hotter plug through. */
const SIGN = 0.1;
const BARRED: readonly Verdict[] = [
  'oil fouling',
  'detonation damage',
  'pre-ignition damage',
  'mechanical damage',
  'insulator damage',
  'coolant entry',
  'too hot',
  'not sealing',
  'wrong reach',
];
/** A step needs the plug itself to be the likeliest cause. */
const LEAST_BELIEF = 0.5;

const ALWAYS_FIRST: readonly string[] = [
  'Plug of the specified type, reach and seat in every hole',
  'Every plug tightened to the engine maker’s torque on a sound seat',
  'Mixture, choke and air cleaner in order',
  'Ignition timing as specified, spark strong on every cylinder',
  'Cooling in order',
];

const HEAT_CAUTIONS: readonly string[] = [
  'The engine maker’s data come first: a plug hotter or colder than specified can destroy an engine.',
  'Never more than one step a trial; read again under the same running before the next.',
];

const AIRCRAFT_CAUTION = 'Aircraft: only plugs of the approved list, fitted by or under a licensed person; no step by this program’s advice.';

type Advice = Findings['heat'];
const WORDS = { '-1': 'one step colder', 0: 'stay', 1: 'one step hotter' } as const;

/** Why a hotter plug is out of the question, in words; empty when nothing bars it. Source: product rule, and each bar's own. */
function barsOnHotter({ plugs, stopped, barring, bars }: HeatGrounds): string[] {
  const signs = BARRED.flatMap((verdict) => {
    const where = plugs.filter((p) => p.read && (p.beliefs.get(verdict) ?? 0) >= SIGN).map((p) => p.where);
    return where.length === 0 ? [] : [`A sign of ${verdict} on ${placesWords(where)} bars a hotter plug.`];
  });
  return [
    ...(stopped ? ['A stop rule fired: no step until its cause is found.'] : []),
    ...bars.filter(({ sign }, i) => bars.findIndex((other) => other.sign === sign) === i).map(({ sign, because }) => `Noted: ${sign}. ${because}`),
    ...signs,
    ...(barring !== undefined && barring.belief >= SIGN
      ? [`A possible cause is ${inSentence(barring.name)}; a hotter plug would hide it or make it worse.`]
      : []),
  ];
}

/** Steps already taken from the specified heat value in the given direction. */
function alreadyStepped(sheet: ReadingSheet, direction: 1 | -1): boolean {
  return sheet.plugs.some((plug) => Math.sign(plug.fitted?.heatStepsFromSpecified ?? 0) === direction);
}

function hotter(grounds: HeatGrounds): Advice | undefined {
  const { plugs, plugTooCold, plugTooHot, sheet, rivals } = grounds;
  const read = plugs.filter((p) => p.read);
  const wholeSet = read.length > 1 && read.length === plugs.length && read.every((p) => (p.beliefs.get('dry carbon fouling') ?? 0) >= LEAST_BELIEF);
  if (!wholeSet || plugTooCold < LEAST_BELIEF || plugTooHot > SIGN || alreadyStepped(sheet, 1) || barsOnHotter(grounds).length > 0) return undefined;
  return {
    step: 1,
    when: 'after what comes first',
    words: WORDS[1],
    belief: plugTooCold,
    why: ['The whole set is sooty and nothing points to oil, heat or damage; the plug is the likeliest cause.'],
    first: [...ALWAYS_FIRST, ...rivals.map((name) => `Rule out: ${inSentence(name)}`)],
    cautions: [...HEAT_CAUTIONS, 'At the next reading look for a light tan nose with a thin soot ring; a white or specked nose means go back.'],
  };
}

function colder(grounds: HeatGrounds): Advice | undefined {
  const { plugs, plugTooHot, sheet, rivals } = grounds;
  const hot = plugs.filter((p) => p.read && p.verdict === 'too hot');
  if (hot.length === 0 || plugTooHot < LEAST_BELIEF || sheet.engine.use === 'aircraft' || alreadyStepped(sheet, -1)) return undefined;
  return {
    step: -1,
    when: 'after what comes first',
    words: WORDS['-1'],
    belief: plugTooHot,
    why: [`Overheated tips on ${placesWords(hot.map((p) => p.where))}; the plug’s heat value is the likeliest cause.`],
    first: [...ALWAYS_FIRST, ...rivals.map((name) => `Rule out: ${inSentence(name)}`)],
    cautions: [...HEAT_CAUTIONS, 'A colder plug does not cure knock, a weak mixture or bad cooling; it only takes one hot spot away.'],
  };
}

function stayReasons(grounds: HeatGrounds): string[] {
  const { plugs, plugTooCold, plugTooHot } = grounds;
  const read = plugs.filter((p) => p.read);
  if (read.length === 0) return ['No tip was read; nothing speaks for a step.'];
  const bars = barsOnHotter(grounds);
  const cold = read.some((p) => p.thermal.tooCold > SIGN || p.verdict === 'dry carbon fouling');
  const hot = read.some((p) => p.thermal.tooHot > SIGN);
  if (read.every((p) => p.verdict === 'normal')) return ['The tips look normal: the heat value fits this use.'];
  return [
    ...(cold
      ? [`The heat value is not the likeliest cause of the soot (belief ${Math.round(100 * plugTooCold)} %); mixture, use and ignition come first.`]
      : []),
    ...(hot
      ? [`The heat value is not the likeliest cause of the heat (belief ${Math.round(100 * plugTooHot)} %); cure what overheats the plug first.`]
      : []),
    ...bars,
    ...(!cold && !hot && bars.length === 0 ? ['What was found is not cured by a change of heat value.'] : []),
  ];
}

/** What the tips ask for, every guard kept. */
function tipsAdvice(grounds: HeatGrounds): Advice {
  const { plugTooCold, plugTooHot, sheet } = grounds;
  const advice = colder(grounds) ?? hotter(grounds);
  if (advice !== undefined) return advice;
  return {
    step: 0,
    when: 'now',
    words: WORDS[0],
    belief: Math.max(0, 1 - Math.max(plugTooCold, plugTooHot)),
    why: stayReasons(grounds),
    first: [],
    cautions: [...HEAT_CAUTIONS, ...(sheet.engine.use === 'aircraft' ? [AIRCRAFT_CAUTION] : [])],
  };
}

/** A tip looks like something that the thermal model knows nothing of. */
const knowsNothing = ({ stopped, plugs }: HeatGrounds): boolean =>
  stopped || plugs.some(({ read, verdict }) => read && verdict !== 'too hot' && BARRED.includes(verdict));

/** Tips and model disagree: stay. The model can take a step back, it never adds one, so no guard is weakened by it. */
const stayed = (advice: Advice, model: ModelPart): Advice => ({
  ...advice,
  step: 0,
  when: 'now',
  words: WORDS[0],
  belief: 1 - advice.belief,
  why: [...model.words.slice(0, 1), ...advice.why],
  first: [],
});

/**
 * One step at most, and only when the plug itself is the likeliest cause. Hotter needs a whole sooty set with no sign of oil, detonation, pre-ignition,
 * heat or damage, and is never advised for an aircraft or twice; where the evidence does not decide, or the thermal model speaks against the tips, the
 * answer is stay.
 */
export function heatAdvice(grounds: HeatGrounds): Advice {
  const advice = tipsAdvice(grounds);
  const model = modelAdvice(grounds.sheet, advice.step, knowsNothing(grounds));
  return { ...(advice.step !== 0 && model.standing === 'disagrees' ? stayed(advice, model) : advice), model };
}
