import type { Engine } from '../../shared/formats/engine.ts';
import type { Layout } from '../../shared/vocabulary/engine.ts';

const cylinderNumbers = (engine: Engine): readonly number[] => Array.from({ length: engine.cylinders }, (_, i) => i + 1);

/**
 * The layout as recorded, else the one that is safe to suppose (common practice, no source): a lone cylinder is single, four, six or eight
 * cylinders of an aircraft lie flat, two to four cylinders of anything else stand in line. `undefined` where nothing is safe to suppose.
 */
export function supposedLayout({ layout, cylinders, use }: Engine): Layout | undefined {
  if (layout) return layout;
  if (cylinders === 1) return 'single';
  if (use === 'aircraft') return [4, 6, 8].includes(cylinders) ? 'flat' : undefined;
  return cylinders <= 4 ? 'inline' : undefined;
}

/** A straight run of cylinders over one head or one side of the crankcase. `derived` when the record does not say so itself. */
export type Row = { readonly cylinders: readonly number[]; readonly derived: boolean };

/**
 * The cylinder rows of an engine, every cylinder exactly once: the banks of the record in their own order, with a last row for cylinders they leave
 * out. Without banks, vee and flat engines, and radials of more than nine cylinders, get odd numbers in the first row and even numbers in the second
 * (common practice; some makers number one bank through and then the other: record the banks then). All others, and all unknown, are one row.
 */
export function cylinderRows(engine: Engine): readonly Row[] {
  const all = cylinderNumbers(engine);
  if (engine.banks?.length) {
    const left = all.filter((n) => !engine.banks?.flat().includes(n));
    const rest = left.length > 0 ? [{ cylinders: left, derived: true }] : [];
    return [...engine.banks.map((cylinders) => ({ cylinders, derived: false })), ...rest];
  }
  const layout = supposedLayout(engine);
  const split = layout === 'vee' || layout === 'flat' || (layout === 'radial' && engine.cylinders > 9);
  if (!split || all.length < 2) return [{ cylinders: all, derived: true }];
  return [1, 0].map((odd) => ({ cylinders: all.filter((n) => n % 2 === odd), derived: true }));
}

/** Cylinders in one straight line, where there are first, last and middle ones: not in a radial, nor where the layout cannot be supposed. */
export function straightRows(engine: Engine): readonly Row[] {
  const layout = supposedLayout(engine);
  const straight = layout === 'inline' || layout === 'vee' || layout === 'flat' || (layout === undefined && engine.banks?.length);
  return straight ? cylinderRows(engine) : [];
}

/**
 * First and last cylinders of every straight row of three or more, and those between them: a manifold fed in the middle, or a coolant path from end to
 * end, shows as ends against middle. Both empty where there is no such row.
 */
export function endsAndMiddle(engine: Engine): { readonly ends: readonly number[]; readonly middle: readonly number[] } {
  const rows = straightRows(engine).map((row) => row.cylinders).filter((row) => row.length >= 3);
  const isEnd = (row: readonly number[], i: number): boolean => i === 0 || i === row.length - 1;
  return { ends: rows.flatMap((row) => row.filter((_, i) => isEnd(row, i))), middle: rows.flatMap((row) => row.filter((_, i) => !isEnd(row, i))) };
}
