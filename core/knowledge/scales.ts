import { CURE_TRUST, UNCLEANED } from './cures.ts';
import { HEALTHY_CYLINDER, HEALTHY_PLUG, HEALTHY_SYMPTOM } from './findings.ts';
import { MOVES, PRIORS, STRENGTHS } from './strengths.ts';

/** What the words of the lines stand for, what is met with nothing wrong, and how far cures are trusted: as much a part of the knowledge as its lines. */
export const SCALES = {
  strengths: STRENGTHS, priors: PRIORS, moves: MOVES, cureTrust: CURE_TRUST, uncleaned: UNCLEANED, healthyPlug: HEALTHY_PLUG, healthyCylinder: HEALTHY_CYLINDER,
  healthySymptom: HEALTHY_SYMPTOM,
} as const;
