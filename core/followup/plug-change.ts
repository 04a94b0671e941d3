import type { Change } from '../../shared/vocabulary/follow-up.ts';
import type { Verdict } from '../../shared/vocabulary/verdicts.ts';
import { listWords, sentence } from '../domain/words.ts';
import { degreeOf, type Looked } from './degree.ts';

/** One plug at one reading: what it was judged to be and what that rests on. `read`: anything was seen on it at all. */
export type PlugThen = Looked & { readonly verdict: Verdict; readonly also: readonly Verdict[]; readonly read: boolean };
export type ChangeSaid = { readonly change: Change; readonly why: string };

const said = (change: Change, why: string): ChangeSaid => ({ change, why: sentence(why) });

/** The faults a plug was judged to have. */
export const faultsOf = ({ verdict, also }: Pick<PlugThen, 'verdict' | 'also'>): readonly Verdict[] =>
  [verdict, ...also].filter((v) => v !== 'normal' && v !== 'undetermined');

const cannotTell = (plug: PlugThen | undefined, when: string): ChangeSaid | undefined => {
  if (plug === undefined || !plug.read) return said('cannot be told', `not read ${when}`);
  return plug.verdict === 'undetermined' ? said('cannot be told', `it could not be judged ${when}`) : undefined;
};

function stillFaulty(before: PlugThen, now: PlugThen): ChangeSaid {
  const [were, are] = [faultsOf(before), faultsOf(now)];
  const stayed = are.filter((v) => were.includes(v));
  const [gone, came] = [were.filter((v) => !are.includes(v)), are.filter((v) => !were.includes(v))];
  if (stayed.length === 0) return said('new', `another fault: ${listWords(were)} before, ${listWords(are)} now`);
  const still = `still ${listWords(stayed)}`;
  if (came.length > gone.length) return said('worse', `${still}; besides, ${listWords(came)} now`);
  if (gone.length > came.length) return said('better', `${still}; no longer: ${listWords(gone)}`);
  const { milder, graver } = degreeOf(stayed, before, now);
  const signs = [...milder, ...graver].join('; ');
  if (milder.length > graver.length) return said('better', `${still}, but less of it: ${signs}`);
  if (graver.length > milder.length) return said('worse', `${still}, and more of it: ${signs}`);
  return said('unchanged', signs === '' ? still : `${still}; some signs went one way, some the other: ${signs}`);
}

/**
 * What became of one plug between two readings of the same hole.
 * @param worked something was put right that concerns this plug; without that, a fault that went by itself is not called cured
 */
export function plugChange(before: PlugThen | undefined, now: PlugThen | undefined, worked: boolean): ChangeSaid {
  const open = cannotTell(now, 'this time') ?? cannotTell(before, 'the time before');
  if (open !== undefined || before === undefined || now === undefined) return open ?? said('cannot be told', 'not read');
  const [were, are] = [faultsOf(before), faultsOf(now)];
  if (were.length === 0 && are.length === 0) return said('unchanged', 'looks normal, as before');
  if (were.length === 0) return said('new', `normal before, ${listWords(are)} now`);
  if (are.length > 0) return stillFaulty(before, now);
  const gone = `${listWords(were)} before, normal now`;
  return worked ? said('cured', gone) : said('better', `${gone}, though nothing is noted as put right that would have cured it: read it once more before trusting it`);
}
