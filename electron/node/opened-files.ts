import { readFile, stat } from 'node:fs/promises';
import { basename, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { SHEET_LIMIT, type OpenedFile, type Unread } from '../../shared/channels.ts';

/** Files that the system asked the program to open, until the page takes them. */
export type OpenedFiles = {
  readonly add: (paths: readonly string[]) => void;
  /** The oldest that was not taken yet, read now; null when there is none. */
  readonly take: () => Promise<OpenedFile | null>;
};

export function openedFiles(): OpenedFiles {
  const waiting: string[] = [];
  return {
    add: (paths) => { waiting.push(...paths); },
    take: async () => {
      const path = waiting.shift();
      return path === undefined ? null : read(path);
    },
  };
}

/** The path of a file as a command line names it: a path, which may start from the present folder, or a file address. */
export function pathNamed(word: string): string {
  try {
    return word.startsWith('file:') ? fileURLToPath(word) : resolve(word);
  } catch {
    return word; // an address of no file on this machine; it will be missing
  }
}

async function read(path: string): Promise<OpenedFile> {
  const name = basename(path);
  try {
    const found = await stat(path);
    if (!found.isFile()) return { name, unread: 'not a file' };
    return found.size > SHEET_LIMIT ? { name, unread: 'too large' } : { name, text: await readFile(path, 'utf8') };
  } catch (error) {
    return { name, unread: reasonOf(error) };
  }
}

const reasonOf = (error: unknown): Unread =>
  error instanceof Error && 'code' in error && (error.code === 'ENOENT' || error.code === 'ENOTDIR') ? 'missing' : 'unreadable';
