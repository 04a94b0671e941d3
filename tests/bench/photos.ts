import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { SURFACE } from '../../core/photo/design-colours.ts';
import { forkedPhotoProcess } from '../../electron/node/photo/photo-process.ts';
import { PhotoReader } from '../../electron/node/photo/photo-reader.ts';
import { drawnScene } from '../fixtures/photo/drawn-plug.ts';
import { pictureOf } from '../fixtures/photo/picture-of.ts';

const [WIDTH, HEIGHT, ROUNDS, MANY] = [4032, 3024, 25, 12];

/** A drawn firing end as a phone keeps it: 12 megapixels with the grain of a sensor, some 3 to 4 MB. */
async function phonePhoto(): Promise<Buffer> {
  const { width, height, rgb } = pictureOf(drawnScene(5, SURFACE.tan), { light: 'D65', balance: 1, exposure: 0.9, noise: 0.01, vivid: false });
  const grain = await sharp({ create: { width: WIDTH, height: HEIGHT, channels: 3, background: '#808080', noise: { type: 'gaussian', mean: 128, sigma: 12 } } }).png().toBuffer();
  return sharp(rgb, { raw: { width, height, channels: 3 } }).resize(WIDTH, HEIGHT).composite([{ input: grain, blend: 'overlay' }]).jpeg({ quality: 90 }).toBuffer();
}

const median = (times: number[]): number => times.sort((one, other) => one - other)[Math.floor(times.length / 2)] ?? NaN;

async function timed(what: () => Promise<unknown>): Promise<number> {
  const begun = performance.now();
  await what();
  return performance.now() - begun;
}

/** Most memory that the processes started by this one have taken so far, added up, in MB; undefined where the system does not tell (it does on Linux). */
function mostMemory(): number | undefined {
  const peakOf = (pid: string): { readonly parent: number; readonly megabytes: number } => {
    const status = readFileSync(`/proc/${pid}/status`, 'utf8');
    const value = (name: string): number => Number(new RegExp(`^${name}:\\s+(\\d+)`, 'm').exec(status)?.[1] ?? 0);
    return { parent: value('PPid'), megabytes: value('VmHWM') / 1024 };
  };
  if (process.platform !== 'linux') return undefined;
  const all = readdirSync('/proc').filter((name) => /^\d+$/.test(name));
  return all.reduce((sum, pid) => {
    try {
      const { parent, megabytes } = peakOf(pid);
      return parent === process.pid ? sum + megabytes : sum;
    } catch { return sum; }
  }, 0);
}

/**
 * Measuring a 12-megapixel JPEG in its process, warm, as a multiple of sharp's plain decode and resize of the same file, turn by turn in the same run; then
 * twelve at once.
 */
export async function benchPhotos(): Promise<string> {
  const folder = mkdtempSync(join(tmpdir(), 'corenose-bench-'));
  const file = join(folder, 'photo.jpg');
  const photo = await phonePhoto();
  writeFileSync(file, photo);
  const reader = new PhotoReader({ start: () => forkedPhotoProcess(new URL('../../electron/node/photo/worker.ts', import.meta.url)) });
  const plainly = (): Promise<unknown> => sharp(file).resize(1024, 1024, { fit: 'inside' }).raw().toBuffer();
  const measured = async (): Promise<void> => {
    const result = await reader.do({ kind: 'measure', file, pointedOut: {} });
    if (!result.ok || result.value.geometry.confidence < 0.7) throw new Error('the photo could not be measured');
  };
  reader.warm();
  for (let round = 0; round < 4; round += 1) { await plainly(); await Promise.all([measured(), measured()]); }
  const [plain, whole]: [number[], number[]] = [[], []];
  for (let round = 0; round < ROUNDS; round += 1) {
    plain.push(await timed(plainly));
    whole.push(await timed(measured));
  }
  const twelve = await timed(() => Promise.all(Array.from({ length: MANY }, measured)));
  const memory = mostMemory();
  reader.close();
  rmSync(folder, { recursive: true });
  const [one, other, megabytes] = [median(plain), median(whole), photo.length / 1e6];
  return `photo of 12 megapixels (${megabytes.toFixed(1)} MB): measured in ${other.toFixed(0)} ms, ${(other / one).toFixed(2)} times decode and resize (${one.toFixed(0)} ms); `
    + `${MANY} photos in ${(twelve / 1000).toFixed(2)} s (${(twelve / MANY / other).toFixed(2)} of one after the other), ${memory === undefined ? 'memory not told' : `${Math.round(memory)} MB at most in the two processes`}\n`;
}
