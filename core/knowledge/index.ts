import { ageCauses } from './causes/age.ts';
import { coolantCauses } from './causes/coolant.ts';
import { fittingCauses } from './causes/fitting.ts';
import { fuelAndDepositsCauses } from './causes/fuel-and-deposits.ts';
import { harmlessCauses } from './causes/harmless.ts';
import { heatValueCauses } from './causes/heat-value.ts';
import { ignitionCauses } from './causes/ignition.ts';
import { mechanicalCauses } from './causes/mechanical.ts';
import { mixtureCauses } from './causes/mixture.ts';
import { oilCauses } from './causes/oil.ts';
import { temperatureCauses } from './causes/temperature.ts';
import { useCauses } from './causes/use.ts';
import { BARS_ON_HOTTER } from './bars-on-hotter.ts';
import { CAUTIONS } from './cautions.ts';
import { CHECKS } from './checks.ts';
import { bodyAndFitConditions } from './conditions/body-and-fit.ts';
import { depositsConditions } from './conditions/deposits.ts';
import { harmlessConditions } from './conditions/harmless.ts';
import { heatConditions } from './conditions/heat.ts';
import { sootConditions } from './conditions/soot.ts';
import { wearAndElectricsConditions } from './conditions/wear-and-electrics.ts';
import { wetConditions } from './conditions/wet.ts';
import { CONTRADICTIONS } from './contradictions.ts';
import { SOURCES } from './sources.ts';
import { STOP_RULES } from './stop-rules.ts';
import type { Knowledge } from './types.ts';

/** All that the program knows of spark plugs. Change the version with every change of meaning. */
export const KNOWLEDGE: Knowledge = {
  version: '1.2.0',
  sources: SOURCES,
  conditions: [
    ...sootConditions, ...wetConditions, ...depositsConditions, ...heatConditions, ...wearAndElectricsConditions, ...bodyAndFitConditions,
    ...harmlessConditions,
  ],
  causes: [
    ...mixtureCauses, ...ignitionCauses, ...heatValueCauses, ...temperatureCauses, ...oilCauses, ...fuelAndDepositsCauses, ...coolantCauses,
    ...mechanicalCauses, ...fittingCauses, ...useCauses, ...ageCauses, ...harmlessCauses,
  ],
  checks: CHECKS,
  stopRules: STOP_RULES,
  barsOnHotter: BARS_ON_HOTTER,
  cautions: CAUTIONS,
  contradictions: CONTRADICTIONS,
};
