import sharp from 'sharp';
import { SURFACE } from '../../core/photo/design-colours.ts';
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

/** Measuring a 12-megapixel JPEG in its thread, warm, as a multiple of sharp's plain decode and resize of the same file, turn by turn in the same run. */
export async function benchPhotos(): Promise<string> {
  const photo = await phonePhoto();
  const reader = new PhotoReader();
  const plainly = (): Promise<unknown> => sharp(photo).resize(1024, 1024, { fit: 'inside' }).raw().toBuffer();
  const measured = async (): Promise<void> => {
    const result = await reader.measure(photo);
    if (!result.ok || result.value.measurement.confidence < 0.7) throw new Error('the photo could not be measured');
  };
  for (let round = 0; round < 3; round += 1) { await plainly(); await measured(); }
  const [plain, whole]: [number[], number[]] = [[], []];
  for (let round = 0; round < ROUNDS; round += 1) {
    plain.push(await timed(plainly));
    whole.push(await timed(measured));
  }
  const twelve = await timed(() => Promise.all(Array.from({ length: MANY }, measured)));
  await reader.close();
  const [one, other, megabytes] = [median(plain), median(whole), photo.length / 1e6];
  return `photo of 12 megapixels (${megabytes.toFixed(1)} MB): measured in ${other.toFixed(0)} ms, ${(other / one).toFixed(2)} times decode and resize (${one.toFixed(0)} ms); `
    + `${MANY} photos in ${(twelve / 1000).toFixed(2)} s; ${Math.round(process.memoryUsage.rss() / 1e6)} MB in memory\n`;
}
