import type { CauseFinding, Findings, NextCheck, PlugFindings } from '../../shared/formats/findings.v1.ts';
import type { ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import type { Risk, Verdict } from '../../shared/vocabulary/verdicts.ts';
import { followUp } from '../followup/follow-up.ts';
import type { Cause, Check, Knowledge } from '../knowledge/types.ts';
import { once } from '../once.ts';
import { graver } from '../shop-lines/guards.ts';
import { ranked, type Conclusion, type Judged } from './conclude.ts';
import { concludeWith, type Guarded, type Shop } from './conclude-with.ts';
import { doubtsFor, engineDoubts } from './doubts.ts';
import type { PlugEvidence } from './evidence.ts';
import { explainCause, removalsFor, type Removals } from './explain.ts';
import { nextChecks, worldsOf, type World } from './next-check.ts';
import { planFor } from './plan.ts';
import type { Solution } from './posterior.ts';
import { rounded } from './rounding.ts';
import { cautionsFor, stopLines, type Stop } from './stop-rules.ts';
import { patternText, verdictSentence } from './summary.ts';
import type { PlugVerdict } from './verdict.ts';

/** `shop`: absent when the knowledge is the program's own. */
export type Given = { readonly knowledge: Knowledge; readonly digest: string; readonly shop?: Shop };

const MOST_CAUSES = 5;
const LEAST_CAUSE = 0.03;

const isFaulty = ({ judgement }: Judged): boolean => judgement.verdict !== 'normal';

function riskOf({ beliefs }: PlugVerdict, stops: readonly Stop[], plug: PlugEvidence): Risk {
  if (stops.some((stop) => stop.plugs.includes(plug))) return 'stop';
  const of = (v: Parameters<typeof beliefs.get>[0]): number => beliefs.get(v) ?? 0;
  const hot = of('pre-ignition damage') + of('detonation damage') + of('too hot');
  if (hot > 0.5) return 'high';
  return hot > 0.2 || of('ash deposits') + of('insulator damage') + of('wrong reach') + of('glazing') > 0.4 ? 'raised' : 'low';
}

/** The graver of what follows with the workshop's lines and without them. */
function guardedRisk({ plug, judgement }: Judged, { stops, guard }: Context): Risk {
  const risk = riskOf(judgement, stops, plug);
  const own = guard?.judged.find((judged) => judged.plug.key === plug.key);
  return own === undefined ? risk : graver(risk, riskOf(own.judgement, [], own.plug));
}

/** Whether a cause can have made a plug so judged; of a plug that could not be judged, any cause but a harmless one. */
function makersOf(verdicts: readonly Verdict[], { conditions }: Knowledge): (cause: Cause) => boolean {
  const made = new Set(conditions.filter((c) => verdicts.includes(c.verdict)).map((c) => c.id));
  return (cause) => !cause.harmless && (verdicts.includes('undetermined') || cause.makes.some((link) => made.has(link.condition)));
}

type Context = {
  readonly knowledge: Knowledge;
  readonly solution: Solution;
  readonly removals: Removals;
  readonly stops: readonly Stop[];
  readonly guard: Conclusion | undefined;
  readonly worlds: (cylinder: number) => readonly World[];
};

/** Checks on what made the plug so; when nothing more can be told about that, on its second judgements too. */
function checksFor({ plug, judgement }: Judged, scope: Check['scope'], { knowledge, solution, worlds }: Context): NextCheck[] {
  const { cylinder } = plug.place;
  const about = (verdicts: readonly Verdict[]): NextCheck[] =>
    nextChecks({
      checks: knowledge.checks,
      worlds: worlds(cylinder),
      answers: makersOf(verdicts, knowledge),
      cylinder,
      evidence: solution.evidence,
      scope,
    });
  const first = about([judgement.verdict]);
  return first.length > 0 || judgement.also.length === 0 ? first : about([judgement.verdict, ...judgement.also]);
}

function plugFindings(judged: Judged, context: Context): PlugFindings {
  const { knowledge, solution, removals } = context;
  const { plug, judgement } = judged;
  const { cylinder, position } = plug.place;
  const reaching = [...solution.network.shared, ...(solution.network.local.get(cylinder) ?? [])].filter((i) => i.plugs.includes(plug.key));
  const making = reaching.filter(({ cause }) => !cause.harmless || judgement.verdict === 'undetermined');
  const causes = isFaulty(judged) ? ranked(making, solution, LEAST_CAUSE).slice(0, MOST_CAUSES) : [];
  const open = isFaulty(judged) && plug.seen.length > 0;
  return {
    cylinder,
    position,
    verdict: judgement.verdict,
    also: [...judgement.also],
    belief: judgement.belief,
    thermal: judgement.thermal,
    preIgnitionRisk: guardedRisk(judged, context),
    causes: causes.map((i) => explainCause(i, solution, removals, knowledge)),
    nextChecks: open ? checksFor(judged, 'cylinder', context) : [],
    doubts: doubtsFor(plug, judgement, knowledge),
  };
}

function engineCauses({ solution, removals, knowledge }: Context): CauseFinding[] {
  const { network, evidence } = solution;
  const all = evidence.cylinders.length === 1 ? [...network.local.values()].flat().filter((i) => i.cause.scope === 'engine') : network.shared;
  return ranked(all, solution, LEAST_CAUSE)
    .slice(0, MOST_CAUSES)
    .map((i) => explainCause(i, solution, removals, knowledge));
}

/** The plug that leaves the most open: engine-wide checks are judged on its cylinder. */
const mostOpen = (judged: readonly Judged[]): Judged | undefined =>
  judged.filter((j) => isFaulty(j) && j.plug.seen.length > 0).sort((a, b) => a.judgement.belief - b.judgement.belief)[0];

function engineFindings(plugs: readonly PlugFindings[], judged: readonly Judged[], context: Context): Findings['engine'] {
  const { solution } = context;
  const open = mostOpen(judged);
  const doubts = engineDoubts(solution.evidence);
  return {
    pattern: patternText(plugs, solution.evidence.sheet.engine),
    causes: engineCauses(context),
    nextChecks: open === undefined ? [] : checksFor(open, 'engine', context),
    ...(doubts.length > 0 && { doubts }),
  };
}

function contextOf({ solution, judged, stops, guard }: Guarded, knowledge: Knowledge): Context {
  const worlds = new Map<number, readonly World[]>();
  const troubled = [...new Set(judged.filter(isFaulty).map(({ plug }) => plug.place.cylinder))];
  return {
    knowledge,
    solution,
    stops,
    guard,
    removals: removalsFor(solution, troubled),
    worlds: (cylinder) => once(worlds, cylinder, () => worldsOf(solution, cylinder)),
  };
}

/**
 * Reads all plugs of an engine together. Pure: the same sheet and knowledge give byte-equal findings.
 * @param sheet a parsed reading sheet
 * @param given the knowledge and its digest, which only the host can compute
 */
export function diagnose(sheet: ReadingSheet, { knowledge, digest, shop }: Given): Findings {
  const conclusion = concludeWith(sheet, knowledge, shop);
  const { judged, stops, heat } = conclusion;
  const context = contextOf(conclusion, knowledge);
  const plugs = judged.filter(({ plug }) => plug.reading !== undefined).map((j) => plugFindings(j, context));
  const engine = engineFindings(plugs, judged, context);
  const stop = stopLines(stops);
  const plan = planFor({
    stop,
    plugs,
    engineCauses: engine.causes,
    engineChecks: engine.nextChecks,
    heat,
    cause: (finding) => knowledge.causes.find((c) => c.id === finding.id.split(' @ ')[0]),
    condition: ({ cylinder, position }) => {
      const read = judged.find(({ plug: { place } }) => place.cylinder === cylinder && place.position === position);
      return knowledge.conditions.find(({ id }) => id === read?.judgement.condition);
    },
  });
  const first = plan[0];
  const followed = followUp(sheet, conclusion, knowledge);
  return rounded({
    format: 'corenose.findings',
    version: 1,
    knowledge: { version: knowledge.version, digest, ...(shop !== undefined && { shopLines: [...shop.lines] }) },
    summary: `${verdictSentence(plugs)}${first === undefined ? '' : ` First: ${first.do}`}`,
    ...(followed !== undefined && { followUp: followed }),
    plugs,
    engine,
    heat,
    stop,
    plan,
    cautions: cautionsFor(knowledge.cautions, conclusion.solution.evidence),
  });
}
