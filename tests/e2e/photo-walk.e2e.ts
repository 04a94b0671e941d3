import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, it, onTestFinished } from 'vitest';
import { ROOT } from '../../electron/start/targets.ts';
import { scratchFolder } from './scratch.ts';
import { HOUSES } from './sitting.ts';

const scratch = scratchFolder();
const drawn = (day: string): string[] => [1, 2, 3, 4].map((cylinder) => join(ROOT, 'seeds/marlisse-1300/photos', `drawn-${day}-cylinder-${cylinder}.jpg`));

async function startAnEngine(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const call = async (name: string, input: unknown) => (await (await fetch(`/call/${name}`, {
      method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(input),
    })).json()) as { value: { id: string } };
    const { value: { id } } = await call('engine.save', { id: null, engine: { name: 'Walked four', use: 'road', cylinders: 4, layout: 'inline' } });
    const reading = await call('reading.start', { engineId: id });
    window.location.hash = `#/reading/${reading.value.id}/photos`;
  });
  await page.reload();
  await page.getByRole('button', { name: 'Add photos' }).waitFor();
}

async function bringInAndLay(page: Page, day: string): Promise<void> {
  await page.getByLabel('Add photos').last().setInputFiles(drawn(day));
  await page.getByText('4 photos to lay').waitFor();
  await page.getByRole('button', { name: 'Lay by file name' }).click();
  await page.getByRole('region', { name: 'Cylinder 4' }).getByRole('link').waitFor();
}

/** The grey card of a drawn picture: pixels 16 to 116 and 16 to 100 of 800 by 600. */
async function pointOutTheCard(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Grey card' }).click();
  const surface = page.getByRole('application');
  const { x, y, width, height } = (await surface.boundingBox())!;
  const scale = Math.min(width / 800, height / 600);
  const at = (px: number, py: number): readonly [number, number] => [x + (width - 800 * scale) / 2 + px * scale, y + (height - 600 * scale) / 2 + py * scale];
  await page.mouse.move(...at(30, 30));
  await page.mouse.down();
  await page.mouse.move(...at(100, 90), { steps: 4 });
  await page.mouse.up();
  await page.getByText('On the grey card that you pointed out.').first().waitFor();
}

it('a restorer brings in a set of photos, points out the white, takes what a photo shows, and compares two readings', async () => {
  const { page, cutOff } = await HOUSES[0]!.sitDown(scratch, 'photo-walk');
  onTestFinished(cutOff);
  await startAnEngine(page);
  await bringInAndLay(page, '2026-02-14');
  await page.getByRole('region', { name: 'Cylinder 3' }).getByRole('link').click();
  await page.getByText(/Estimated from bare metal/).first().waitFor();
  await pointOutTheCard(page);
  await page.getByRole('button', { name: 'Take it: Nose colour black' }).click();
  await page.getByRole('button', { name: 'Let it count: Nose colour black' }).click();
  await page.getByRole('button', { name: /^Same lamp: use it for the other 3 photos/ }).click();
  await page.getByText('3 photos measured on this white.').waitFor();
  await page.getByRole('link', { name: /^The plugs/ }).click();
  await page.getByRole('option', { name: /^Cylinder 3, 1 of/ }).waitFor();
  await page.getByRole('button', { name: 'Keep this reading' }).click();

  const kept = page.url();
  await page.getByRole('button', { name: /^Start a reading/ }).first().click();
  await page.waitForURL((url) => url.hash.startsWith('#/reading/') && url.href !== kept);
  await page.getByRole('link', { name: /^Photos/ }).last().click();
  await bringInAndLay(page, '2026-04-18');
  await page.getByRole('link', { name: 'Compare over the years' }).click();
  await page.getByRole('region', { name: 'Comparison' }).getByRole('table').waitFor();
  for (const mode of ['Onion skin', 'Wipe', 'Side by side']) await page.getByRole('radio', { name: mode }).click();
  expect(await page.getByRole('heading', { level: 2 }).innerText()).toBe('Cylinder 3');
  expect(await page.getByRole('row', { name: /^Nose/ }).innerText()).toMatch(/changed/);
  expect(await page.getByText(/^Dark on the nose: 9\d % earlier, 0 % later; changed/).count()).toBe(1);
});
