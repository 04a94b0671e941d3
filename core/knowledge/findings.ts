import { BORESCOPE, INJECTORS, SPARKS, SPEED_DROPS } from '../../shared/vocabulary/checks.ts';
import { OVERALL, TIP_FACETS } from '../../shared/vocabulary/tip.ts';

/**
 * What can be observed, and how often each value is met when nothing is wrong. A value's weight under a healthy plug is its share of the sum;
 * it is small, never zero: readers and lighting err. Common practice, no counted source, except where `core/inference/bands.ts` names one.
 */
type Rest<T extends readonly string[]> = { readonly [V in T[number]]: number };

/** Facets of the tip, bands of what was measured on the plug, and whether this plug's cylinder was felt to miss. */
export const PLUG_FINDINGS = {
  ...TIP_FACETS,
  overall: OVERALL,
  gap: ['closed', 'narrow', 'as set', 'wide', 'far too wide'],
  resistor: ['in range', 'low', 'high', 'open'],
  insulation: ['good', 'low', 'shunted'],
  removalTorque: ['as fitted', 'loose'],
  firing: ['fires', 'misses'],
} as const;
export type PlugFindingName = keyof typeof PLUG_FINDINGS;
export type PlugFindingValue<F extends PlugFindingName> = (typeof PLUG_FINDINGS)[F][number];

export const CYLINDER_FINDINGS = {
  compression: ['good', 'watch', 'low'],
  compressionWet: ['rises', 'unchanged'],
  leakDown: ['good', 'fair', 'worn', 'fault'],
  spark: SPARKS,
  injector: INJECTORS,
  speedDropWhenCut: SPEED_DROPS,
  exhaustTemperature: ['like the others', 'hotter', 'colder'],
  borescope: BORESCOPE,
  'swap plug': ['followed', 'stayed'],
  'swap lead': ['followed', 'stayed'],
  'swap coil': ['followed', 'stayed'],
  'swap injector': ['followed', 'stayed'],
  'known-good plug': ['cured', 'not cured'],
  'known-good lead': ['cured', 'not cured'],
  'known-good coil': ['cured', 'not cured'],
  'known-good injector': ['cured', 'not cured'],
} as const;
export type CylinderFindingName = keyof typeof CYLINDER_FINDINGS;
export type CylinderFindingValue<F extends CylinderFindingName> = (typeof CYLINDER_FINDINGS)[F][number];

/** Weights of each value on a healthy plug. */
export const HEALTHY_PLUG: { readonly [F in PlugFindingName]: Rest<(typeof PLUG_FINDINGS)[F]> } = {
  noseColour: { white: 7, 'light grey': 18, 'light tan': 38, brown: 20, 'dark brown': 8, 'dark grey': 3, black: 0.7, yellow: 1, reddish: 0.4, greenish: 0.15 },
  noseSurface: { bare: 30, 'fine powder': 60, 'matt soot': 1.5, wet: 0.8, 'glossy glaze': 0.8, crust: 0.8, blistered: 0.2, 'fused spots': 0.3 },
  deposit: {
    none: 35, 'light dusting': 55, 'carbon of unknown kind': 1, 'heavy tan': 1, 'dry soot': 0.8, 'wet oil': 0.3, 'wet fuel': 0.5, 'wet of unknown kind': 0.4,
    'hard carbon': 0.3, 'ash crust': 0.5, 'lead beads': 0.2, 'lead film': 0.4, 'lead of unknown form': 0.2, glaze: 0.3, 'metal spray': 0.05, water: 0.1, 'rust-coloured film': 0.3,
  },
  coverage: { none: 35, light: 45, partial: 8, full: 8, 'one-sided': 4 },
  specks: { none: 95, 'dark pepper': 2, 'grey metallic': 0.3, 'shiny beads': 0.5 },
  bridge: { none: 99.5, 'gap bridged': 0.2, 'core bridged': 0.1 },
  centreElectrode: { sharp: 55, 'lightly worn': 38, rounded: 3, eroded: 1, pitted: 1, blued: 0.5, blistered: 0.1, melted: 0.05, missing: 0.03 },
  groundElectrode: { 'as new': 50, 'lightly worn': 42, pitted: 1.5, 'worn thin': 1, 'hollowed underneath': 0.5, blued: 0.8, melted: 0.05, bent: 0.15, 'broken off': 0.05 },
  heatLine: { 'near the end': 12, 'at the bend': 55, 'near the weld': 6, 'none visible': 27 },
  shellRim: { 'bare metal': 12, 'light grey': 40, 'even soot': 38, 'heavy soot': 3, 'wet oil': 0.6, blued: 0.6, ash: 1.5 },
  sootRing: { none: 50, thin: 46, wide: 4 },
  noseDamage: { none: 99, 'hairline crack': 0.3, cracked: 0.2, chipped: 0.3, 'broken away': 0.1 },
  insulator: { firm: 99.5, 'loose in shell': 0.2, 'cracked above the shell': 0.2 },
  body: { clean: 80, 'corona stain': 18, 'flashover track': 0.5, 'carbon track': 0.5 },
  terminal: { sound: 98, loose: 1, corroded: 1 },
  seat: { sound: 97, 'leakage marks': 0.4, 'loose when removed': 0.4, 'loose with leakage marks': 0.1, 'gasket missing': 0.2, 'gasket doubled': 0.1 },
  threads: { clean: 85, 'first turns carboned': 9, damaged: 0.5, 'lubricant present': 6 },
  contact: { none: 99.5, 'closed by piston': 0.1, 'debris marks': 0.2 },
  overall: {
    'looks normal': 90, 'looks unfired': 1, 'fouled, kind unknown': 1.5, 'differs from its neighbours': 4, 'lighter than its neighbours': 10,
    'darker than its neighbours': 10,
  },
  gap: { closed: 0.1, narrow: 3, 'as set': 80, wide: 4, 'far too wide': 0.3 },
  resistor: { 'in range': 97, low: 1, high: 0.5, open: 0.1 },
  insulation: { good: 97, low: 2, shunted: 0.3 },
  removalTorque: { 'as fitted': 97, loose: 2 },
  firing: { fires: 97, misses: 3 },
};

/** Weights of each value on a cylinder with nothing wrong. */
export const HEALTHY_CYLINDER: { readonly [F in CylinderFindingName]: Rest<(typeof CYLINDER_FINDINGS)[F]> } = {
  compression: { good: 90, watch: 9, low: 1 },
  compressionWet: { rises: 20, unchanged: 80 },
  leakDown: { good: 70, fair: 26, worn: 3, fault: 1 },
  spark: { strong: 70, present: 26, weak: 3, none: 1 },
  injector: { works: 97, dead: 0.5, leaks: 1, restricted: 1.5 },
  speedDropWhenCut: { clear: 90, small: 8, none: 2 },
  exhaustTemperature: { 'like the others': 90, hotter: 5, colder: 5 },
  borescope: { clean: 70, 'washed clean': 0.7, 'wet with oil': 2, 'wet with water': 0.2, 'piston damage': 0.3, 'valve damage': 0.3, deposits: 26 },
  'swap plug': { followed: 5, stayed: 95 },
  'swap lead': { followed: 5, stayed: 95 },
  'swap coil': { followed: 5, stayed: 95 },
  'swap injector': { followed: 5, stayed: 95 },
  'known-good plug': { cured: 8, 'not cured': 92 },
  'known-good lead': { cured: 5, 'not cured': 95 },
  'known-good coil': { cured: 5, 'not cured': 95 },
  'known-good injector': { cured: 5, 'not cured': 95 },
};

/** How often a symptom is felt on an engine with nothing wrong. Expert estimate. */
export const HEALTHY_SYMPTOM = 0.03;
