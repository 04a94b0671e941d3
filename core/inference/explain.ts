import type { CauseFinding, Fact } from '../../shared/formats/findings.v1.ts';
import type { Scope } from '../../shared/vocabulary/verdicts.ts';
import type { Cause, Knowledge } from '../knowledge/types.ts';
import { focusOn } from './focus.ts';
import type { Instance } from './network.ts';
import { piecesOf, type Piece, type Said } from './pieces.ts';
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

/** All removals, solved once and shared by every cause's explanation. `with`: beliefs with nothing removed, by the same reckoning. */
export type Removals = { readonly with: Solution['belief']; readonly removed: readonly Removed[] };
type Removed = { readonly piece: Piece; readonly without: Solution['belief'] };

/** @param troubled cylinders whose single observations are taken away one by one */
export function removalsFor(solution: Solution, troubled: readonly number[]): Removals {
  const { evidence } = solution;
  const solve = focusOn(solution);
  return { with: solve(evidence).belief, removed: piecesOf(evidence, troubled).map((piece) => ({ piece, without: solve(piece.without).belief })) };
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

type Weighed = { readonly piece: Piece; readonly bits: number };

/** Likes on several plugs replace the single observations that they are made of. */
function withoutSingles(weighed: readonly Weighed[]): readonly Weighed[] {
  const key = ({ finding, value }: Said): string => `${finding}=${value}`;
  const alike = new Set(weighed.filter(({ piece }) => piece.kind === 'alike').flatMap(({ piece }) => piece.said.map(key)));
  return weighed.filter(({ piece }) => piece.kind !== 'one' || piece.said[0]?.finding === 'symptom' || !piece.said.some((said) => alike.has(key(said))));
}

/** Findings taken together must say so much more than they do one by one to be told as one. Bits, chosen. */
const REPEATED = 0.5;

/** Where findings repeat each other, all of them together replace the single ones. */
function withoutRepeats(weighed: readonly Weighed[]): readonly Weighed[] {
  const telling = weighed.filter(({ piece, bits }) => {
    if (piece.kind !== 'together') return false;
    const apart = weighed.filter((other) => piece.parts.includes(other.piece.words)).reduce((sum, other) => sum + other.bits, 0);
    return bits > 0 ? bits - Math.max(0, apart) > REPEATED : Math.min(0, apart) - bits > REPEATED;
  });
  const replaced = new Set(telling.flatMap(({ piece }) => piece.parts));
  return weighed.filter((one) => (one.piece.kind === 'together' ? telling.includes(one) : !replaced.has(one.piece.words)));
}

const round = (bits: number): number => Math.round(bits * 1000) / 1000;

/** One cause with what speaks for and against it; each weight is the change of its log-odds when the observation is taken away. */
export function explainCause(instance: Instance, solution: Solution, removals: Removals, knowledge: Knowledge): CauseFinding {
  const belief = solution.belief(instance);
  const before = logOdds(removals.with(instance));
  const weighed = removals.removed
    .filter(({ piece }) => concerns(instance, piece))
    .map(({ piece, without }): Weighed => ({ piece, bits: before - logOdds(without(instance)) }));
  const links = linksOf(instance.cause, knowledge.conditions);
  const facts = withoutRepeats(withoutSingles(weighed)).map(({ piece, bits }): Fact => ({
    about: piece.about, text: piece.words, bits, ...reason(links, piece.said, bits > 0),
  }));
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
