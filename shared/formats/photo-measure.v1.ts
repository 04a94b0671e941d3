import { z } from 'zod';
import { FACET_NAMES, TIP_FACETS, type FacetName } from '../vocabulary/tip.ts';
import { amount, count, oneOf, record, text } from './strict.ts';

const MOST_PIXELS = 100_000;
const share = (what: string) => amount(what, 0, 1);
const pixels = (what: string) => amount(what, -MOST_PIXELS, MOST_PIXELS);

/** In pixels of the upright picture; pixel i covers i to i + 1. */
export const photoPoint = record({ x: pixels('pixels'), y: pixels('pixels') });
export const photoCircle = record({ x: pixels('pixels'), y: pixels('pixels'), r: amount('pixels', 0, MOST_PIXELS) });
export const photoBox = record({ x: pixels('pixels'), y: pixels('pixels'), w: amount('pixels', 0, MOST_PIXELS), h: amount('pixels', 0, MOST_PIXELS) });
/** The ground electrode as a bar: its foot on the shell, its free end, its width. */
const photoBar = record({ foot: photoPoint, end: photoPoint, width: amount('pixels', 0, MOST_PIXELS) });

/** The parts of a firing end: outline of the shell, edge of its bore, end of the insulator nose, centre electrode, ground electrode. */
export const photoParts = record({
  shell: photoCircle.optional(), bore: photoCircle.optional(), nose: photoCircle.optional(),
  centreElectrode: photoCircle.optional(), groundElectrode: photoBar.optional(),
});
export type PhotoParts = z.output<typeof photoParts>;

const NEUTRALS = ['grey card', 'white paper'] as const;

const threeOf = (what: string) => z.array(amount(what, -1000, 1000)).length(3);
/** What a surface that sends back all light looks like in the picture: linear sRGB, 0 to 1 and beyond. */
const white = threeOf('linear sRGB');

/**
 * What the colours stand on. `other photo`: the reference of another photo under the same lamp. `x` to `h` where a person pointed it out in this picture.
 */
const whiteReference = z.union([
  record({ kind: z.literal('patch'), taken: z.enum(NEUTRALS), white, ...photoBox.shape }),
  record({ kind: z.literal('patch'), taken: z.literal('other photo'), white }),
  record({ kind: z.literal('estimated'), taken: z.enum(['bare metal', 'other photo']), white, ...photoBox.partial().shape }),
  record({ kind: z.literal('none') }),
]);

/** CIELAB 1976, D65, 2 degree observer, on the corrected white. `spread`: a robust standard deviation of L*, a* and b*. */
const region = record({ lab: threeOf('CIELAB'), spread: threeOf('CIELAB'), pixels: count('pixels', 1, MOST_PIXELS * MOST_PIXELS) });

const suggestionOf = (facet: FacetName) => record({ facet: z.literal(facet), value: oneOf(TIP_FACETS[facet]), belief: share('a belief'), because: text(400) });
const [first, ...others] = FACET_NAMES.map(suggestionOf);
if (first === undefined) throw new Error('there is no facet to suggest');

/** What one photo of a firing end shows. What is absent was not seen. */
export const photoMeasure = record({
  format: z.literal('corenose.photo-measure'),
  version: z.literal(1),
  image: record({ width: count('pixels', 1, MOST_PIXELS), height: count('pixels', 1, MOST_PIXELS) }),
  /** `confidence` speaks for the whole, `sure` for each part that was found and not given by a person. */
  geometry: record({
    ...photoParts.shape, confidence: share('a confidence'),
    sure: record({ shell: share('a confidence'), nose: share('a confidence'), groundElectrode: share('a confidence') }).partial().optional(),
  }),
  whiteReference,
  regions: record({ nose: region.optional(), shellRim: region.optional(), centreElectrode: region.optional(), groundElectrode: region.optional() }),
  darkCoverage: share('a share').optional(),
  gloss: share('a share').optional(),
  specks: count('specks', 0, 1_000_000).optional(),
  /** Share of the nose that could be seen; specks and coverage speak of it alone. */
  examined: share('a share').optional(),
  /** Scatter of L* on the surface without noise: smooth under 1.5, crust from 2.3. */
  grain: amount('L*', 0, 100).optional(),
  /** A change of colour along the ground electrode: where, from its free end (0) to its foot (1), and how strong. */
  heatLine: record({ along: share('a share'), contrast: amount('CIELAB', 0, 300) }).optional(),
  /** Shares of the nose that are overexposed or nearly black, and how far (dE00) the metal on the two sides differs in hue and chroma: light of two colours. */
  light: record({ clipped: share('a share'), dark: share('a share'), mixed: amount('dE00', 0, 200).optional() }).optional(),
  suggests: z.array(z.union([first, ...others])),
  doubts: z.array(text(400)),
});

export type PhotoMeasure = z.output<typeof photoMeasure>;
