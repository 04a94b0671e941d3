import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { ROOT } from '../../electron/start/targets.ts';

const KEPT = join(ROOT, 'tests/fixtures/pictures');
const DIFFERING = join(ROOT, 'dist/pictures-differ');

/** Pixels along the side of a cell. Means over cells forget how an edge was smoothed and remember what was drawn. */
const CELL = 4;
/** A cell differs when one channel of its mean is off by more, of 255. */
const OFF = 14;
/** Share of the cells that may differ: hairlines and letters that another build of the browser sets a fraction of a pixel aside. */
const MAY_DIFFER = 0.001;

type Cells = { readonly width: number; readonly height: number; readonly means: Buffer };

async function cellsOf(png: Buffer | string): Promise<Cells> {
  const { width, height } = await sharp(png).metadata();
  const size = { width: Math.ceil(width / CELL), height: Math.ceil(height / CELL) };
  return { ...size, means: await sharp(png).flatten().toColourspace('srgb').resize({ ...size, fit: 'fill', kernel: 'linear' }).raw().toBuffer() };
}

function differing(a: Cells, b: Cells): number {
  let count = 0;
  for (let cell = 0; cell < a.width * a.height; cell += 1) {
    const off = [0, 1, 2].some((channel) => Math.abs((a.means[3 * cell + channel] ?? 0) - (b.means[3 * cell + channel] ?? 0)) > OFF);
    if (off) count += 1;
  }
  return count;
}

const inFewColours = (png: Buffer): Promise<Buffer> => sharp(png).png({ palette: true, colours: 128, dither: 0, compressionLevel: 9, effort: 10 }).toBuffer();

async function keep(name: string, png: Buffer): Promise<void> {
  mkdirSync(KEPT, { recursive: true });
  writeFileSync(join(KEPT, `${name}.png`), await inFewColours(png));
}

/**
 * What is wrong with a picture, held against the one that is kept under its name; null when they look alike. One that differs is put beside it.
 * @param name in tests/fixtures/pictures, without its ending
 */
export async function differenceFrom(name: string, png: Buffer): Promise<string | null> {
  const kept = join(KEPT, `${name}.png`);
  if (!existsSync(kept)) return `${kept} is missing; keep it with: npm run e2e -- --renew-pictures`;
  const [before, now] = [await cellsOf(kept), await cellsOf(await inFewColours(png))];
  const sameSize = before.width === now.width && before.height === now.height;
  const count = sameSize ? differing(before, now) : Infinity;
  if (count <= before.width * before.height * MAY_DIFFER) return null;
  const much = sameSize ? `${count} of ${before.width * before.height} cells differ` : 'the size differs';
  mkdirSync(DIFFERING, { recursive: true });
  writeFileSync(join(DIFFERING, `${name}.png`), png);
  return `${name}: ${much}. Look at ${DIFFERING} beside ${KEPT}; if the new one is right: npm run e2e -- --renew-pictures`;
}

/** The same, or with CORENOSE_RENEW_PICTURES set keeps the picture as the one to hold others against. */
export async function differenceOrRenewed(name: string, png: Buffer): Promise<string | null> {
  if (process.env['CORENOSE_RENEW_PICTURES'] !== '1') return differenceFrom(name, png);
  await keep(name, png);
  return null;
}
