import type { Change } from '../../shared/vocabulary/follow-up.ts';
import { numberWords, placesWords, placeWords, sentence } from '../domain/words.ts';
import type { Changed } from './cure-outcome.ts';

const PHRASES: { readonly [C in Change | 'sound']: readonly [one: string, several: string] } = {
  worse: ['is worse', 'are worse'],
  new: ['has a new fault', 'have a new fault'],
  unchanged: ['is unchanged', 'are unchanged'],
  better: ['is better', 'are better'],
  cured: ['is cured', 'are cured'],
  'cannot be told': ['cannot be compared', 'cannot be compared'],
  sound: ['is sound as before', 'are sound as before'],
};
/** More plugs than this are counted, not listed. */
const MOST_LISTED = 4;

/** What became of all plugs in one sentence, the worst news first and the sound ones last. */
export function changeSentence(changes: readonly Changed[]): string {
  const kindOf = ({ change, faultsNow }: Changed): keyof typeof PHRASES => (change === 'unchanged' && faultsNow.length === 0 ? 'sound' : change);
  const parts = (Object.keys(PHRASES) as (keyof typeof PHRASES)[]).flatMap((kind) => {
    const those = changes.filter((change) => kindOf(change) === kind);
    const [one, several] = PHRASES[kind];
    if (those.length === 0) return [];
    if (those.length === 1) return [`${placesWords(those.map(placeWords))} ${one}`];
    const counted = those.length > MOST_LISTED || kind === 'sound' || kind === 'cannot be told';
    return [`${counted ? `${those.length === changes.length ? 'all ' : ''}${numberWords(those.length)} plugs` : placesWords(those.map(placeWords))} ${several}`];
  });
  return sentence(parts.join('; '));
}
