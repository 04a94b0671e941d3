import type { Engine } from '../../shared/formats/engine.ts';
import { plugKey, plugPlaces, type PlugKey } from './plugs.ts';
import { cylinderRows, straightRows, supposedLayout } from './rows.ts';

/** Plugs that share a part, so that one fault can reach them all. `derived`: worked out from layout, firing order or usual practice, not recorded. */
export type SharingGroup = {
  readonly kind: 'bank' | 'mixture group' | 'coil' | 'ignition set' | 'neighbours';
  readonly name: string;
  readonly cylinders: readonly number[];
  readonly plugs: readonly PlugKey[];
  readonly derived: boolean;
};

type Cylinders = { readonly cylinders: readonly number[]; readonly derived: boolean };

const MIXTURE_PART = {
  carburettor: 'carburettor', 'throttle-body injection': 'throttle body', 'port injection': 'mixture group', 'direct injection': 'mixture group', 'gas mixer': 'gas mixer',
} as const;

const joined = (cylinders: readonly number[]): string =>
  cylinders.length === 1 ? `cylinder ${cylinders[0]}` : `cylinders ${cylinders.slice(0, -1).join(', ')} and ${cylinders.at(-1)}`;

/** Rows of an engine that has more than one: a single row is the whole engine and tells nothing beyond it. A radial's rows count only as recorded. */
function banks(engine: Engine): readonly Cylinders[] {
  const rows = cylinderRows(engine);
  if (rows.length < 2 || (supposedLayout(engine) === 'radial' && !engine.banks?.length)) return [];
  return rows;
}

const distinctPairs = (pairs: readonly (readonly [number, number])[]): readonly (readonly number[])[] =>
  [...new Map(pairs.map(([a, b]) => [`${Math.min(a, b)}-${Math.max(a, b)}`, [Math.min(a, b), Math.max(a, b)]])).values()];

/**
 * Pairs side by side: as recorded in `adjacent`, else along each straight row. None in a radial, nor in an aircraft engine that is not known to be
 * liquid-cooled, whose cylinders stand apart under heads of their own (common practice).
 */
function neighbours(engine: Engine): readonly Cylinders[] {
  if (engine.adjacent) return distinctPairs(engine.adjacent).map((cylinders) => ({ cylinders, derived: false }));
  if (engine.use === 'aircraft' && engine.cooling !== 'liquid') return [];
  return straightRows(engine).flatMap(({ cylinders }) => cylinders.slice(1).map((n, i) => ({ cylinders: [cylinders[i] ?? n, n], derived: true })));
}

/** Two cylinders half a cycle apart, one on compression while the other is on exhaust. Even counts only. */
function halfCyclePairs(firingOrder: readonly number[]): readonly (readonly number[])[] {
  const half = firingOrder.length / 2;
  if (!Number.isInteger(half)) return [];
  return firingOrder.slice(0, half).map((n, i) => [n, firingOrder[i + half] ?? n].sort((a, b) => a - b)).sort((a, b) => (a[0] ?? 0) - (b[0] ?? 0));
}

/** Without a firing order: cylinders that lie mirrored in a symmetrical crank, which every usual order of these engines pairs. */
function mirrorPairs(engine: Engine): readonly (readonly number[])[] {
  const n = engine.cylinders;
  const symmetrical = n === 2 || (supposedLayout(engine) === 'inline' && !engine.banks?.length && (n === 4 || n === 6));
  return symmetrical ? Array.from({ length: n / 2 }, (_, i) => [i + 1, n - i]) : [];
}

/**
 * Cylinders on one coil: as recorded, else each its own with a coil per cylinder or a lone cylinder, all on one behind a distributor, half-cycle pairs with
 * wasted spark. Other kinds, and distributors or pairs with two plugs a cylinder, are wired too variously to be derived.
 */
function coils(engine: Engine): readonly Cylinders[] {
  const { ignition, cylinders } = engine;
  if (!ignition) return [];
  if (ignition.groups) return ignition.groups.map((group) => ({ cylinders: group, derived: false }));
  const derived = (groups: readonly (readonly number[])[]): readonly Cylinders[] => groups.map((group) => ({ cylinders: group, derived: true }));
  const all = Array.from({ length: cylinders }, (_, i) => i + 1);
  if (ignition.kind === 'coil per cylinder') return derived(all.map((n) => [n]));
  if (engine.plugsPerCylinder === 2) return [];
  if (cylinders === 1) return derived([[1]]);
  if (ignition.kind === 'wasted spark') return derived(engine.firingOrder ? halfCyclePairs(engine.firingOrder) : mirrorPairs(engine));
  return ignition.kind === 'breaker points' || ignition.kind === 'electronic distributor' ? derived([all]) : [];
}

/** Magnetos or coil packs as recorded. Never derived: which magneto fires which plug differs from engine to engine, uppers and lowers are usually crossed. */
function ignitionSets(engine: Engine): readonly SharingGroup[] {
  return (engine.ignition?.sets ?? []).map((set) => ({
    kind: 'ignition set',
    name: set.name,
    cylinders: [...new Set(set.plugs.map((plug) => plug.cylinder))],
    plugs: set.plugs.map((plug) => plugKey(plug.cylinder, plug.position)),
    derived: false,
  }));
}

/**
 * Every group of plugs that share a part, in a fixed order: banks, mixture groups, coils, ignition sets, neighbours. Mixture groups and ignition sets come
 * from the record only. A group of one cylinder is that cylinder's own part. A plug whose position was not noted ('unknown') stands in no group's `plugs`;
 * it belongs to the groups of its cylinder other than ignition sets.
 */
export function sharingGroups(engine: Engine): readonly SharingGroup[] {
  const places = plugPlaces(engine);
  const groups = (kind: SharingGroup['kind'], found: readonly Cylinders[], name: (cylinders: readonly number[]) => string): readonly SharingGroup[] =>
    found.map(({ cylinders, derived }) => ({
      kind,
      name: name(cylinders),
      cylinders,
      plugs: places.filter((place) => cylinders.includes(place.cylinder)).map((place) => plugKey(place.cylinder, place.position)),
      derived,
    }));
  const mixture = (engine.mixture?.groups ?? []).map((cylinders) => ({ cylinders, derived: false }));
  return [
    ...groups('bank', banks(engine), (cylinders) => `bank of ${joined(cylinders)}`),
    ...groups('mixture group', mixture, (cylinders) => `${MIXTURE_PART[engine.mixture?.kind ?? 'carburettor']} of ${joined(cylinders)}`),
    ...groups('coil', coils(engine), (cylinders) => `coil of ${joined(cylinders)}`),
    ...ignitionSets(engine),
    ...groups('neighbours', neighbours(engine), joined),
  ];
}
