import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeEach, describe, expect, it, onTestFinished } from 'vitest';
import { fourCylinder } from '../fixtures/plain-sheets.ts';
import { onBinary, openDesktop, skipReason, startAgain, type Desktop, type DesktopGiven } from './desktop.ts';
import { callFrom, damageLibrary } from './library-steps.ts';
import { scratchFolder } from './scratch.ts';

const scratch = scratchFolder();
beforeEach((context) => { if (skipReason !== null) context.skip(skipReason); });

const given = (name: string): DesktopGiven => ({ library: join(scratch, name, 'library'), profile: join(scratch, name, 'profile') });

async function opened(where: DesktopGiven): Promise<Desktop> {
  const desktop = await openDesktop(where);
  onTestFinished(() => desktop.kill());
  return desktop;
}

describe('the desktop program', () => {
  it('has everything again after it was closed, and after it was cut off in the middle of work', async () => {
    const where = given('kept');
    const first = await opened(where);
    const saved = await callFrom(first.page, 'engine.save', { id: null, engine: fourCylinder });
    const engineId = saved.ok ? saved.value.id : '';
    await first.close();
    const second = await opened(where);
    const draft = await callFrom(second.page, 'reading.start', { engineId });
    if (!draft.ok) throw new Error('no draft');
    const sheet = { ...draft.value.sheet, plugs: draft.value.sheet.plugs.map((plug) => ({ ...plug, tip: { noseColour: 'black' as const } })) };
    expect(await callFrom(second.page, 'reading.save', { id: draft.value.id, revision: 0, sheet, pending: { 'plugs.0.measured.gapMm': '0,7?' } })).toMatchObject({ ok: true });
    await second.kill();
    const third = await opened(where);
    expect(await callFrom(third.page, 'reading.get', { id: draft.value.id })).toMatchObject({ ok: true, value: { state: 'draft', revision: 1, sheet, pending: { 'plugs.0.measured.gapMm': '0,7?' } } });
  });

  it('started twice brings its window to the front and says so', async (context) => {
    if (onBinary) context.skip('skipped: a second start is made on the stand-in only');
    const where = given('twice');
    const first = await opened(where);
    const second = await startAgain(where);
    expect(second).toEqual({ code: 0, stderr: 'Corenose is already open; its window was brought to the front.\n' });
    await first.focused;
    expect(await callFrom(first.page, 'app.info', null)).toMatchObject({ ok: true });
  });

  it('shows a library read-only while another program has it open', async () => {
    const first = await opened(given('shared'));
    await callFrom(first.page, 'engine.save', { id: null, engine: fourCylinder });
    const second = await opened({ ...given('shared'), profile: join(scratch, 'shared', 'another-profile') });
    await second.page.getByText('Another Corenose has this library open').first().waitFor();
    expect(await callFrom(second.page, 'engine.list', null)).toMatchObject({ ok: true, value: [{ engine: fourCylinder }] });
    expect(await callFrom(second.page, 'engine.save', { id: null, engine: fourCylinder })).toMatchObject({ ok: false, error: { code: 'read-only' } });
  });

  it('offers the backups of a damaged library in its window, and goes on from one', async () => {
    const where = given('damaged');
    const backup = await damageLibrary(where.library, { ...fourCylinder, name: 'Saved from damage' });
    const { page } = await opened(where);
    await page.getByText('The library file is damaged').first().waitFor();
    await page.getByRole('button', { name: new RegExp(backup) }).click();
    await page.getByRole('dialog').getByRole('button', { name: new RegExp(backup) }).click();
    await page.getByText('Saved from damage').first().waitFor();
  });

  it('asks before it closes a window that holds on to unsaved work', async (context) => {
    if (onBinary) context.skip('skipped: its dialog waits for a person');
    const { page, askToClose, stderr } = await opened(given('unsaved'));
    await page.evaluate(() => { window.addEventListener('beforeunload', (event) => event.preventDefault()); });
    await page.mouse.click(600, 400);
    askToClose();
    await expect.poll(stderr, { timeout: 10_000 }).toContain('The open reading is not saved.');
    expect(await callFrom(page, 'app.info', null)).toMatchObject({ ok: true });
  });

  it('remembers where its window was', async () => {
    const where = given('window');
    const desktop = await opened(where);
    await desktop.close();
    expect(JSON.parse(readFileSync(join(where.profile, 'window.json'), 'utf8'))).toMatchObject({ width: 1280, height: 800, maximised: false });
  });
});
