import { describe, expect, it } from 'vitest';
import { doubtsFor, engineDoubts, secondLooks } from '../../../../core/inference/doubts.ts';
import { evidenceOf, type PlugEvidence } from '../../../../core/inference/evidence.ts';
import type { PlugVerdict } from '../../../../core/inference/verdict.ts';
import type { Contradiction } from '../../../../core/knowledge/types.ts';
import type { PlugReading, ReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';
import { SYMPTOMS } from '../../../../shared/vocabulary/conditions.ts';
import type { Verdict } from '../../../../shared/vocabulary/verdicts.ts';
import { sheetOf } from './sheet-of.ts';
import { knowledge } from './small-knowledge.ts';

const verdict = (of: Verdict): PlugVerdict => ({ verdict: of, also: [], belief: 0.5, thermal: { tooCold: 0, inWindow: 1, tooHot: 0 }, beliefs: new Map() });
const plugOf = (plug: Omit<PlugReading, 'cylinder'>, cylinder = 1): PlugEvidence =>
  evidenceOf(sheetOf({ plugs: [{ cylinder: 1, ...plug }] })).cylinders[cylinder - 1]!.plugs[0]!;
const doubtsOf = (plug: Omit<PlugReading, 'cylinder'>, of: Verdict = 'normal', contradictions: readonly Contradiction[] = []): string[] =>
  doubtsFor(plugOf(plug), verdict(of), { ...knowledge([], []), contradictions });

describe('a plug that is hard to believe', () => {
  const grounds = { because: 'made up for a test', source: 'common practice' } as const;
  const wetAndDry: Contradiction = { id: 'wet-and-dry', first: { plug: 'deposit', is: ['dry soot', 'none'] }, second: { plug: 'noseSurface', is: ['wet'] }, words: 'Dry, yet wet?', ...grounds };
  const kind: Contradiction = { id: 'kind', first: { plug: 'deposit', is: ['wet of unknown kind'] }, words: 'Smell it.', ...grounds };

  it('is told where two findings hardly stand together', () => {
    expect(doubtsOf({ tip: { deposit: 'dry soot', noseSurface: 'wet' } }, 'normal', [wetAndDry, kind])).toEqual(['Dry, yet wet?']);
    const sound = [
      { deposit: 'dry soot', noseSurface: 'bare' }, { deposit: 'wet oil', noseSurface: 'wet' }, { noseSurface: 'wet' }, { specks: 'none', noseSurface: 'wet' },
    ] as const;
    for (const tip of sound) expect(doubtsOf({ tip }, 'normal', [wetAndDry])).toEqual([]);
  });

  it('is told where one finding says less than could be seen', () => {
    expect(doubtsOf({ tip: { deposit: 'wet of unknown kind' } }, 'normal', [wetAndDry, kind])).toEqual(['Smell it.']);
  });

  it('wants a second look where one finding says less than could be seen, not where two clash', () => {
    const both: Contradiction = { ...kind, id: 'dry', first: { plug: 'deposit', is: ['dry soot'] } };
    expect(secondLooks(plugOf({ tip: { deposit: 'dry soot', noseSurface: 'wet' } }), { ...knowledge([], []), contradictions: [wetAndDry, kind, both] })).toEqual([both]);
  });
});

describe('what was not looked at', () => {
  it('is named where the plug could not be judged, as far as it may decide', () => {
    expect(doubtsOf({ tip: { noseColour: 'black', specks: 'none' } }, 'undetermined')).toEqual(
      ['Not noted: nose surface, deposit, centre electrode and ground electrode. Any of them may decide.'],
    );
    const whole = { noseColour: 'black', noseSurface: 'wet', deposit: 'none', centreElectrode: 'sharp', groundElectrode: 'as new' } as const;
    expect(doubtsOf({ tip: whole }, 'undetermined')).toEqual([]);
    expect(doubtsOf({ tip: { noseColour: 'black' } }, 'normal')).toEqual([]);
  });

  it('is everything, where nothing was noted', () => {
    for (const of of ['undetermined', 'normal'] as const) expect(doubtsOf({}, of)).toEqual(['Nothing was noted of this plug.']);
    expect(doubtsFor(plugOf({}, 2), verdict('undetermined'), knowledge([], []))).toEqual(['Nothing was noted of this plug.']);
  });
});

describe('a value that counts for less', () => {
  it('is one that was marked unsure', () => {
    expect(doubtsOf({ tip: { deposit: 'none', specks: 'none', unsure: ['deposit'] } })).toEqual(['Marked unsure, counted half: deposit none (unsure).']);
  });

  it('is one that only a photo shows', () => {
    expect(doubtsOf({ photo: [{ facet: 'deposit', value: 'dry soot', belief: 0.666 }] })).toEqual(['Measured on a photo, counted for 67 %: deposit dry soot (photo).']);
  });
});

describe('a photo that shows something else than was noted', () => {
  const against = (belief: number, noted: PlugReading['tip']): string[] => doubtsOf({ tip: noted, photo: [{ facet: 'deposit', value: 'dry soot', belief }] });

  it('is told from one half on', () => {
    const said = 'The photo shows deposit dry soot, noted is none.';
    expect([against(0.5, { deposit: 'none' }), against(0.49, { deposit: 'none' })]).toEqual([[said], []]);
  });

  it('is nothing to tell where both agree, or where the facet was not noted', () => {
    expect(against(0.9, { deposit: 'dry soot' })).toEqual([]);
    expect(against(0.9, { specks: 'none' })).toEqual(['Measured on a photo, counted for 90 %: deposit dry soot (photo).']);
  });
});

describe('what makes every judgement on an engine less sure', () => {
  const engine = (parts: Partial<ReadingSheet>): string[] => engineDoubts(evidenceOf(sheetOf(parts)));

  it('is running that spoils or weakens what a set tells of mixture and heat, with the reason', () => {
    // RD-STOP: after a minute at idle a plug says only that it idled; the way home lies over the picture (S60).
    expect(engine({ conditions: { stop: 'idled before stop' } })).toEqual([expect.stringMatching(/^The engine idled before it was stopped\. The tip shows the last running/)]);
    expect(engine({ conditions: { stop: 'driven home' } })).toEqual([expect.stringMatching(/^The plugs saw the way home last\. .*over the picture/)]);
    expect(engine({ conditions: { stop: 'clean cut', warm: true, duty: 'full load', fuel: 'petrol', tags: ['plugs new'], distanceKm: 700 } })).toEqual([]);
  });

  it('is a symptom beyond those that are counted', () => {
    const felt = (n: number): string[] => engine({ symptoms: SYMPTOMS.slice(0, n).map((what) => ({ what })) }).filter((words) => words.startsWith('Only'));
    expect(felt(4)).toEqual([]);
    expect(felt(5)).toEqual(['Only 4 symptoms are counted: misfire, misfire at idle, misfire under load and misfire when cold.']);
  });
});
