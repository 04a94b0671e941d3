import { plugKey, plugPlaces, type PlugKey, type PlugPlace } from '../../core/domain/plugs.ts';
import { POSITIONS, type Position } from '../../shared/vocabulary/engine.ts';
import type { PlugReading, ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';

export const keyOf = (plug: { readonly cylinder: number; readonly position?: Position | undefined }): PlugKey => plugKey(plug.cylinder, plug.position);

const isPosition = (word: string): word is Position => (POSITIONS as readonly string[]).includes(word);

/** The place a key names; undefined when it is not a key. */
export function placeOf(key: PlugKey): PlugPlace | undefined {
  const [number = '', word = 'only'] = key.split(' ');
  const cylinder = Number(number);
  return Number.isInteger(cylinder) && cylinder > 0 && isPosition(word) ? { cylinder, position: word } : undefined;
}

export const plugAt = (sheet: ReadingSheet, key: PlugKey): PlugReading | undefined => sheet.plugs.find((plug) => keyOf(plug) === key);

/** Every place the tray shows, in tray order: the plugs of the sheet as they are named there, and the holes of the engine that it leaves out. */
export function sheetPlaces(sheet: ReadingSheet): readonly PlugPlace[] {
  const perCylinder = sheet.engine.plugsPerCylinder ?? 1;
  const named = new Set(sheet.plugs.map(keyOf));
  const kept: PlugPlace[] = sheet.plugs.map(({ cylinder, position }) => ({ cylinder, position: position ?? 'only' }));
  for (const place of plugPlaces(sheet.engine)) {
    const there = kept.filter((other) => other.cylinder === place.cylinder).length;
    if (there < perCylinder && !named.has(keyOf(place))) kept.push(place);
  }
  return kept.sort(inTrayOrder);
}

export const inTrayOrder = (a: PlugPlace, b: PlugPlace): number =>
  a.cylinder - b.cylinder || POSITIONS.indexOf(a.position) - POSITIONS.indexOf(b.position);
