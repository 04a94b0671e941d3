import { createReadStream } from 'node:fs';
import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import type { Handlers, Output } from '../../shared/channels.ts';
import type { WhiteGiven } from '../../shared/channels-photo.ts';
import type { Result } from '../../shared/result.ts';
import type { PhotoDesk } from './photo-store/photo-desk.ts';

/** Where the pictures of an engine of the demo lie, by the engine's name; they are named `drawn-2026-02-14-cylinder-3.jpg`. */
export type DrawnPhotos = { readonly engine: string; readonly folder: string };
export type DemoPhotosGiven = { readonly handlers: Handlers; readonly desk: PhotoDesk; readonly drawn: readonly DrawnPhotos[] };

/** Where the grey card lies in every drawn picture, pixels. */
const CARD: WhiteGiven = { kind: 'patch', taken: 'grey card', x: 16, y: 16, w: 100, h: 84 };
const NAMED = /^drawn-(\d{4}-\d{2}-\d{2})-cylinder-(\d+)\.jpg$/;
/** As many as are read at the same time. */
const LANES = 2;

type Drawn = { readonly file: string; readonly name: string; readonly cylinder: number; readonly readingId: string };

/** The value of an answer. @throws when it is a refusal, which here is a bug. */
function taken<T>(reply: Result<T, unknown>): T {
  if (!reply.ok) throw new Error(JSON.stringify(reply.error));
  return reply.value;
}

/** Lays the drawn pictures beside the plugs of the demo library, measured on their grey cards; only where the library has no photo yet. */
export async function showDemoPhotos({ handlers, desk, drawn }: DemoPhotosGiven): Promise<void> {
  if (taken(await handlers['photo.library']({ offset: 0, limit: 1 })).total > 0) return;
  const engines = taken(await handlers['engine.list'](null));
  const idOf = (engine: string): string | undefined => engines.find((record) => record.engine.name === engine)?.id;
  const all = (await Promise.all(drawn.map(({ engine, folder }) => drawnFor(handlers, idOf(engine), folder)))).flat();
  const lane = async (): Promise<void> => { for (let next = all.shift(); next !== undefined; next = all.shift()) await show(handlers, desk, next); };
  await Promise.all(Array.from({ length: LANES }, lane));
}

async function drawnFor(handlers: Handlers, engineId: string | undefined, folder: string): Promise<readonly Drawn[]> {
  if (engineId === undefined) return [];
  const readings: Output<'reading.list'> = taken(await handlers['reading.list']({ engineId }));
  return (await readdir(folder)).flatMap((name): readonly Drawn[] => {
    const [, day, cylinder] = NAMED.exec(name) ?? [];
    const reading = readings.find(({ date }) => date === day);
    return reading === undefined ? [] : [{ file: join(folder, name), name, cylinder: Number(cylinder), readingId: reading.id }];
  });
}

async function show(handlers: Handlers, desk: PhotoDesk, { file, name, cylinder, readingId }: Drawn): Promise<void> {
  const { photo: { id } } = taken(await desk.bringIn({ readingId, name, body: createReadStream(file) }));
  taken(await handlers['photo.place']({ photos: [{ id, place: { cylinder, position: 'only' }, view: 'end-on', order: 0 }] }));
  taken(await handlers['photo.measure']({ id, white: CARD }));
}
