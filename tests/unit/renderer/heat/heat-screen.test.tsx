import { act, render, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeEach, describe, expect, it } from 'vitest';
import type { HeatPart } from '../../../../renderer/app/route.ts';
import { HeatScreen } from '../../../../renderer/features/heat/index.ts';
import { useStore } from '../../../../renderer/state/store.ts';
import type { Engine } from '../../../../shared/formats/engine.ts';
import type { ReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';
import type { FakeHost } from '../support/fake-host.ts';
import { freshPage } from '../support/page.ts';

const user = userEvent.setup();
const CARBURETTED: Engine = { use: 'road', cylinders: 4, boreMm: 80, compressionRatio: 9, mixture: { kind: 'carburettor' } };
const SPECIFIED: Engine = { ...CARBURETTED, strokeMm: 80, fitment: { heat: { scale: 'Ostrin', value: '6' }, gapMm: 0.7, thread: 'M14x1.25', seat: 'gasket' } };

const BARE = { noseSurface: 'fine powder', deposit: 'light dusting', noseColour: 'light tan' } as const;

let host: FakeHost;
let id = '';
let view: ReturnType<typeof render>;

const sheetOf = (engine: Engine, date: string, conditions: ReadingSheet['conditions'], gapMm?: number): ReadingSheet => ({
  format: 'corenose.reading-sheet', version: 1, date, engine, conditions,
  plugs: [1, 2, 3, 4].map((cylinder) => ({ cylinder, tip: BARE, fitted: { heatStepsFromSpecified: 0, electrode: 'nickel', gapNewMm: 0.7 }, ...(gapMm !== undefined && { measured: { gapMm } }) })),
});

function keep(...sheets: readonly ReadingSheet[]): void {
  sheets.forEach((sheet, i) => host.readings.set(`r${i}`, {
    id: `00000000-0000-4000-8000-00000000010${i}`, engineId: id, state: 'kept', revision: 1, changedAt: '2026-03-14T09:30:00Z', sheet, pending: {}, findings: null,
  }));
}

async function open(engine: Engine, part: HeatPart, kept: readonly ReadingSheet[] = []): Promise<void> {
  host = freshPage();
  await useStore.getState().start();
  const saved = await useStore.getState().saveEngine(null, engine);
  if (!saved.ok) throw new Error('the engine was not saved');
  id = saved.value.id;
  keep(...kept);
  view = render(<HeatScreen id={id} part={part} />);
  await waitFor(() => expect(useStore.getState().heat?.engineId).toBe(id));
}

const goTo = (part: HeatPart): void => view.rerender(<HeatScreen id={id} part={part} />);

/** The tip's middle, low and high as shown, °C. */
function tip(): readonly number[] {
  const [row] = screen.getAllByRole('row', { name: /^Insulator tip/ });
  return [...within(row!).getAllByRole('cell')[0]!.textContent.matchAll(/-?\d+/g)].map(([digits]) => Number(digits));
}

async function press(slider: string, keys: string): Promise<void> {
  screen.getByRole('slider', { name: slider }).focus();
  await user.keyboard(keys);
}

describe('what if', () => {
  beforeEach(() => open(CARBURETTED, 'what-if'));

  it('is moved by keyboard alone, and the tip follows: hotter by a step, cooler with less load', async () => {
    const [before] = tip();
    await press('Heat value', '{ArrowRight}');
    const [hotter] = tip();
    expect(hotter! - before!).toBeGreaterThan(40);
    await press('Load', '{Home}');
    expect(tip()[0]!).toBeLessThan(hotter!);
    await user.click(screen.getByRole('button', { name: 'Back to the usual' }));
    expect(tip()[0]).toBe(before);
  });

  it('says of every slider how far to trust it, what was assumed, and that the carburettor is set for sea level', async () => {
    for (const slider of screen.getAllByRole('slider')) {
      const [label, remark] = [...slider.closest('div')!.querySelectorAll('span')].map(({ textContent }) => textContent);
      expect(label && remark, slider.getAttribute('aria-labelledby')!).toBeTruthy();
    }
    expect(screen.getByText(/^Assumed, because the engine’s page does not say: stroke 80 mm/)).toBeTruthy();
    expect(screen.queryByText(/reaches the cylinder/)).toBeNull();
    await press('Altitude', '{End}');
    expect(screen.getByText(/lambda 0.74 reaches the cylinder/)).toBeTruthy();
  });

  it('puts one running aside and shows both, what differs, and the way back', async () => {
    const [before] = tip();
    await user.click(screen.getByRole('button', { name: 'Put aside to compare' }));
    await press('Load', '{Home}');
    const [row] = screen.getAllByRole('row', { name: /^Insulator tip/ });
    expect(within(row!).getAllByRole('cell')[1]!.textContent).toContain(`${before} °C`);
    expect(screen.getByText('What differs: load.')).toBeTruthy();
    await user.click(screen.getByRole('button', { name: 'Go back to it' }));
    expect(tip()[0]).toBe(before);
    await user.click(screen.getByRole('button', { name: 'Stop comparing' }));
    expect(within(screen.getAllByRole('row', { name: /^Insulator tip/ })[0]!).getAllByRole('cell')).toHaveLength(1);
  });

  it('keeps a note with the running and what the model said, brings the running back, and takes a removal back', async () => {
    await press('Load', '{Home}');
    const [light] = tip();
    await user.type(screen.getByRole('textbox', { name: 'A note about this running' }), 'light load');
    await user.click(screen.getByRole('button', { name: 'Keep the note' }));
    expect(await screen.findByText(/light load[\s\S]*30 % load.*tip \d+ °C/)).toBeTruthy();
    await user.click(screen.getByRole('button', { name: 'Back to the usual' }));
    await user.click(screen.getByRole('button', { name: 'Set this running' }));
    expect(tip()[0]).toBe(light);
    await user.click(screen.getByRole('button', { name: 'Remove' }));
    expect(await screen.findByText('No note yet.')).toBeTruthy();
    await act(async () => useStore.getState().messages.at(-1)!.undo!());
    expect(await screen.findByText(/light load/)).toBeTruthy();
  });

  it('keeps the running when another part is looked at', async () => {
    await press('Load', '{Home}');
    goTo('ladder');
    expect(screen.getByText(/30 % load/)).toBeTruthy();
  });
});

const PULL = { duty: 'full load', stop: 'clean cut', warm: true, speedRpm: 5000, lambda: 0.88, advanceDeg: 26 } as const;

describe('the ladder', () => {
  it('answers which heat value stays inside the window and at what price, in a sentence and in a table, and that it is no advice', async () => {
    await open(SPECIFIED, 'ladder');
    expect(screen.getByText(/stays inside the window at full load \(chance of too hot (under )?\d+ %\)\. (The price: it cleans itself only from \d+ % load|It cleans itself over the whole)/)).toBeTruthy();
    expect(within(screen.getByRole('table', { name: 'Tip temperature over load' })).getAllByRole('row')).toHaveLength(6);
    expect(screen.getByText(/This is the model alone, not advice/)).toBeTruthy();
    expect(screen.getByRole('heading', { name: 'What this model cannot know' })).toBeTruthy();
  });

  it('marks the running of kept readings with the band computed for it', async () => {
    await open(SPECIFIED, 'ladder', [sheetOf(SPECIFIED, '2026-01-05', PULL), sheetOf(SPECIFIED, '2026-02-05', { ...PULL, duty: 'steady cruise' })]);
    const [first, second] = (await screen.findAllByRole('listitem')).filter(({ textContent }) => /full load|steady cruise/.test(textContent));
    expect(first!.textContent).toMatch(/^5 January 2026: full load; 5,?000 r\/min, 100 % load, .*\d+ °C \(\d+ to \d+\)$/);
    expect(second!.textContent).toContain('45 % load');
  });

  it('shows the conflict of sources behind every limit', async () => {
    await open(SPECIFIED, 'ladder');
    await user.click(screen.getByRole('button', { name: /Where sources disagree/ }));
    expect(within(screen.getByRole('table', { name: /Where sources disagree/ })).getAllByRole('row').length).toBeGreaterThan(7);
  });

  it('an aircraft is told that nothing here permits another plug', async () => {
    await open({ use: 'aircraft', cylinders: 4, cooling: 'air' }, 'ladder');
    expect(screen.getByText(/only plugs of the approved list/)).toBeTruthy();
  });
});

describe('what the tips told', () => {
  it('is nothing at first; a thermocouple narrows the band, its arithmetic is shown, and it stays until it is removed', async () => {
    await open(CARBURETTED, 'told');
    expect(screen.getByText('Nothing yet: the model stands alone.')).toBeTruthy();
    expect(screen.getByText('predicted by the model alone')).toBeTruthy();
    await user.type(screen.getByRole('textbox', { name: 'Thermocouple in the plug' }), '700');
    await user.click(screen.getAllByRole('button', { name: 'Take this value' })[0]!);
    expect(await screen.findByText('corrected by this engine’s tips')).toBeTruthy();
    expect(screen.getByText(/the reading says 700 °C ± 16 °C/)).toBeTruthy();
    const [, share] = /The band is (\d+) % as wide/.exec(document.body.textContent)!;
    expect(Number(share)).toBeLessThan(50);
    await user.click(screen.getByRole('button', { name: 'Remove' }));
    expect(await screen.findByText('Nothing yet: the model stands alone.')).toBeTruthy();
  });

  it('takes in kept readings by itself: glaze and exhaust after a pull, and says what another lacks', async () => {
    await open(SPECIFIED, 'told', [sheetOf(SPECIFIED, '2026-01-05', { ...PULL, egtC: 800 }), sheetOf(SPECIFIED, '2026-02-05', { duty: 'mixed' })]);
    expect(await screen.findByText('Glaze sound', { selector: 'strong' })).toBeTruthy();
    expect(screen.getByText('Exhaust-gas temperature', { selector: 'strong' })).toBeTruthy();
    expect(screen.getByText('Asked for by the maker', { selector: 'strong' })).toBeTruthy();
    expect(screen.getByText('5 February 2026 lacks a steady duty, the engine’s speed.')).toBeTruthy();
  });
});

describe('a drive from cold', () => {
  it('is chosen or built leg by leg, says how long the tip was in the window and why it fouls, and names the line that cannot be read', async () => {
    await open({ use: 'road', cylinders: 4 }, 'drive');
    const table = await screen.findByRole('table', { name: 'A drive from cold' });
    expect(within(table).getByRole('row', { name: /^Below self-cleaning/ })).toBeTruthy();
    expect(screen.getByText(/The insulation falls below 10 MΩ after/)).toBeTruthy();
    expect(screen.getByText(/That is why short trips foul/)).toBeTruthy();
    await user.click(screen.getByRole('radio', { name: 'long road' }));
    expect(await screen.findByText('Twenty such drives leave the insulation good.')).toBeTruthy();
    const load = screen.getByRole('textbox', { name: 'Load, %, leg 1' });
    await user.clear(load);
    await user.type(load, '150');
    expect(screen.getByText('Line 1: load 150; 20 to 100 are allowed.')).toBeTruthy();
    expect(screen.queryByRole('table', { name: 'A drive from cold' })).toBeNull();
    await user.click(screen.getByRole('button', { name: 'Remove leg 1' }));
    expect(await screen.findByRole('table', { name: 'A drive from cold' })).toBeTruthy();
  });

  it('is taken from a log, and a log that cannot be read says which line', async () => {
    await open({ use: 'road', cylinders: 4 }, 'drive');
    const file = screen.getByLabelText('Import a log (CSV)', { selector: 'input' });
    await user.upload(file, new File(['time,speed,load,lambda\n0,2000,50,0.9\n120,1500,40,1\n300,900,30,1\n'], 'trip.csv', { type: 'text/csv' }));
    expect(await screen.findByText('trip.csv: 5 min in 3 stretches of like running.')).toBeTruthy();
    await user.upload(file, new File(['0,2000,50,0.9\n1,2000,50\n'], 'bad.csv', { type: 'text/csv' }));
    expect(await screen.findByText('Line 2: 3 values; four are wanted: time in s, speed, load in %, lambda.')).toBeTruthy();
    await user.click(screen.getByRole('button', { name: 'Back to the legs' }));
    expect(screen.getByRole('table', { name: 'Legs of the drive' })).toBeTruthy();
  });
});

describe('the other parts', () => {
  it('voltage: a shunted nose leaves less over, and the advice is a range with the maker’s gap first', async () => {
    await open(SPECIFIED, 'spark');
    const left = (): number => Number(/-?\d+/.exec(within(screen.getByRole('row', { name: /^Left over/ })).getByRole('cell').textContent.replace('−', '-'))![0]);
    const clean = left();
    expect(screen.getByText(/With 25 kV from the coil a gap up to .* fires surely at this running, up to .* likely/)).toBeTruthy();
    expect(screen.getByText('The engine maker asks for 0.7 mm; that comes first.')).toBeTruthy();
    await press('Insulation of the nose', '{Home}');
    expect(left()).toBeLessThan(clean);
    expect(screen.getByText(/Ignition voltage can kill/)).toBeTruthy();
  });

  it('wear: two points give no interval and say so; three give one from the record', async () => {
    const at = (distanceKm: number, gap: number, date: string) => sheetOf({ ...SPECIFIED }, date, { distanceKm }, gap);
    await open(SPECIFIED, 'wear', [at(10_000, 0.78, '2026-01-05')]);
    expect(await screen.findByText('Two points give no interval; the range of the metal is used.')).toBeTruthy();
    expect(screen.getByText('usual rate of the metal, not of this set')).toBeTruthy();
    view.unmount();
    await open(SPECIFIED, 'wear', [at(10_000, 0.76, '2026-01-05'), at(20_000, 0.84, '2026-02-05'), at(30_000, 0.88, '2026-03-05')]);
    expect(await screen.findByText('from the readings of this set')).toBeTruthy();
    expect(screen.getByText(/^The limit is reached at about [\d,]+ km; between/)).toBeTruthy();
  });

  it('air and fuel: 2000 m richens a plain jet by a tenth (worked examples: 0.906), and E85 leans it', async () => {
    await open(SPECIFIED, 'air');
    screen.getByRole('slider', { name: 'Altitude' }).focus();
    await user.keyboard('{PageUp}{PageUp}{PageUp}{PageUp}');
    expect(screen.getByRole('row', { name: /^Pressure of the air 79\b/ })).toBeTruthy();
    expect(screen.getByRole('row', { name: /^Lambda on this air 0\.82/ })).toBeTruthy();
    await user.selectOptions(screen.getByRole('combobox', { name: 'Run on' }), 'E85');
    expect(screen.getByText(/Leaner than it was set/)).toBeTruthy();
  });

  it('tightening: a torque gives a range of load, less torque on oiled threads, and the maker’s figure first', async () => {
    await open(SPECIFIED, 'torque');
    expect(screen.getByText(/^Clamp load: 10\.\d kN \(7\.\d kN to 14\.\d kN\)$/)).toBeTruthy();
    expect(screen.getByRole('row', { name: /oiled thread .*× 0\.69/ })).toBeTruthy();
    expect(screen.getByText(/The engine maker’s torque comes first/)).toBeTruthy();
  });
});

describe('in inch units', () => {
  it.each(['ladder', 'what-if', 'drive', 'spark', 'wear', 'air', 'torque', 'told'] as const)('no metric unit is left on the part %s', async (part) => {
    await open(SPECIFIED, part, [sheetOf(SPECIFIED, '2026-01-05', { ...PULL, egtC: 800, distanceKm: 9000 }, 0.75)]);
    const metric = /\d ?(°C|mm|kPa|km|N·m|kN|m)\b(?! in\b)/;
    const shown = (): string => [...document.querySelectorAll('td, th, output, p, text, li')].map(({ textContent }) => textContent).join(' | ');
    await waitFor(() => expect(shown()).toMatch(metric));
    await act(async () => useStore.getState().changeSettings({ units: 'inch' }));
    await waitFor(() => expect(shown()).not.toMatch(metric));
  });
});
