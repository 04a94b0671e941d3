import type { ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import type { ElectrodeMetal, GapReading } from './gap-growth.ts';

/** The gaps of one set of plugs over its life, as its readings noted them. */
export type GapSet = {
  /** Running length of the readings: 1000 km, or hours where nobody noted kilometres. */
  readonly unit: '1000 km' | 'h';
  /** Mean gap of the plugs measured at each reading, the earliest first; the gap when new counts as one at 0. */
  readonly readings: readonly GapReading[];
  readonly metal: ElectrodeMetal | undefined;
  /** mm, when new; undefined where nobody noted it. */
  readonly newGap: number | undefined;
  /** Day of the last reading. */
  readonly until: string | undefined;
};

/** Silver wears no slower than nickel as far as was found, so it is taken for nickel. Grade: guess. */
const METAL = { nickel: 'nickel', silver: 'nickel', platinum: 'platinum', iridium: 'iridium' } as const;

type Noted = { readonly sheet: ReadingSheet; readonly unit: GapSet['unit']; readonly at: number; readonly gap: number };

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

function noted(sheet: ReadingSheet): readonly Noted[] {
  const { distanceKm, hours } = sheet.conditions ?? {};
  const gaps = sheet.plugs.flatMap(({ measured }) => (measured?.gapMm === undefined ? [] : [measured.gapMm]));
  const length = distanceKm === undefined ? hours : distanceKm / 1000;
  return gaps.length === 0 || length === undefined ? [] : [{ sheet, unit: distanceKm === undefined ? 'h' : '1000 km', at: length, gap: mean(gaps) }];
}

function setOf(readings: readonly Noted[]): readonly GapSet[] {
  const last = readings.at(-1);
  if (last === undefined) return [];
  const fitted = readings.flatMap(({ sheet }) => sheet.plugs.flatMap((plug) => plug.fitted ?? []));
  const newGap = fitted.find(({ gapNewMm }) => gapNewMm !== undefined)?.gapNewMm;
  const electrode = fitted.find((plug) => plug.electrode !== undefined)?.electrode;
  const points = readings.map(({ at, gap }) => ({ at, gap }));
  return [{
    unit: last.unit, newGap, until: last.sheet.date?.slice(0, 10), metal: electrode && METAL[electrode],
    readings: newGap === undefined || points.some(({ at }) => at === 0) ? points : [{ at: 0, gap: newGap }, ...points],
  }];
}

/** Whether a reading is of other plugs than the one before: new plugs were noted, the running length fell, or it is noted in another unit. */
const isOtherSet = (before: Noted, { sheet, unit, at }: Noted): boolean =>
  (sheet.conditions?.tags ?? []).includes('plugs new') || unit !== before.unit || at < before.at;

/** The sets of plugs that an engine's readings tell of, the present one last. @param sheets kept readings, the oldest first */
export function gapSets(sheets: readonly ReadingSheet[]): readonly GapSet[] {
  const sets: Noted[][] = [];
  for (const one of sheets.flatMap(noted)) {
    const open = sets.at(-1);
    const before = open?.at(-1);
    if (open === undefined || before === undefined || isOtherSet(before, one)) sets.push([one]);
    else open.push(one);
  }
  return sets.flatMap(setOf);
}
