import type { ShopLine } from '../../shared/formats/shop-lines.v1.ts';
import type { Knowledge } from '../knowledge/types.ts';
import { allCanBeTaken, complaintsAbout, type Complaint } from './complaints.ts';
import { taught } from './teach.ts';

/** `active`: the lines that count. `refused`: lines that are switched on and cannot be taken, with the reasons. */
export type Taught = {
  readonly knowledge: Knowledge;
  readonly active: readonly ShopLine[];
  readonly refused: readonly { readonly line: ShopLine; readonly complaints: readonly Complaint[] }[];
};

/**
 * The knowledge with the lines of a workshop that are switched on. Everything but causes and conditions is the knowledge's own, untouched; without
 * an active line it is the knowledge itself. A line that breaks a rule of the knowledge is left out and told of.
 */
export function withShopLines(knowledge: Knowledge, lines: readonly ShopLine[]): Taught {
  const wanted = lines.filter(({ on }) => on);
  if (wanted.length === 0) return { knowledge, active: [], refused: [] };
  if (allCanBeTaken(wanted, knowledge)) return { knowledge: { ...knowledge, ...taught(knowledge, wanted) }, active: wanted, refused: [] };
  return wanted.reduce<Taught>((so, line) => {
    const complaints = complaintsAbout(line, so.knowledge);
    if (complaints.length > 0) return { ...so, refused: [...so.refused, { line, complaints }] };
    return { ...so, knowledge: { ...so.knowledge, ...taught(so.knowledge, [line]) }, active: [...so.active, line] };
  }, { knowledge, active: [], refused: [] });
}
