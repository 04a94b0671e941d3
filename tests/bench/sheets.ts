import { plugPlaces } from '../../core/domain/plugs.ts';
import { SEEDS } from '../../seeds/index.ts';
import type { Engine } from '../../shared/formats/engine.ts';
import { parseReadingSheet, type ReadingSheet, type Tip } from '../../shared/formats/reading-sheet.v1.ts';

function parsed(raw: unknown): ReadingSheet {
  const sheet = parseReadingSheet(raw);
  if (!sheet.ok) throw new Error(sheet.error.map(({ path, message }) => `${path}: ${message}`).join('\n'));
  return sheet.value;
}

/** The demo's misfiring four: one oily plug among three good ones, checks on every cylinder. */
export const fourCylinders = parsed(SEEDS.find(({ name }) => name.startsWith('Marlisse'))?.sheets[1]);

const radial: Engine = {
  use: 'aircraft', cycle: 'four-stroke', cylinders: 18, layout: 'radial', plugsPerCylinder: 2, aspiration: 'boosted', cooling: 'air',
  mixture: { kind: 'carburettor' }, ignition: { kind: 'magneto' },
};

/** The largest engine the format takes, every plug read: sooty all over, oil on the lower plugs of the lower cylinders, one lean cylinder. */
export const eighteenTwinPlug = parsed({
  format: 'corenose.reading-sheet', version: 1, engine: radial,
  conditions: { fuel: 'avgas', duty: 'mixed', stop: 'idled before stop', warm: true, hours: 48, tags: ['long idling'] },
  symptoms: [{ what: 'rough running' }, { what: 'oil use' }],
  plugs: plugPlaces(radial).map(({ cylinder, position }) => {
    const low = cylinder >= 7 && cylinder <= 13 && position === 'lower';
    if (low) return { cylinder, position, tip: { noseColour: 'black', noseSurface: 'wet', deposit: 'wet oil', coverage: 'full', shellRim: 'wet oil' } };
    if (cylinder === 4) return { cylinder, position, tip: { noseColour: 'white', noseSurface: 'bare', deposit: 'none', groundElectrode: 'blued', specks: 'none' } };
    return { cylinder, position, tip: { noseColour: 'black', noseSurface: 'matt soot', deposit: 'dry soot', shellRim: 'heavy soot' }, measured: { gapMm: 0.5 } };
  }),
  cylinderChecks: Array.from({ length: 18 }, (_, i) => ({ cylinder: i + 1, differential: { heldKPa: 500 + 2 * i, supplyKPa: 552 } })),
});

/** Every facet of a tip, as it is on a sound plug and on one that differs from it in these. */
const fullTip = (other: Tip): Tip => ({
  noseColour: 'light tan', noseSurface: 'fine powder', deposit: 'light dusting', coverage: 'light', specks: 'none', bridge: 'none', centreElectrode: 'lightly worn',
  groundElectrode: 'lightly worn', heatLine: 'at the bend', shellRim: 'light grey', sootRing: 'thin', noseDamage: 'none', insulator: 'firm', body: 'clean',
  terminal: 'sound', seat: 'sound', threads: 'clean', contact: 'none', ...other,
});
const LOOKS: readonly Tip[] = [
  fullTip({}), fullTip({ noseColour: 'black', noseSurface: 'matt soot', deposit: 'dry soot', shellRim: 'heavy soot', sootRing: 'wide' }),
  fullTip({ noseColour: 'black', noseSurface: 'wet', deposit: 'wet oil', shellRim: 'wet oil' }), fullTip({ noseColour: 'white', noseSurface: 'bare', deposit: 'none' }),
  fullTip({ deposit: 'lead beads', specks: 'shiny beads' }), fullTip({ centreElectrode: 'rounded', groundElectrode: 'worn thin' }),
];

/** Eighteen cylinders with 24 of their plugs read in every facet: six looks, sooty for the most part. */
export const eighteenFullFacets = parsed({
  format: 'corenose.reading-sheet', version: 1, engine: radial, conditions: { fuel: 'avgas', duty: 'mixed', warm: true }, symptoms: [{ what: 'rough running' }],
  plugs: plugPlaces(radial).slice(0, 24).map(({ cylinder, position }, i) => ({ cylinder, position, tip: LOOKS[i % 4 === 0 ? (i / 4) % LOOKS.length : 1] })),
});
