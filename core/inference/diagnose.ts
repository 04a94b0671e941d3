import type { Findings, PlugFindings } from '../../shared/formats/findings.v1.ts';
import type { ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import { followUp } from '../followup/follow-up.ts';
import type { Knowledge } from '../knowledge/types.ts';
import { ranked, type Judged } from './conclude.ts';
import { concludeWith, type Shop } from './conclude-with.ts';
import { contextOf, LEAST_CAUSE, MOST_CAUSES, plugChecks, type Context } from './context.ts';
import { doubtsFor, secondLooks } from './doubts.ts';
import { complaintMatter, engineFindings, firstLooks } from './engine-findings.ts';
import { explainCause } from './explain.ts';
import { plugLook } from './first-look.ts';
import { planFor } from './plan.ts';
import { rounded } from './rounding.ts';
import { cautionsFor, stopLines } from './stop-rules.ts';
import { verdictSentence } from './summary.ts';

/** `shop`: absent when the knowledge is the program's own. */
export type Given = { readonly knowledge: Knowledge; readonly digest: string; readonly shop?: Shop };

function plugFindings(judged: Judged, context: Context): PlugFindings {
  const { knowledge, solution, removals } = context;
  const tells = context.telling.includes(judged);
  const { plug, judgement } = judged;
  const reaching = [...solution.network.shared, ...(solution.network.local.get(plug.place.cylinder) ?? [])].filter((i) => i.plugs.includes(plug.key));
  const making = reaching.filter(({ cause }) => !cause.harmless || judgement.verdict === 'undetermined');
  const causes = tells ? ranked(making, solution, LEAST_CAUSE).slice(0, MOST_CAUSES) : [];
  return {
    ...plugLook(judged, context),
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
  const complaint = complaintMatter(context);
  const engine = engineFindings(plugs, complaint, context);
  const stop = stopLines(stops);
  const read = ({ cylinder, position }: PlugFindings): Judged =>
    judged.find(({ plug: { place } }) => place.cylinder === cylinder && place.position === position) as Judged;
  const plan = planFor({
    stop,
    plugs,
    engineCauses: engine.causes,
    engineChecks: engine.nextChecks,
    firstLooks: firstLooks(complaint, context),
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
