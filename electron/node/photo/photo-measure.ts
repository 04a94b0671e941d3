import type { RegionColour } from '../../../core/photo/regions.ts';
import type { PhotoMeasure } from '../../../shared/formats/photo-measure.v1.ts';
import type { MeasuredPhoto, PointedOut } from './photo-job.ts';

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
export function photoMeasureOf({ width, height, colour, pages, scale, measurement }: MeasuredPhoto, { neutral }: PointedOut): PhotoMeasure {
  const { tip, confidence, doubts } = measurement;
  const circle = ({ x, y, r }: { x: number; y: number; r: number }) => ({ x: rounded(x / scale, 1), y: rounded(y / scale, 1), r: rounded(r / scale, 1) });
  const reference = tip?.reference ?? { kind: 'none' as const };
  return {
    format: 'corenose.photo-measure', version: 1, image: { width, height },
    geometry: { ...(tip && { shell: circle(tip.geometry.shell), nose: circle(tip.geometry.nose) }), confidence: rounded(confidence, 3) },
    whiteReference: reference.kind === 'patch' ? { ...reference, ...(neutral ?? { x: 0, y: 0, w: 0, h: 0 }) } : reference,
    regions: Object.fromEntries(Object.entries(tip?.regions ?? {}).map(([name, region]) => [name, regionOf(region)])),
    ...(tip && { darkCoverage: rounded(tip.darkCoverage, 3) }),
    ...(tip?.gloss !== undefined && { gloss: rounded(tip.gloss, 3) }),
    ...(tip?.specks !== undefined && { specks: tip.specks }),
    suggests: [...(tip?.suggestions ?? [])],
    doubts: [...doubtsOfFile({ colour, pages }), ...doubts],
  };
}
