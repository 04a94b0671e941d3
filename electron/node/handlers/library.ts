import { DEFAULT_SETTINGS, type AppInfo, type Handlers } from '../../../shared/channels.ts';
import { ok } from '../../../shared/result.ts';
import { readSettings, writeSettings } from '../storage/settings.ts';
import { writes, type Given } from './given.ts';

type Group = Pick<Handlers, 'app.info' | 'settings.get' | 'settings.save' | 'library.use' | 'library.recover'>;

/** What the program is, which library is open, and how the person wants to see it. */
export function libraryHandlers(given: Given): Group {
  const { shelf, about } = given;
  const info = (): AppInfo => ({ ...about, library: shelf.state() });
  return {
    'app.info': async () => ok(info()),
    'settings.get': async () => {
      const db = shelf.readable();
      return ok(db.ok ? await readSettings(db.value) : DEFAULT_SETTINGS);
    },
    'settings.save': writes(given, async (db, settings) => {
      await writeSettings(db, settings);
      return ok(settings);
    }),
    'library.use': async ({ kind }) => {
      await shelf.use(kind);
      return ok(info());
    },
    'library.recover': async ({ backup }) => {
      const done = await shelf.recover(backup);
      return done.ok ? ok(info()) : done;
    },
  };
}
