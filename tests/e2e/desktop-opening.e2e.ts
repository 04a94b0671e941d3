import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from 'playwright-core';
import { beforeEach, describe, expect, it, onTestFinished } from 'vitest';
import { SHEET_LIMIT } from '../../shared/channels.ts';
import type { ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import { fourCylinder, sootyThird } from '../fixtures/plain-sheets.ts';
import { onBinary, openDesktop, skipReason, startAgain, type Desktop, type DesktopGiven } from './desktop.ts';
import { callFrom } from './library-steps.ts';
import { scratchFolder } from './scratch.ts';

const scratch = scratchFolder();
beforeEach((context) => { if (skipReason !== null) context.skip(skipReason); });

const given = (name: string, more: Partial<DesktopGiven> = {}): DesktopGiven => ({ library: join(scratch, name, 'library'), profile: join(scratch, name, 'profile'), ...more });

function fileOf(name: string, content: ReadingSheet | string): string {
  const path = join(scratch, name);
  writeFileSync(path, typeof content === 'string' ? content : JSON.stringify(content));
  return path;
}
const onDay = (date: string): ReadingSheet => ({ ...sootyThird, date });

async function opened(where: DesktopGiven): Promise<Desktop> {
  const desktop = await openDesktop(where);
  onTestFinished(() => desktop.kill());
  return desktop;
}

/** Waits for the plugs of the reading of that day. */
async function shows(page: Page, day: string): Promise<void> {
  await page.getByRole('main').getByText('Nose colour').first().waitFor();
  await page.getByText(day).first().waitFor();
}
const slip = (page: Page, words: RegExp): Promise<void> => page.getByRole('region', { name: 'Messages' }).getByText(words).first().waitFor();
const complaint = (page: Page) => page.getByRole('dialog', { name: 'The sheet could not be taken' });

async function readings(page: Page): Promise<readonly (string | null)[]> {
  const engines = await callFrom(page, 'engine.list', null);
  if (!engines.ok) throw new Error(JSON.stringify(engines.error));
  const lists = await Promise.all(engines.value.map(({ id }) => callFrom(page, 'reading.list', { engineId: id })));
  return lists.flatMap((list) => (list.ok ? list.value.map(({ date }) => date) : [])).sort();
}

describe('a sheet opened from outside', () => {
  it('that is named when the program starts is taken in and shown', async () => {
    const { page } = await opened(given('start', { args: [fileOf('march.corenose', onDay('2026-03-14'))] }));
    await slip(page, /taken in/);
    await shows(page, '14 March 2026');
    expect(await readings(page)).toEqual(['2026-03-14']);
  });

  it('is taken in once: opened again it is shown, and said to be there already', async (context) => {
    if (onBinary) context.skip('skipped: a second start is made on the stand-in only');
    const where = given('again');
    const file = fileOf('again.corenose', onDay('2026-03-15'));
    const { page } = await opened({ ...where, args: [file] });
    await slip(page, /taken in/);
    await startAgain({ ...where, args: [pathToFileURL(file).href] });
    await slip(page, /in the library already/);
    await shows(page, '15 March 2026');
    expect(await readings(page)).toEqual(['2026-03-15']);
  });

  it('by a second start comes to the window that is open, which saves first what was being entered there', async (context) => {
    if (onBinary) context.skip('skipped: a second start is made on the stand-in only');
    const where = given('second');
    const { page, focused } = await opened(where);
    const engine = await callFrom(page, 'engine.save', { id: null, engine: { ...fourCylinder, name: 'Half read' } });
    const draft = await callFrom(page, 'reading.start', { engineId: engine.ok ? engine.value.id : '' });
    const id = draft.ok ? draft.value.id : '';
    await page.evaluate((hash) => { location.hash = hash; }, `#/reading/${id}/run`);
    await page.getByLabel('Distance on these plugs').fill('1200');
    expect(await startAgain({ ...where, args: [fileOf('second.corenose', onDay('2026-03-16')), fileOf('second-too.json', onDay('2026-03-17'))] })).toMatchObject({ code: 0 });
    await focused;
    await shows(page, '17 March 2026');
    expect(await readings(page)).toEqual(expect.arrayContaining(['2026-03-16', '2026-03-17']));
    expect(await callFrom(page, 'reading.get', { id })).toMatchObject({ ok: true, value: { sheet: { conditions: { distanceKm: 1200 } } } });
  });

  it('as macOS asks for it is shown, while the program runs', async () => {
    const { page, openFile, stderr } = await opened(given('macos'));
    await page.getByRole('heading', { name: 'An empty bench' }).waitFor();
    await openFile(fileOf('running.corenose', onDay('2026-03-18')));
    await shows(page, '18 March 2026');
    expect(stderr()).not.toContain('nobody opened');
  });

  it('as macOS asks for it is shown, while the program starts', async (context) => {
    if (onBinary) context.skip('skipped: the stand-in can be asked that early');
    const { page, stderr } = await opened(given('macos-early', { openWhileStarting: fileOf('early.corenose', onDay('2026-03-19')) }));
    await shows(page, '19 March 2026');
    expect(stderr()).not.toContain('nobody opened');
  });

  it('that cannot be taken is named with what is wrong, and hinders none that can', async () => {
    mkdirSync(join(scratch, 'a-folder.corenose'));
    const args = [
      fileOf('torn.corenose', '{"format": "corenose.reading-sheet", "version": 1, '),
      fileOf('wrong.corenose', JSON.stringify({ ...sootyThird, plugs: [{ cylinder: 9 }] })),
      join(scratch, 'gone.corenose'), join(scratch, 'a-folder.corenose'), fileOf('huge.corenose', ' '.repeat(SHEET_LIMIT + 1)),
      fileOf('good.corenose', onDay('2026-03-20')),
    ];
    const { page } = await opened(given('damaged', { args }));
    await complaint(page).waitFor();
    await slip(page, /taken in/);
    expect(await complaint(page).getByRole('listitem').allInnerTexts()).toEqual([
      expect.stringMatching(/^torn\.corenose: not JSON: .* line 1, column \d+$/) as string,
      'wrong.corenose: plugs.0.cylinder: there is no cylinder 9; allowed are 1 to 4',
      'gone.corenose: the file is not there.', 'a-folder.corenose: this is no file.', 'huge.corenose: the file is too large; at most 8 MB.',
    ]);
    await page.keyboard.press('Escape');
    await shows(page, '20 March 2026');
    expect(await readings(page)).toEqual(['2026-03-20']);
  });
});
