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
