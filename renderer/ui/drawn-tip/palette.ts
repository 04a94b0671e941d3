import { SURFACE, SURROUND } from '../../../core/photo/design-colours.ts';
import { hexFromLinear, linearFromLab, mixLight, underLight, type Lab, type LinearRgb } from '../../../core/photo/lab.ts';
import type { FacetValue } from '../../../shared/vocabulary/tip.ts';

/** The colour tables here are design estimates, as the table of surfaces they draw on. */
export type Tone = LinearRgb;
export const tone = (lab: Lab): Tone => linearFromLab(lab);
export const hex = hexFromLinear;
export const lit = (colour: Tone, factor: number): string => hexFromLinear(underLight(colour, factor));
export const mixed = (one: Tone, other: Tone, share: number): Tone => mixLight(one, other, share);

export const GROUND = hex(tone(SURROUND));
/** What was looked at is drawn in ink; what was not, in chalk. */
export const INK = hex(tone([13, 0, 0]));
export const CHALK = hex(tone([84, 0, 0]));
export const SHADOW = hex(tone([7, 0, 0]));
export const SHINE = hex(tone([98, 0, 0]));
export const DEPTH = tone([20, 0, 1]);

export const STEEL = tone(SURFACE.steel);
export const NICKEL = tone([68, 0.4, 4]);
export const COPPER = tone([56, 11, 18]);
export const BLUE_TEMPER = tone([45, 2, -30]);
export const PURPLE_TEMPER = tone([43, 22, -20]);
export const STRAW_TEMPER = tone([66, 8, 34]);
export const CERAMIC = tone(SURFACE.cleanCeramic);
export const SOOT = tone(SURFACE.soot);
export const WET = tone([30, 0, -2]);
export const FRESH_BREAK = tone([95, 0, 2]);
export const GREASE = tone([62, 2, 22]);
export const VERDIGRIS = tone([60, -20, 4]);

export const NOSE_TONE: Readonly<Record<FacetValue<'noseColour'>, Tone>> = {
  white: tone(SURFACE.chalkWhite),
  'light grey': tone(SURFACE.grey),
  'light tan': tone(SURFACE.tan),
  brown: tone(SURFACE.brown),
  'dark brown': tone(SURFACE.darkBrown),
  'dark grey': tone(SURFACE.darkGrey),
  black: tone(SURFACE.soot),
  yellow: tone([74, 4, 44]),
  reddish: tone(SURFACE.rust),
  greenish: tone([70, -13, 14]),
};

export const DEPOSIT_TONE: Readonly<Record<FacetValue<'deposit'>, Tone>> = {
  none: tone(SURFACE.cleanCeramic),
  'light dusting': tone([76, 3, 11]),
  'carbon of unknown kind': tone([22, 0.4, 1]),
  'heavy tan': tone([60, 9, 25]),
  'dry soot': tone(SURFACE.soot),
  'wet oil': tone(SURFACE.wetOil),
  'wet fuel': tone([44, 0, -3]),
  'wet of unknown kind': tone([34, 0, -1]),
  'hard carbon': tone([12, 0, 0]),
  'ash crust': tone(SURFACE.ash),
  'lead beads': tone(SURFACE.leadBead),
  'lead film': tone([66, 0, 17]),
  'lead of unknown form': tone(SURFACE.leadGrey),
  glaze: tone(SURFACE.glaze),
  'metal spray': tone([66, 0, -1]),
  water: tone([72, -5, -9]),
  'rust-coloured film': tone(SURFACE.rust),
};
