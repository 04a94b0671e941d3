import type { PhotoMeasure } from '../../shared/formats/photo-measure.v1.ts';
import type { Lab } from './lab.ts';
import { MIXED_FROM } from './mixed-light.ts';
import { tintDifference, tintOf } from './tint.ts';

/** A photo as far as it bears on comparing it with another of the same plug. */
export type Comparable = {
  readonly measure: PhotoMeasure | null;
  readonly colour: 'yes' | 'greyscale' | 'cmyk' | 'transparent';
  readonly view: string;
  /** Maker and model as the file names them; null where it does not. */
  readonly camera: string | null;
};

/** What stands against comparing colours. */
export type Hindrance = 'not measured' | 'no plug found' | 'no colour' | 'no white' | 'mixed light' | 'overexposed' | 'other view';

export type PartName = keyof PhotoMeasure['regions'];
/**
 * `difference`: CIEDE2000 of hue and chroma, both at one lightness. `uncertainty`: what 9 of 10 unchanged plugs stay below. `lightness`: change of L*,
 * only where both whites were pointed out.
 */
export type PartDifference = {
  readonly part: PartName;
  readonly difference: number;
  readonly uncertainty: number;
  readonly changed: boolean;
  readonly lightness?: number;
};
/** A share of the nose, earlier and later; `changed` beyond what the measuring itself errs by. */
export type ShareChange = { readonly before: number; readonly after: number; readonly changed: boolean };

export type Compared = {
  readonly hindrances: readonly Hindrance[];
  /** Empty where colours cannot be compared. */
  readonly parts: readonly PartDifference[];
  readonly coverage?: ShareChange;
  readonly otherCamera: boolean;
};

const PARTS = ['nose', 'shellRim', 'groundElectrode', 'centreElectrode'] as const satisfies readonly PartName[];
const LEAST_CONFIDENCE = 0.45;
const TOO_CLIPPED = 0.1;

/**
 * What one photo adds, so that two with a card in them come to 3.7: the 9-of-10 error of a change of hue and chroma on generated pictures of unchanged
 * plugs (16 pairs). Bare metal: middle of the 3 to 7 expected on real shells (estimate).
 */
const PER_PHOTO = { patch: 3.7 / Math.SQRT2, estimated: 5 };
/** Another camera renders colours its own way: median error of a phone's vivid processing with a grey card, on generated pictures. */
const OTHER_CAMERA = 5;
/** Below this no change is called one, however good the light: unchanged plugs read up to 3.8. */
const LEAST_CHANGE = 4;
/** Worst error of partly covered noses on generated pictures. */
export const COVERAGE_ERROR = 0.2;

function hindrancesOf({ measure, colour }: Comparable): readonly Hindrance[] {
  if (measure === null) return ['not measured'];
  const { geometry, whiteReference, light } = measure;
  const all: readonly (readonly [Hindrance, boolean])[] = [
    ['no plug found', geometry.confidence < LEAST_CONFIDENCE], ['no colour', colour !== 'yes'], ['no white', colour === 'yes' && whiteReference.kind === 'none'],
    ['mixed light', (light?.mixed ?? 0) > MIXED_FROM], ['overexposed', (light?.clipped ?? 0) > TOO_CLIPPED],
  ];
  return all.filter(([, holds]) => holds).map(([name]) => name);
}

const labOf = ([lightness = 0, a = 0, b = 0]: readonly number[]): Lab => [lightness, a, b];

function partDifference(part: PartName, before: PhotoMeasure, after: PhotoMeasure, otherCamera: boolean): PartDifference | undefined {
  const [one, other] = [before.regions[part], after.regions[part]];
  const kinds = [before.whiteReference.kind, after.whiteReference.kind];
  if (one === undefined || other === undefined) return undefined;
  const difference = tintDifference(tintOf(labOf(one.lab)), tintOf(labOf(other.lab)));
  const uncertainty = Math.hypot(...kinds.map((kind) => (kind === 'patch' ? PER_PHOTO.patch : PER_PHOTO.estimated)), otherCamera ? OTHER_CAMERA : 0);
  const lit = kinds.every((kind) => kind === 'patch');
  return {
    part, difference, uncertainty, changed: difference >= Math.max(LEAST_CHANGE, uncertainty),
    ...(lit && { lightness: (other.lab[0] ?? 0) - (one.lab[0] ?? 0) }),
  };
}

function coverageChange(before: PhotoMeasure | null, after: PhotoMeasure | null): ShareChange | undefined {
  const [one, other] = [before?.darkCoverage, after?.darkCoverage];
  return one === undefined || other === undefined ? undefined : { before: one, after: other, changed: Math.abs(other - one) > COVERAGE_ERROR };
}

/**
 * How two photos of one plug differ, part by part. Colours are compared only where the light of both allows it; what stands against it is named.
 * Dark coverage needs no colour and is compared wherever both were measured.
 */
export function compared(before: Comparable, after: Comparable): Compared {
  const view: readonly Hindrance[] = before.view === after.view ? [] : ['other view'];
  const hindrances = [...new Set([...view, ...hindrancesOf(before), ...hindrancesOf(after)])];
  const otherCamera = before.camera !== null && after.camera !== null && before.camera !== after.camera;
  const { measure: one } = before;
  const { measure: other } = after;
  const parts = hindrances.length > 0 || one === null || other === null ? [] : PARTS.flatMap((part) => partDifference(part, one, other, otherCamera) ?? []);
  const coverage = hindrances.includes('other view') || hindrances.includes('no plug found') ? undefined : coverageChange(one, other);
  return { hindrances, parts, ...(coverage && { coverage }), otherCamera };
}
