import type { CylinderCheck } from '../../../shared/formats/reading-sheet.v1.ts';

export type Spread = { readonly lowest: number; readonly best: number; /** Lowest compression over the highest, 0 to 1. */ readonly ratio: number };

/** How the weakest cylinder stands against the strongest; undefined with fewer than two measured or with nothing to compare. */
export function compressionSpread(checks: readonly CylinderCheck[]): Spread | undefined {
  const measured = checks
    .flatMap(({ cylinder, compressionKPa: kPa }) => (kPa === undefined ? [] : [{ cylinder, kPa }]))
    .sort((a, b) => a.kPa - b.kPa);
  const [lowest, best] = [measured[0], measured.at(-1)];
  if (lowest === undefined || best === undefined || measured.length < 2 || best.kPa === 0) return undefined;
  return { lowest: lowest.cylinder, best: best.cylinder, ratio: lowest.kPa / best.kPa };
}
