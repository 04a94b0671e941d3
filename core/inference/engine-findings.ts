import type { CauseFinding, Findings, NextCheck, PlugFindings } from '../../shared/formats/findings.v1.ts';
import type { Cause, Check } from '../knowledge/types.ts';
import type { Judged } from './conclude.ts';
import { checksOn, giversOf, LEAST_CAUSE, makersOf, MOST_CAUSES, plugChecks, type Context, type Matter } from './context.ts';
import { engineDoubts } from './doubts.ts';
import { engineWorlds } from './engine-worlds.ts';
import { explainCause } from './explain.ts';
import type { Instance } from './network.ts';
import { worth } from './next-check.ts';
import type { Solution } from './posterior.ts';
import { besideText, patternText } from './summary.ts';

/** One cause wherever it may act, as one: at the place that holds most of the belief, else at any of them. */
type Anywhere = { readonly instance: Instance; readonly members: readonly Instance[] };

function anywhere(members: readonly Instance[], { belief }: Solution): Anywhere {
  const [first] = [...members].sort((a, b) => belief(b) - belief(a) || (a.id < b.id ? -1 : 1)) as [Instance];
  if (belief(first) >= 0.5 * beliefAnywhere(members)(belief)) return { instance: first, members: [first] };
  const cylinders = [...new Set(members.flatMap((one) => one.cylinders))].sort((a, b) => a - b);
  return { instance: { ...first, id: first.cause.id, group: '', cylinders, plugs: members.flatMap(({ plugs }) => plugs) }, members };
}

const beliefAnywhere = (members: readonly Instance[]) => (belief: Solution['belief']): number => 1 - members.reduce((p, one) => p * (1 - belief(one)), 1);

const isEngineWide = ({ cause }: Instance): boolean => cause.scope === 'engine';

/** Causes of single cylinders that no plug tells of and that may be behind what was felt or found. */
function localCauses(gives: (cause: Cause) => boolean, { telling, untold, solution }: Context): Anywhere[] {
  const spokenFor = new Set(telling.map(({ plug }) => plug.place.cylinder));
  const places = [...solution.network.local].filter(([cylinder]) => !spokenFor.has(cylinder)).flatMap(([cylinder, instances]) =>
    instances.filter((one) => !one.cause.harmless && !isEngineWide(one) && (untold.includes(cylinder) || gives(one.cause))));
  const byCause = new Map<Cause, Instance[]>();
  for (const one of places) byCause.set(one.cause, [...(byCause.get(one.cause) ?? []), one]);
  return [...byCause.values()].map((members) => anywhere(members, solution));
}

/** The cause told with what speaks for it at all its places together. */
function told({ instance, members }: Anywhere, { solution, removals, knowledge }: Context): CauseFinding {
  if (members.length === 1) return explainCause(instance, solution, removals, knowledge);
  const of = (belief: Solution['belief']): Solution['belief'] => () => beliefAnywhere(members)(belief);
  const removed = removals.removed.map(({ piece, without }) => ({ piece, without: of(without) }));
  return explainCause(instance, { ...solution, belief: of(solution.belief) }, { with: of(removals.with), removed }, knowledge);
}

function engineCauses(gives: (cause: Cause) => boolean, context: Context): CauseFinding[] {
  const { network, evidence, belief } = context.solution;
  const wide = evidence.cylinders.length === 1 ? [...network.local.values()].flat().filter(isEngineWide) : network.shared;
  const all = [...wide.map((instance): Anywhere => ({ instance, members: [instance] })), ...localCauses(gives, context)];
  return all
    .map((one) => ({ one, belief: beliefAnywhere(one.members)(belief) }))
    .filter((each) => each.belief >= LEAST_CAUSE)
    .sort((a, b) => b.belief - a.belief || (a.one.instance.id < b.one.instance.id ? -1 : 1))
    .slice(0, MOST_CAUSES)
    .map(({ one }) => told(one, context));
}

const MOST_CHECKS = 4;

/** The plug that leaves the most open: engine-wide checks are judged on its cylinder. */
const mostOpen = (telling: readonly Judged[]): Judged | undefined =>
  telling.filter(({ plug }) => plug.seen.length > 0).sort((a, b) => a.judgement.belief - b.judgement.belief)[0];

/** What to do about what is felt of the engine, wherever in it the fault may be. */
function complaintMatter(answers: Matter['answers'], { solution, worlds }: Context): Matter {
  const numbers = solution.evidence.cylinders.map(({ cylinder }) => cylinder);
  return { answers, cylinder: numbers[0] as number, worlds: engineWorlds(numbers.map(worlds), answers) };
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
function engineChecks(complaint: Matter | undefined, context: Context): NextCheck[] {
  const { telling, untold, knowledge, worlds } = context;
  const open = mostOpen(telling);
  const found = untold.map((cylinder): Matter => ({ answers: makersOf(['undetermined'], knowledge), cylinder, worlds: worlds(cylinder) }));
  const all = [
    ...(open === undefined ? [] : plugChecks(open, 'engine', context)),
    ...(complaint === undefined ? [] : complaintChecks(complaint, context)),
    ...found.flatMap((matter) => [...checksOn(matter, 'engine', context), ...checksOn(matter, 'cylinder', context)]),
  ].sort((a, b) => worth(b) - worth(a) || (a.id < b.id ? -1 : 1));
  return all.filter(({ id }, i) => all.findIndex((other) => other.id === id) === i).slice(0, MOST_CHECKS);
}

export function engineFindings(plugs: readonly PlugFindings[], context: Context): Findings['engine'] {
  const { evidence } = context.solution;
  /** What is felt, where no plug is at fault for it. */
  const complaint = context.telling.length === 0 ? evidence.present : [];
  const gives = giversOf(complaint, context.knowledge);
  const doubts = engineDoubts(evidence);
  return {
    pattern: [patternText(plugs, evidence.sheet.engine), ...besideText(context.untold, complaint)].join(' '),
    causes: engineCauses(gives, context),
    nextChecks: engineChecks(complaint.length === 0 ? undefined : complaintMatter(gives, context), context),
    ...(doubts.length > 0 && { doubts }),
  };
}
