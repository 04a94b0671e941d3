import type { CauseFinding, Fact } from '../../shared/formats/findings.v1.ts';
import type { Scope } from '../../shared/vocabulary/verdicts.ts';
import { placesWords, placeWords } from '../domain/words.ts';
import { givesKey, makesKey, showsKey } from '../knowledge/line-keys.ts';
import type { Cause, Condition, Knowledge } from '../knowledge/types.ts';
import type { CylinderEvidence, Evidence, Observation } from './evidence.ts';
import { focusOn } from './focus.ts';
import { strengthOf, type Instance } from './network.ts';
import type { Solution } from './posterior.ts';

/** One observation, or the same observation on several plugs, that can be taken away. */
type Piece = {
  readonly about: string;
  readonly words: string;
  readonly finding: string;
  readonly value: string;
  readonly cylinders: readonly number[];
  readonly without: Evidence;
};

const CLOSEST = 1e-9;
const logOdds = (p: number): number => {
  const q = Math.min(1 - CLOSEST, Math.max(CLOSEST, p));
  return Math.log2(q / (1 - q));
};

/** Facts smaller than this are noise to a reader. */
const LEAST_BITS = 0.05;
const MOST_FACTS = 8;

function withoutObservations(evidence: Evidence, gone: ReadonlySet<Observation>): Evidence {
  const keep = <O extends Observation>(seen: readonly O[]): readonly O[] => (seen.some((o) => gone.has(o)) ? seen.filter((o) => !gone.has(o)) : seen);
  const cylinders = evidence.cylinders.map((c): CylinderEvidence => {
    const touched = [c.seen, ...c.plugs.map((plug) => plug.seen)].some((seen) => seen.some((o) => gone.has(o)));
    return touched ? { ...c, seen: keep(c.seen), plugs: c.plugs.map((plug) => ({ ...plug, seen: keep(plug.seen), from: plug.from ?? plug.seen })) } : c;
  });
  return { ...evidence, cylinders };
}

type Placed = { readonly observation: Observation; readonly cylinder: number; readonly where: string };

const observationsOf = (evidence: Evidence): Placed[] =>
  evidence.cylinders.flatMap((c) => [
    ...c.plugs.flatMap((plug) => plug.seen.map((observation) => ({ observation, cylinder: c.cylinder, where: placeWords(plug.place) }))),
    ...c.seen.map((observation) => ({ observation, cylinder: c.cylinder, where: `cylinder ${c.cylinder}` })),
  ]);

function pieceOf(evidence: Evidence, placed: readonly Placed[]): Piece {
  const first = placed[0] as Placed;
  const where = placesWords(placed.map((p) => p.where));
  return {
    about: first.observation.path,
    words: `${where}: ${first.observation.words}`,
    finding: first.observation.finding,
    value: first.observation.value,
    cylinders: [...new Set(placed.map((p) => p.cylinder))],
    without: withoutObservations(evidence, new Set(placed.map((p) => p.observation))),
  };
}

/** Every single observation on the cylinders asked for. */
const singlePieces = (evidence: Evidence, cylinders: readonly number[]): Piece[] =>
  observationsOf(evidence)
    .filter((p) => cylinders.includes(p.cylinder))
    .map((p) => pieceOf(evidence, [p]));

/** Like observations on several plugs as one piece: what a shared cause is judged by. */
function groupedPieces(evidence: Evidence): Piece[] {
  const groups = new Map<string, Placed[]>();
  for (const placed of observationsOf(evidence)) {
    const key = `${placed.observation.finding}=${placed.observation.value}${placed.observation.sure ? '' : '?'}`;
    groups.set(key, [...(groups.get(key) ?? []), placed]);
  }
  return [...groups.values()].map((group) => pieceOf(evidence, group));
}

function symptomPieces(evidence: Evidence): Piece[] {
  const engine = [
    ...evidence.present.map((symptom): Piece => ({
      about: 'symptoms',
      words: symptom,
      finding: 'symptom',
      value: symptom,
      cylinders: [],
      without: { ...evidence, present: evidence.present.filter((s) => s !== symptom) },
    })),
    ...evidence.absent.map((symptom): Piece => ({
      about: 'symptomsAbsent',
      words: `no ${symptom}`,
      finding: 'symptom',
      value: symptom,
      cylinders: [],
      without: { ...evidence, absent: evidence.absent.filter((s) => s !== symptom) },
    })),
  ];
  const local = evidence.cylinders.flatMap((c) =>
    c.symptoms.map((symptom): Piece => ({
      about: 'symptoms',
      words: `cylinder ${c.cylinder}: ${symptom}`,
      finding: 'symptom',
      value: symptom,
      cylinders: [c.cylinder],
      without: {
        ...evidence,
        cylinders: evidence.cylinders.map((other) => (other === c ? { ...c, symptoms: c.symptoms.filter((s) => s !== symptom) } : other)),
      },
    })),
  );
  return [...engine, ...local];
}

/** `lines`: what leads from the cause to the finding, by the keys of the knowledge's lines. */
type Link = {
  readonly finding?: string;
  readonly symptom?: string;
  readonly is?: string;
  readonly because: string;
  readonly lines: readonly string[];
  readonly by: readonly string[];
};

type Owner = Pick<Condition, 'id' | 'gives'> & { readonly shows: readonly (Cause['shows'][number] | Condition['shows'][number])[] };

const added = ({ addedBy }: { readonly addedBy?: string }): readonly string[] => (addedBy === undefined ? [] : [addedBy]);

const ownLinks = ({ id, shows, gives }: Owner): Link[] => [
  ...shows.map((link) => ({ ...link, lines: [showsKey(id, link)], by: added(link) })),
  ...gives.map((link) => ({ ...link, lines: [givesKey(id, link)], by: added(link) })),
];

function linksOf(cause: Cause, conditions: readonly Condition[]): Link[] {
  const made = [...cause.makes].sort((a, b) => strengthOf(b) - strengthOf(a)).flatMap((link) => {
    const condition = conditions.filter(({ id }) => id === link.condition);
    return condition.flatMap(ownLinks).map((own) => ({ ...own, lines: [makesKey(cause.id, link), ...own.lines], by: [...added(link), ...own.by] }));
  });
  return [...ownLinks(cause), ...made];
}

type Reason = Pick<Fact, 'because' | 'lines' | 'addedBy'>;

/** @param link the line that the reason rests on */
const restingOn = ({ lines, by }: Link, because: string): Reason => ({ because, lines: [...lines], ...(by.length > 0 && { addedBy: [...new Set(by)].join(', ') }) });

function reason(all: readonly Link[], piece: Piece, supports: boolean): Reason {
  const links = all.filter(
    (link) => link.finding === piece.finding || (piece.finding === 'symptom' && link.symptom === piece.value),
  );
  const same = links.find((link) => link.symptom === piece.value || link.is === piece.value);
  if (supports) return same === undefined ? { because: 'It speaks more against the rival causes than against this one.' } : restingOn(same, same.because);
  if (same !== undefined) return restingOn(same, 'A rival cause explains it better.');
  const expected = links[0];
  return expected?.is === undefined
    ? { because: 'Other causes explain it better.' }
    : restingOn(expected, `With this cause one would rather see "${expected.is}". ${expected.because}`);
}

/** All removals, solved once and shared by every cause's explanation. `with`: beliefs with nothing removed, by the same reckoning. */
export type Removals = { readonly with: Solution['belief']; readonly removed: readonly Removed[] };
type Removed = { readonly piece: Piece; readonly without: Solution['belief']; readonly grouped: boolean };

/** @param troubled cylinders whose single observations are taken away one by one */
export function removalsFor(solution: Solution, troubled: readonly number[]): Removals {
  const { evidence } = solution;
  const solve = focusOn(solution);
  const singles = [...singlePieces(evidence, troubled), ...symptomPieces(evidence)].map((piece) => ({ piece, grouped: false }));
  const groups = groupedPieces(evidence).filter((piece) => piece.cylinders.length > 1).map((piece) => ({ piece, grouped: true }));
  return { with: solve(evidence).belief, removed: [...singles, ...groups].map((r) => ({ ...r, without: solve(r.piece.without).belief })) };
}

const SCOPE: Readonly<Record<Cause['scope'], Scope>> = {
  plug: 'plug',
  cylinder: 'cylinder',
  engine: 'engine',
  neighbours: 'group',
  'mixture group': 'group',
  coil: 'group',
  'ignition set': 'group',
  bank: 'group',
};

function circumstanceFacts(instance: Instance): Fact[] {
  return instance.moves.map(({ words, factor, because, line, about, addedBy }) => ({
    about, text: words, bits: Math.log2(factor), because, ...(line !== undefined && { lines: [line] }), ...(addedBy !== undefined && { addedBy }),
  }));
}

/** Observations elsewhere bear on a local cause only through shared ones; observations here are what its reader looks at. */
function concerns(instance: Instance, { piece, grouped }: Removed): boolean {
  if (piece.cylinders.length === 0) return true;
  return instance.cylinders.length > 1
    ? grouped || !instance.cylinders.some((n) => !piece.cylinders.includes(n)) || piece.cylinders.every((n) => instance.cylinders.includes(n))
    : !grouped && piece.cylinders.includes(instance.cylinders[0] as number);
}

/** Groups replace the single observations they are made of. */
function withoutParts(removals: readonly Removed[]): readonly Removed[] {
  const grouped = new Set(removals.filter((r) => r.grouped).map((r) => `${r.piece.finding}=${r.piece.value}`));
  return removals.filter((r) => r.grouped || !grouped.has(`${r.piece.finding}=${r.piece.value}`) || r.piece.finding === 'symptom');
}

const round = (bits: number): number => Math.round(bits * 1000) / 1000;

/** One cause with what speaks for and against it; each weight is the change of its log-odds when the observation is taken away. */
export function explainCause(instance: Instance, solution: Solution, removals: Removals, knowledge: Knowledge): CauseFinding {
  const belief = solution.belief(instance);
  const before = logOdds(removals.with(instance));
  const fit = removals.removed.filter((r) => concerns(instance, r));
  const links = linksOf(instance.cause, knowledge.conditions);
  const facts = (instance.cylinders.length > 1 ? withoutParts(fit) : fit).map(({ piece, without }): Fact => {
    const bits = before - logOdds(without(instance));
    return { about: piece.about, text: piece.words, bits, ...reason(links, piece, bits > 0) };
  });
  const all = [...circumstanceFacts(instance), ...facts].map((f) => ({ ...f, bits: round(f.bits) })).filter((f) => Math.abs(f.bits) >= LEAST_BITS);
  const ranked = all.sort((a, b) => Math.abs(b.bits) - Math.abs(a.bits) || (a.text < b.text ? -1 : 1));
  const sources = new Set(
    [...instance.cause.makes, ...instance.cause.shows, ...instance.cause.gives, ...instance.moves].flatMap((link) => link.source),
  );
  return {
    id: instance.id,
    name: instance.group === '' ? instance.cause.name : `${instance.cause.name} (${instance.group})`,
    belief,
    scope: SCOPE[instance.cause.scope],
    cylinders: [...instance.cylinders],
    supports: ranked.filter((f) => f.bits > 0).slice(0, MOST_FACTS),
    speaksAgainst: ranked.filter((f) => f.bits < 0).slice(0, MOST_FACTS),
    sources: [...sources].sort(),
  };
}
