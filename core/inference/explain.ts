import type { CauseFinding, Fact } from '../../shared/formats/findings.v1.ts';
import type { Scope } from '../../shared/vocabulary/verdicts.ts';
import type { Cause, Knowledge } from '../knowledge/types.ts';
import { once } from '../once.ts';
import { focusOn } from './focus.ts';
import type { Instance } from './network.ts';
import { piecesOf, type Piece } from './pieces.ts';
import type { Solution } from './posterior.ts';
import { linksOf, reason } from './reasons.ts';

const CLOSEST = 1e-9;
const logOdds = (p: number): number => {
  const q = Math.min(1 - CLOSEST, Math.max(CLOSEST, p));
  return Math.log2(q / (1 - q));
};

/** Facts smaller than this are noise to a reader. */
const LEAST_BITS = 0.05;
const MOST_FACTS = 8;

/** What can be taken away, solved without it when first asked for. `with`: beliefs with nothing removed, by the same reckoning. */
export type Removals = { readonly with: Solution['belief']; readonly removed: readonly Removed[] };
type Removed = { readonly piece: Piece; readonly without: Solution['belief'] };

/** @param troubled cylinders whose single observations are taken away one by one */
export function removalsFor(solution: Solution, troubled: readonly number[]): Removals {
  const { evidence } = solution;
  const solve = focusOn(solution);
  const removed = piecesOf(evidence, troubled).map((piece): Removed => {
    let solved: Solution | undefined;
    return { piece, without: (instance) => (solved ??= solve(piece.without)).belief(instance) };
  });
  return { with: solve(evidence).belief, removed };
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
  ends: 'group',
  middle: 'group',
  'lower plugs': 'group',
};

function circumstanceFacts(instance: Instance): Fact[] {
  return instance.moves.map(({ words, factor, because, line, about, addedBy }) => ({
    about, text: words, bits: Math.log2(factor), because, ...(line !== undefined && { lines: [line] }), ...(addedBy !== undefined && { addedBy }),
  }));
}

/** Observations elsewhere bear on a local cause only through shared ones; observations here are what its reader looks at. */
function concerns({ cylinders }: Instance, { kind, cylinders: where }: Piece): boolean {
  if (where.length === 0) return true;
  if (cylinders.length === 1) return kind !== 'alike' && where.length === 1 && where[0] === cylinders[0];
  return kind === 'alike' || !cylinders.some((n) => !where.includes(n)) || (kind === 'one' && where.every((n) => cylinders.includes(n)));
}

const sayings = ({ said }: Piece): string[] => said.map(({ finding, value }) => `${finding}=${value}`);

/** Likes on several plugs replace the single observations that they are made of. */
function withoutSingles(removed: readonly Removed[]): readonly Removed[] {
  const alike = new Set(removed.filter(({ piece }) => piece.kind === 'alike').flatMap(({ piece }) => sayings(piece)));
  return removed.filter(({ piece }) => piece.kind !== 'one' || piece.said[0]?.finding === 'symptom' || !sayings(piece).some((key) => alike.has(key)));
}

type Weighed = { readonly piece: Piece; readonly bits: number };

/** Findings taken together must say so much more than they do one by one to be told as one. Bits, chosen. */
const REPEATED = 0.5;

/** Where findings repeat each other, all of them together replace the single ones. */
function withoutRepeats(weighed: readonly Weighed[]): readonly Weighed[] {
  const alone = new Map(weighed.map(({ piece: { words }, bits }) => [words, bits]));
  const telling = weighed.filter(({ piece, bits }) => {
    if (piece.kind !== 'together') return false;
    const apart = piece.parts.reduce((sum, words) => sum + (alone.get(words) ?? 0), 0);
    return bits > 0 ? bits - Math.max(0, apart) > REPEATED : Math.min(0, apart) - bits > REPEATED;
  });
  const replaced = new Set(telling.flatMap(({ piece }) => piece.parts));
  return weighed.filter((one) => (one.piece.kind === 'together' ? telling.includes(one) : !replaced.has(one.piece.words)));
}

const round = (bits: number): number => Math.round(bits * 1000) / 1000;

type Told = Omit<Fact, 'because'> & { readonly fact: () => Fact };

/** Facts ranked by weight; only those that are told are put into words. */
function strongest(facts: readonly Told[], supports: boolean): Fact[] {
  return facts.filter(({ bits }) => bits > 0 === supports).slice(0, MOST_FACTS).map(({ fact }) => fact());
}

function factsFor(instance: Instance, removals: Removals, knowledge: Knowledge): Told[] {
  const before = logOdds(removals.with(instance));
  const weighed = withoutSingles(removals.removed.filter(({ piece }) => concerns(instance, piece)))
    .map(({ piece, without }): Weighed => ({ piece, bits: before - logOdds(without(instance)) }));
  const links = linksOf(instance.cause, knowledge.conditions);
  const findings = withoutRepeats(weighed).map(({ piece: { about, words: text, said }, bits }): Told => ({
    about, text, bits: round(bits), fact: () => ({ about, text, bits: round(bits), ...reason(links, said, bits > 0) }),
  }));
  const circumstances = circumstanceFacts(instance).map((exact): Told => {
    const fact = { ...exact, bits: round(exact.bits) };
    return { ...fact, fact: () => fact };
  });
  return [...circumstances, ...findings].filter(({ bits }) => Math.abs(bits) >= LEAST_BITS)
    .sort((a, b) => Math.abs(b.bits) - Math.abs(a.bits) || (a.text < b.text ? -1 : 1));
}

function explained(instance: Instance, { belief }: Solution, removals: Removals, knowledge: Knowledge): CauseFinding {
  const { cause, moves, group } = instance;
  const facts = factsFor(instance, removals, knowledge);
  const sources = new Set([...cause.makes, ...cause.shows, ...cause.gives, ...moves].flatMap((link) => link.source));
  return {
    id: instance.id,
    name: group === '' ? cause.name : `${cause.name} (${group})`,
    belief: belief(instance),
    scope: SCOPE[cause.scope],
    cylinders: [...instance.cylinders],
    supports: strongest(facts, true),
    speaksAgainst: strongest(facts, false),
    sources: [...sources].sort(),
  };
}

const told = new WeakMap<Removals, Map<Instance, CauseFinding>>();

/** One cause with what speaks for and against it; each weight is the change of its log-odds when the observation is taken away. */
export const explainCause = (instance: Instance, solution: Solution, removals: Removals, knowledge: Knowledge): CauseFinding =>
  once(once(told, removals, () => new Map<Instance, CauseFinding>()), instance, () => explained(instance, solution, removals, knowledge));
