import { describe, expect, it, onTestFinished } from 'vitest';
import { fourCylinder } from '../fixtures/plain-sheets.ts';
import { handsOn } from './hands.ts';
import { callFrom } from './library-steps.ts';
import { scratchFolder } from './scratch.ts';
import { HOUSES, type Sitting } from './sitting.ts';

const scratch = scratchFolder();

/** Opens a new reading of a four-cylinder engine at the first question of its first plug. */
async function beginReading({ page }: Sitting): Promise<void> {
  const saved = await callFrom(page, 'engine.save', { id: null, engine: fourCylinder });
  if (!saved.ok) throw new Error('the engine was not saved');
  const started = await callFrom(page, 'reading.start', { engineId: saved.value.id });
  if (!started.ok) throw new Error('the reading was not started');
  await page.evaluate((hash) => { location.hash = hash; }, `#/reading/${started.value.id}/plugs`);
  await page.getByRole('option', { name: /^Cylinder 1\b/ }).focus();
}

describe.each(HOUSES)('somebody who notes what a plug shows, at $name', (house) => {
  it('sees the verdict beside the plug follow each answer, whether or not the findings are there', async (context) => {
    if (house.closed !== null) context.skip(house.closed);
    const sitting = await house.sitDown(scratch, `typed-${house.name.replaceAll(' ', '-')}`);
    onTestFinished(sitting.cutOff);
    const { page } = sitting;
    /* Where calls go over the network, nobody ever answers with findings. */
    await page.route('**/call/diagnose', () => undefined);
    await beginReading(sitting);
    const { press, choose } = handsOn(page);
    const verdict = (words: string): Promise<void> => page.getByRole('option', { name: new RegExp(`^Cylinder 1, .*, ${words}, belief`) }).waitFor();

    await press('ArrowDown');
    for (const value of ['black', 'matt soot', 'dry soot']) await choose(value);
    await verdict('dry carbon fouling');
    await press('ArrowUp', 'ArrowUp');
    for (const value of ['wet', 'wet oil']) await choose(value);
    await verdict('oil fouling');
    await press('Control+z', 'Control+z');
    await verdict('dry carbon fouling');
    await expect.poll(() => page.getByRole('listbox', { name: /Tray/ }).getAttribute('aria-busy'), { timeout: 10_000 }).toBe('false');
    expect(await page.getByRole('link', { name: /^Findings/ }).getAttribute('aria-current')).toBeNull();
  });
});
