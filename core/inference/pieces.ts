import { listWords, placesWords, placeWords } from '../domain/words.ts';
import type { CylinderEvidence, Evidence, Observation } from './evidence.ts';

/** What a finding or symptom says, to be looked up in the knowledge. */
export type Said = { readonly finding: string; readonly value: string };

/**
 * Something that can be taken away from the evidence. `one`: a single observation or symptom. `alike`: the same on several plugs, what a shared cause is
 * judged by. `together`: all of a kind at one place; where each repeats the others, only all of them together show what they say.
 */
export type Piece = {
  readonly kind: 'one' | 'alike' | 'together';
  readonly about: string;
  readonly words: string;
  readonly said: readonly Said[];
  /** Empty for what is said of the whole engine. */
  readonly cylinders: readonly number[];
  /** Pieces that are part of this one, by their words. */
  readonly parts: readonly string[];
  readonly without: Evidence;
};

function withoutObservations(evidence: Evidence, gone: ReadonlySet<Observation>): Evidence {
  const keep = <O extends Observation>(seen: readonly O[]): readonly O[] => (seen.some((o) => gone.has(o)) ? seen.filter((o) => !gone.has(o)) : seen);
  const cylinders = evidence.cylinders.map((c): CylinderEvidence => {
    const touched = [c.seen, ...c.plugs.map((plug) => plug.seen)].some((seen) => seen.some((o) => gone.has(o)));
    return touched ? { ...c, seen: keep(c.seen), plugs: c.plugs.map((plug) => ({ ...plug, seen: keep(plug.seen), from: plug.from ?? plug.seen })) } : c;
  });
  return { ...evidence, cylinders };
}

/** `plug`: seen on a plug, not found on the cylinder. */
type Placed = { readonly observation: Observation; readonly cylinder: number; readonly where: string; readonly plug: boolean };

const observationsOf = (evidence: Evidence): Placed[] =>
  evidence.cylinders.flatMap((c) => [
    ...c.plugs.flatMap((plug) => plug.seen.map((observation) => ({ observation, cylinder: c.cylinder, where: placeWords(plug.place), plug: true }))),
    ...c.seen.map((observation) => ({ observation, cylinder: c.cylinder, where: `cylinder ${c.cylinder}`, plug: false })),
  ]);

const saidBy = ({ observation: { finding, value } }: Placed): Said => ({ finding, value });

/** More places than this are counted, not named. */
const MOST_NAMED = 6;

function whereWords(evidence: Evidence, placed: readonly Placed[]): string {
  const places = [...new Set(placed.map(({ where }) => where))];
  if (places.length <= MOST_NAMED) return placesWords(places);
  const [{ plug: plugs }] = placed as [Placed];
  const all = (plugs ? evidence.cylinders.flatMap((c) => c.plugs) : evidence.cylinders).filter(({ seen }) => seen.length > 0);
  return `${places.length} of ${all.length} ${plugs ? 'plugs' : 'cylinders'}`;
}

function pieceOf(evidence: Evidence, placed: readonly Placed[], kind: Piece['kind'], words: string, parts: readonly string[] = []): Piece {
  return {
    kind,
    about: (placed[0] as Placed).observation.path,
    words: `${whereWords(evidence, placed)}: ${words}`,
    said: placed.map(saidBy),
    cylinders: [...new Set(placed.map((p) => p.cylinder))],
    parts,
    without: withoutObservations(evidence, new Set(placed.map((p) => p.observation))),
  };
}

const oneOf = (evidence: Evidence, placed: Placed): Piece => pieceOf(evidence, [placed], 'one', placed.observation.words);

function grouped<T>(items: readonly T[], keyOf: (item: T) => string): T[][] {
  const groups = new Map<string, T[]>();
  for (const item of items) groups.set(keyOf(item), [...(groups.get(keyOf(item)) ?? []), item]);
  return [...groups.values()];
}

/** Like observations on several cylinders as one piece. */
const alikePieces = (evidence: Evidence, all: readonly Placed[]): Piece[] =>
  grouped(all, ({ observation: { finding, value, sure } }) => `${finding}=${value} ${sure}`)
    .filter((group) => new Set(group.map(({ cylinder }) => cylinder)).size > 1)
    .map((group) => pieceOf(evidence, group, 'alike', (group[0] as Placed).observation.words));

function togetherWords(placed: readonly Placed[]): string {
  const said = [...new Set(placed.map(({ observation }) => observation.words))];
  return said.length <= MOST_NAMED ? `${listWords(said)}, taken together` : `all ${said.length} findings taken together`;
}

/** All that was seen on one plug, and all that was found on one cylinder. */
function togetherPieces(evidence: Evidence, placed: readonly Placed[]): Piece[] {
  return grouped(placed, ({ where, plug }) => `${where} ${plug}`)
    .filter((group) => group.length > 1)
    .map((group) => pieceOf(evidence, group, 'together', togetherWords(group), group.map((p) => oneOf(evidence, p).words)));
}

/** All that was seen on all plugs: what a whole set says of a shared cause. */
function wholeSet(evidence: Evidence, all: readonly Placed[], alike: readonly Piece[]): Piece[] {
  const onPlugs = all.filter(({ plug }) => plug);
  if (new Set(onPlugs.map(({ cylinder }) => cylinder)).size < 2) return [];
  return [pieceOf(evidence, onPlugs, 'together', togetherWords(onPlugs), [...alike.map(({ words }) => words), ...onPlugs.map((p) => oneOf(evidence, p).words)])];
}

const symptom = (value: string): Said[] => [{ finding: 'symptom', value }];

function symptomPieces(evidence: Evidence): Piece[] {
  const engine = [
    ...evidence.present.map((what): Piece => ({
      kind: 'one', about: 'symptoms', words: what, said: symptom(what), cylinders: [], parts: [],
      without: { ...evidence, present: evidence.present.filter((s) => s !== what) },
    })),
    ...evidence.absent.map((what): Piece => ({
      kind: 'one', about: 'symptomsAbsent', words: `no ${what}`, said: symptom(what), cylinders: [], parts: [],
      without: { ...evidence, absent: evidence.absent.filter((s) => s !== what) },
    })),
  ];
  const local = evidence.cylinders.flatMap((c) =>
    c.symptoms.map((what): Piece => ({
      kind: 'one', about: 'symptoms', words: `cylinder ${c.cylinder}: ${what}`, said: symptom(what), cylinders: [c.cylinder], parts: [],
      without: {
        ...evidence,
        cylinders: evidence.cylinders.map((other) => (other === c ? { ...c, symptoms: c.symptoms.filter((s) => s !== what) } : other)),
      },
    })),
  );
  return [...engine, ...local];
}

/** All symptoms that were felt, on the engine and on single cylinders. */
function symptomsTogether(evidence: Evidence, pieces: readonly Piece[]): Piece[] {
  const felt = pieces.filter(({ about }) => about === 'symptoms');
  if (felt.length < 2) return [];
  return [{
    kind: 'together', about: 'symptoms', cylinders: [], parts: felt.map(({ words }) => words),
    words: `${felt.length <= MOST_NAMED ? listWords(felt.map(({ words }) => words)) : `all ${felt.length} symptoms`}, taken together`,
    said: felt.flatMap(({ said }) => said),
    without: { ...evidence, present: [], cylinders: evidence.cylinders.map((c) => (c.symptoms.length === 0 ? c : { ...c, symptoms: [] })) },
  }];
}

/** Everything that is taken away to explain a reading. @param troubled cylinders whose observations are taken away one by one */
export function piecesOf(evidence: Evidence, troubled: readonly number[]): Piece[] {
  const all = observationsOf(evidence);
  const here = all.filter(({ cylinder }) => troubled.includes(cylinder));
  const alike = alikePieces(evidence, all);
  const symptoms = symptomPieces(evidence);
  return [
    ...here.map((placed) => oneOf(evidence, placed)), ...symptoms, ...alike,
    ...togetherPieces(evidence, here), ...wholeSet(evidence, all, alike), ...symptomsTogether(evidence, symptoms),
  ];
}
