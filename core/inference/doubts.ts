import type { PlugReading } from '../../shared/formats/reading-sheet.v1.ts';
import type { FacetName } from '../../shared/vocabulary/tip.ts';
import { readingValidity } from '../domain/reading-validity.ts';
import { listWords, PLUG_FINDING_WORDS } from '../domain/words.ts';
import type { Contradiction, Knowledge } from '../knowledge/types.ts';
import type { Evidence, PlugEvidence } from './evidence.ts';
import { MOST_SYMPTOMS } from './symptoms.ts';
import type { PlugVerdict } from './verdict.ts';

/** The parts that decide most; named when nobody looked at them. Common practice, no source. */
const TELLING: readonly FacetName[] = ['noseColour', 'noseSurface', 'deposit', 'centreElectrode', 'groundElectrode'];

const shows = (plug: PlugEvidence, term: { readonly plug: string; readonly is: readonly string[] }): boolean =>
  plug.seen.some((o) => o.finding === term.plug && term.is.includes(o.value));

const contradictions = (plug: PlugEvidence, knowledge: Knowledge): Contradiction[] =>
  knowledge.contradictions.filter((c) => shows(plug, c.first) && (c.second === undefined || shows(plug, c.second)));

/** What says less than could be seen, and wants the plug in the hand looked at again. */
export const secondLooks = (plug: PlugEvidence, knowledge: Knowledge): Contradiction[] =>
  contradictions(plug, knowledge).filter(({ second }) => second === undefined);

function missing(plug: PlugEvidence, verdict: PlugVerdict['verdict']): string[] {
  const open = TELLING.filter((facet) => !plug.seen.some((o) => o.finding === facet));
  if (plug.seen.length === 0) return ['Nothing was noted of this plug.'];
  if (verdict !== 'undetermined' || open.length === 0) return [];
  return [`Not noted: ${listWords(open.map((facet) => PLUG_FINDING_WORDS[facet]))}. Any of them may decide.`];
}

function validity(evidence: Evidence): string[] {
  return readingValidity(evidence.sheet)
    .filter(({ question }) => question === 'mixture and heat')
    .flatMap(({ notes }) =>
      notes.filter((note) => note.effect === 'spoils' || note.effect === 'weakens').map((note) => `${note.words} ${note.because}`),
    );
}

/** What only a photo shows is weighed by how sure the measuring is; what it shows against a note is told. */
function photoDoubts({ seen, reading }: PlugEvidence): string[] {
  const { photo = [], tip }: Partial<PlugReading> = reading ?? {};
  const soft = seen.flatMap((o) => (o.photo === undefined ? [] : [`Measured on a photo, counted for ${Math.round(100 * o.photo)} %: ${o.words}.`]));
  const against = photo.flatMap(({ facet, value, belief }) => {
    const noted = tip?.[facet];
    return noted === undefined || noted === value || belief < 0.5 ? [] : [`The photo shows ${PLUG_FINDING_WORDS[facet]} ${value}, noted is ${noted}.`];
  });
  return [...soft, ...against];
}

/** What makes this judgement less sure: pairs that hardly stand together, parts nobody looked at, values doubted or read off a photo. */
export function doubtsFor(plug: PlugEvidence, judgement: PlugVerdict, knowledge: Knowledge): string[] {
  const unsure = plug.seen.filter((o) => !o.sure && o.photo === undefined).map((o) => `Marked unsure, counted half: ${o.words}.`);
  return [...contradictions(plug, knowledge).map(({ words }) => words), ...missing(plug, judgement.verdict), ...unsure, ...photoDoubts(plug)];
}

/** What makes every judgement on this engine less sure: running that spoils a reading, symptoms beyond those that are counted. */
export function engineDoubts(evidence: Evidence): string[] {
  const { present } = evidence;
  const surplus = present.length > MOST_SYMPTOMS ? [`Only ${MOST_SYMPTOMS} symptoms are counted: ${listWords(present.slice(0, MOST_SYMPTOMS))}.`] : [];
  return [...validity(evidence), ...surplus];
}
