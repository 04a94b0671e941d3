import type { PlugReading } from '../../shared/formats/reading-sheet.v1.ts';
import type { PlugKey } from '../domain/plugs.ts';
import { sharingGroups, type SharingGroup } from '../domain/sharing.ts';
import { treatmentOf } from '../followup/treated.ts';
import { movedKey } from '../knowledge/line-keys.ts';
import { MOVES, PRIORS, STRENGTHS } from '../knowledge/strengths.ts';
import type { Cause, Knowledge } from '../knowledge/types.ts';
import { applies, holds } from './circumstances.ts';
import type { Evidence } from './evidence.ts';
import { sitesFor } from './sites.ts';

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

function movesFor(cause: Cause, evidence: Evidence, plugs: readonly PlugReading[], sites: number): AppliedMove[] {
  return cause.moved.flatMap((link) => {
    const { by, how } = link;
    if (holds(by, evidence.sheet, plugs) !== true) return [];
    const factor = MOVES[how];
    const spread = 'fitted' in by || factor < 1 ? 1 : Math.min(sites, Math.sqrt(factor));
    return [{ ...link, words: circumstanceWords(by), factor: factor / spread, line: movedKey(cause.id, link), about: 'conditions' }];
  });
}

/** A circumstance in words, as the explanation shows it. */
function circumstanceWords(by: Cause['moved'][number]['by']): string {
  const [name, value] = Object.entries(by)[0] as [string, unknown];
  const said = Array.isArray(value) ? value.join(' or ') : String(value);
  return name === 'tag' ? said : `${name}: ${said}`;
}

function instancesOf(cause: Cause, groups: readonly SharingGroup[], evidence: Evidence): Instance[] {
  if (!applies(cause.needs, evidence.sheet)) return [];
  const sites = sitesFor(cause.scope, groups, evidence);
  return sites.map((site) => {
    const readings = evidence.cylinders
      .flatMap((c) => c.plugs)
      .filter((plug) => site.plugs.includes(plug.key))
      .flatMap((plug) => plug.reading ?? []);
    const treatment = treatmentOf({ cause, ...site }, evidence.sheet);
    const moves = [...movesFor(cause, evidence, readings, sites.length), ...(treatment === undefined ? [] : [treatment])];
    const prior = probability(moves.reduce((o, move) => o * move.factor, odds(PRIORS[cause.prior])));
    const place = site.group || (cause.scope === 'plug' ? site.plugs.join() : site.cylinders.length === 1 ? `${site.cylinders[0]}` : '');
    return { id: place === '' ? cause.id : `${cause.id} @ ${place}`, cause, ...site, prior: Math.min(0.98, Math.max(1e-7, prior)), moves };
  });
}

/** Lays the knowledge over this engine: every cause at every place where it can act. */
export function networkFor(knowledge: Knowledge, evidence: Evidence): Network {
  const groups = sharingGroups(evidence.sheet.engine);
  const instances = knowledge.causes.flatMap((cause) => instancesOf(cause, groups, evidence)).sort((a, b) => (a.id < b.id ? -1 : 1));
  const local = new Map(
    evidence.cylinders.map((c) => [c.cylinder, instances.filter((i) => i.cylinders.length === 1 && i.cylinders[0] === c.cylinder)]),
  );
  return { knowledge, evidence, shared: instances.filter((i) => i.cylinders.length > 1), local };
}

/** The probability a strength word stands for. */
export const strengthOf = (link: { readonly strength: keyof typeof STRENGTHS }): number => STRENGTHS[link.strength];
