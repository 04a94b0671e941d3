import { readdirSync, readFileSync } from 'node:fs';
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import { describe, expect, it, onTestFinished } from 'vitest';
import { SURFACE } from '../../../../core/photo/design-colours.ts';
import { forkedPhotoProcess } from '../../../../electron/node/photo/photo-process.ts';
import { PhotoReader } from '../../../../electron/node/photo/photo-reader.ts';
import { drawnScene } from '../../../fixtures/photo/drawn-plug.ts';
import { pictureOf } from '../../../fixtures/photo/picture-of.ts';
import { temporaryFolder } from '../../../fixtures/temporary-folder.ts';

const WORKER = new URL('../../../../electron/node/photo/worker.ts', import.meta.url);

function readerWith(file: URL, given: { seconds?: number; lanes?: number } = {}): PhotoReader {
  const reader = new PhotoReader({ start: () => forkedPhotoProcess(file), ...given });
  onTestFinished(() => reader.close());
  return reader;
}

describe('the processes that read photos', () => {
  const FRAGILE = new URL('../../../fixtures/photo/fragile-worker.ts', import.meta.url);
  const measure = (reader: PhotoReader, file: string) => reader.do({ kind: 'measure', file, pointedOut: {} });
  const answered = { ok: false, error: { code: 'empty' } };
  const stopped = { ok: false, error: { code: 'stopped' } };

  it.each(['ends', 'throws', 'killed'])('may die over one photo (it %s) and read the next', async (end) => {
    const reader = readerWith(FRAGILE);
    expect(await Promise.all(['a', 'b', end, 'c', 'd'].map((file) => measure(reader, file)))).toEqual([answered, answered, stopped, answered, answered]);
  });

  it('are ended over a photo that takes too long, also in the middle of reckoning', async () => {
    const reader = readerWith(FRAGILE, { seconds: 0.4 });
    await measure(reader, 'a');
    expect(await Promise.all(['hangs', 'b', 'c'].map((file) => measure(reader, file)))).toEqual([{ ok: false, error: { code: 'too-slow', seconds: 0.4 } }, answered, answered]);
  }, 60_000);

  it('are not mourned: what cannot be started answers every photo as stopped', async () => {
    const reader = readerWith(new URL('file:///nowhere/worker.ts'));
    expect(await Promise.all(['a', 'b', 'c'].map((file) => measure(reader, file)))).toEqual([stopped, stopped, stopped]);
  });

  it('end with the program, and what waited is answered', async () => {
    const reader = readerWith(FRAGILE, { lanes: 1 });
    const waiting = ['hangs', 'b'].map((file) => measure(reader, file));
    reader.close();
    expect(await Promise.all(waiting)).toEqual([stopped, stopped]);
  });
});

describe('photos that are measured', () => {
  it('are answered each with its own: a broken one, one that vanished and one of which too much is asked between two whole ones', async () => {
    const reader = readerWith(WORKER);
    const scene = drawnScene(7, SURFACE.tan);
    const { width, height, rgb } = pictureOf(scene, { light: 'D65', balance: 1, exposure: 0.8, noise: 0.01, vivid: false });
    const folder = temporaryFolder();
    const [whole, cut] = [join(folder, 'whole.jpg'), join(folder, 'cut.jpg')];
    await sharp(rgb, { raw: { width, height, channels: 3 } }).resize(1600).jpeg({ quality: 92 }).toFile(whole);
    await writeFile(cut, readFileSync(whole).subarray(0, 3000));
    const white = { kind: 'patch' as const, x: 2 * scene.card.x, y: 2 * scene.card.y, w: 2 * scene.card.w, h: 2 * scene.card.h };
    const [first, broken, gone, outside, last] = await Promise.all([
      reader.do({ kind: 'measure', file: whole, pointedOut: { white } }), reader.do({ kind: 'measure', file: cut, pointedOut: {} }),
      reader.do({ kind: 'measure', file: join(folder, 'vanished.jpg'), pointedOut: {} }),
      reader.do({ kind: 'measure', file: whole, pointedOut: { parts: { nose: { x: 5000, y: 10, r: 5 } } } }),
      reader.do({ kind: 'measure', file: whole, pointedOut: {} }),
    ]);
    expect(first).toMatchObject({ ok: true, value: { image: { width: 1600, height: 1200 }, whiteReference: { kind: 'patch', taken: 'grey card' } } });
    expect(broken).toMatchObject({ ok: false, error: { code: 'incomplete' } });
    expect(gone).toMatchObject({ ok: false, error: { code: 'no-file' } });
    expect(outside).toEqual({ ok: false, error: { code: 'outside', which: 'nose', width: 1600, height: 1200 } });
    expect(last).toMatchObject({ ok: true, value: { whiteReference: { kind: 'estimated' } } });
    expect(readdirSync(folder).sort()).toEqual(['cut.jpg', 'whole.jpg']);
  }, 30_000);
});
