/** The judgements a plug can get. */
export const VERDICTS = [
  'normal', 'too cold', 'too hot', 'dry carbon fouling', 'oil fouling', 'fuel wet', 'lead fouling', 'ash deposits', 'glazing',
  'additive deposits', 'coolant entry', 'detonation damage', 'pre-ignition damage', 'worn', 'bridged', 'not sealing', 'not firing',
  'reversed polarity', 'wrong reach', 'insulator damage', 'ignition leakage', 'mechanical damage', 'undetermined',
] as const;
export type Verdict = (typeof VERDICTS)[number];

export const RISKS = ['low', 'raised', 'high', 'stop'] as const;
export type Risk = (typeof RISKS)[number];

/** Where a cause acts: on one plug, on all plugs of a cylinder, on all cylinders that share a part, or on the whole engine. */
export const SCOPES = ['plug', 'cylinder', 'group', 'engine'] as const;
export type Scope = (typeof SCOPES)[number];
