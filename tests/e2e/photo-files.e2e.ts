import { join } from 'node:path';
import type { Page } from 'playwright-core';
import sharp from 'sharp';
import { beforeEach, describe, expect, it, onTestFinished } from 'vitest';
import type { AppError } from '../../shared/channels.ts';
import type { IncomingPhoto } from '../../shared/channels-photo.ts';
import type { Result } from '../../shared/result.ts';
import { cardIn, plugPicture, withPhoneNotes } from '../fixtures/photo/photo-files.ts';
import { fourCylinder } from '../fixtures/plain-sheets.ts';
import { openDesktop, skipReason } from './desktop.ts';
import { callFrom } from './library-steps.ts';
import { launchBrowser, libraryIn, startLoopback } from './loopback-host.ts';
import { scratchFolder } from './scratch.ts';

const scratch = scratchFolder();

/** Hands a file to the host as the page does, from inside the page. */
const bringIn = (page: Page, readingId: string, name: string, bytes: Uint8Array): Promise<Result<IncomingPhoto, AppError>> =>
  page.evaluate(async ({ path, base64 }) => {
    const body = Uint8Array.from(atob(base64), (c) => c.charCodeAt(0));
    return (await (await fetch(path, { method: 'POST', body })).json()) as unknown;
  }, { path: `/photos/incoming?readingId=${readingId}&name=${encodeURIComponent(name)}`, base64: Buffer.from(bytes).toString('base64') }) as Promise<Result<IncomingPhoto, AppError>>;

const fetched = (page: Page, path: string): Promise<string> => page.evaluate(async (address) => {
  const bytes = new Uint8Array(await (await fetch(address)).arrayBuffer());
  return btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''));
}, path);

const shownWidth = (page: Page, path: string): Promise<number> => page.evaluate((address) => new Promise<number>((done, failed) => {
  const image = new Image();
  image.onload = () => done(image.naturalWidth);
  image.onerror = () => failed(new Error('not shown'));
  image.src = address;
}), path);

async function photoJourney(page: Page): Promise<void> {
  const engine = await callFrom(page, 'engine.save', { id: null, engine: fourCylinder });
  const reading = await callFrom(page, 'reading.start', { engineId: engine.ok ? engine.value.id : '' });
  const readingId = reading.ok ? reading.value.id : '';
  const { scene, picture } = plugPicture();
  const bytes = await withPhoneNotes(picture).jpeg({ quality: 90 }).toBuffer();
  const brought = await bringIn(page, readingId, 'plug 1.jpg', bytes);
  if (!brought.ok) throw new Error(JSON.stringify(brought.error));
  const { id } = brought.value.photo;
  expect(await shownWidth(page, `/photos/${id}/small`)).toBe(320);
  expect(await shownWidth(page, `/photos/${id}/full`)).toBe(1600);
  expect(Buffer.from(await fetched(page, `/photos/${id}/original`), 'base64').equals(bytes)).toBe(true);
  expect((await sharp(Buffer.from(await fetched(page, `/photos/${id}/export`), 'base64')).metadata()).exif).toBeUndefined();
  const measured = await callFrom(page, 'photo.measure', { id, white: { kind: 'patch', ...cardIn(scene) } });
  expect(measured).toMatchObject({ ok: true, value: { measure: { whiteReference: { kind: 'patch', taken: 'grey card' } } } });
  expect(await bringIn(page, readingId, 'drawn.jpg', Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"/>'))).toMatchObject({ ok: false, error: { problems: [{ path: 'drawn.jpg' }] } });
  await expect(page.evaluate(() => fetch('https://elsewhere.example/photo.jpg').then(() => 'reached'))).rejects.toThrow();
}

describe('photos on the loopback host', () => {
  it('go in by the page, are shown and measured, and come out byte for byte', async () => {
    const host = await startLoopback(['--library', libraryIn(scratch, 'loopback')]);
    const browser = await launchBrowser();
    onTestFinished(async () => { await browser.close(); await host.kill(); });
    const page = await (await browser.newContext()).newPage();
    await page.goto(host.address);
    await page.waitForURL((url) => url.pathname === '/');
    await photoJourney(page);
  });
});

describe('photos in the desktop program', () => {
  beforeEach((context) => { if (skipReason !== null) context.skip(skipReason); });
  it('go in by the page, are shown and measured, and come out byte for byte', async () => {
    const desktop = await openDesktop({ library: join(scratch, 'desktop', 'library'), profile: join(scratch, 'desktop', 'profile') });
    onTestFinished(() => desktop.kill());
    await photoJourney(desktop.page);
  });
});
