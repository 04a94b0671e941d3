import type { PlugReading } from '../../shared/formats/reading-sheet.v1.ts';
import type { PlugKey } from '../domain/plugs.ts';
import { sharingGroups } from '../domain/sharing.ts';
import { treatmentOf } from '../followup/treated.ts';
import { movedKey } from '../knowledge/line-keys.ts';
import { MOVES, PRIORS, STRENGTHS } from '../knowledge/strengths.ts';
import type { Cause, CauseScope, Knowledge } from '../knowledge/types.ts';
import { once } from '../once.ts';
import { applies, holds } from './circumstances.ts';
import type { CylinderEvidence, Evidence } from './evidence.ts';
import { sitesFor, type Site } from './sites.ts';

/** A cause at one place of this engine: the mixture of one carburettor, the rings of cylinder 3, the plug in 2 upper. */
export type Instance = {
  readonly id: string;
  readonly cause: Cause;
  /** The group's name, or empty. */
  readonly group: string;
  readonly cylinders: readonly number[];
  readonly plugs: readonly PlugKey[];
  /** Probability before anything is seen, circumstances counted. */
  readonly prior: number;
  readonly moves: readonly AppliedMove[];
};
/** `line`: the line of the knowledge that moved it; none for a cure that was carried out. `about`: where on the sheet it stands. */
export type AppliedMove = Pick<Cause['moved'][number], 'because' | 'source' | 'addedBy'> & {
  readonly words: string; readonly factor: number; readonly line?: string; readonly about: string;
};

export type Network = {
  readonly knowledge: Knowledge;
  readonly evidence: Evidence;
  /** Causes that reach more than one cylinder, in id order. */
  readonly shared: readonly Instance[];
  /** Causes of one cylinder and its plugs, by cylinder, in id order. */
  readonly local: ReadonlyMap<number, readonly Instance[]>;
};

const odds = (p: number): number => p / (1 - p);
const probability = (o: number): number => o / (1 + o);

function moveFor(cause: Cause, link: Cause['moved'][number], sites: number): AppliedMove {
  const { by, how } = link;
  const factor = MOVES[how];
  const spread = 'fitted' in by || factor < 1 ? 1 : Math.min(sites, Math.sqrt(factor));
  return { ...link, words: circumstanceWords(by), factor: factor / spread, line: movedKey(cause.id, link), about: 'conditions' };
}

/** Circumstances of single plugs are asked at every place, all others once. */
const ofPlugs = ({ by }: Cause['moved'][number]): boolean => 'fitted' in by || 'position' in by;

/** A circumstance in words, as the explanation shows it. */
function circumstanceWords(by: Cause['moved'][number]['by']): string {
  const [name, value] = Object.entries(by)[0] as [string, unknown];
  const said = Array.isArray(value) ? value.join(' or ') : String(value);
  return name === 'tag' ? said : `${name}: ${said}`;
}

type Reached = Site & { readonly readings: readonly PlugReading[] };

function withReadings(sites: readonly Site[], { cylinders }: Evidence): Reached[] {
  const readings = new Map(cylinders.flatMap((c) => c.plugs.map(({ key, reading }) => [key, reading])));
  return sites.map((site) => ({ ...site, readings: site.plugs.flatMap((key) => readings.get(key) ?? []) }));
}

const placeName = ({ scope }: Cause, { group, cylinders, plugs }: Site): string =>
  group || (scope === 'plug' ? plugs.join() : cylinders.length === 1 ? `${cylinders[0]}` : '');

function instancesOf(cause: Cause, sites: readonly Reached[], { sheet }: Evidence): Instance[] {
  if (!applies(cause.needs, sheet)) return [];
  const links = cause.moved.filter((link) => ofPlugs(link) || holds(link.by, sheet, []) === true)
    .map((link) => ({ link, move: moveFor(cause, link, sites.length) }));
  return sites.map(({ readings, ...site }) => {
    const moved = links.filter(({ link }) => !ofPlugs(link) || holds(link.by, sheet, readings) === true).map(({ move }) => move);
    const treatment = treatmentOf({ cause, ...site }, sheet);
    const moves = treatment === undefined ? moved : [...moved, treatment];
    const prior = probability(moves.reduce((o, move) => o * move.factor, odds(PRIORS[cause.prior])));
    const place = placeName(cause, site);
    return { id: place === '' ? cause.id : `${cause.id} @ ${place}`, cause, ...site, prior: Math.min(0.98, Math.max(1e-7, prior)), moves };
  });
}

/** Lays the knowledge over this engine: every cause at every place where it can act. */
export function networkFor(knowledge: Knowledge, evidence: Evidence): Network {
  const groups = sharingGroups(evidence.sheet.engine);
  const sites = new Map<CauseScope, Reached[]>();
  const reached = (scope: CauseScope): Reached[] => once(sites, scope, () => withReadings(sitesFor(scope, groups, evidence), evidence));
  const instances = knowledge.causes.flatMap((cause) => instancesOf(cause, reached(cause.scope), evidence)).sort((a, b) => (a.id < b.id ? -1 : 1));
  const local = new Map<number, Instance[]>(evidence.cylinders.map(({ cylinder }) => [cylinder, []]));
  for (const instance of instances) if (instance.cylinders.length === 1) local.get(instance.cylinders[0] as number)?.push(instance);
  return { knowledge, evidence, shared: instances.filter((i) => i.cylinders.length > 1), local };
}

const alike = <T>(one: readonly T[], other: readonly T[], same: (a: T, b: T) => boolean): boolean =>
  one.length === other.length && one.every((a, i) => same(a, other[i] as T));
const equal = <T>(a: T, b: T): boolean => a === b;

const samePlace = (a: Instance, b: Instance): boolean =>
  a.cause === b.cause && a.id === b.id && a.prior === b.prior && alike(a.cylinders, b.cylinders, equal) && alike(a.plugs, b.plugs, equal);

/** The same plugs, and the same was found on the cylinder, whatever its values. */
const sameHoles = (a: CylinderEvidence, b: CylinderEvidence): boolean =>
  a.cylinder === b.cylinder && alike(a.plugs, b.plugs, (one, other) => one.key === other.key) &&
  alike(a.seen, b.seen, (one, other) => one.finding === other.finding);

/** Whether the same causes can act alike at the same places of two readings, whatever was seen there. */
export const standsAs = (one: Network, other: Network): boolean =>
  alike(one.evidence.cylinders, other.evidence.cylinders, sameHoles) && alike(one.shared, other.shared, samePlace) &&
  [...one.local].every(([cylinder, instances]) => alike(instances, other.local.get(cylinder) ?? [], samePlace));

/** The probability a strength word stands for. */
export const strengthOf = (link: { readonly strength: keyof typeof STRENGTHS }): number => STRENGTHS[link.strength];
