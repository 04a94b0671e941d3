import type { TipMeasurement, TipSeen } from '../../../core/photo/measure-tip.ts';
import { LEAST_STRAP, partsOf, partsScaled, type Parts } from '../../../core/photo/parts.ts';
import type { Circle, Point } from '../../../core/photo/pixels.ts';
import type { RegionColour } from '../../../core/photo/regions.ts';
import type { Balance } from '../../../core/photo/white.ts';
import type { PhotoMeasure, PhotoParts } from '../../../shared/formats/photo-measure.v1.ts';
import type { DecodedPhoto } from './decode.ts';
import type { PointedOut } from './pointed-out.ts';

/** A photo measured; lengths in it are pixels of the picture at working size, `scale` of those of the whole. */
export type MeasuredPhoto = Pick<DecodedPhoto, 'width' | 'height' | 'colour' | 'pages'> & { readonly scale: number; readonly measurement: TipMeasurement };

const COLOUR_DOUBTS: Record<MeasuredPhoto['colour'], string | undefined> = {
  yes: undefined,
  greyscale: 'the picture is grey; its colours were not judged',
  cmyk: 'the picture is made for print (CMYK), which shifts colours; they were not judged',
  transparent: 'the picture is partly transparent; its colours were not judged',
};

const rounded = (value: number, digits: number): number => Math.round(value * 10 ** digits) / 10 ** digits;
const regionOf = ({ lab, spread, pixels }: RegionColour): PhotoMeasure['regions']['nose'] =>
  ({ lab: lab.map((value) => rounded(value, 2)), spread: spread.map((value) => rounded(value, 2)), pixels });

const doubtsOfFile = ({ colour, pages }: Pick<MeasuredPhoto, 'colour' | 'pages'>): readonly string[] =>
  [COLOUR_DOUBTS[colour], pages > 1 ? `the file holds ${pages} pictures; the first was measured` : undefined].filter((line) => line !== undefined);

/** A measured photo in the open format, in pixels of the whole upright picture. */
export function photoMeasureOf({ width, height, colour, pages, scale, measurement }: MeasuredPhoto, { white, parts }: PointedOut): PhotoMeasure {
  const { tip, confidence, doubts } = measurement;
  return {
    format: 'corenose.photo-measure', version: 1, image: { width, height },
    geometry: { ...(tip && geometryOf(tip.geometry, scale, parts)), confidence: rounded(confidence, 3) },
    whiteReference: tip ? referenceOf(tip.balance, white) : { kind: 'none' },
    regions: Object.fromEntries(Object.entries(tip?.regions ?? {}).map(([name, region]) => [name, regionOf(region)])),
    ...(tip && numbersOf(tip)),
    suggests: [...(tip?.suggestions ?? [])],
    doubts: [...doubtsOfFile({ colour, pages }), ...doubts],
  };
}

function geometryOf(geometry: TipSeen['geometry'], scale: number, given: PhotoParts = {}): Omit<PhotoMeasure['geometry'], 'confidence'> {
  const { shell, nose, strap, noseFitted } = geometry;
  const sure = {
    ...(given.shell === undefined && { shell: rounded(shell.share, 2) }), ...(given.nose === undefined && { nose: noseFitted ? rounded(nose.share, 2) : 0 }),
    ...(given.groundElectrode === undefined && { groundElectrode: rounded(Math.min(1, Math.max(0, (strap.score - LEAST_STRAP) / 0.35)), 2) }),
  };
  return { ...partsRounded(partsScaled(partsOf(geometry), 1 / scale)), sure };
}

const tenth = (value: number): number => rounded(value, 1);
const pointRounded = ({ x, y }: Point): Point => ({ x: tenth(x), y: tenth(y) });
const circleRounded = ({ x, y, r }: Circle): Circle => ({ x: tenth(x), y: tenth(y), r: tenth(r) });
function partsRounded({ shell, bore, nose, centreElectrode, groundElectrode: bar }: Parts): PhotoParts {
  return {
    ...(shell && { shell: circleRounded(shell) }), ...(bore && { bore: circleRounded(bore) }), ...(nose && { nose: circleRounded(nose) }),
    ...(centreElectrode && { centreElectrode: circleRounded(centreElectrode) }),
    ...(bar && { groundElectrode: { foot: pointRounded(bar.foot), end: pointRounded(bar.end), width: tenth(bar.width) } }),
  };
}

function referenceOf({ reference, white }: Balance, given: PointedOut['white']): PhotoMeasure['whiteReference'] {
  if (reference.kind === 'none') return reference;
  const light = white.map((part) => rounded(part, 5));
  const box = given === undefined || given.kind === 'light' ? undefined : { x: given.x, y: given.y, w: given.w, h: given.h };
  if (reference.kind === 'estimated') return { ...reference, white: light, ...(given?.kind === 'metal' && box) };
  return reference.taken === 'other photo' || box === undefined ? { kind: 'patch', taken: 'other photo', white: light } : { kind: 'patch', taken: reference.taken, white: light, ...box };
}

function numbersOf({ darkCoverage, gloss, specks, grain, examined, heatLine, light }: TipSeen): Partial<PhotoMeasure> {
  return {
    darkCoverage: rounded(darkCoverage, 3), examined: rounded(examined, 3),
    light: { clipped: rounded(light.clipped, 3), dark: rounded(light.dark, 3), ...(light.mixed !== undefined && { mixed: rounded(light.mixed, 1) }) },
    ...(gloss !== undefined && { gloss: rounded(gloss, 3) }), ...(specks !== undefined && { specks }), ...(grain !== undefined && { grain: rounded(grain, 2) }),
    ...(heatLine && { heatLine: { along: rounded(heatLine.along, 2), contrast: rounded(heatLine.contrast, 1) } }),
  };
}
