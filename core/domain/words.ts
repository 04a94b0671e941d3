import type { CylinderFindingName, PlugFindingName } from '../knowledge/findings.ts';
import type { PlugPlace } from './plugs.ts';

/** What the parts and findings are called in a sentence. */
export const PLUG_FINDING_WORDS: { readonly [F in PlugFindingName]: string } = {
  noseColour: 'nose colour', noseSurface: 'nose surface', deposit: 'deposit', coverage: 'coverage', specks: 'specks', bridge: 'bridging',
  centreElectrode: 'centre electrode', groundElectrode: 'ground electrode', heatLine: 'heat line', shellRim: 'shell rim', sootRing: 'soot ring',
  noseDamage: 'nose damage', insulator: 'insulator', body: 'outside of the body', terminal: 'terminal', seat: 'seat', threads: 'threads', contact: 'contact marks',
  overall: 'at a glance', gap: 'gap', resistor: 'resistor', insulation: 'insulation', removalTorque: 'removal torque', firing: 'firing',
};

export const CYLINDER_FINDING_WORDS: { readonly [F in CylinderFindingName]: string } = {
  compression: 'compression', compressionWet: 'compression with oil', leakDown: 'leak-down', spark: 'spark', injector: 'injector',
  speedDropWhenCut: 'speed drop when cut', exhaustTemperature: 'exhaust temperature', borescope: 'borescope',
  'swap plug': 'plug swapped, fault', 'swap lead': 'lead swapped, fault', 'swap coil': 'coil swapped, fault', 'swap injector': 'injector swapped, fault',
  'known-good plug': 'known-good plug', 'known-good lead': 'known-good lead', 'known-good coil': 'known-good coil', 'known-good injector': 'known-good injector',
};

/** `cylinder 3`, `cylinder 3 upper`. */
export const placeWords = ({ cylinder, position }: PlugPlace): string => (position === 'only' ? `cylinder ${cylinder}` : `cylinder ${cylinder} ${position}`);

/** `cylinder 3 upper`, `cylinders 1 and 2`: several places of `placeWords` together. */
export const placesWords = (places: readonly string[]): string =>
  (places.length === 1 ? `${places[0]}` : `cylinders ${listWords(places.map((place) => place.replace('cylinder ', '')))}`);

/** `1`, `1 and 2`, `1, 2 and 5`. */
export function listWords(items: readonly (string | number)[]): string {
  const last = items.at(-1);
  if (last === undefined) return '';
  return items.length === 1 ? `${last}` : `${items.slice(0, -1).join(', ')} and ${last}`;
}

const NUMBERS = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'] as const;
export const numberWords = (n: number): string => NUMBERS[n] ?? `${n}`;

/** A name or an instruction that stood alone, set inside a sentence: the capital goes, an abbreviation stays. */
export const inSentence = (words: string): string => (/^[A-Z][a-z]/.test(words) ? `${words.charAt(0).toLowerCase()}${words.slice(1)}` : words);

export const sentenceStart = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
export const sentence = (words: string): string => `${sentenceStart(words)}${/[.!?]$/.test(words) ? '' : '.'}`;
