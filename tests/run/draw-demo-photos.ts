import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { SURFACE } from '../../core/photo/design-colours.ts';
import type { Lab } from '../../core/photo/lab.ts';
import { ROOT } from '../../electron/start/targets.ts';
import { SEEDS } from '../../seeds/index.ts';
import { readingSheet, type ReadingSheet, type Tip } from '../../shared/formats/reading-sheet.v1.ts';
import { drawnScene, seeded, specksFor, type Scene } from '../fixtures/photo/drawn-plug.ts';
import type { Camera } from '../fixtures/photo/camera.ts';
import { pictureOf } from '../fixtures/photo/picture-of.ts';

/*
 * Draws the photos of the demo library from its sheets: every tip as its sheet says, each reading under another lamp, with a grey card beside the plug.
 * npm run demo-photos; the pictures go to seeds/<engine>/photos. They are drawings and named so.
 */
const ENGINES: Readonly<Record<string, string>> = { 'Marlisse 1300 saloon': 'marlisse-1300', 'Tarnelle 350 two-stroke twin': 'tarnelle-350' };
const LAMPS: readonly Pick<Camera, 'light' | 'balance'>[] = [{ light: 'D65', balance: 1 }, { light: 'A', balance: 0.6 }, { light: 'D50', balance: 0.8 }];
const QUALITY = 78;

const COLOURS: Partial<Record<NonNullable<Tip['noseColour']>, Lab>> = {
  white: SURFACE.chalkWhite, 'light grey': SURFACE.grey, 'light tan': SURFACE.tan, brown: SURFACE.brown, 'dark brown': SURFACE.darkBrown, 'dark grey': SURFACE.darkGrey,
  black: SURFACE.soot, yellow: SURFACE.glaze, reddish: SURFACE.rust, greenish: SURFACE.greenish,
};
const COVERED = { none: 0, light: 0.08, partial: 0.5, full: 1, 'one-sided': 0.5 } as const;
const isDark = (tip: Tip): boolean => tip.noseColour === 'black' || tip.deposit === 'dry soot' || tip.deposit === 'wet oil' || tip.deposit === 'wet fuel';

/** A scene as a tip is described; what the sheet does not say is drawn clean. */
function sceneOf(tip: Tip, seed: number): Scene {
  const colour = tip.deposit === 'wet oil' ? SURFACE.wetOil : COLOURS[tip.noseColour ?? 'light tan'] ?? SURFACE.tan;
  const sooty = tip.shellRim === 'even soot' || tip.shellRim === 'heavy soot' || tip.shellRim === 'wet oil';
  const scene = drawnScene(seed, colour, {
    tilt: 0.08, coverage: isDark(tip) ? COVERED[tip.coverage ?? 'full'] : 0, glossy: tip.noseSurface === 'wet' || tip.noseSurface === 'glossy glaze', crust: tip.noseSurface === 'crust',
    ...(sooty && { rimLab: SURFACE.soot }),
  });
  return tip.specks === undefined || tip.specks === 'none' ? scene : { ...scene, specks: specksFor(scene, 6, seeded(seed + 1)) };
}

async function draw(folder: string, sheet: ReadingSheet, at: number): Promise<void> {
  const lamp = LAMPS[at % LAMPS.length] ?? LAMPS[0];
  for (const [i, { cylinder, tip }] of sheet.plugs.entries()) {
    const { width, height, rgb } = pictureOf(sceneOf(tip ?? {}, 1000 * (at + 1) + cylinder), { light: 'D65', balance: 1, ...lamp, exposure: 0.8, noise: 0.006, vivid: false });
    const taken = `${(sheet.date ?? '').slice(0, 10).replaceAll('-', ':')} 10:${String(10 + i).padStart(2, '0')}:00`;
    await sharp(rgb, { raw: { width, height, channels: 3 } }).jpeg({ quality: QUALITY, mozjpeg: true })
      .withExif({ IFD0: { ImageDescription: 'A drawing, not a photo of a plug' }, IFD2: { DateTimeOriginal: taken } })
      .toFile(join(folder, `drawn-${sheet.date ?? ''}-cylinder-${cylinder}.jpg`));
  }
}

for (const { name, sheets } of SEEDS) {
  const engine = ENGINES[name];
  if (engine === undefined) continue;
  const folder = join(ROOT, 'seeds', engine, 'photos');
  mkdirSync(folder, { recursive: true });
  for (const [at, sheet] of sheets.entries()) await draw(folder, readingSheet.parse(sheet), at);
}
