import { describe, expect, it } from 'vitest';
import { parseSheetText } from '../../../electron/node/sheet-text.ts';
import { sootyThird } from '../../fixtures/plain-sheets.ts';

const problems = (text: string): string[] => {
  const sheet = parseSheetText(text);
  return sheet.ok ? [] : sheet.error.map(({ path, message }) => `${path}: ${message}`);
};

describe('the text of a reading sheet', () => {
  it('is read with and without the mark that some editors put before UTF-8', () => {
    for (const mark of ['', '\uFEFF']) expect(parseSheetText(mark + JSON.stringify(sootyThird))).toEqual({ ok: true, value: sootyThird });
  });

  it.each([
    ['', 'the file is empty'],
    [' \n ', 'the file is empty'],
    ['{"a": }', 'not JSON: value expected at line 1, column 7'],
    ['{\n  "a": 1,\n  "b": 2,\n}', 'not JSON: property name expected at line 4, column 1'],
    ['{"a": 1', 'not JSON: close brace expected at line 1, column 8'],
    ['{"a": 1} {"a": 1}', 'not JSON: end of file expected at line 1, column 10'],
    ['// a sheet\n{}', 'not JSON: invalid comment token at line 1, column 1'],
    ['{"a": NaN}', 'not JSON: invalid symbol at line 1, column 7'],
    ["{'a': 1}", 'not JSON: invalid symbol at line 1, column 2'],
    ['{"a": "one\ntwo"}', 'not JSON: unexpected end of string at line 1, column 7'],
  ])('tells where it stops being JSON: %j', (text, words) => {
    expect(problems(text).join()).toContain(words);
  });

  it('may not name anything twice, as only the last would count', () => {
    const text = JSON.stringify(sootyThird).replace('"cylinder":3,', '"cylinder":2,"cylinder":3,');
    expect(problems(text)).toEqual(['plugs.2.cylinder: stands here twice; give it once']);
  });

  it('may be nested as deeply as a file can hold without harm', () => {
    const deep = '['.repeat(100_000);
    expect(problems(deep)).toEqual([': not JSON: nested too deeply']);
    expect(problems(deep + ']'.repeat(100_000)).join()).toContain('is not an object');
    expect(problems(JSON.stringify(sootyThird).replace('"plugs":', `"plugs":${deep}${']'.repeat(100_000)},"plugs":`)).join()).toMatch(/nested too deeply|stands here twice/);
  });

  it.each([
    [': null is not an object', 'null'],
    [': [] is not an object', '[]'],
    ['format: give "corenose.reading-sheet"', '{"format": "other"}'],
    ['version: this program reads version 1', JSON.stringify({ ...sootyThird, version: 2 })],
    ['plugs: no plug; give at least one', JSON.stringify({ ...sootyThird, plugs: [] })],
    ['plugs.0.tip.noseColour: "mauve" is not allowed; allowed are white, light grey', JSON.stringify({ ...sootyThird, plugs: [{ cylinder: 1, tip: { noseColour: 'mauve' } }] })],
    ['plugs.2: cylinder 1 stands here twice', JSON.stringify(sootyThird).replace('"cylinder":3', '"cylinder":1')],
    ['__proto__: unknown field', JSON.stringify(sootyThird).replace('"plugs":', '"__proto__":{"a":1},"plugs":')],
  ])('names the place and what is allowed: %s', (words, text) => {
    expect(problems(text).join('\n')).toContain(words);
  });
});
