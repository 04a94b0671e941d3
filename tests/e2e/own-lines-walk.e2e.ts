import { readFileSync } from 'node:fs';
import axe from 'axe-core';
import type { Page } from 'playwright-core';
import { expect, it, onTestFinished } from 'vitest';
import { shopLines } from '../../shared/formats/shop-lines.v1.ts';
import { handsOn, type Hands } from './hands.ts';
import { scratchFolder } from './scratch.ts';
import { HOUSES } from './sitting.ts';

const scratch = scratchFolder();
const MISSING = /^Misses on three at idle/;
const REASON = 'Half of the saloons that come to this club have soft guides.';
const house = HOUSES[0]!;

async function openMissing(page: Page, { at }: Hands): Promise<void> {
  await page.getByRole('banner').getByRole('link', { name: /Corenose|All engines/ }).click();
  await page.getByRole('link', { name: /^Marlisse 1300 saloon/ }).first().click();
  await page.getByRole('main').getByRole('link', { name: MISSING }).click();
  await at('Findings');
}

/** From a reason in the findings to the line it rests on, from there to a source, and to all that rests on it. */
async function followAReason(page: Page, { tabTo, press, at }: Hands): Promise<void> {
  await tabTo(/^Look it up: /);
  await press('Enter');
  await at('Look it up');
  expect(await page.locator('[data-here]').count()).toBe(1);
  await page.getByRole('article').getByRole('button', { name: /^Source / }).first().focus();
  await press('Enter');
  await page.getByRole('link', { name: 'All that rests on it' }).focus();
  await press('Enter');
  await page.getByRole('heading', { name: /lines rest on it$/ }).waitFor();
}

async function writeALine(page: Page, { tabTo, press, type }: Hands): Promise<void> {
  await page.getByRole('navigation', { name: 'What to look up' }).getByRole('link', { name: 'Causes' }).focus();
  await press('Enter', '/');
  await type('valve guide or stem');
  await page.getByRole('navigation', { name: 'Find by word' }).getByRole('link').first().waitFor();
  await tabTo('Valve guide or stem seal worn');
  await press('Enter');
  await tabTo('Add a line of your own');
  await press('Enter');
  await page.getByRole('dialog').waitFor();
  await tabTo('What you say of it');
  await type('is likelier');
  await tabTo('Where what is known');
  await type('Use: road');
  await tabTo('How much');
  await type('likelier');
  await tabTo('Why');
  await type(REASON);
  await tabTo('Who says so');
  await type('Ann');
  await press('Enter');
  await page.getByRole('dialog').waitFor({ state: 'detached' });
  await page.getByRole('listitem').filter({ hasText: REASON }).getByText('yours · Ann').waitFor();
}

const belief = async (page: Page): Promise<number> =>
  Number(/(\d+)\s%/.exec(await page.getByRole('button', { name: /^Valve guide or stem seal worn/ }).first().innerText())?.[1]);

async function seeItCount(page: Page, { press, at }: Hands, before: number): Promise<void> {
  await page.getByRole('button', { name: 'Open it again' }).click();
  await page.getByText('and one line of your own').waitFor();
  expect(await belief(page)).toBeGreaterThan(before);
  await page.getByRole('listitem').filter({ hasText: REASON }).getByText('yours · Ann').first().waitFor();
  await page.getByRole('link', { name: 'Which lines spoke here' }).focus();
  await press('Enter');
  await at('Look it up');
  await page.getByRole('heading', { name: /^What spoke in Marlisse/ }).waitFor();
  await page.getByRole('link', { name: 'Valve guide or stem seal worn – Use: road' }).waitFor();
}

async function switchItOff(page: Page, { press, tabTo }: Hands): Promise<void> {
  await page.getByRole('navigation', { name: 'What to look up' }).getByRole('link', { name: 'Your own lines' }).focus();
  await press('Enter');
  await tabTo('counts');
  await press('Space');
  await page.getByRole('button', { name: 'off' }).waitFor();
}

/** Faults that a machine can find against the guidelines for all people's use. */
async function faults(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe.source);
  return page.evaluate(async () => {
    const { violations } = await (window as unknown as { axe: typeof axe }).axe.run({ runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] });
    return violations.map(({ id, nodes }) => `${id} at ${nodes.map((node) => node.target.join(' ')).join(', ')}`);
  });
}

it('somebody follows a reason to its source, adds a line, sees it count, and finds it kept with the reading when it is off and after a power cut', async () => {
  const first = await house.sitDown(scratch, 'own-lines', ['--demo']);
  onTestFinished(first.cutOff);
  const { page } = first;
  const hands = handsOn(page);
  await openMissing(page, hands);
  const before = await belief(page);
  await followAReason(page, hands);
  await writeALine(page, hands);
  expect(await faults(page)).toEqual([]);
  await openMissing(page, hands);
  expect(await belief(page)).toBe(before);
  await seeItCount(page, hands, before);
  expect(await faults(page)).toEqual([]);
  await page.getByRole('link', { name: 'Back to the findings' }).click();
  await page.getByRole('button', { name: 'Keep this reading' }).click();
  await page.getByRole('main').getByRole('link', { name: MISSING }).waitFor();
  await page.getByRole('link', { name: 'Look it up' }).click();
  await switchItOff(page, hands);
  expect(await faults(page)).toEqual([]);
  const saved = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save all as a file' }).click();
  const file = shopLines.parse(JSON.parse(readFileSync(await (await saved).path(), 'utf8')));
  expect(file.lines).toMatchObject([{ on: false, by: 'Ann', because: REASON }]);
  await first.cutOff();

  const second = await house.sitDown(scratch, 'own-lines', ['--demo']);
  onTestFinished(second.cutOff);
  await openMissing(second.page, handsOn(second.page));
  await second.page.getByText('and one line of your own').waitFor();
  await second.page.getByRole('button', { name: 'Open it again' }).click();
  await second.page.getByText('and one line of your own').waitFor({ state: 'detached' });
  await expect.poll(() => belief(second.page), { timeout: 60_000 }).toBe(before);
}, 240_000);
