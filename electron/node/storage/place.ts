import { join, resolve } from 'node:path';
import envPaths from 'env-paths';

/** Where this program keeps its own data on this platform, by the platform's convention. */
export const dataFolder = (): string => envPaths('Corenose', { suffix: '' }).data;

/** The library folder: the one asked for, else the one in `CORENOSE_LIBRARY`, else a folder in the platform's place for data. */
export function libraryFolder(asked: string | undefined, environment: { readonly CORENOSE_LIBRARY?: string | undefined }): string {
  const chosen = asked ?? environment.CORENOSE_LIBRARY;
  return chosen === undefined || chosen === '' ? join(dataFolder(), 'library') : resolve(chosen);
}

export type Places = {
  readonly folder: string;
  readonly file: string;
  readonly lock: string;
  readonly backups: string;
  /** Damaged files that a backup was put in the place of. */
  readonly setAside: string;
  /** Originals of photos, byte for byte, by their digest. */
  readonly photos: string;
  /** Photos in the sizes in which they are shown: made anew where they are missing. */
  readonly pictures: string;
  /** A library of its own inside this one. */
  readonly demo: string;
};

/** What lies in a library folder. */
export const placesIn = (folder: string): Places => ({
  folder,
  file: join(folder, 'library.sqlite'),
  lock: join(folder, 'in-use.lock'),
  backups: join(folder, 'backups'),
  setAside: join(folder, 'set-aside'),
  photos: join(folder, 'photos'),
  pictures: join(folder, 'pictures'),
  demo: join(folder, 'demo'),
});
