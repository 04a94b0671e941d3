/** Words for numbers that people cannot feel. Both scales are in open use elsewhere, so that a word means here what it means there. */

export type BeliefGrade =
  | 'virtually certain' | 'very likely' | 'likely' | 'about as likely as not' | 'unlikely' | 'very unlikely' | 'exceptionally unlikely';

const BELIEF_OVER: readonly (readonly [over: number, grade: BeliefGrade])[] = [
  [0.99, 'virtually certain'], [0.9, 'very likely'], [0.66, 'likely'], [0.33, 'about as likely as not'], [0.1, 'unlikely'], [0.01, 'very unlikely'],
];

/** The likelihood words of the Intergovernmental Panel on Climate Change (Fourth Assessment, Working Group II, section F). @param belief 0 to 1 */
export const beliefGrade = (belief: number): BeliefGrade => BELIEF_OVER.find(([over]) => belief > over)?.[1] ?? 'exceptionally unlikely';

export type EvidenceGrade = 'weak' | 'positive' | 'strong' | 'very strong';

/**
 * How much one observation says, for or against: the scale of Kass and Raftery (Bayes Factors, Journal of the American Statistical Association 90, 1995),
 * factors of the odds 3, 20 and 150. @param bits change of the log-odds to base 2; its sign does not matter
 */
export function evidenceGrade(bits: number): EvidenceGrade {
  const factor = 2 ** Math.abs(bits);
  if (factor < 3) return 'weak';
  if (factor < 20) return 'positive';
  return factor < 150 ? 'strong' : 'very strong';
}
