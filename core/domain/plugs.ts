import type { Engine } from '../../shared/formats/engine.ts';
import { POSITIONS, type Position } from '../../shared/vocabulary/engine.ts';

/** One plug hole of an engine. */
export type PlugPlace = { readonly cylinder: number; readonly position: Position };

/** `3` with one plug in the cylinder, `3 upper` with two. Stable; used as the key of a plug everywhere. */
export type PlugKey = string;

export const plugKey = (cylinder: number, position: Position = 'only'): PlugKey => (position === 'only' ? `${cylinder}` : `${cylinder} ${position}`);

/** The two positions of a twin-plug engine: those its ignition sets name, else upper and lower. */
export function twinPositions(engine: Engine): readonly Position[] {
  const named = engine.ignition?.sets?.flatMap((set) => set.plugs.map((plug) => plug.position)) ?? [];
  const known = POSITIONS.filter((position) => position !== 'only' && position !== 'unknown' && named.includes(position));
  return known.length === 2 ? known : ['upper', 'lower'];
}

/** The positions of the plugs in every cylinder of an engine, in tray order. */
export const positionsInCylinder = (engine: Engine): readonly Position[] => (engine.plugsPerCylinder === 2 ? twinPositions(engine) : ['only']);

/** Every plug hole in tray order: by cylinder number, then by position. */
export function plugPlaces(engine: Engine): readonly PlugPlace[] {
  const positions = positionsInCylinder(engine);
  return Array.from({ length: engine.cylinders }, (_, i) => i + 1).flatMap((cylinder) => positions.map((position) => ({ cylinder, position })));
}
