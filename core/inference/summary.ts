import type { Engine } from '../../shared/formats/engine.ts';
import type { PlugFindings } from '../../shared/formats/findings.v1.ts';
import type { Verdict } from '../../shared/vocabulary/verdicts.ts';
import { sharingGroups } from '../domain/sharing.ts';
import { listWords, numberWords, placesWords, sentence } from '../domain/words.ts';

/** Each judgement as the end of "cylinder 3 …" and of "cylinders 1 and 4 …". */
const VERDICT_PHRASES: { readonly [V in Verdict]: readonly [one: string, several: string] } = {
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
  if (plugs.length === all && all > 1) return `${all === 2 ? 'both' : `all ${numberWords(all)}`} plugs ${several}`;
  return plugs.length === 1 ? `cylinder ${placeOf(plugs[0] as Named)} ${one}` : `cylinders ${listWords(plugs.map(placeOf))} ${several}`;
}

/** Faults first in tray order, then the sound ones, then those that cannot be judged. */
export function verdictSentence(plugs: readonly Named[]): string {
  const rank = (v: Verdict): number => (v === 'normal' ? 1 : v === 'undetermined' ? 2 : 0);
  const verdicts = [...new Set(plugs.map((p) => p.verdict))].sort((a, b) => rank(a) - rank(b));
  const parts = verdicts.map((verdict) => {
    const those = plugs.filter((p) => p.verdict === verdict);
    const [, several] = VERDICT_PHRASES[verdict];
    if (verdicts.length === 2 && verdict === 'normal' && those.length > 1) return `the other ${numberWords(those.length)} ${several}`;
    const counted = verdicts.length > 1 && rank(verdict) > 0 && those.length > MOST_LISTED;
    return counted ? `${numberWords(those.length)} others ${several}` : group(verdict, those, plugs.length);
  });
  return sentence(parts.join('; '));
}

/** The shared part whose cylinders are just the several that differ, if the engine record names one. */
function sharedPart(faulty: readonly number[], engine: Engine): string | undefined {
  const named = sharingGroups(engine).filter(({ kind }) => kind !== 'ignition set');
  return named.find(({ cylinders }) => cylinders.length === faulty.length && cylinders.every((n) => faulty.includes(n)))?.name;
}

/** What stands out between the plugs of the engine. */
export function patternText(plugs: readonly Named[], engine: Engine): string {
  const judged = plugs.filter((p) => p.verdict !== 'undetermined');
  const bad = judged.filter((p) => p.verdict !== 'normal');
  if (judged.length === 0) return 'Nothing stands out yet: no plug could be judged.';
  if (bad.length === 0)
    return judged.length === plugs.length ? 'All plugs that were read look normal.' : 'The plugs that could be judged look normal.';
  return engine.cylinders === 1 ? 'One cylinder: there is no neighbour to compare with.' : faultPattern(bad, judged, engine);
}

/** What stands out beside the plugs. @param untold cylinders @param complaint what is felt and shows on no plug */
export function besideText(untold: readonly number[], complaint: readonly string[]): string[] {
  const found = untold.length === 0 ? [] : [`What was found on ${placesWords(untold.map((n) => `cylinder ${n}`))} speaks of a fault that no plug shows.`];
  return complaint.length === 0 ? found : [...found, `No plug shows what is behind the ${listWords(complaint)}: it may lie anywhere in the engine.`];
}

function faultPattern(bad: readonly Named[], judged: readonly Named[], engine: Engine): string {
  const faulty = [...new Set(bad.map((p) => p.cylinder))];
  const [position, ...others] = new Set(bad.map((p) => p.position));
  const alike = bad.length > 1 && bad.length === judged.length && new Set(bad.map((p) => p.verdict)).size === 1;
  if (alike) return 'The whole set is alike: look for one cause that all cylinders share.';
  if (faulty.length === 1) return `Cylinder ${faulty[0]} alone differs: look for a cause of that cylinder before any shared one.`;
  const onePosition = others.length === 0 && judged.some((p) => p.position !== position);
  if (onePosition) return `Only the ${position} plugs are at fault: look for what sets them apart before any cause of the whole engine.`;
  if (faulty.length === engine.cylinders) return 'Every cylinder has a plug at fault, but not all alike.';
  const shared = sharedPart(faulty, engine);
  return `Cylinders ${listWords(faulty)} differ from the rest: ${shared === undefined ? 'compare what they share' : `they share ${shared}`}.`;
}
