/**
 * What the knowledge and the inference say themselves. They say it in English; another language puts its own words in their place, by the id
 * where there is one, else by the English sentence.
 */
export const told = {
  cause: (_id: string, english: string): string => english,
  check: (_id: string, english: string): string => english,
  sentence: (english: string): string => english,
};
