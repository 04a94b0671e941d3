import type { ShopLine } from '../../shared/formats/shop-lines.v1.ts';
import { givesKey, makesKey, movedKey, showsKey } from '../knowledge/line-keys.ts';
import { circumstanceOf } from './teach.ts';

/** The key of the knowledge's line that a workshop's line becomes. */
export function lineKey({ says }: Pick<ShopLine, 'says'>): string {
  switch (says.kind) {
    case 'makes': return makesKey(says.of, says);
    case 'shows': return showsKey(says.of, says);
    case 'gives': return givesKey(says.of, says);
    case 'moved': return movedKey(says.of, { by: circumstanceOf(says.when) });
  }
}
