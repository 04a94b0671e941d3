import { describe, expect, it } from 'vitest';
import { ownFiles, ownTexts, topNames } from './own-files.ts';

const AT_THE_TOP = [
  'README.md', 'DEVELOPERS.md', 'LICENSE', 'package.json', 'package-lock.json', 'tsconfig.json', 'core', 'docs', 'electron', 'renderer', 'seeds', 'shared', 'tests',
];
/** Names that tools or conventions ask for. */
const GIVEN_NAMES = ['README.md', 'DEVELOPERS.md', 'LICENSE'];
const kebab = /^[a-z0-9]+(-[a-z0-9]+)*([.][a-z0-9]+(-[a-z0-9]+)*)*$/;

describe('the tree', () => {
  it('holds at its top only what a newcomer expects; every other configuration lives in the folder it serves', () => {
    expect(topNames().filter((name) => !name.startsWith('.') && !AT_THE_TOP.includes(name))).toEqual([]);
  });

  it('names every file and folder in kebab-case', () => {
    const names = ownFiles().flatMap((path) => path.split('/')).filter((name) => !name.startsWith('.') && !GIVEN_NAMES.includes(name));
    expect([...new Set(names.filter((name) => !kebab.test(name)))]).toEqual([]);
  });

  it('refers to nothing outside itself', () => {
    const outside = /\bshared\/(design|reference)\b|\/work\/|\/tmp\/brief|\bissue #?\d+\b/i;
    expect(ownTexts().filter(({ path, text }) => path !== 'tests/architecture/layout.test.ts' && outside.test(text)).map(({ path }) => path)).toEqual([]);
  });

  it('leaves no note that something is still to be done', () => {
    const note = /\b(TODO|FIXME|XXX|HACK)\b/;
    expect(ownTexts().filter(({ path, text }) => path !== 'tests/architecture/layout.test.ts' && note.test(text)).map(({ path }) => path)).toEqual([]);
  });
});
