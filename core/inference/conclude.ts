import type { Findings } from '../../shared/formats/findings.v1.ts';
import type { ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import { placeWords } from '../domain/words.ts';
import { barsFromBefore } from '../followup/earlier-bars.ts';
import { heatAdvice, type PlugHeat } from '../heat/advice.ts';
import type { Cause, Knowledge } from '../knowledge/types.ts';
import { Kept } from '../once.ts';
import { evidenceOf, type PlugEvidence } from './evidence.ts';
import { networkFor, type Instance } from './network.ts';
import { plugBeliefs, type PlugBelief } from './plug-belief.ts';
import { solverFor, type Solution } from './posterior.ts';
import { barsFor, stopsFor, type Stop } from './stop-rules.ts';
import { judge, type PlugVerdict } from './verdict.ts';

export type Judged = { readonly plug: PlugEvidence; readonly judgement: PlugVerdict };

/** What is decided, before it is explained: beliefs, verdicts, stops and the heat step. */
export type Conclusion = {
  readonly solution: Solution;
  readonly judged: readonly Judged[];
  readonly stops: readonly Stop[];
  readonly heat: Findings['heat'];
};

function judgeAll(solution: Solution, knowledge: Knowledge): Judged[] {
  const alike = new Kept<PlugBelief, boolean, PlugVerdict>();
  return solution.evidence.cylinders.flatMap((cylinder, c) => {
    const solved = solution.cylinders[c];
    const beliefs = solved === undefined ? [] : plugBeliefs(solved);
    return cylinder.plugs.map((plug, p) => {
      const said = plug.seen.length > 0 || cylinder.symptoms.length > 0 || cylinder.seen.length > 0;
      return { plug, judgement: alike.once(beliefs[p] as PlugBelief, said, () => judge(beliefs[p] as PlugBelief, knowledge.conditions, said)) };
    });
  });
}

/** The instances believed at least so much, strongest first. */
export function ranked(instances: readonly Instance[], { belief }: Solution, least: number): Instance[] {
  const believed = instances.map((instance) => ({ instance, believed: belief(instance) })).filter((one) => one.believed >= least);
  return believed.sort((a, b) => b.believed - a.believed || (a.instance.id < b.instance.id ? -1 : 1)).map(({ instance }) => instance);
}

type Believed = { readonly instance: Instance; readonly belief: number };

/** The one believed most; of equals the first by id. */
function strongestOf(instances: readonly Instance[], { belief }: Solution): Believed | undefined {
  let best: Believed | undefined;
  for (const instance of instances) {
    const believed = belief(instance);
    if (best === undefined || believed > best.belief || (believed === best.belief && instance.id < best.instance.id)) best = { instance, belief: believed };
  }
  return best;
}

const BARRING: readonly Cause['kind'][] = ['oil', 'detonation', 'pre-ignition', 'mechanical'];
/** A rival of this belief is named among what must come first. */
const RIVAL = 0.1;

function heatFor(judged: readonly Judged[], solution: Solution, stops: readonly Stop[], knowledge: Knowledge): Findings['heat'] {
  const { network, evidence } = solution;
  const bars = barsFor(knowledge.barsOnHotter, evidence);
  const all = [...network.shared, ...[...network.local.values()].flat()];
  const strongest = (has: (cause: Cause) => boolean): Believed | undefined => strongestOf(all.filter(({ cause }) => has(cause)), solution);
  const barring = strongest((c) => BARRING.includes(c.kind));
  const plugs = judged.map(({ plug, judgement }): PlugHeat => ({
    where: placeWords(plug.place),
    verdict: judgement.verdict,
    beliefs: judgement.beliefs,
    thermal: judgement.thermal,
    read: plug.seen.length > 0,
  }));
  const rivals = ranked(
    all.filter((i) => i.cause.heatStep === undefined && !i.cause.harmless),
    solution,
    RIVAL,
  ).map((i) => i.cause.name);
  return heatAdvice({
    sheet: evidence.sheet,
    plugs,
    stopped: stops.length > 0,
    bars: [...bars, ...barsFromBefore(knowledge.barsOnHotter, evidence.sheet, bars)],
    plugTooCold: strongest((c) => c.heatStep === 'hotter')?.belief ?? 0,
    plugTooHot: strongest((c) => c.heatStep === 'colder')?.belief ?? 0,
    barring: barring && { name: barring.instance.cause.name, belief: barring.belief },
    rivals: [...new Set(rivals)].slice(0, 4),
  });
}

export function conclude(sheet: ReadingSheet, knowledge: Knowledge): Conclusion {
  const evidence = evidenceOf(sheet);
  const solution = solverFor(networkFor(knowledge, evidence))(evidence);
  const judged = judgeAll(solution, knowledge);
  const stops = stopsFor(knowledge.stopRules, evidence);
  return { solution, judged, stops, heat: heatFor(judged, solution, stops, knowledge) };
}
