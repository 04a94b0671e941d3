/** How the engine ran before the plugs were pulled, and what was noticed around it. */
export const FUELS = [
  'petrol', 'E10', 'E85', 'ethanol', 'methanol', 'leaded petrol', 'avgas', 'LPG', 'natural gas', 'two-stroke premix',
] as const;
export const DUTIES = ['idle', 'short trips', 'town', 'light load', 'steady cruise', 'full load', 'mixed'] as const;
export const STOPS = ['clean cut', 'idled before stop', 'driven home'] as const;

export const SYMPTOMS = [
  'misfire', 'misfire at idle', 'misfire under load', 'misfire when cold', 'misfire when hot', 'hard start', 'hard start cold', 'hard start hot',
  'rough running', 'rough idle', 'hesitation', 'loss of power', 'surging', 'vibration', 'rough running on one magneto', 'knock under load',
  'run-on after switch-off', 'backfire intake', 'backfire exhaust', 'blue smoke', 'black smoke', 'white smoke', 'oil use', 'coolant loss',
  'overheating', 'high fuel use', 'fuel smell', 'no start', 'flooded',
] as const;

export const CONDITION_TAGS = [
  'choke sticking', 'air filter clogged', 'air filter missing', 'gap found too wide', 'gap found too narrow', 'float level high',
  'injector leaking', 'vacuum leak found', 'intake gasket doubtful', 'timing advanced from specification', 'timing retarded from specification',
  'timing unknown', 'cooling fault found', 'low-octane fuel', 'new rings running in', 'valve guides worn', 'breather blocked', 'oil overfilled',
  'wrong plug fitted', 'wrong reach fitted', 'plugs new', 'plugs cleaned', 'resistor lead added', 'weak coil suspected', 'old leads',
  'head gasket doubtful', 'heat riser stuck', 'carburettor heat used', 'primer leaking', 'fuel pressure low', 'dirty fuel',
  'lean running in cruise', 'long idling', 'cold weather', 'stored long', 'additive used', 'altitude changed', 'jets changed', 'boost raised',
  'heat step changed',
] as const;

export type Fuel = (typeof FUELS)[number];
export type Duty = (typeof DUTIES)[number];
export type Stop = (typeof STOPS)[number];
export type SymptomTag = (typeof SYMPTOMS)[number];
export type ConditionTag = (typeof CONDITION_TAGS)[number];
