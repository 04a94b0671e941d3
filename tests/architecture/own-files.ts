import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const ROOT = join(import.meta.dirname, '../..');

/** What git never sees, by .gitignore's own plain lines. */
const ignored = readFileSync(join(ROOT, '.gitignore'), 'utf8').split('\n').filter((line) => line !== '').map((line) => line.replace(/\/$/, ''));
const isIgnored = (name: string): boolean => name === '.git' || ignored.some((line) => (line.startsWith('*') ? name.endsWith(line.slice(1)) : line === name));

/** Names at the top of the tree that belong to the project. */
export const topNames = (): readonly string[] => readdirSync(ROOT).filter((name) => !isIgnored(name));

/** Every file of the project below the top, and at it, as paths with forward slashes. */
export function ownFiles(folder = ''): readonly string[] {
  return readdirSync(join(ROOT, folder), { withFileTypes: true }).filter((entry) => !isIgnored(entry.name)).flatMap((entry) => {
    const path = folder === '' ? entry.name : `${folder}/${entry.name}`;
    return entry.isDirectory() ? ownFiles(path) : [path];
  });
}

const TEXT = /[.](ts|tsx|mts|mjs|cjs|js|json|md|css|html|yml|yaml|svg|sql|txt)$|(^|\/)(LICENSE|run|[.][a-z]+)$/;

/** The project's own texts; the lock file is npm's. */
export const ownTexts = (): readonly { readonly path: string; readonly text: string }[] =>
  ownFiles().filter((path) => TEXT.test(path) && path !== 'package-lock.json').map((path) => ({ path, text: readFileSync(join(ROOT, path), 'utf8') }));
