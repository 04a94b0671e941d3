/**
 * Where the tip's working window begins and ends, °C. Sources disagree, so every limit is a soft edge: a middle and a spread within which sources lie.
 * Sources: workshop press (400), aviation service guidance (427 to 482), trade press for unleaded fuel (500), trade figures 800 to 900,
 * IMechE paper on spark-plug requirements of European engines (950, depending on fuel). Grade: published and common practice, in conflict.
 */
export type SoftEdge = { readonly middle: number; readonly from: number; readonly to: number };

/** Above it dry carbon burns off the nose in minutes; below it soot gathers. */
export const SELF_CLEANING: SoftEdge = { middle: 450, from: 360, to: 500 };
/** Above it metal and glaze suffer. */
export const TOO_HOT: SoftEdge = { middle: 850, from: 800, to: 870 };
/** Above it the tip may light the charge by itself. */
export const PRE_IGNITION: SoftEdge = { middle: 900, from: 850, to: 950 };

/** What each kind of source gives, °C. `hot`: metal or glaze suffers; `ignition`: the charge is lit. Undefined: not given. */
export type LimitsOfSource = { readonly of: LimitSource; readonly cleaning?: readonly [number, number?]; readonly hot?: number; readonly ignition?: number };
export type LimitSource = 'workshop press' | 'glossary' | 'tuned road engines' | 'motorcycles' | 'two-strokes' | 'aviation service' | 'older textbooks';
/** Grades: workshop press and aviation service published; older textbooks from memory; the others trade press. */
export const LIMITS_OF_SOURCES: readonly LimitsOfSource[] = [
  { of: 'workshop press', cleaning: [400], ignition: 900 }, { of: 'glossary', cleaning: [360], hot: 850 }, { of: 'tuned road engines', cleaning: [450], hot: 870 },
  { of: 'motorcycles', cleaning: [454], hot: 843, ignition: 927 }, { of: 'two-strokes', cleaning: [500], hot: 800 },
  { of: 'aviation service', cleaning: [427, 482] }, { of: 'older textbooks', cleaning: [350], ignition: 950 },
];
