import { CYLINDER_FINDINGS, HEALTHY_CYLINDER, type CylinderFindingName } from '../knowledge/findings.ts';
import type { Cause } from '../knowledge/types.ts';
import { markOf, reportProbability, restProbability, type Mark } from './appearance.ts';
import type { CylinderEvidence, Observation } from './evidence.ts';
import { turns, type Roster } from './roster.ts';

const MOVED = 0.9;
/**
 * A fault moves with the part that carries it, and stays when another part is exchanged. Follows from what a swap is;
 * 1 in 10 swaps misleads (expert estimate).
 */
function triedLinks(cause: Cause, finding: CylinderFindingName): { is: string; p: number }[] {
  const [how, part] = finding.split(' ');
  if (cause.harmless || (how !== 'swap' && how !== 'known-good')) return [];
  const [yes, no] = how === 'swap' ? ['followed', 'stayed'] : ['cured', 'not cured'];
  return cause.part === part
    ? [
        { is: yes, p: MOVED },
        { is: no, p: 0.97 - MOVED },
      ]
    : [
        { is: no, p: 0.94 },
        { is: yes, p: 0.03 },
      ];
}

/** What a cause does to one finding on its cylinder. */
export function cylinderMark(cause: Cause, seen: Observation<CylinderFindingName>): Mark {
  const values: readonly string[] = CYLINDER_FINDINGS[seen.finding];
  const authored = markOf(
    cause.shows.filter((link) => link.finding === seen.finding),
    values,
    seen.weights,
  );
  return triedLinks(cause, seen.finding).reduce(
    (mark, { is, p }) => ({ mark: mark.mark + p, report: mark.report + p * (seen.weights[values.indexOf(is)] ?? 0) }),
    authored,
  );
}

/** P(report) with nothing wrong, for a finding on a cylinder. */
export const cylinderRest = (seen: Observation<CylinderFindingName>): number =>
  restProbability(
    seen.weights,
    CYLINDER_FINDINGS[seen.finding].map((v) => (HEALTHY_CYLINDER[seen.finding] as Readonly<Record<string, number>>)[v] ?? 0),
  );

/** Whether a cause leaves a mark on anything that was found on the cylinder. */
export const marksAny = (cause: Cause, { seen }: CylinderEvidence): boolean => seen.some((one) => cylinderMark(cause, one).mark > 0);

/**
 * Probability of what was found on a cylinder, whatever two states of its roster are switched. Symptoms do not bear on it.
 * `table`: by two causes that turn, row by row of `width`, the last standing for none. `turned`: by state, the cause that it turns.
 */
export type Found = { readonly table: Float64Array; readonly width: number; readonly turned: Uint16Array };

/** The table of one finding alone. */
export function tableOf(seen: Observation<CylinderFindingName>, { switches }: Roster): Float64Array {
  const rest = cylinderRest(seen);
  const marks = switches.map(({ instance }) => cylinderMark(instance.cause, seen));
  const marking = marks.flatMap(({ mark }, o) => (mark > 0 ? [o] : []));
  const based = marking.filter((o) => switches[o]?.base.there);
  const under = (...changed: readonly number[]): number => {
    const there = [...based.filter((o) => !changed.includes(o)), ...changed.filter((o) => !based.includes(o))];
    return reportProbability(rest, there.map((o) => marks[o] as Mark));
  };
  const width = switches.length + 1;
  const alone = new Float64Array(width).fill(under());
  for (const o of marking) alone[o] = under(o);
  const table = new Float64Array(width * width);
  for (let o = 0; o < width; o += 1) {
    if ((marks[o]?.mark ?? 0) > 0) table.fill(alone[o] as number, o * width, (o + 1) * width);
    else table.set(alone, o * width);
  }
  for (const o of marking) for (const p of marking) if (o !== p) table[o * width + p] = under(o, p);
  return table;
}

/** @param tables the tables of all that was found on the cylinder */
export function foundOn(tables: readonly Float64Array[], roster: Roster): Found {
  const width = roster.switches.length + 1;
  const table = new Float64Array(width * width).fill(1);
  for (const one of tables) for (let at = 0; at < table.length; at += 1) table[at] = (table[at] as number) * (one[at] as number);
  return { table, width, turned: Uint16Array.from(roster.states, (_, v) => (turns(roster, v) ? (roster.owners[v] as number) : width - 1)) };
}

/** Probability of what was found under states a and b, -1 for none. */
export function foundUnder({ table, width, turned }: Found, a: number, b: number): number {
  return table[(a < 0 ? width - 1 : (turned[a] as number)) * width + (b < 0 ? width - 1 : (turned[b] as number))] as number;
}
