import type { CauseFinding, Findings, PlugFindings } from '../../shared/formats/findings.v1.ts';
import type { ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import type { Risk } from '../../shared/vocabulary/verdicts.ts';
import { heatAdvice, type PlugHeat } from '../heat/advice.ts';
import { placeWords } from '../domain/words.ts';
import type { Cause, Knowledge } from '../knowledge/types.ts';
import { doubtsFor } from './doubts.ts';
import { evidenceOf, type PlugEvidence } from './evidence.ts';
import { explainCause, removalsFor, type Removals } from './explain.ts';
import { networkFor, type Instance } from './network.ts';
import { nextChecks, worldsOf, type World } from './next-check.ts';
import { planFor } from './plan.ts';
import { plugBeliefs } from './plug-belief.ts';
import { solverFor, type Solution, type SolvedCylinder } from './posterior.ts';
import { rounded } from './rounding.ts';
import { cautionsFor, stopLines, stopsFor, type Stop } from './stop-rules.ts';
import { patternText, verdictSentence } from './summary.ts';
import { judge, type PlugVerdict } from './verdict.ts';

export type Given = { readonly knowledge: Knowledge; readonly digest: string };

type Judged = { readonly plug: PlugEvidence; readonly judgement: PlugVerdict };

const MOST_CAUSES = 5;
const LEAST_CAUSE = 0.03;

function judgeAll(solution: Solution, knowledge: Knowledge): Judged[] {
  return solution.evidence.cylinders.flatMap((cylinder, c) => {
    const solved = solution.cylinders[c] as SolvedCylinder;
    const beliefs = plugBeliefs(solved);
    return cylinder.plugs.map((plug, p) => {
      const said = plug.seen.length > 0 || cylinder.symptoms.length > 0 || cylinder.seen.length > 0;
      return { plug, judgement: judge(beliefs[p] as (typeof beliefs)[number], knowledge.conditions, said) };
    });
  });
}

/** Remembers the answer for every cylinder asked for. */
function once<T>(make: (cylinder: number) => T): (cylinder: number) => T {
  const known = new Map<number, T>();
  return (cylinder) => {
    const found = known.get(cylinder) ?? make(cylinder);
    known.set(cylinder, found);
    return found;
  };
}

const isFaulty = ({ judgement }: Judged): boolean => judgement.verdict !== 'normal';

function ranked(instances: readonly Instance[], solution: Solution, least: number): Instance[] {
  const { belief } = solution;
  return instances.filter((i) => belief(i) >= least).sort((a, b) => belief(b) - belief(a) || (a.id < b.id ? -1 : 1));
}

function riskOf({ beliefs }: PlugVerdict, stops: readonly Stop[], plug: PlugEvidence): Risk {
  if (stops.some((stop) => stop.plugs.includes(plug))) return 'stop';
  const of = (v: Parameters<typeof beliefs.get>[0]): number => beliefs.get(v) ?? 0;
  const hot = of('pre-ignition damage') + of('detonation damage') + of('too hot');
  if (hot > 0.5) return 'high';
  return hot > 0.2 || of('ash deposits') + of('insulator damage') + of('wrong reach') + of('glazing') > 0.4 ? 'raised' : 'low';
}

type Context = { readonly knowledge: Knowledge; readonly solution: Solution; readonly removals: Removals; readonly stops: readonly Stop[]; readonly worlds: (cylinder: number) => readonly World[] };

const reaches = (instance: Instance, plug: PlugEvidence): boolean => instance.plugs.includes(plug.key);

function plugFindings(judged: Judged, { knowledge, solution, removals, stops, worlds }: Context): PlugFindings {
  const { plug, judgement } = judged;
  const causes = isFaulty(judged) ? ranked([...solution.network.shared, ...(solution.network.local.get(plug.place.cylinder) ?? [])].filter((i) => reaches(i, plug)), solution, LEAST_CAUSE).slice(0, MOST_CAUSES) : [];
  const read = judgement.verdict !== 'normal' && plug.seen.length > 0;
  return {
    cylinder: plug.place.cylinder,
    position: plug.place.position,
    verdict: judgement.verdict,
    also: [...judgement.also],
    belief: judgement.belief,
    thermal: judgement.thermal,
    preIgnitionRisk: riskOf(judgement, stops, plug),
    causes: causes.map((i) => explainCause(i, solution, removals, knowledge)),
    nextChecks: read ? nextChecks(knowledge.checks, worlds(plug.place.cylinder), plug.place.cylinder, solution.evidence, 'cylinder', 4) : [],
    doubts: doubtsFor(plug, judgement, solution.evidence, knowledge),
  };
}

function engineCauses(context: Context): CauseFinding[] {
  const { solution, removals, knowledge } = context;
  const all = solution.evidence.cylinders.length === 1 ? [...solution.network.local.values()].flat().filter((i) => i.cause.scope === 'engine') : solution.network.shared;
  return ranked(all, solution, LEAST_CAUSE).slice(0, MOST_CAUSES).map((i) => explainCause(i, solution, removals, knowledge));
}

const everyInstance = ({ network }: Solution): Instance[] => [...network.shared, ...[...network.local.values()].flat()];

function strongest(instances: readonly Instance[], solution: Solution, has: (cause: Cause) => boolean): { name: string; belief: number } | undefined {
  const [first] = ranked(instances.filter((i) => has(i.cause)), solution, 0);
  return first && { name: first.cause.name, belief: solution.belief(first) };
}

const BARRING: readonly Cause['kind'][] = ['oil', 'detonation', 'pre-ignition', 'mechanical'];

function heatFor(judged: readonly Judged[], solution: Solution, stops: readonly Stop[]): Findings['heat'] {
  const all = everyInstance(solution);
  const heatCause = (direction: 'hotter' | 'colder'): number => strongest(all, solution, (c) => c.heatStep === direction)?.belief ?? 0;
  const plugs = judged.map(({ plug, judgement }): PlugHeat => ({ where: placeWords(plug.place), verdict: judgement.verdict, beliefs: judgement.beliefs, thermal: judgement.thermal, read: plug.seen.length > 0 }));
  const rivals = ranked(all.filter((i) => i.cause.heatStep === undefined && !i.cause.harmless), solution, 0.1).map((i) => i.cause.name);
  return heatAdvice({
    sheet: solution.evidence.sheet, plugs, stopped: stops.length > 0, plugTooCold: heatCause('hotter'), plugTooHot: heatCause('colder'),
    barring: strongest(all, solution, (c) => BARRING.includes(c.kind)), rivals: [...new Set(rivals)].slice(0, 4),
  });
}

/** The plug whose cylinder leaves the most open: engine-wide checks are judged there. */
const mostOpen = (judged: readonly Judged[]): Judged | undefined =>
  [...judged].filter(isFaulty).filter(({ plug }) => plug.seen.length > 0).sort((a, b) => a.judgement.belief - b.judgement.belief)[0];

/**
 * Reads all plugs of an engine together. Pure: the same sheet and knowledge give byte-equal findings.
 * @param sheet a parsed reading sheet
 * @param given the knowledge and its digest, which only the host can compute
 */
export function diagnose(sheet: ReadingSheet, { knowledge, digest }: Given): Findings {
  const evidence = evidenceOf(sheet);
  const solve = solverFor(networkFor(knowledge, evidence));
  const solution = solve(evidence);
  const judged = judgeAll(solution, knowledge);
  const stops = stopsFor(knowledge.stopRules, evidence);
  const troubled = [...new Set(judged.filter(isFaulty).map(({ plug }) => plug.place.cylinder))];
  const context: Context = { knowledge, solution, stops, worlds: once((cylinder) => worldsOf(solution, cylinder)), removals: removalsFor(solve, evidence, troubled) };
  const plugs = judged.filter(({ plug }) => plug.reading !== undefined).map((j) => plugFindings(j, context));
  const open = mostOpen(judged);
  const engine = {
    pattern: patternText(plugs, sheet.engine.cylinders),
    causes: engineCauses(context),
    nextChecks: open === undefined ? [] : nextChecks(knowledge.checks, context.worlds(open.plug.place.cylinder), open.plug.place.cylinder, evidence, 'engine', 4),
  };
  const heat = heatFor(judged, solution, stops);
  const stop = stopLines(stops);
  const plan = planFor({
    stop, plugs, engineCauses: engine.causes, engineChecks: engine.nextChecks, heat,
    cause: (finding) => knowledge.causes.find((c) => c.id === finding.id.split(' @ ')[0]),
    condition: (verdict) => knowledge.conditions.find((c) => c.verdict === verdict),
  });
  const first = plan[0];
  const summary = `${verdictSentence(plugs)}${first === undefined ? '' : ` First: ${first.do}`}`;
  return rounded({
    format: 'corenose.findings', version: 1, knowledge: { version: knowledge.version, digest }, summary,
    plugs, engine, heat, stop, plan, cautions: cautionsFor(knowledge.cautions, evidence),
  });
}
