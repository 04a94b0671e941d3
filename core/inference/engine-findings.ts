import type { CauseFinding, Findings, NextCheck, PlugFindings } from '../../shared/formats/findings.v1.ts';
import type { SymptomTag } from '../../shared/vocabulary/conditions.ts';
import type { Cause, Check } from '../knowledge/types.ts';
import type { Judged } from './conclude.ts';
import { checksOn, giversOf, LEAST_CAUSE, makersOf, MOST_CAUSES, plugChecks, type Context, type Matter } from './context.ts';
import { engineDoubts } from './doubts.ts';
import { engineWorlds } from './engine-worlds.ts';
import { explainCause } from './explain.ts';
import type { Instance } from './network.ts';
import { MOST_CHECKS, possible, worth, type World } from './next-check.ts';
import type { Solution } from './posterior.ts';
import { besideText, patternText } from './summary.ts';

const isEngineWide = ({ cause }: Instance): boolean => cause.scope === 'engine';

/** A cause told of the engine: with whose explanation, and how far believed. */
type Told = { readonly id: string; readonly belief: number; readonly explained: () => CauseFinding };

function alone(instance: Instance, { solution, removals, knowledge }: Context): Told {
  return { id: instance.id, belief: solution.belief(instance), explained: () => explainCause(instance, solution, removals, knowledge) };
}

/**
 * A cause that may sit in any of several cylinders, told once. Its belief is that it is behind the complaint, in the worlds of the engine: that it is
 * somewhere at all is likelier the more cylinders there are. What speaks for it speaks for its being in any of them.
 */
function anywhere([first, ...more]: readonly [Instance, ...Instance[]], worlds: readonly World[], context: Context): Told {
  if (more.length === 0) return alone(first, context);
  const { solution, removals, knowledge } = context;
  const { cause } = first;
  const members = [first, ...more];
  const belief = worlds.filter(({ causes }) => causes.some((one) => members.includes(one))).reduce((sum, { probability }) => sum + probability, 0);
  const any = (of: Solution['belief']): Solution['belief'] => () => 1 - members.reduce((p, one) => p * (1 - of(one)), 1);
  const removed = removals.removed.map(({ piece, without }) => ({ piece, without: any(without) }));
  const cylinders = [...new Set(members.flatMap((one) => one.cylinders))].sort((a, b) => a - b);
  const whole = { ...first, id: cause.id, group: '', cylinders, plugs: members.flatMap(({ plugs }) => plugs) };
  const taken = { with: any(removals.with), removed };
  return { id: cause.id, belief, explained: () => ({ ...explainCause(whole, { ...solution, belief: any(solution.belief) }, taken, knowledge), belief }) };
}

/** Causes of single cylinders that no plug tells of: where something was found on the cylinder, and where they may be behind the complaint. */
function localCauses({ answers, worlds }: Matter, context: Context): Told[] {
  const { telling, untold, solution: { network } } = context;
  const spokenFor = new Set([...untold, ...telling.map(({ plug }) => plug.place.cylinder)]);
  const own = (cylinder: number): readonly Instance[] => (network.local.get(cylinder) ?? []).filter((one) => !one.cause.harmless && !isEngineWide(one));
  const byCause = new Map<Cause, [Instance, ...Instance[]]>();
  for (const one of [...network.local.keys()].filter((n) => !spokenFor.has(n)).flatMap(own).filter(({ cause }) => answers(cause)))
    byCause.set(one.cause, [...(byCause.get(one.cause) ?? []), one] as [Instance, ...Instance[]]);
  return [...untold.flatMap(own).map((one) => alone(one, context)), ...[...byCause.values()].map((members) => anywhere(members, worlds, context))];
}

function engineCauses(complaint: Matter, context: Context): CauseFinding[] {
  const { network, evidence } = context.solution;
  const wide = evidence.cylinders.length === 1 ? [...network.local.values()].flat().filter(isEngineWide) : network.shared;
  return [...wide.map((instance) => alone(instance, context)), ...localCauses(complaint, context)]
    .filter(({ belief }) => belief >= LEAST_CAUSE)
    .sort((a, b) => b.belief - a.belief || (a.id < b.id ? -1 : 1))
    .slice(0, MOST_CAUSES)
    .map(({ explained }) => explained());
}

/** The plug that leaves the most open: engine-wide checks are judged on its cylinder. */
const mostOpen = (telling: readonly Judged[]): Judged | undefined =>
  telling.filter(({ plug }) => plug.seen.length > 0).sort((a, b) => a.judgement.belief - b.judgement.belief)[0];

/** What is felt of the engine, where no plug is at fault for it. */
const feltOf = ({ telling, solution }: Context): readonly SymptomTag[] => (telling.length === 0 ? solution.evidence.present : []);

/** What to do about what is felt of the engine, wherever in it the fault may be. Where nothing is felt nothing answers. */
export function complaintMatter(context: Context): Matter {
  const { solution, worlds, knowledge } = context;
  const felt = feltOf(context);
  const numbers = solution.evidence.cylinders.map(({ cylinder }) => cylinder);
  const answers = giversOf(felt, knowledge);
  return { answers, cylinder: numbers[0] as number, worlds: felt.length === 0 ? [] : engineWorlds(numbers.map(worlds), answers) };
}

/** A part can be exchanged only where it is known which cylinder is at fault. */
const isTrial = ({ tells }: Check): boolean => 'finding' in tells && /^(swap|known-good) /.test(tells.finding);

/** Checks on the engine once, and those of a cylinder made on every one: the odd one out decides. */
function complaintChecks(matter: Matter, context: Context): NextCheck[] {
  const { solution: { evidence: { cylinders } }, knowledge } = context;
  const measuring = knowledge.checks.filter((check) => !isTrial(check));
  const everywhere = checksOn(matter, 'cylinder', context, measuring).map(({ cylinder: _, ...check }) => ({
    ...check, effortMinutes: check.effortMinutes * cylinders.length, why: `On every cylinder. ${check.why}`,
  }));
  return [...checksOn(matter, 'engine', context), ...(cylinders.length === 1 ? checksOn(matter, 'cylinder', context, measuring) : everywhere)];
}

/** Checks on what the plugs leave open, the most telling a minute first, each once. */
function engineChecks(complaint: Matter, context: Context): NextCheck[] {
  const { telling, untold, knowledge, worlds } = context;
  const open = mostOpen(telling);
  const found = untold.map((cylinder): Matter => ({ answers: makersOf(['undetermined'], knowledge), cylinder, worlds: worlds(cylinder) }));
  const all = [
    ...(open === undefined ? [] : plugChecks(open, 'engine', context)),
    ...(complaint.worlds.length === 0 ? [] : complaintChecks(complaint, context)),
    ...found.flatMap((matter) => [...checksOn(matter, 'engine', context), ...checksOn(matter, 'cylinder', context)]),
  ].sort((a, b) => worth(b) - worth(a) || (a.id < b.id ? -1 : 1));
  return all.filter(({ id }, i) => all.findIndex((other) => other.id === id) === i).slice(0, MOST_CHECKS);
}

/** A check that a cause sends to. */
export type Look = { readonly check: Check; readonly cause: Cause };

/** The first check that each of the likeliest causes of the complaint sends to, where it can be made and was not; for where no check decides anything. */
export function firstLooks({ answers, worlds }: Matter, { knowledge, solution: { evidence }, mustStand }: Context): Look[] {
  const shares = new Map<Cause, number>();
  for (const { causes, probability } of worlds)
    for (const cause of new Set(causes.map((one) => one.cause).filter(answers))) shares.set(cause, (shares.get(cause) ?? 0) + probability);
  const seen = evidence.cylinders.flatMap((cylinder) => [cylinder.seen, ...cylinder.plugs.map((plug) => plug.seen)].flat());
  const noted = new Set<string>(seen.map(({ finding }) => finding));
  const open = knowledge.checks.filter((check) =>
    possible(check, evidence) && !(mustStand && check.running) && !isTrial(check) &&
    ![...('finding' in check.tells ? [check.tells.finding] : []), ...(check.reads ?? [])].some((finding) => noted.has(finding)));
  const looks = [...shares].sort(([a, p], [b, q]) => q - p || (a.id < b.id ? -1 : 1)).flatMap(([cause]): Look[] => {
    const check = cause.checks.flatMap((id) => open.filter((each) => each.id === id))[0];
    return check === undefined ? [] : [{ check, cause }];
  });
  return looks.filter(({ check }, i) => looks.findIndex((other) => other.check === check) === i);
}

export function engineFindings(plugs: readonly PlugFindings[], complaint: Matter, context: Context): Findings['engine'] {
  const { evidence } = context.solution;
  const doubts = engineDoubts(evidence);
  return {
    pattern: [patternText(plugs, evidence.sheet.engine), ...besideText(context.untold, feltOf(context))].join(' '),
    causes: engineCauses(complaint, context),
    nextChecks: engineChecks(complaint, context),
    ...(doubts.length > 0 && { doubts }),
  };
}
