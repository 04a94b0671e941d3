import type { Findings, PlugFindings } from '../../shared/formats/findings.v1.ts';
import type { ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import type { Risk } from '../../shared/vocabulary/verdicts.ts';
import { followUp } from '../followup/follow-up.ts';
import type { Knowledge } from '../knowledge/types.ts';
import { graver } from '../shop-lines/guards.ts';
import { ranked, type Judged } from './conclude.ts';
import { concludeWith, type Shop } from './conclude-with.ts';
import { contextOf, LEAST_CAUSE, MOST_CAUSES, plugChecks, type Context } from './context.ts';
import { doubtsFor, secondLooks } from './doubts.ts';
import { engineFindings } from './engine-findings.ts';
import type { PlugEvidence } from './evidence.ts';
import { explainCause } from './explain.ts';
import { planFor } from './plan.ts';
import { rounded } from './rounding.ts';
import { cautionsFor, stopLines, type Stop } from './stop-rules.ts';
import { verdictSentence } from './summary.ts';
import type { PlugVerdict } from './verdict.ts';

/** `shop`: absent when the knowledge is the program's own. */
export type Given = { readonly knowledge: Knowledge; readonly digest: string; readonly shop?: Shop };

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

function plugFindings(judged: Judged, context: Context): PlugFindings {
  const { knowledge, solution, removals } = context;
  const tells = context.telling.includes(judged);
  const { plug, judgement } = judged;
  const { cylinder, position } = plug.place;
  const reaching = [...solution.network.shared, ...(solution.network.local.get(cylinder) ?? [])].filter((i) => i.plugs.includes(plug.key));
  const making = reaching.filter(({ cause }) => !cause.harmless || judgement.verdict === 'undetermined');
  const causes = tells ? ranked(making, solution, LEAST_CAUSE).slice(0, MOST_CAUSES) : [];
  return {
    cylinder,
    position,
    verdict: judgement.verdict,
    also: [...judgement.also],
    belief: judgement.belief,
    thermal: judgement.thermal,
    preIgnitionRisk: guardedRisk(judged, context),
    causes: causes.map((i) => explainCause(i, solution, removals, knowledge)),
    nextChecks: tells ? plugChecks(judged, 'cylinder', context) : [],
    doubts: doubtsFor(plug, judgement, knowledge),
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
  const engine = engineFindings(plugs, context);
  const stop = stopLines(stops);
  const read = ({ cylinder, position }: PlugFindings): Judged =>
    judged.find(({ plug: { place } }) => place.cylinder === cylinder && place.position === position) as Judged;
  const plan = planFor({
    stop,
    plugs,
    engineCauses: engine.causes,
    engineChecks: engine.nextChecks,
    heat,
    cause: (finding) => knowledge.causes.find((c) => c.id === finding.id.split(' @ ')[0]),
    condition: (plug) => knowledge.conditions.find(({ id }) => id === read(plug).judgement.condition),
    secondLooks: (plug) => secondLooks(read(plug).plug, knowledge),
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
