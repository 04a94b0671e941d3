import { describe, expect, it } from 'vitest';
import { parseShopLines } from '../../../shared/formats/shop-lines.v1.ts';

const says = { kind: 'makes', of: 'rings-worn', condition: 'fuel-wet', strength: 'rarely' };
const line = { id: 'a', on: true, by: 'Ann', because: 'Seen here.', says };
const file = (...lines: readonly object[]): object => ({ format: 'corenose.shop-lines', version: 1, lines });

describe('a file of shop lines', () => {
  it('is taken as it stands', () => { expect(parseShopLines(file(line))).toEqual({ ok: true, value: file(line) }); });

  it.each([
    ['a field nobody knows', { ...line, stop: true }, 'lines.0.stop', 'unknown field; allowed are id, on, by, because, says'],
    ['a kind of line there is none of', { ...line, says: { ...says, kind: 'stops' } }, 'lines.0.says.kind', 'a line says one of: makes, shows, gives, moved'],
    ['a field of another kind', { ...line, says: { ...says, symptom: 'misfire' } }, 'lines.0.says.symptom', 'unknown field; allowed are kind, of, condition, strength'],
    ['a word that is no strength', { ...line, says: { ...says, strength: 'always' } }, 'lines.0.says.strength', '"always" is not allowed; allowed are almost always, usually'],
    ['two circumstances at once', { ...line, says: { kind: 'moved', of: 'rings-worn', how: 'likelier', when: { fuel: 'E85', use: 'road' } } }, 'lines.0.says.when', 'give exactly one circumstance'],
    ['no circumstance', { ...line, says: { kind: 'moved', of: 'rings-worn', how: 'likelier', when: {} } }, 'lines.0.says.when', 'give exactly one circumstance'],
    ['an id with a blank', { ...line, id: 'my line' }, 'lines.0.id', '"my line" is no id'],
    ['a reason that is a book', { ...line, because: 'A'.repeat(301) }, 'lines.0.because', 'too long; at most 300 characters'],
  ])('is refused for %s, with the place and what is allowed', (_what, wrong, path, message) => {
    expect(parseShopLines(file(wrong))).toMatchObject({ ok: false, error: [{ path, message: expect.stringContaining(message) as string }] });
  });

  it('is refused when two lines have one id', () => {
    expect(parseShopLines(file(line, line))).toMatchObject({ ok: false, error: [{ path: 'lines.1.id' }] });
  });

  it('is refused when it is another kind of file or of another version', () => {
    expect(parseShopLines({ ...file(line), format: 'corenose.reading-sheet' })).toMatchObject({ ok: false, error: [{ path: 'format', message: expect.stringContaining('not a file of shop lines') as string }] });
    expect(parseShopLines({ ...file(line), version: 2 })).toMatchObject({ ok: false, error: [{ path: 'version', message: 'only version 1 can be read' }] });
  });
});
