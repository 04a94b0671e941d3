import { randomUUID } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { KNOWLEDGE } from '../../core/knowledge/index.ts';
import type { AppInfo, LibraryState } from '../../shared/channels.ts';
import { fillWithSeeds } from './demo.ts';
import { showDemoPhotos } from './demo-photos.ts';
import { diagnoseSheet, firstLookAt, KNOWLEDGE_VERSION } from './diagnosing.ts';
import { openDoor, type Door } from './door.ts';
import { handlersFor } from './handlers/index.ts';
import { answerPhotos, type PhotoAnswer, type PhotoAsked } from './photo-route.ts';
import type { PhotoProcess } from './photo/photo-process.ts';
import { PhotoReader } from './photo/photo-reader.ts';
import { PhotoDesk } from './photo-store/photo-desk.ts';
import { openShelf } from './library-shelf.ts';
import { openedFiles, type OpenedFiles } from './opened-files.ts';

export type ProgramGiven = {
  readonly host: AppInfo['host'];
  readonly version: string;
  readonly folder: string;
  readonly kind: LibraryState['kind'];
  readonly log: (line: string) => void;
  /** The folder `seeds` of the program, where the pictures of the demo lie. */
  readonly seeds: string;
  /** Files that this host was asked to open, where it can be. */
  readonly opened?: OpenedFiles;
  /** Starts a process that decodes photos, in the way of this host. */
  readonly startPhotoProcess: () => PhotoProcess;
};

export type Program = {
  readonly door: Door;
  /** Answers a request below `/photos/` that the host has made sure comes from our own page. */
  readonly photos: (asked: PhotoAsked) => Promise<PhotoAnswer>;
  readonly library: () => LibraryState;
  readonly close: () => Promise<void>;
};

/** How sheets are judged. */
const JUDGING = { firstLook: firstLookAt, diagnose: diagnoseSheet, knowledge: KNOWLEDGE };

/** The program behind a page: libraries, handlers and the door, with the real clock, ids and knowledge. */
export async function openProgram({ host, version, folder, kind, log, seeds, opened = openedFiles(), startPhotoProcess }: ProgramGiven): Promise<Program> {
  const clock = (): Date => new Date();
  const fillDemo = async (db: Parameters<typeof fillWithSeeds>[0]): Promise<void> => {
    const { SEEDS } = await import('../../seeds/index.ts');
    await fillWithSeeds(db, SEEDS, {
      at: clock().toISOString(), newId: randomUUID, diagnose: diagnoseSheet, begun: () => log('Diagnosing the readings of the demo library, this once ...'),
    });
  };
  const shelf = await openShelf({ folder, clock, fillDemo }, kind);
  const about = { version, host, knowledge: KNOWLEDGE_VERSION };
  const reader = new PhotoReader({ start: startPhotoProcess });
  const desk = new PhotoDesk({ shelf, clock, newId: randomUUID, reader });
  await desk.tidy();
  reader.warm();
  const handlers = handlersFor({ shelf, clock, newId: randomUUID, photos: desk, opened, about, ...JUDGING });
  const withPhotos = async (): Promise<void> => {
    if (shelf.state().kind !== 'demo' || !shelf.writable().ok) return;
    const { SEEDS } = await import('../../seeds/index.ts');
    const drawn = SEEDS.flatMap(({ name, photos }) => (photos === undefined ? [] : [{ engine: name, folder: join(seeds, photos, 'photos') }]));
    await showDemoPhotos({ handlers, desk, drawn }).catch((error: unknown) => log(`The pictures of the demo could not be shown: ${String(error)}`));
  };
  await withPhotos();
  const use: typeof handlers['library.use'] = async (input) => {
    const reply = await handlers['library.use'](input);
    await withPhotos();
    return reply;
  };
  const door = openDoor({ ...handlers, 'library.use': use }, log);
  return {
    door,
    photos: (asked) => answerPhotos(desk, asked, log),
    library: shelf.state,
    close: async () => {
      reader.close();
      await door.quiet();
      shelf.close();
    },
  };
}

/** The version in the package file at the root of the program. */
export const programVersion = (packageFile: URL): string => (JSON.parse(readFileSync(packageFile, 'utf8')) as { version: string }).version;
