import { parentPort } from 'node:worker_threads';
import sharp from 'sharp';
import { shutOtherLoaders } from './loaders.ts';
import { measurePhoto, type MeasuredPhoto, type PointedOut } from './photo-job.ts';
import type { PhotoError } from './photo-error.ts';
import type { Result } from '../../../shared/result.ts';

/** A thread that decodes and measures one photo after another and may die over one. */
export type Task = { readonly id: number; readonly bytes: Uint8Array; readonly pointedOut: PointedOut };
export type Answer = { readonly id: number; readonly result: Result<MeasuredPhoto, PhotoError> };

const WARMING = 3;

/** The first picture costs the compilation of everything; a drawn one pays for it before a real one comes. */
async function warmUp(): Promise<void> {
  const rings = [300, 190, 120, 60].map((r, i) => `<circle cx="400" cy="300" r="${r}" fill="${['#999', '#222', '#cb9', '#777'][i] ?? ''}"/>`).join('');
  const drawn = await sharp(Buffer.from(`<svg xmlns="http://www.w3.org/2000/svg" width="800" height="600">${rings}<path d="M380 300h40v-300h-40z" fill="#888"/></svg>`)).jpeg().toBuffer();
  shutOtherLoaders();
  for (let round = 0; round < WARMING; round += 1) await measurePhoto(drawn, {});
}

const port = parentPort;
if (port === null) throw new Error('this file runs as a worker thread');
await warmUp();
port.on('message', ({ id, bytes, pointedOut }: Task) => {
  void measurePhoto(bytes, pointedOut).then((result) => { port.postMessage({ id, result } satisfies Answer); });
});
port.postMessage('ready');
