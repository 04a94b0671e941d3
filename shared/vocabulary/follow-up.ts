/** What became of a plug since the reading before. `unchanged` also stands for a sound plug that stayed sound. */
export const CHANGES = ['cured', 'better', 'unchanged', 'worse', 'new', 'cannot be told'] as const;
export type Change = (typeof CHANGES)[number];

/** What a later reading says of a cure that the earlier one proposed. */
export const CURE_OUTCOMES = ['borne out', 'partly borne out', 'not borne out', 'cannot be told', 'not done'] as const;
export type CureOutcome = (typeof CURE_OUTCOMES)[number];

/** What became of a symptom. `gone`: looked for and not there any more. */
export const SYMPTOM_CHANGES = ['gone', 'still there', 'new', 'cannot be told'] as const;
