import { createHash } from 'node:crypto';
import { expect, it } from 'vitest';
import { ownTexts } from './own-files.ts';
import { TRADE_NAME_DIGESTS } from './trade-names.ts';

const digest = (word: string): string => createHash('sha256').update(word).digest('hex').slice(0, 12);

/** Words of the texts whose digest is listed, each with a file it stands in. */
function named(texts: readonly { readonly path: string; readonly text: string }[], digests: ReadonlySet<string>): readonly string[] {
  const places = new Map<string, string>();
  for (const { path, text } of texts) for (const word of text.toLowerCase().match(/[a-z]{3,}/g) ?? []) places.set(word, path);
  return [...places].filter(([word]) => digests.has(digest(word))).map(([word, path]) => `${word} in ${path}`);
}

it('names no real maker of plugs, engines or vehicles: demo data and examples live in an invented trade', () => {
  expect(named(ownTexts(), TRADE_NAME_DIGESTS)).toEqual([]);
});

it('would notice a name whatever its case and whatever stands beside it', () => {
  const text = 'plug "MARLISSE_1300"';
  expect(named([{ path: 'note.md', text }], new Set([digest('marlisse')]))).toEqual(['marlisse in note.md']);
});
