import { describe, expect, it, onTestFinished } from 'vitest';
import { handsOn, type Hands } from './hands.ts';
import { scratchFolder } from './scratch.ts';
import { HOUSES, type Sitting } from './sitting.ts';

const scratch = scratchFolder();

async function writeTheEngineDown({ page }: Sitting, { press, type, tabTo, at }: Hands): Promise<void> {
  await page.getByRole('link', { name: 'Add your engine' }).waitFor();
  await tabTo('Add your engine');
  await press('Enter');
  await at('A new engine');
  await type('Misfiring four');
  await tabTo('road');
  await press('Space', 'Tab');
  await type('4');
  await tabTo('Layout and order');
  await press('Enter');
  await tabTo('in line');
  await press('Space');
  await tabTo('Mixture');
  await press('Enter');
  await tabTo('carburettor');
  await press('Space');
  await tabTo('Save the engine');
  await press('Enter');
  await at('Misfiring four');
}

async function readThePlugs({ press, tabTo, choose, at }: Hands): Promise<void> {
  await tabTo('Start a reading');
  await press('Enter');
  await at('The plugs');
  await press('o', ']', 'o', ']', ']', 'o', '[');
  await press('ArrowDown');
  for (const value of ['black', 'wet', 'wet oil', 'full', 'wet oil']) await choose(value);
}

async function sayWhatWasNoticed({ press, type, at }: Hands): Promise<void> {
  await press('Alt+1');
  await at('The run');
  await press('/');
  await type('misf');
  await press('Enter');
  await type('blue');
  await press('Enter');
  await press('Alt+4');
  await at('The cylinders');
  await press('ArrowDown', 'ArrowDown', 'ArrowDown');
  await type('620');
}

/** What a tuner has to see: which cylinder and why, what to do first, that the heat value stays, and what could hurt. */
async function lookAtTheFindings({ page }: Sitting): Promise<void> {
  const main = page.getByRole('main');
  await main.getByText(/^Cylinder 3 .*oil/).first().waitFor();
  await main.getByText('Working it out anew').waitFor({ state: 'hidden' });
  const plan = await main.getByRole('region', { name: 'In this order' }).getByRole('listitem').allInnerTexts();
  expect(plan[0]).toMatch(/cylinder 3/i);
  expect(plan.join('\n')).toContain('compression');
  const heat = await main.getByRole('region', { name: 'Heat value of the plug' }).innerText();
  expect(heat).toMatch(/\bStay\b/);
  expect(heat).not.toContain('One step hotter');
  expect(await main.innerText()).toContain('Let the engine cool');
}

async function keepItAndBeginAnother({ page }: Sitting, { press, type, tabTo, at }: Hands): Promise<void> {
  await press('Control+Enter');
  await at('Misfiring four');
  await page.getByRole('main').getByRole('listitem').filter({ hasText: 'Kept' }).getByText('oil fouling').waitFor();
  await tabTo('Start a reading');
  await press('Enter');
  await at('The plugs');
  await press('o', ']', ']', 'm');
  await page.waitForFunction(() => document.activeElement?.tagName === 'INPUT');
  await type('0,7?');
  await page.getByText('Saved', { exact: true }).waitFor();
}

async function findTheDraftAgain({ page }: Sitting, { press, tabTo, at }: Hands): Promise<void> {
  await page.getByRole('link', { name: /^Misfiring four/ }).waitFor();
  await tabTo('Misfiring four');
  await press('Enter');
  await at('Misfiring four');
  expect(await page.getByRole('main').innerText()).toContain('road · 4 cylinders · in line');
  await tabTo('Go on with the draft');
  await press('Enter');
  await at('The plugs');
  await page.getByRole('option', { name: /^Cylinder 1\b.*normal/ }).waitFor();
  await press(']', ']', 'm', 'Tab');
  expect(await page.getByLabel('Gap', { exact: true }).inputValue()).toBe('0,7?');
  expect(await page.getByLabel('Gap', { exact: true }).getAttribute('aria-invalid')).toBe('true');
}

async function findTheKeptReadingAgain(sitting: Sitting, { press, tabTo, at }: Hands): Promise<void> {
  await tabTo('Misfiring four');
  await press('Enter');
  await at('Misfiring four');
  await tabTo(/ 4 plugs read$/);
  await press('Enter');
  await at('Findings');
  await lookAtTheFindings(sitting);
  await press('Alt+4');
  await at('The cylinders');
  expect(await sitting.page.getByLabel('Compression, dry, cylinder 3').inputValue()).toBe('620');
}

describe.each(HOUSES)('a tuner with one misfiring cylinder, by keyboard alone, at $name', (house) => {
  async function sitDown(): Promise<{ sitting: Sitting; hands: Hands }> {
    const sitting = await house.sitDown(scratch, house.name.replaceAll(' ', '-'));
    onTestFinished(sitting.cutOff);
    return { sitting, hands: handsOn(sitting.page) };
  }

  it('goes from an empty library to findings in few strokes, and finds everything again after a power cut', async (context) => {
    if (house.closed !== null) context.skip(house.closed);
    const { sitting, hands } = await sitDown();
    await writeTheEngineDown(sitting, hands);
    const engine = hands.strokes();
    await readThePlugs(hands);
    await sayWhatWasNoticed(hands);
    await hands.press('Alt+5');
    await hands.at('Findings');
    const reading = hands.strokes() - engine;
    process.stdout.write(`Key strokes at ${house.name}: ${engine} for the engine, ${reading} from its log to the findings\n`);
    expect(reading).toBeLessThanOrEqual(40);
    await lookAtTheFindings(sitting);
    await keepItAndBeginAnother(sitting, hands);
    await sitting.cutOff();

    const again = await sitDown();
    await findTheDraftAgain(again.sitting, again.hands);
    await findTheKeptReadingAgain(again.sitting, again.hands);
  });
});
