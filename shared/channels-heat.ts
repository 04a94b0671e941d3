import { z } from 'zod';
import { amount, count, oneOf, record, text } from './formats/strict.ts';
import { readingSheet } from './formats/reading-sheet.v1.ts';
import { HEAT_PROBES, MODEL_FUELS, TIP_SIGNS } from './vocabulary/heat.ts';

const id = z.uuid();

/** A running that the heat model is asked about. Load is the share of the air the engine could take; boost is above the air outside. */
const heatSetting = record({
  load: amount('a share', 0.05, 1),
  rpm: amount('r/min', 100, 20_000),
  lambda: amount('a lambda', 0.5, 1.8),
  advance: amount('degrees of crank before top dead centre', -20, 70),
  boost: amount('kPa above the air outside', 0, 300),
  inlet: amount('°C', -50, 150),
  coolant: amount('°C', -50, 250),
  altitude: amount('m', -500, 8000),
  heatStep: count('steps toward hotter', -4, 4),
  gap: amount('mm', 0.2, 2.5),
  coil: amount('kV', 1, 60),
  fuel: oneOf(MODEL_FUELS),
});
export type HeatSetting = z.output<typeof heatSetting>;

/** What somebody entered by hand: what a tip showed, what a thermocouple read, or a setting kept with a note. */
const heatEntry = z.discriminatedUnion('kind', [
  record({ kind: z.literal('sign'), sign: oneOf(TIP_SIGNS), setting: heatSetting }),
  record({ kind: z.literal('probe'), probe: oneOf(HEAT_PROBES), celsius: amount('°C', -50, 1200), setting: heatSetting }),
  record({ kind: z.literal('note'), note: text(4000), setting: heatSetting }),
]);
export type HeatEntry = z.output<typeof heatEntry>;

const heatEntryRecord = record({ id, engineId: id, createdAt: z.iso.datetime(), entry: heatEntry });
export type HeatEntryRecord = z.output<typeof heatEntryRecord>;

/** All that an engine told about its heat: its kept readings, the oldest first, and what was entered by hand. */
const heatRecord = record({ kept: z.array(record({ id, sheet: readingSheet })), entries: z.array(heatEntryRecord) });
export type HeatRecord = z.output<typeof heatRecord>;

/** Calls about the heat of an engine's plugs. */
export const heatChannels = {
  'heat.record': { input: record({ engineId: id }), output: heatRecord },
  'heat.add': { input: record({ engineId: id, entry: heatEntry }), output: heatEntryRecord },
  'heat.remove': { input: record({ id }), output: z.null() },
  'heat.restore': { input: record({ id }), output: heatEntryRecord },
} as const;
