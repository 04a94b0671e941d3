import type { ConditionTag, SymptomTag } from '../../../shared/vocabulary/conditions.ts';
import type { Text } from '../../text/index.ts';

/** How the lists are cut on the screen. Every word stands in exactly one group. */
export const SYMPTOM_GROUPS: readonly { readonly group: keyof Text['run']['symptomGroups']; readonly symptoms: readonly SymptomTag[] }[] = [
  { group: 'misfire', symptoms: ['misfire', 'misfire at idle', 'misfire under load', 'misfire when cold', 'misfire when hot'] },
  { group: 'running', symptoms: ['rough running', 'rough idle', 'rough running on one magneto', 'hesitation', 'loss of power', 'surging', 'vibration'] },
  { group: 'starting', symptoms: ['hard start', 'hard start cold', 'hard start hot', 'no start', 'flooded'] },
  { group: 'noise', symptoms: ['knock under load', 'run-on after switch-off', 'backfire intake', 'backfire exhaust'] },
  { group: 'fluids', symptoms: ['blue smoke', 'black smoke', 'white smoke', 'oil use', 'coolant loss', 'overheating', 'high fuel use', 'fuel smell'] },
];

export const TAG_GROUPS: readonly { readonly group: keyof Text['run']['tagGroups']; readonly tags: readonly ConditionTag[] }[] = [
  { group: 'plugs', tags: ['plugs new', 'plugs cleaned', 'wrong plug fitted', 'wrong reach fitted', 'heat step changed'] },
  { group: 'spark', tags: [
    'gap found too wide', 'gap found too narrow', 'timing advanced from specification', 'timing retarded from specification', 'timing unknown',
    'weak coil suspected', 'old leads', 'resistor lead added',
  ] },
  { group: 'air', tags: [
    'choke sticking', 'air filter clogged', 'air filter missing', 'vacuum leak found', 'intake gasket doubtful', 'heat riser stuck', 'carburettor heat used',
    'lean running in cruise', 'jets changed', 'boost raised',
  ] },
  { group: 'fuel', tags: ['float level high', 'injector leaking', 'primer leaking', 'fuel pressure low', 'low-octane fuel', 'dirty fuel', 'additive used'] },
  { group: 'engine', tags: ['new rings running in', 'valve guides worn', 'breather blocked', 'oil overfilled', 'head gasket doubtful', 'cooling fault found'] },
  { group: 'use', tags: ['long idling', 'cold weather', 'stored long', 'altitude changed'] },
];

/** Symptoms that a single cylinder can have. */
export const OF_ONE_CYLINDER: readonly SymptomTag[] = [
  'misfire', 'misfire at idle', 'misfire under load', 'misfire when cold', 'misfire when hot', 'knock under load', 'backfire intake', 'backfire exhaust',
];
