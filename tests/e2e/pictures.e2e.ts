import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it, onTestFinished } from 'vitest';
import { CLOSE_UP } from '../../renderer/ui/drawn-tip/crop.ts';
import { GROUND } from '../../renderer/ui/drawn-tip/palette.ts';
import { drawTip, svgText, type View } from '../../renderer/ui/drawn-tip/index.ts';
import { FACET_NAMES, OVERALL, TIP_FACETS } from '../../shared/vocabulary/tip.ts';
import type { Tip } from '../../shared/formats/reading-sheet.v1.ts';
import { launchBrowser, libraryIn, startLoopback } from './loopback-host.ts';
import { differenceFrom, differenceOrRenewed } from './picture-check.ts';
import { SIZES, THEMES, addRadialReading, goTo, visitScreen } from './screens.ts';
import { scratchFolder } from './scratch.ts';

const scratch = scratchFolder();
let browser: Browser;
beforeAll(async () => { browser = await launchBrowser(); });
afterAll(async () => { await browser.close(); });

const READ: Tip = { noseColour: 'light tan', noseSurface: 'fine powder', shellRim: 'even soot', centreElectrode: 'sharp', groundElectrode: 'as new' };
const QUESTIONS = [...FACET_NAMES.map((facet) => [facet, TIP_FACETS[facet]] as const), ['overall', OVERALL] as const];

let drawings = 0;
const drawn = (tip: Tip, view: View, size: number): string => svgText(drawTip(tip, view, size, 'kept', `k${drawings++}`), size);
const closeUp = (facet: keyof typeof CLOSE_UP, tip: Tip, size: number): string => {
  const { view, window } = CLOSE_UP[facet];
  return svgText(drawTip(tip, view, size, 'kept', `k${drawings++}`, window), size);
};

/** A value on a plug that was read, and alone as the sample beside its word. */
const bothViews = (facet: keyof typeof CLOSE_UP, value: string): readonly string[] => {
  const { view } = CLOSE_UP[facet];
  return [drawn({ ...READ, [facet]: value }, view, view === 'side' ? 160 : 80), closeUp(facet, { [facet]: value }, 80)];
};

async function pictureOf(svgs: readonly string[]): Promise<Buffer> {
  const page = await browser.newPage({ viewport: { width: 800, height: 600 } });
  await page.setContent(`<!doctype html><style>body { margin: 0; width: 800px; line-height: 0; background: ${GROUND} }</style>${svgs.join('')}`);
  const png = await page.locator('body').screenshot();
  await page.close();
  return png;
}

/** A facet's name as a file's name. */
const kebab = (facet: string): string => facet.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);

describe('a drawn tip looks as it did', () => {
  it.each(QUESTIONS)('for every value of %s', async (facet, values) => {
    expect(await differenceOrRenewed(`tip-${kebab(facet)}`, await pictureOf(values.flatMap((value) => bothViews(facet, value))))).toBeNull();
  });

  it('unread, in the class, and in the tray', async () => {
    const all = [{}, READ];
    expect(await differenceOrRenewed('tip-sizes', await pictureOf(all.flatMap((tip) => [drawn(tip, 'end', 240), drawn(tip, 'side', 480), drawn(tip, 'end', 48)])))).toBeNull();
  });

  it('and a planted change is told: brown drawn where the kept picture has light tan', async () => {
    const planted = TIP_FACETS.noseColour.flatMap((value) => bothViews('noseColour', value === 'light tan' ? 'brown' : value));
    expect(await differenceFrom('tip-nose-colour', await pictureOf(planted))).toContain('cells differ');
  });
});

/** The places of the tray as they stand on the screen; the entry beside them is not part of it. */
async function trayOf(page: Page, name: string, colorScheme: string): Promise<string | null> {
  return differenceOrRenewed(`tray-${name}-${colorScheme}`, await page.getByRole('listbox', { name: /^Tray/ }).screenshot());
}

describe.each(THEMES)('the tray in the %s theme looks as it did', (colorScheme) => {
  it('for an engine with four cylinders', async () => {
    const host = await startLoopback(['--demo', '--library', libraryIn(scratch, `four-${colorScheme}`)]);
    onTestFinished(async () => { await host.stop(); });
    const page = await browser.newPage({ viewport: SIZES[0], colorScheme, reducedMotion: 'reduce' });
    onTestFinished(() => page.close());
    await visitScreen(page, host.address, 'marlisse-plugs');
    expect(await trayOf(page, 'four', colorScheme)).toBeNull();
  });

  it('for a radial with eighteen cylinders and two plugs in each', async () => {
    const host = await startLoopback(['--library', libraryIn(scratch, `radial-${colorScheme}`)]);
    onTestFinished(async () => { await host.stop(); });
    const page = await browser.newPage({ viewport: SIZES[0], colorScheme, reducedMotion: 'reduce' });
    onTestFinished(() => page.close());
    const id = await addRadialReading(page, host.address);
    await goTo(page, host.address, { page: 'reading', id, station: 'plugs' });
    expect(await trayOf(page, 'radial', colorScheme)).toBeNull();
  });
});
