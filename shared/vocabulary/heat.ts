/** Fuels whose flame is computed. */
export const MODEL_FUELS = ['petrol', 'E10', 'E85', 'ethanol', 'methanol', 'LPG', 'methane', 'avgas'] as const;
export type ModelFuel = (typeof MODEL_FUELS)[number];

/** What a tip can show about its temperature under known running, as somebody who looked at it would say. */
export const TIP_SIGNS = ['soot kept', 'self-cleaned', 'not blistered', 'blistered', 'melted', 'known good'] as const;
export type TipSign = (typeof TIP_SIGNS)[number];

/** Thermocouples: one in the nose of a plug, one in the exhaust. */
export const HEAT_PROBES = ['thermocouple', 'exhaust'] as const;
export type HeatProbe = (typeof HEAT_PROBES)[number];
