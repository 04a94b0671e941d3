import type { Page } from 'playwright-core';
import { expect, it, onTestFinished } from 'vitest';
import { diagnoseSheet } from '../../electron/node/diagnosing.ts';
import { readingSheet, type ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import { SEEDS } from '../../seeds/index.ts';
import { handsOn } from './hands.ts';
import { scratchFolder } from './scratch.ts';
import { HOUSES } from './sitting.ts';

const scratch = scratchFolder();
const sheets = SEEDS.flatMap((seed) => seed.sheets.map((sheet) => readingSheet.parse(sheet)));

const shelf = (page: Page) => page.getByRole('link', { name: /Corenose|All engines/ }).first().click();

/** Every plug has its tile with a verdict, and the sentence above, the heat step and the stop rules are those of the diagnosis. */
async function showFindings(page: Page, sheet: ReadingSheet): Promise<void> {
  const findings = diagnoseSheet(sheet);
  await page.getByRole('link', { name: new RegExp(`^${sheet.engine.name}`) }).click();
  await page.getByRole('main').getByRole('link', { name: new RegExp(`^${sheet.title}`) }).click();
  const main = page.getByRole('main');
  await main.getByText(findings.summary).first().waitFor();
  expect(await page.getByRole('radiogroup', { name: 'All plugs' }).or(page.getByRole('group', { name: 'All plugs' })).getByRole('radio').count()).toBe(findings.plugs.length);
  expect((await main.getByRole('region', { name: 'Heat value of the plug' }).innerText()).toLowerCase()).toContain(findings.heat.words);
  expect(await main.getByRole('region', { name: 'Stop' }).count()).toBe(findings.stop.length > 0 ? 1 : 0);
  await shelf(page);
}

it('an instructor shows the findings of every demo reading, then moves a verdict by changing one facet', async () => {
  const { page, cutOff } = await HOUSES[0]!.sitDown(scratch, 'instructor', ['--demo']);
  onTestFinished(cutOff);
  const complaints: string[] = [];
  page.on('console', (message) => { if (message.type() === 'error') complaints.push(message.text()); });
  page.on('pageerror', (error) => complaints.push(error.message));
  for (const sheet of sheets) await showFindings(page, sheet);

  const hands = handsOn(page);
  await page.getByRole('button', { name: 'Start a reading of Marlisse 1300 saloon' }).click();
  await hands.at('The plugs');
  await hands.press('o', ']', 'o', ']', ']', 'o', '[', '/');
  await hands.type('dry soot');
  await hands.press('Enter');
  const verdict = (words: string): Promise<void> => page.getByRole('option', { name: new RegExp(`^Cylinder 3\\b.* ${words}, belief`) }).waitFor();
  await verdict('dry carbon fouling');
  await hands.choose('wet oil');
  await verdict('oil fouling');
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await verdict('dry carbon fouling');
  expect(complaints).toEqual([]);
});
