import { describe, expect, it } from 'vitest';
import type { ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import { cautionsFor, stopsFor } from '../../core/inference/stop-rules.ts';
import { evidenceOf } from '../../core/inference/evidence.ts';
import { KNOWLEDGE } from '../../core/knowledge/index.ts';

type Tip = NonNullable<ReadingSheet['plugs'][number]['tip']>;

const sheetWith = (tip: Tip, more: Partial<ReadingSheet> = {}): ReadingSheet => ({
  format: 'corenose.reading-sheet', version: 1, engine: { use: 'road', cylinders: 1 }, plugs: [{ cylinder: 1, tip }], ...more,
});
const aircraft = { use: 'aircraft', cylinders: 1 } as const;
const stops = (sheet: ReadingSheet): string[] => [...new Set(stopsFor(KNOWLEDGE.stopRules, evidenceOf(sheet)).map(({ rule }) => rule.id))];

/** Each with the source that tells to stop, or common practice. */
const DANGEROUS: readonly (readonly [what: string, source: string, sheet: ReadingSheet, rule: string])[] = [
  ['a molten centre electrode', 'W6', sheetWith({ centreElectrode: 'melted' }), 'molten-electrode'],
  ['metal sprayed on the plug', 'W6: engine damage already', sheetWith({ deposit: 'metal spray' }), 'piston-metal-on-plug'],
  ['grey metallic specks', 'S59: aluminium of the piston', sheetWith({ specks: 'grey metallic' }), 'piston-metal-on-plug'],
  ['a blistered nose with burnt electrodes', 'S16', sheetWith({ noseSurface: 'blistered', centreElectrode: 'eroded' }), 'blistered-and-eaten'],
  ['knock together with pepper on the nose', 'S67: do not run one more', sheetWith({ specks: 'dark pepper' }, { symptoms: [{ what: 'knock under load' }] }), 'knock-with-marks'],
  ['a piece broken from the nose', 'common practice: account for all pieces', sheetWith({ noseDamage: 'broken away' }), 'piece-missing'],
  ['a strap that is gone', 'common practice: account for all pieces', sheetWith({ groundElectrode: 'broken off' }), 'piece-missing'],
  ['a gap closed by the piston', 'S10', sheetWith({ contact: 'closed by piston' }), 'struck-in-the-chamber'],
  ['a loose plug with gas marks', 'S36: may be blown out', sheetWith({ seat: 'loose with leakage marks' }), 'loose-and-blowing'],
  ['torn threads', 'S02', sheetWith({ threads: 'damaged' }), 'thread-gives-way'],
  ['a piston seen damaged', 'S67', sheetWith({ noseColour: 'light tan' }, { cylinderChecks: [{ cylinder: 1, borescope: 'piston damage' }] }), 'piston-damaged'],
  ['water in the cylinder', 'common practice: water does not compress', sheetWith({ deposit: 'water' }), 'water-in-cylinder'],
  ['an aircraft plug with a hairline crack', 'S05: reject list', sheetWith({ noseDamage: 'hairline crack' }, { engine: aircraft }), 'unairworthy-plug'],
];

const ORDINARY: readonly (readonly [what: string, sheet: ReadingSheet])[] = [
  ['dry soot', sheetWith({ noseColour: 'black', noseSurface: 'matt soot', deposit: 'dry soot', shellRim: 'heavy soot', sootRing: 'wide' })],
  ['wet oil', sheetWith({ noseColour: 'black', noseSurface: 'wet', deposit: 'wet oil', shellRim: 'wet oil' }, { symptoms: [{ what: 'oil use' }, { what: 'blue smoke' }] })],
  ['wet fuel', sheetWith({ noseSurface: 'wet', deposit: 'wet fuel' }, { symptoms: [{ what: 'flooded' }] })],
  ['lead', sheetWith({ deposit: 'lead beads' }, { engine: aircraft })],
  ['wear', sheetWith({ centreElectrode: 'rounded', groundElectrode: 'worn thin' })],
  ['a bridged gap', sheetWith({ bridge: 'gap bridged' })],
  ['a white nose and blued metal', sheetWith({ noseColour: 'white', centreElectrode: 'blued' })],
  ['a lone hairline crack in a car', sheetWith({ noseDamage: 'hairline crack' })],
  ['knock that has left no mark', sheetWith({ noseColour: 'light tan', specks: 'none' }, { symptoms: [{ what: 'knock under load' }] })],
];

describe('the stop rules', () => {
  it.each(DANGEROUS)('stop at %s (%s)', (_what, _source, sheet, rule) => {
    expect(stops(sheet)).toContain(rule);
  });

  it.each(ORDINARY)('do not stop at %s', (_what, sheet) => {
    expect(stops(sheet)).toEqual([]);
  });
});

describe('the cautions', () => {
  const shown = (sheet: ReadingSheet): string => cautionsFor(KNOWLEDGE.cautions, evidenceOf(sheet)).join('\n');
  const plain = sheetWith({ noseColour: 'light tan' });

  it('always warn of hot parts, ignition voltage with pacemakers, fuel vapour and grit', () => {
    for (const words of ['hot parts', 'pacemaker', 'Fuel vapour', 'safety glasses']) expect(shown(plain)).toContain(words);
  });

  it('warn of lead where the fuel may hold it (S48) and not elsewhere', () => {
    expect(shown(sheetWith({}, { engine: aircraft }))).toContain('leaded fuel are poisonous');
    expect(shown(sheetWith({ deposit: 'lead film' }))).toContain('leaded fuel are poisonous');
    expect(shown(plain)).not.toContain('leaded fuel are poisonous');
  });

  it('send aircraft to approved data and road vehicles to the law', () => {
    expect(shown(sheetWith({}, { engine: aircraft }))).toContain('approved plugs');
    expect(shown(plain)).toContain('No full-load readings on public roads');
  });
});
