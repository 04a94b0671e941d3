import { z } from 'zod';
import { FACET_NAMES, TIP_FACETS, type FacetName } from '../vocabulary/tip.ts';
import { amount, count, oneOf, record, text } from './strict.ts';

const MOST_PIXELS = 100_000;
const share = (what: string) => amount(what, 0, 1);
const pixels = (what: string) => amount(what, -MOST_PIXELS, MOST_PIXELS);

/** In pixels of the upright picture; pixel i covers i to i + 1. */
const circle = record({ x: pixels('pixels'), y: pixels('pixels'), r: amount('pixels', 0, MOST_PIXELS) });

const whiteReference = z.discriminatedUnion('kind', [
  record({
    kind: z.literal('patch'), taken: z.enum(['grey card', 'white paper']),
    x: pixels('pixels'), y: pixels('pixels'), w: amount('pixels', 0, MOST_PIXELS), h: amount('pixels', 0, MOST_PIXELS),
  }),
  record({ kind: z.literal('estimated'), taken: z.literal('bare metal') }),
  record({ kind: z.literal('none') }),
]);

const threeOf = (what: string) => z.array(amount(what, -1000, 1000)).length(3);

/** CIELAB 1976, D65, 2 degree observer, on the corrected white. `spread`: a robust standard deviation of L*, a* and b*. */
const region = record({ lab: threeOf('CIELAB'), spread: threeOf('CIELAB'), pixels: count('pixels', 1, MOST_PIXELS * MOST_PIXELS) });

const suggestionOf = (facet: FacetName) => record({ facet: z.literal(facet), value: oneOf(TIP_FACETS[facet]), belief: share('a belief') });
const [first, ...others] = FACET_NAMES.map(suggestionOf);
if (first === undefined) throw new Error('there is no facet to suggest');

/** What one photo of a firing end shows. What is absent was not seen. */
export const photoMeasure = record({
  format: z.literal('corenose.photo-measure'),
  version: z.literal(1),
  image: record({ width: count('pixels', 1, MOST_PIXELS), height: count('pixels', 1, MOST_PIXELS) }),
  geometry: record({ shell: circle.optional(), nose: circle.optional(), confidence: share('a confidence') }),
  whiteReference,
  regions: record({ nose: region.optional(), shellRim: region.optional(), centreElectrode: region.optional(), groundElectrode: region.optional() }),
  darkCoverage: share('a share').optional(),
  gloss: share('a share').optional(),
  specks: count('specks', 0, 1_000_000).optional(),
  suggests: z.array(z.union([first, ...others])),
  doubts: z.array(text(400)),
});

export type PhotoMeasure = z.output<typeof photoMeasure>;
