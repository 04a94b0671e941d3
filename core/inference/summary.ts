import type { PlugFindings } from '../../shared/formats/findings.v1.ts';
import type { Verdict } from '../../shared/vocabulary/verdicts.ts';
import { listWords, sentence } from '../domain/words.ts';

/** Each judgement as the end of "cylinder 3 …" and of "cylinders 1 and 4 …". */
export const VERDICT_PHRASES: { readonly [V in Verdict]: readonly [one: string, several: string] } = {
  normal: ['looks normal', 'look normal'],
  'too cold': ['runs too cold', 'run too cold'],
  'too hot': ['runs too hot', 'run too hot'],
  'dry carbon fouling': ['is fouled with dry soot', 'are fouled with dry soot'],
  'oil fouling': ['is wet with oil', 'are wet with oil'],
  'fuel wet': ['is wet with fuel', 'are wet with fuel'],
  'lead fouling': ['is fouled with lead', 'are fouled with lead'],
  'ash deposits': ['carries ash', 'carry ash'],
  glazing: ['is glazed', 'are glazed'],
  'additive deposits': ['carries an additive’s deposit', 'carry an additive’s deposit'],
  'coolant entry': ['shows coolant or water', 'show coolant or water'],
  'detonation damage': ['shows damage by detonation', 'show damage by detonation'],
  'pre-ignition damage': ['shows damage by pre-ignition', 'show damage by pre-ignition'],
  worn: ['is worn out', 'are worn out'],
  bridged: ['is bridged', 'are bridged'],
  'not sealing': ['does not seal', 'do not seal'],
  'not firing': ['does not fire', 'do not fire'],
  'reversed polarity': ['shows reversed polarity', 'show reversed polarity'],
  'wrong reach': ['has the wrong reach', 'have the wrong reach'],
  'insulator damage': ['has a damaged insulator', 'have damaged insulators'],
  'ignition leakage': ['leaks spark outside', 'leak spark outside'],
  'mechanical damage': ['is damaged mechanically', 'are damaged mechanically'],
  undetermined: ['cannot be judged yet', 'cannot be judged yet'],
};

type Named = Pick<PlugFindings, 'cylinder' | 'position' | 'verdict'>;
const placeOf = ({ cylinder, position }: Named): string => (position === 'only' ? `${cylinder}` : `${cylinder} ${position}`);

/** More places than this are counted, not listed, when they are not what one looks for. */
const MOST_LISTED = 4;

function group(verdict: Verdict, plugs: readonly Named[], all: number): string {
  const [one, several] = VERDICT_PHRASES[verdict];
  if (plugs.length === all && all > 1) return `all ${all} plugs ${several}`;
  return plugs.length === 1 ? `cylinder ${placeOf(plugs[0] as Named)} ${one}` : `cylinders ${listWords(plugs.map(placeOf))} ${several}`;
}

/** Faults first in tray order, then the sound ones, then those that cannot be judged. */
export function verdictSentence(plugs: readonly Named[]): string {
  const rank = (v: Verdict): number => (v === 'normal' ? 1 : v === 'undetermined' ? 2 : 0);
  const verdicts = [...new Set(plugs.map((p) => p.verdict))].sort((a, b) => rank(a) - rank(b));
  const parts = verdicts.map((verdict) => {
    const those = plugs.filter((p) => p.verdict === verdict);
    const [, several] = VERDICT_PHRASES[verdict];
    if (verdicts.length === 2 && verdict === 'normal' && those.length > 1) return `the other ${those.length} ${several}`;
    const counted = verdicts.length > 1 && rank(verdict) > 0 && those.length > MOST_LISTED;
    return counted ? `${those.length} others ${several}` : group(verdict, those, plugs.length);
  });
  return sentence(parts.join('; '));
}

/** What stands out between the cylinders. */
export function patternText(plugs: readonly Named[], cylinders: number): string {
  const judged = plugs.filter((p) => p.verdict !== 'undetermined');
  if (judged.length === 0) return 'Nothing stands out yet: no plug could be judged.';
  const faulty = [...new Set(judged.filter((p) => p.verdict !== 'normal').map((p) => p.cylinder))];
  const kinds = new Set(judged.map((p) => p.verdict));
  if (faulty.length === 0) return judged.length === plugs.length ? 'All plugs that were read look normal.' : 'The plugs that could be judged look normal.';
  if (cylinders === 1) return 'One cylinder: there is no neighbour to compare with.';
  if (kinds.size === 1 && judged.length > 1) return 'The whole set is alike: look for one cause that all cylinders share.';
  if (faulty.length === 1) return `Cylinder ${faulty[0]} alone differs: look for a cause of that cylinder before any shared one.`;
  return `Cylinders ${listWords(faulty)} differ from the rest: compare what they share.`;
}
