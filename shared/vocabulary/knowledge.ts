/** The words in which the knowledge is graded; `core/knowledge/strengths.ts` says what number each stands for. The strongest first. */
export const STRENGTH_WORDS = ['almost always', 'usually', 'often', 'sometimes', 'rarely', 'hardly ever'] as const;
export type StrengthWord = (typeof STRENGTH_WORDS)[number];

/** How a circumstance moves a cause. `found`: somebody saw the cause itself. */
export const MOVE_WORDS = ['found', 'far likelier', 'much likelier', 'likelier', 'less likely', 'much less likely', 'ruled out'] as const;
export type MoveWord = (typeof MOVE_WORDS)[number];
