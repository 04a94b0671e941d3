import type { FacetValue } from '../../../shared/vocabulary/tip.ts';
import { apart, beads, crumbs, drops, edge, film, gloss, hatch, noneSign, places, stipple, type Work } from './marks.ts';
import { CHALK, DEPOSIT_TONE, hex, INK, lit, SHADOW, type Tone } from './palette.ts';
import { dashes, hair, line } from './pen.ts';
import { group, path, short, type Shape } from './shape.ts';
import { stone } from './curve.ts';

type Deposit = FacetValue<'deposit'>;

/** What lies on the nose. The surface shows through where the thing itself is thin. */
export function deposit(value: Deposit, work: Work): Shape[] {
  const colour = DEPOSIT_TONE[value];
  switch (value) {
    case 'none': return [noneSign(work.pen, work.site.signs[0])];
    case 'light dusting': return [
      film(work, hex(colour), 0.28),
      stipple(work, 620, 0.24, lit(colour, 1.2), 0.8),
      stipple(work, 220, 0.2, lit(colour, 0.5), 0.5),
    ];
    case 'heavy tan': return [...shore(work, lit(colour, 0.4)), film(work, lit(colour, 0.85)), ...crumbs(work, 170, 0.8, colour)];
    case 'dry soot': return [film(work, hex(colour), 0.96), stipple(work, 520, 0.36, SHADOW, 0.55), stipple(work, 420, 0.22, lit(colour, 3.2), 0.5)];
    case 'hard carbon': return [film(work, hex(colour)), ...plates(work, colour)];
    case 'carbon of unknown kind': return [film(work, hex(colour), 0.82), hatch(work, 1, CHALK, 0.6)];
    case 'wet oil': return [...shore(work, lit(colour, 3.4)), film(work, hex(colour), 0.97), gloss(work, 0.9), ...drops(work, apart(work, 12), 1, colour)];
    case 'wet fuel': return [film(work, hex(colour), 0.3), gloss(work, 0.6), ...drops(work, apart(work, 44), 1.15, colour)];
    case 'wet of unknown kind': return [film(work, hex(colour), 0.6), hatch(work, 1, CHALK, 0.5), gloss(work, 0.85)];
    case 'water': return [...drops(work, apart(work, 34), 2, colour), gloss(work, 0.3)];
    default: return mineral(value, work, colour);
  }
}

function mineral(value: Deposit, work: Work, colour: Tone): Shape[] {
  switch (value) {
    case 'ash crust': return [film(work, lit(colour, 0.55), 0.9), ...crumbs(work, 300, 1.05, colour)];
    case 'lead beads': return beads(work, apart(work, 60), 1.35, colour);
    case 'lead film': return [...shore(work, lit(colour, 0.3)), film(work, hex(colour), 0.86), gloss(work, 0.32)];
    case 'lead of unknown form': return [film(work, hex(colour), 0.7), hatch(work, 1, INK, 0.45), ...beads(work, apart(work, 12), 1, colour)];
    case 'glaze': return [...shore(work, lit(colour, 0.3)), film(work, hex(colour), 0.92), gloss(work, 1)];
    case 'metal spray': return [
      film(work, lit(colour, 0.55), 0.28),
      stipple(work, 420, 0.34, lit(colour, 1.3)),
      stipple(work, 200, 0.3, SHADOW, 0.7),
      ...beads(work, apart(work, 70), 0.85, colour),
    ];
    default: return [film(work, hex(colour), 0.88), stipple(work, 320, 0.34, lit(colour, 1.35), 0.6), stipple(work, 220, 0.3, lit(colour, 0.45), 0.6)];
  }
}

const shore = (work: Work, stroke: string): Shape[] => [edge(work, { ...line(work.pen, 2.4, stroke), strokeOpacity: 0.85 })];

const PLATE_TONES = [0.8, 1.5, 2.3, 3.1] as const;

function plates(work: Work, colour: Tone): Shape[] {
  const size = work.pen.coarse * work.site.grain;
  const shapes = places(work, 90).map((point) => stone(point, size * work.luck.between(1, 2.1), 0.3, work.luck, 5));
  return PLATE_TONES.map((light, tone) => path(shapes.filter((_, i) => i % PLATE_TONES.length === tone).join(''), {
    fill: lit(colour, light), stroke: lit(colour, 7), strokeWidth: short(0.5 * work.pen.unit), strokeOpacity: 0.8,
  }));
}

/** Something covers the nose so far, but nobody has said what it is: its shore and strokes, no colour. */
export const unnamedCover = (work: Work): Shape[] =>
  [group({}, [edge(work, { ...hair(work.pen), strokeDasharray: dashes(work.pen, 4, 3) }), hatch(work, 0.9, INK, 0.55)])];
