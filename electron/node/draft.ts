import { plugKey, plugPlaces } from '../../core/domain/plugs.ts';
import type { Engine } from '../../shared/formats/engine.ts';
import { parseReadingSheet, type PlugReading, type ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import type { Problem } from '../../shared/formats/strict.ts';
import type { Result } from '../../shared/result.ts';

const holdsAny = (part: object | undefined): boolean => part !== undefined && Object.values(part).some((value) => value !== undefined);

/** Whether anything was seen, measured or noted on this plug. */
export const isRead = ({ tip, measured, note }: PlugReading): boolean => holdsAny(tip) || holdsAny(measured) || (note ?? '') !== '';

/** An empty sheet with one entry a plug hole, in tray order. What was fitted is taken from the reading before, as nobody changes plugs to read them. */
export function newDraft(engine: Engine, before: ReadingSheet | undefined, today: string): ReadingSheet {
  const fitted = new Map(before?.plugs.map((plug) => [plugKey(plug.cylinder, plug.position), plug.fitted]));
  const plugs = plugPlaces(engine).map(({ cylinder, position }): PlugReading => {
    const known = fitted.get(plugKey(cylinder, position));
    return { cylinder, ...(position === 'only' ? {} : { position }), ...(known === undefined ? {} : { fitted: known }) };
  });
  return { format: 'corenose.reading-sheet', version: 1, date: today, engine, plugs };
}

/**
 * The same sheet on another state of its engine: plug holes that are new get an empty entry, holes that are gone lose theirs if nothing was read there,
 * and a reading before that has no place on it any more is left out; it stays in the log.
 * @returns the problems when something was read where the engine now has no place.
 */
export function onEngine(sheet: ReadingSheet, engine: Engine): Result<ReadingSheet, Problem[]> {
  const places = plugPlaces(engine).map(({ cylinder, position }) => plugKey(cylinder, position));
  const entries = new Map(sheet.plugs.map((plug) => [plugKey(plug.cylinder, plug.position), plug]));
  const there = newDraft(engine, undefined, '').plugs.map((empty) => entries.get(plugKey(empty.cylinder, empty.position)) ?? empty);
  const elsewhere = [...entries].filter(([key, plug]) => !places.includes(key) && isRead(plug)).map(([, plug]) => plug);
  const fitted = { ...sheet, engine, plugs: [...there, ...elsewhere] };
  const parsed = parseReadingSheet(fitted);
  if (parsed.ok || sheet.since === undefined || parsed.error.some(({ path }) => !path.startsWith('since.'))) return parsed;
  const { since: _, ...alone } = fitted;
  return parseReadingSheet(alone);
}
