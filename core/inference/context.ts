import type { NextCheck } from '../../shared/formats/findings.v1.ts';
import type { SymptomTag } from '../../shared/vocabulary/conditions.ts';
import type { Verdict } from '../../shared/vocabulary/verdicts.ts';
import type { Cause, Check, Condition, Knowledge } from '../knowledge/types.ts';
import type { Conclusion, Judged } from './conclude.ts';
import type { Guarded } from './conclude-with.ts';
import type { CylinderEvidence } from './evidence.ts';
import { removalsFor, type Removals } from './explain.ts';
import { reportProbability } from './appearance.ts';
import { cylinderMark, cylinderRest } from './found.ts';
import { nextChecks, worldsOf, type World } from './next-check.ts';
import type { Solution } from './posterior.ts';
import type { Stop } from './stop-rules.ts';

/** What the findings of one reading are told from. */
export type Context = {
  readonly knowledge: Knowledge;
  readonly solution: Solution;
  readonly removals: Removals;
  readonly stops: readonly Stop[];
  readonly guard: Conclusion | undefined;
  readonly worlds: (cylinder: number) => readonly World[];
  /** Plugs at fault, or that cannot be judged though something speaks of them. Their causes are told with them. */
  readonly telling: readonly Judged[];
  /** Cylinders where something found or felt speaks of a fault, though no plug of theirs tells of it. */
  readonly untold: readonly number[];
  /** A stop rule fired, or the engine does not start. */
  readonly mustStand: boolean;
};

/** A cause less believed is not told. */
export const LEAST_CAUSE = 0.03;
export const MOST_CAUSES = 5;

/** Whether anything was found or felt on this very cylinder. */
const spokenOf = ({ seen, symptoms }: CylinderEvidence): boolean => seen.length + symptoms.length > 0;

function tellingPlugs({ solution: { evidence }, judged }: Conclusion): Judged[] {
  const spoken = new Set(evidence.cylinders.filter(spokenOf).map(({ cylinder }) => cylinder));
  return judged.filter(({ plug, judgement }) =>
    plug.reading !== undefined && judgement.verdict !== 'normal' && (plug.seen.length > 0 || spoken.has(plug.place.cylinder)));
}

/** Whether something found or felt on the cylinder is likelier with this cause than with nothing wrong. */
const speaksFor = ({ seen, symptoms }: CylinderEvidence, cause: Cause): boolean =>
  cause.gives.some(({ symptom }) => symptoms.includes(symptom)) ||
  seen.some((one) => { const rest = cylinderRest(one); return reportProbability(rest, [cylinderMark(cause, one)]) > rest; });

function untoldCylinders({ evidence, network, belief }: Solution, told: ReadonlySet<number>): number[] {
  const atFault = (c: CylinderEvidence): boolean =>
    (network.local.get(c.cylinder) ?? []).some((one) => !one.cause.harmless && belief(one) >= LEAST_CAUSE && speaksFor(c, one.cause));
  return evidence.cylinders.filter((c) => !told.has(c.cylinder) && atFault(c)).map(({ cylinder }) => cylinder);
}

export function contextOf(guarded: Guarded, knowledge: Knowledge): Context {
  const { solution, stops, guard } = guarded;
  const telling = tellingPlugs(guarded);
  const told = new Set(telling.map(({ plug }) => plug.place.cylinder));
  const untold = untoldCylinders(solution, told);
  return {
    knowledge,
    solution,
    stops,
    guard,
    removals: removalsFor(solution, [...told, ...untold]),
    worlds: (cylinder) => worldsOf(solution, cylinder),
    telling,
    untold,
    mustStand: stops.length > 0 || solution.evidence.present.includes('no start'),
  };
}

/** Whether a cause can have made a plug so judged; of a plug that could not be judged, any cause but a harmless one. */
export function makersOf(verdicts: readonly Verdict[], { conditions }: Knowledge): (cause: Cause) => boolean {
  return making(conditions.filter((c) => verdicts.includes(c.verdict)), verdicts.includes('undetermined'));
}

/** Whether a cause can give one of these symptoms, by itself or by what it does to a plug. */
export function giversOf(symptoms: readonly SymptomTag[], { conditions }: Knowledge): (cause: Cause) => boolean {
  const gives = (one: Pick<Condition, 'gives'>): boolean => one.gives.some(({ symptom }) => symptoms.includes(symptom));
  const byPlug = making(conditions.filter(gives));
  return (cause) => !cause.harmless && (gives(cause) || byPlug(cause));
}

function making(conditions: readonly Condition[], any = false): (cause: Cause) => boolean {
  const made = new Set(conditions.map(({ id }) => id));
  return (cause) => !cause.harmless && (any || cause.makes.some((link) => made.has(link.condition)));
}

/** What is to be decided about: which causes can have made it, and the worlds of one cylinder or of the engine. */
export type Matter = { readonly answers: (cause: Cause) => boolean; readonly cylinder: number; readonly worlds: readonly World[] };

/** @param checks those to choose from; those on the running engine are left out where it must stand or will not start */
export function checksOn({ answers, cylinder, worlds }: Matter, scope: Check['scope'], context: Context, checks = context.knowledge.checks): NextCheck[] {
  const { mustStand, solution: { evidence } } = context;
  return nextChecks({ checks: checks.filter(({ running }) => !(mustStand && running)), worlds, answers, cylinder, evidence, scope });
}

/** Checks on what made the plug so; when nothing more can be told about that, on its second judgements too. */
export function plugChecks({ plug, judgement }: Judged, scope: Check['scope'], context: Context): NextCheck[] {
  const { cylinder } = plug.place;
  const about = (verdicts: readonly Verdict[]): NextCheck[] =>
    checksOn({ answers: makersOf(verdicts, context.knowledge), cylinder, worlds: context.worlds(cylinder) }, scope, context);
  const first = about([judgement.verdict]);
  return first.length > 0 || judgement.also.length === 0 ? first : about([judgement.verdict, ...judgement.also]);
}
