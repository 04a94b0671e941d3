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

/** Takes lines one after the other. They are tried together and halved until what is wrong is found, as usually next to nothing is. */
function take(so: Taught, lines: readonly ShopLine[]): Taught {
  const [first, ...more] = lines;
  if (first === undefined) return so;
  if (allCanBeTaken(lines, so.knowledge)) return { ...so, knowledge: { ...so.knowledge, ...taught(so.knowledge, lines) }, active: [...so.active, ...lines] };
  if (more.length === 0) return { ...so, refused: [...so.refused, { line: first, complaints: complaintsAbout(first, so.knowledge) }] };
  const half = Math.ceil(lines.length / 2);
  return take(take(so, lines.slice(0, half)), lines.slice(half));
}

/**
 * The knowledge with the lines of a workshop that are switched on. Everything but causes and conditions is the knowledge's own, untouched; without
 * an active line it is the knowledge itself. A line that breaks a rule of the knowledge is left out and told of.
 */
export const withShopLines = (knowledge: Knowledge, lines: readonly ShopLine[]): Taught =>
  take({ knowledge, active: [], refused: [] }, lines.filter(({ on }) => on));
