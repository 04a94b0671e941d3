import type { FacetName } from '../../../shared/vocabulary/tip.ts';

/** The parts of a plug in the order in which one looks at them, from the rim inward and then to the outside. */
export const TIP_PARTS = {
  rim: ['shellRim'],
  nose: ['noseColour', 'noseSurface', 'deposit', 'coverage', 'specks', 'sootRing', 'noseDamage'],
  electrodes: ['centreElectrode', 'groundElectrode', 'heatLine', 'bridge', 'contact'],
  outside: ['threads', 'seat', 'insulator', 'body', 'terminal'],
} as const satisfies Record<string, readonly FacetName[]>;
export type TipPart = keyof typeof TIP_PARTS;

/** What is asked of a tip: each facet, and the whole at a glance. */
export type Question = FacetName | 'overall';
