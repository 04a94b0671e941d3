import type { CylinderCheck, PlugReading, ReadingSheet, Tip } from '../../shared/formats/reading-sheet.v1.ts';
import type { SymptomTag } from '../../shared/vocabulary/conditions.ts';
import { FACET_NAMES } from '../../shared/vocabulary/tip.ts';
import { plugKey, plugPlaces, type PlugKey, type PlugPlace } from '../domain/plugs.ts';
import { CYLINDER_FINDING_WORDS, PLUG_FINDING_WORDS } from '../domain/words.ts';
import { curesOn } from '../followup/cures-done.ts';
import { CYLINDER_FINDINGS, PLUG_FINDINGS, type CylinderFindingName, type PlugFindingName } from '../knowledge/findings.ts';
import { once } from '../once.ts';
import { cylinderBands, plugBands, type Banded } from './bands.ts';

/** One thing seen. `weights[i]` is how likely it would be reported if the i-th value of the finding were true. */
export type Observation<F extends string = string> = {
  readonly path: string;
  readonly finding: F;
  /** The value that fits best, for rules that ask for a value. */
  readonly value: string;
  readonly sure: boolean;
  /** Belief of the measuring, where a photo showed it and nobody noted it. */
  readonly photo?: number;
  readonly weights: readonly number[];
  readonly words: string;
};

export type PlugEvidence = {
  readonly key: PlugKey;
  readonly place: PlugPlace;
  readonly reading: PlugReading | undefined;
  readonly seen: readonly Observation<PlugFindingName>[];
  /** All that was seen on the plug, where some of it is left aside. */
  readonly from?: readonly Observation<PlugFindingName>[];
};
export type CylinderEvidence = {
  readonly cylinder: number;
  readonly plugs: readonly PlugEvidence[];
  readonly seen: readonly Observation<CylinderFindingName>[];
  /** Felt on this very cylinder. */
  readonly symptoms: readonly SymptomTag[];
};
export type Evidence = {
  readonly sheet: ReadingSheet;
  readonly cylinders: readonly CylinderEvidence[];
  readonly present: readonly SymptomTag[];
  readonly absent: readonly SymptomTag[];
};

/** A doubted value is taken as read in half of the cases, as any value in the other half. Expert estimate. */
const DOUBT = 0.5;

const weightsKnown = new Map<string, readonly number[]>();

/** The same list for the same value of a finding, so that what follows from it is worked out once. */
function weightsOf(finding: string, values: readonly string[], value: string, sure: boolean): readonly number[] {
  const key = `${finding}=${value} ${sure}`;
  return once(weightsKnown, key, () => values.map((v) => (sure ? 0 : DOUBT / values.length) + (v === value ? (sure ? 1 : 1 - DOUBT) : 0)));
}

const exactly = <F extends string>(
  finding: F,
  values: readonly string[],
  value: string,
  sure: boolean,
  path: string,
  words: string,
): Observation<F> => ({
  path,
  finding,
  value,
  sure,
  words,
  weights: weightsOf(finding, values, value, sure),
});

function banded<F extends string>(band: Banded<F>, values: readonly string[], path: string): Observation<F> {
  const weights = values.map((value) => band.weights[value] ?? 0);
  const value = values[weights.indexOf(Math.max(...weights))] as string;
  return { path, finding: band.finding, value, sure: true, weights, words: band.shown };
}

/** What was looked at closely outranks a glance: "looks normal" stands only for a plug of which nothing else was noted. */
function tipObservations(tip: Tip | undefined, path: string): Observation<PlugFindingName>[] {
  if (tip === undefined) return [];
  const detailed = FACET_NAMES.some((facet) => tip[facet] !== undefined);
  const doubted: readonly string[] = tip.unsure ?? [];
  return [...FACET_NAMES, 'overall' as const].flatMap((finding) => {
    const value = tip[finding];
    if (value === undefined || (detailed && value === 'looks normal')) return [];
    const sure = !doubted.includes(finding);
    return [
      exactly(
        finding,
        PLUG_FINDINGS[finding],
        value,
        sure,
        `${path}.tip.${finding}`,
        `${PLUG_FINDING_WORDS[finding]} ${value}${sure ? '' : ' (unsure)'}`,
      ),
    ];
  });
}

type SeenByPhoto = NonNullable<PlugReading['photo']>[number];

/** A value is read right with this belief, else as any value: Pearl's virtual evidence (Probabilistic Reasoning in Intelligent Systems, 1988, 2.2.2). */
function softly({ facet, value, belief }: SeenByPhoto, path: string): Observation<PlugFindingName> {
  const values: readonly string[] = PLUG_FINDINGS[facet];
  return {
    path,
    finding: facet,
    value: belief >= 0.5 ? value : '',
    sure: false,
    photo: belief,
    weights: values.map((v) => (1 - belief) / values.length + (v === value ? belief : 0)),
    words: `${PLUG_FINDING_WORDS[facet]} ${value} (photo)`,
  };
}

/**
 * What a photo shows stands for itself where nobody noted the facet, and sharpens a value that was noted with doubt. Beside a value noted for sure it would
 * only repeat what the same surface showed already, and is not counted.
 */
function withPhoto(noted: readonly Observation<PlugFindingName>[], photo: readonly SeenByPhoto[], path: string): Observation<PlugFindingName>[] {
  const shown = photo.map((one, i) => softly(one, `${path}.photo.${i}`)).filter(({ photo: belief }) => belief !== 0);
  const sharpened = noted.map((o) => {
    const again = o.sure ? undefined : shown.find(({ finding }) => finding === o.finding);
    return again === undefined ? o : { ...o, weights: o.weights.map((w, i) => w * (again.weights[i] as number)), words: `${o.words}; ${again.words}` };
  });
  return [...sharpened, ...shown.filter(({ finding }) => !noted.some((o) => o.finding === finding))];
}

function plugEvidence(place: PlugPlace, sheet: ReadingSheet): PlugEvidence {
  const index = sheet.plugs.findIndex((plug) => plug.cylinder === place.cylinder && (plug.position ?? 'only') === place.position);
  const reading = sheet.plugs[index];
  if (reading === undefined) return { key: plugKey(place.cylinder, place.position), place, reading, seen: [] };
  const path = `plugs.${index}`;
  const bands = plugBands(reading, sheet.engine).map((band) => banded(band, PLUG_FINDINGS[band.finding], `${path}.${band.field}`));
  const seen = withPhoto(tipObservations(reading.tip, path), reading.photo ?? [], path);
  return { key: plugKey(place.cylinder, place.position), place, reading, seen: [...seen, ...bands] };
}

type Tried = readonly [finding: CylinderFindingName, value: string];
const triedParts = (check: CylinderCheck): Tried[] => [
  ...(check.swaps ?? []).map(({ part, followed }): Tried => [`swap ${part}`, followed ? 'followed' : 'stayed']),
  ...(check.substitutions ?? []).map(({ part, cured }): Tried => [`known-good ${part}`, cured ? 'cured' : 'not cured']),
];

function checkObservations(check: CylinderCheck, path: string, sheet: ReadingSheet): Observation<CylinderFindingName>[] {
  const plain = (['spark', 'injector', 'speedDropWhenCut', 'borescope'] as const).flatMap((finding): Tried[] =>
    check[finding] === undefined ? [] : [[finding, check[finding]]],
  );
  const said = [...plain, ...triedParts(check)].map(([finding, value]) =>
    exactly(finding, CYLINDER_FINDINGS[finding], value, true, `${path}.${finding}`, `${CYLINDER_FINDING_WORDS[finding]} ${value}`),
  );
  const bands = cylinderBands(check, sheet).map((band) => banded(band, CYLINDER_FINDINGS[band.finding], `${path}.${band.field}`));
  return [...said, ...bands];
}

const checkOf = ({ cylinderChecks }: Pick<ReadingSheet, 'cylinderChecks'>, cylinder: number, path: string, sheet: ReadingSheet): Observation<CylinderFindingName>[] => {
  const index = cylinderChecks?.findIndex((check) => check.cylinder === cylinder) ?? -1;
  const check = cylinderChecks?.[index];
  return check === undefined ? [] : checkObservations(check, `${path}cylinderChecks.${index}`, sheet);
};

/** What a cylinder keeps until somebody works on it. How it ran and where a swapped part went tells of its day only. */
const LASTING: readonly CylinderFindingName[] = ['compression', 'compressionWet', 'leakDown', 'borescope', 'spark', 'injector'];

/** Checks of the reading before that were not made again, on a cylinder that nobody worked on since. They count as doubted values do. */
function checksThatStand(sheet: ReadingSheet, cylinder: number): Observation<CylinderFindingName>[] {
  const { since } = sheet;
  if (since === undefined || curesOn(since, cylinder).length > 0) return [];
  return checkOf(since.reading, cylinder, 'since.reading.', { ...sheet, ...since.reading })
    .filter(({ finding }) => LASTING.includes(finding))
    .map((o) => ({ ...o, sure: false, words: `${o.words} (at the reading before)`, weights: o.weights.map((w) => DOUBT / o.weights.length + (1 - DOUBT) * w) }));
}

function cylinderEvidence(cylinder: number, places: readonly PlugPlace[], sheet: ReadingSheet): CylinderEvidence {
  const checked = checkOf(sheet, cylinder, '', sheet);
  return {
    cylinder,
    plugs: places.map((place) => plugEvidence(place, sheet)),
    seen: [...checked, ...checksThatStand(sheet, cylinder).filter((old) => !checked.some(({ finding }) => finding === old.finding))],
    symptoms: (sheet.symptoms ?? []).filter((s) => s.cylinder === cylinder).map((s) => s.what),
  };
}

/** A plug read as `unknown` of two is a place of its own; its cylinder is filled up with the first holes that no reading claims. */
function placesOf(sheet: ReadingSheet): readonly PlugPlace[] {
  const holes = plugPlaces(sheet.engine);
  const read = sheet.plugs.map((plug): PlugPlace => ({ cylinder: plug.cylinder, position: plug.position ?? 'only' }));
  const claimed = holes.filter((hole) => read.some((place) => place.cylinder === hole.cylinder && place.position === hole.position));
  const strangers = read.filter((place) => !holes.some((hole) => place.position === hole.position));
  const perCylinder = sheet.engine.plugsPerCylinder ?? 1;
  return Array.from({ length: sheet.engine.cylinders }, (_, i) => i + 1).flatMap((cylinder) => {
    const of = (places: readonly PlugPlace[]): PlugPlace[] => places.filter((place) => place.cylinder === cylinder);
    const sure = [...of(claimed), ...of(strangers)];
    const spare = of(holes)
      .filter((hole) => !of(claimed).includes(hole))
      .slice(0, perCylinder - sure.length);
    return [...sure, ...spare];
  });
}

/** The sheet as observations, cylinder by cylinder. What is not in the sheet is not in here. */
export function evidenceOf(sheet: ReadingSheet): Evidence {
  const places = placesOf(sheet);
  const cylinders = [...new Set(places.map((place) => place.cylinder))].map((cylinder) =>
    cylinderEvidence(
      cylinder,
      places.filter((place) => place.cylinder === cylinder),
      sheet,
    ),
  );
  const whole = (sheet.symptoms ?? []).filter((s) => s.cylinder === undefined).map((s) => s.what);
  return { sheet, cylinders, present: [...new Set(whole)].sort(), absent: [...new Set(sheet.symptomsAbsent ?? [])].sort() };
}
