import type { Findings } from '../../../shared/formats/findings.v1.ts';

const byNumber = (a: string, b: string): number => a.localeCompare(b, 'en', { numeric: true });

/** Every source that the findings name, each once, in the order of the register. */
export const cited = ({ plugs, engine }: Findings): readonly string[] =>
  [...new Set([...plugs.flatMap(({ causes }) => causes), ...engine.causes].flatMap(({ sources }) => sources))].sort(byNumber);
