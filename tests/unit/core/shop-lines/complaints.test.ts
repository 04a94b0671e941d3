import { describe, expect, it } from 'vitest';
import { KNOWLEDGE } from '../../../../core/knowledge/index.ts';
import { complaintsAbout } from '../../../../core/shop-lines/complaints.ts';
import { withShopLines } from '../../../../core/shop-lines/with-shop-lines.ts';
import type { ShopLine } from '../../../../shared/formats/shop-lines.v1.ts';
import { line } from './any-lines.ts';

const oiledRings = { kind: 'makes', of: 'rings-worn', condition: 'fuel-wet', strength: 'rarely' } as const;
const fields = (wrong: ShopLine): string[] => complaintsAbout(wrong, KNOWLEDGE).map(({ field }) => field);

describe('a line of the workshop', () => {
  it.each([
    ['a cause that leads to a condition', oiledRings],
    ['a cause that shows on the cylinder', { kind: 'shows', of: 'rings-worn', finding: 'exhaustTemperature', is: 'colder', strength: 'rarely' }],
    ['a condition that shows on the plug', { kind: 'shows', of: 'dry-soot', finding: 'body', is: 'carbon track', strength: 'hardly ever' }],
    ['a condition that gives a symptom', { kind: 'gives', of: 'dry-soot', symptom: 'vibration', strength: 'rarely' }],
    ['a circumstance that moves a cause', { kind: 'moved', of: 'rings-worn', when: { fuel: 'E85' }, how: 'likelier' }],
  ] as const)('is taken: %s', (_what, says) => {
    expect(complaintsAbout(line(says), KNOWLEDGE)).toEqual([]);
  });

  it('needs a reason, and a whole sentence of it', () => {
    expect(complaintsAbout(line(oiledRings, { because: '  ' }), KNOWLEDGE)).toEqual([{ field: 'because', message: 'Say why; a line without a reason is not taken.' }]);
    expect(complaintsAbout(line(oiledRings, { because: 'seen it' }), KNOWLEDGE)).toEqual([{ field: 'because', message: expect.stringContaining('a whole sentence') as string }]);
  });

  it('needs somebody who says so', () => {
    expect(complaintsAbout(line(oiledRings, { by: '' }), KNOWLEDGE)).toEqual([{ field: 'by', message: 'Say who says so.' }]);
  });

  it('speaks of something known, or the nearest is named', () => {
    expect(complaintsAbout(line({ ...oiledRings, of: 'rings-tired' }), KNOWLEDGE)).toEqual([{ field: 'of', message: expect.stringContaining('did you mean rings-worn') as string }]);
    expect(complaintsAbout(line({ ...oiledRings, condition: 'oil-dry' }), KNOWLEDGE)).toEqual([{ field: 'what', message: expect.stringContaining('oil-wet') as string }]);
  });

  it('does not say again what is said already', () => {
    expect(fields(line({ kind: 'makes', of: 'rings-worn', condition: 'oil-wet', strength: 'rarely' }))).toEqual(['what']);
    const taught = withShopLines(KNOWLEDGE, [line(oiledRings)]).knowledge;
    expect(complaintsAbout(line(oiledRings), taught).map(({ field }) => field)).toEqual(['what']);
  });

  it('leaves room for doubt: the values of one finding never add up to certainty', () => {
    expect(fields(line({ kind: 'shows', of: 'oil-wet', finding: 'noseColour', is: 'yellow', strength: 'usually' }))).toEqual(['strength']);
  });

  it('reaches the graver of two states no more readily than the milder, and finds no cause by what only makes it likelier', () => {
    const mild = KNOWLEDGE.causes.find(({ makes }) => !makes.some(({ condition }) => ['runs-hot', 'blistered', 'melted'].includes(condition)))!.id;
    expect(fields(line({ kind: 'makes', of: mild, condition: 'melted', strength: 'often' }))).toContain('strength');
    expect(fields(line({ kind: 'moved', of: 'rings-worn', when: { duty: 'town' }, how: 'found' }))).toEqual(['strength']);
  });

  it('makes no fault out of what is harmless', () => {
    const harmless = KNOWLEDGE.causes.find((cause) => cause.harmless === true)!.id;
    expect(fields(line({ kind: 'makes', of: harmless, condition: 'oil-wet', strength: 'rarely' }))).toEqual(['what']);
    expect(fields(line({ kind: 'gives', of: harmless, symptom: 'misfire', strength: 'rarely' }))).toEqual(['what']);
  });

  it('puts what is seen on the tip with a condition, and what is found on the cylinder with a cause', () => {
    expect(fields(line({ kind: 'shows', of: 'oil-wet', finding: 'compression', is: 'low', strength: 'rarely' }))).toEqual(['what']);
    expect(fields(line({ kind: 'shows', of: 'rings-worn', finding: 'noseColour', is: 'black', strength: 'rarely' }))).toEqual(['what']);
    expect(fields(line({ kind: 'shows', of: 'rings-worn', finding: 'compression', is: 'tired', strength: 'rarely' }))).toEqual(['is']);
    expect(fields(line({ kind: 'moved', of: 'oil-wet', when: { fuel: 'E85' }, how: 'likelier' }))).toEqual(['of']);
  });

  it('says nothing of what a trial of parts yields, which follows from the part', () => {
    expect(fields(line({ kind: 'shows', of: 'rings-worn', finding: 'swap plug', is: 'followed', strength: 'almost always' }))).toEqual(['what']);
  });
});
