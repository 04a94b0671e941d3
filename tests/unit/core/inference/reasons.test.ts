import { describe, expect, it } from 'vitest';
import { linksOf, reason } from '../../../../core/inference/reasons.ts';
import type { Strength } from '../../../../core/knowledge/strengths.ts';
import type { Cause } from '../../../../core/knowledge/types.ts';
import { cause, condition, makes, shows } from './small-knowledge.ts';

const gives = (symptom: 'misfire' | 'surging', because: string, strength: Strength = 'often'): Cause['gives'][number] => ({ symptom, strength, because, source: 'S16' });
const soot = condition('soot', { shows: [{ ...shows('deposit', 'dry soot', 'usually'), because: 'Soot is dry.' }, { ...shows('deposit', 'hard carbon', 'often'), because: 'Soot bakes.' }] });
const wet = condition('wet', {
  shows: [{ ...shows('deposit', 'wet fuel', 'usually'), because: 'Fuel is wet.', addedBy: 'Ann' }], gives: [{ ...gives('misfire', 'Wet plugs miss.'), addedBy: 'Ben' }],
});
const rich = cause('rich', {
  makes: [{ ...makes('wet', 'sometimes'), addedBy: 'Ann' }, makes('soot', 'usually')],
  shows: [{ finding: 'borescope', is: 'washed clean', strength: 'often', because: 'Fuel washes.', source: 'S16' }],
  gives: [gives('surging', 'It hunts.')],
});
const links = () => linksOf(rich, [wet, condition('worn', { shows: [shows('noseColour', 'white', 'often')] }), soot]);
const told = (said: readonly (readonly [finding: string, value: string])[], supports: boolean) =>
  reason(links(), said.map(([finding, value]) => ({ finding, value })), supports);

describe('the lines that lead from a cause to what is seen', () => {
  it('are its own, then those over the conditions that it makes, the strongest first', () => {
    expect(links().map(({ lines }) => lines)).toEqual([
      ['rich shows borescope washed clean'], ['rich gives surging'],
      ['rich makes soot', 'soot shows deposit dry soot'], ['rich makes soot', 'soot shows deposit hard carbon'],
      ['rich makes wet', 'wet shows deposit wet fuel'], ['rich makes wet', 'wet gives misfire'],
    ]);
  });

  it('keep who of the workshop added them', () => {
    expect(links().map(({ by }) => by)).toEqual([[], [], [], [], ['Ann', 'Ann'], ['Ann', 'Ben']]);
  });
});

describe('the reason why something speaks for a cause', () => {
  it('is that of the line that leads to it', () => {
    expect(told([['deposit', 'hard carbon']], true)).toEqual({ because: 'Soot bakes.', lines: ['rich makes soot', 'soot shows deposit hard carbon'] });
    expect(told([['symptom', 'surging']], true)).toEqual({ because: 'It hunts.', lines: ['rich gives surging'] });
  });

  it('names everybody of the workshop whose lines it rests on, each once', () => {
    expect(told([['deposit', 'wet fuel']], true).addedBy).toBe('Ann');
    expect(told([['symptom', 'misfire']], true)).toEqual({ because: 'Wet plugs miss.', lines: ['rich makes wet', 'wet gives misfire'], addedBy: 'Ann, Ben' });
  });

  it('is, without such a line, that it speaks against the rivals', () => {
    const rivals = { because: 'It speaks more against the rival causes than against this one.' };
    expect(told([['deposit', 'wet oil']], true)).toEqual(rivals);
    expect(told([['symptom', 'blue smoke']], true)).toEqual(rivals);
    // A word that is the value of another finding leads nowhere.
    for (const word of ['dry soot', 'misfire']) expect(told([['noseSurface', word]], true)).toEqual(rivals);
  });
});

describe('the reason why something speaks against a cause', () => {
  it('is a better rival where the cause shows it too', () => {
    expect(told([['deposit', 'dry soot']], false)).toEqual({ because: 'A rival cause explains it better.', lines: ['rich makes soot', 'soot shows deposit dry soot'] });
  });

  it('is what one would rather see of that finding', () => {
    expect(told([['deposit', 'none']], false)).toEqual({
      because: 'With this cause one would rather see "dry soot". Soot is dry.', lines: ['rich makes soot', 'soot shows deposit dry soot'],
    });
  });

  it('is only that others explain it better where the cause says nothing of it', () => {
    expect(told([['noseColour', 'white']], false)).toEqual({ because: 'Other causes explain it better.' });
    expect(told([['symptom', 'blue smoke']], false)).toEqual({ because: 'Other causes explain it better.' });
  });
});

describe('several findings taken together', () => {
  it('are told in the words of the first that has a line of its own, else of the first', () => {
    expect(told([['noseColour', 'white'], ['deposit', 'hard carbon'], ['deposit', 'dry soot']], true).because).toBe('Soot bakes.');
    expect(told([['noseColour', 'white'], ['noseSurface', 'wet']], false).because).toBe('Other causes explain it better.');
  });
});
