import { checksCanTell } from './checks-can-tell.ts';
import { checksHaveAUse } from './checks-have-a-use.ts';
import { everyCauseIsComplete } from './every-cause-is-complete.ts';
import { everyCircumstanceCounts } from './every-circumstance-counts.ts';
import { everyConditionHasACause } from './every-condition-has-a-cause.ts';
import { everyConditionIsUsable } from './every-condition-is-usable.ts';
import { everyFindingIsExplained } from './every-finding-is-explained.ts';
import { everyReasonIsASentence } from './every-reason-is-a-sentence.ts';
import { everySourceExists } from './every-source-exists.ts';
import { everySourceIsCited } from './every-source-is-cited.ts';
import { everySymptomIsExplained } from './every-symptom-is-explained.ts';
import { everyVerdictHasACondition } from './every-verdict-has-a-condition.ts';
import { harmlessCausesDoNoHarm } from './harmless-causes-do-no-harm.ts';
import { idsArePlainAndSingle } from './ids-are-plain-and-single.ts';
import { marksLeaveRoom } from './marks-leave-room.ts';
import { noLineTwice } from './no-line-twice.ts';
import type { KnowledgeRule } from './rule.ts';
import { strengthsAreUsedAlike } from './strengths-are-used-alike.ts';
import { termsNameRealValues } from './terms-name-real-values.ts';

export const KNOWLEDGE_RULES: readonly KnowledgeRule[] = [
  everySourceExists, everySourceIsCited, everyReasonIsASentence, idsArePlainAndSingle, noLineTwice, everyVerdictHasACondition, everyConditionIsUsable,
  everyConditionHasACause, everyCauseIsComplete, harmlessCausesDoNoHarm, everyFindingIsExplained, everySymptomIsExplained, everyCircumstanceCounts,
  marksLeaveRoom, checksCanTell, checksHaveAUse, termsNameRealValues, strengthsAreUsedAlike,
];
