import type { Condition } from '../knowledge/types.ts';
import type { Cylinder, Frame, Table } from './cylinder.ts';
import type { PlugSum } from './plug-sum.ts';
import type { Damping } from './symptoms.ts';

/** One signed term of the symptom sum, as one cylinder sees it. */
export type Term = {
  readonly part: number;
  readonly coefficient: number;
  readonly damping: Damping;
  readonly sums: readonly PlugSum[];
  readonly table: Table;
};

export type SolvedCylinder = {
  readonly cylinder: Cylinder;
  readonly frame: Frame;
  readonly conditions: readonly Condition[];
  readonly terms: readonly Term[];
  /** Weight that the rest of the engine gives to each shared set, by part of the symptom sum; divided by the total. */
  readonly outside: readonly Float64Array[];
};

/** Calls `visit` for every counted world of one cylinder with its probability. */
export function forEachWorld(
  { terms, outside }: Pick<SolvedCylinder, 'terms' | 'outside'>,
  visit: (shared: number, local: number, probability: number) => void,
): void {
  const starts = terms[0]?.table.starts ?? new Uint32Array(1);
  for (let s = 0; s + 1 < starts.length; s += 1) {
    const start = starts[s] as number;
    for (let at = start; at < (starts[s + 1] as number); at += 1) {
      let p = 0;
      for (const term of terms) p += term.coefficient * (outside[term.part]?.[s] as number) * (term.table.values[at] as number);
      visit(s, at - start, p);
    }
  }
}
