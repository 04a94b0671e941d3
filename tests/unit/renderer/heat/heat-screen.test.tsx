import { render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeEach, describe, expect, it } from 'vitest';
import { HeatScreen } from '../../../../renderer/features/heat/index.ts';
import { useStore } from '../../../../renderer/state/store.ts';
import type { Engine } from '../../../../shared/formats/engine.ts';
import { freshPage } from '../support/page.ts';

const user = userEvent.setup();
const CARBURETTED: Engine = { use: 'road', cylinders: 4, boreMm: 80, compressionRatio: 9, mixture: { kind: 'carburettor' } };

async function open(engine: Engine): Promise<void> {
  freshPage();
  await useStore.getState().start();
  const saved = await useStore.getState().saveEngine(null, engine);
  if (!saved.ok) throw new Error('the engine was not saved');
  render(<HeatScreen id={saved.value.id} />);
}

/** The tip's middle, low and high as shown, °C. */
function tip(): readonly number[] {
  const [row] = screen.getAllByRole('row', { name: /^Insulator tip/ });
  return [...within(row!).getAllByRole('cell')[0]!.textContent.matchAll(/-?\d+/g)].map(([digits]) => Number(digits));
}

async function press(slider: string, keys: string): Promise<void> {
  screen.getByRole('slider', { name: slider }).focus();
  await user.keyboard(keys);
}

describe('the heat of an engine', () => {
  beforeEach(() => open(CARBURETTED));

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

  it('says what it had to assume, and that the carburettor is set for sea level', async () => {
    expect(screen.getByText(/^Assumed, because the engine’s page does not say: stroke 80 mm/)).toBeTruthy();
    expect(screen.queryByText(/reaches the cylinder/)).toBeNull();
    await press('Altitude', '{End}');
    expect(screen.getByText(/lambda 0.74 reaches the cylinder/)).toBeTruthy();
  });

  it('is predicted until a tip has shown something, then corrected, with the arithmetic and a narrower band', async () => {
    const width = (): number => { const [, low, high] = tip(); return high! - low!; };
    const before = width();
    expect(screen.getByText('predicted by the model alone')).toBeTruthy();
    await user.type(screen.getByRole('textbox', { name: 'Thermocouple' }), '700');
    await user.click(screen.getByRole('button', { name: 'Take this value' }));
    expect(screen.getByText('corrected by this engine’s tips')).toBeTruthy();
    expect(screen.getByText(/the reading says 700 °C ± 16 °C/)).toBeTruthy();
    expect(width()).toBeLessThan(before / 2);
    await user.click(screen.getByRole('button', { name: 'Forget these readings' }));
    expect(width()).toBe(before);
  });

  it('keeps one running to compare with another', async () => {
    const [before] = tip();
    await user.click(screen.getByRole('button', { name: 'Keep to compare' }));
    await press('Load', '{Home}');
    const [row] = screen.getAllByRole('row', { name: /^Insulator tip/ });
    expect(within(row!).getAllByRole('cell')[1]!.textContent).toContain(`${before} °C`);
    await user.click(screen.getByRole('button', { name: 'Stop comparing' }));
    expect(within(row!).getAllByRole('cell')).toHaveLength(1);
  });

  it('shows five heat values over load in words too, and what it cannot know', () => {
    const table = screen.getByRole('table', { name: 'Tip temperature over load' });
    expect(within(table).getAllByRole('row')).toHaveLength(6);
    expect(screen.getByRole('heading', { name: 'What this model cannot know' })).toBeTruthy();
    expect(screen.getByText(/The engine maker’s data come first/)).toBeTruthy();
  });
});

it('an aircraft is told that nothing here permits another plug', async () => {
  await open({ use: 'aircraft', cylinders: 4, cooling: 'air' });
  expect(screen.getByText(/only plugs of the approved list/)).toBeTruthy();
});

describe('a drive from cold', () => {
  it('is chosen or written, says how long the tip was in the window, and names the line that cannot be read', async () => {
    await open({ use: 'road', cylinders: 4 });
    const table = screen.getByRole('table', { name: 'A drive from cold' });
    expect(within(table).getByRole('row', { name: /^Below self-cleaning/ })).toBeTruthy();
    expect(screen.getByText(/The insulation falls below 10 MΩ after/)).toBeTruthy();
    await user.click(screen.getByRole('radio', { name: 'long road' }));
    expect(screen.getByText('Twenty such drives leave the insulation good.')).toBeTruthy();
    const field = screen.getByRole('textbox', { name: /^Legs, a line each/ });
    await user.clear(field);
    await user.type(field, '40, 2000, 150, 1');
    expect(screen.getByText('Line 1: load 150; 20 to 100 are allowed.')).toBeTruthy();
    expect(screen.queryByRole('table', { name: 'A drive from cold' })).toBeNull();
  });
});
