import sharp from 'sharp';
import { afterAll, describe, expect, it, onTestFinished } from 'vitest';
import { SURFACE } from '../../../../core/photo/design-colours.ts';
import { PhotoReader } from '../../../../electron/node/photo/photo-reader.ts';
import { drawnScene } from '../../../fixtures/photo/drawn-plug.ts';
import { pictureOf } from '../../../fixtures/photo/picture-of.ts';

describe('the thread that reads photos', () => {
  const fragile = (): PhotoReader => {
    const reader = new PhotoReader({ seconds: 0.4, file: new URL('../../../fixtures/photo/fragile-worker.ts', import.meta.url) });
    onTestFinished(() => reader.close());
    return reader;
  };
  const answered = { ok: false, error: { code: 'empty' } };

  it.each([['ends', 1, { code: 'stopped' }], ['throws', 2, { code: 'stopped' }], ['takes too long', 3, { code: 'too-slow', seconds: 0.4 }]] as const)(
    'may die over one photo (it %s) and reads the next', async (_, kind, error) => {
      const reader = fragile();
      const outcomes = await Promise.all([0, 0, kind, 0].map((first) => reader.measure(Uint8Array.of(first))));
      expect(outcomes).toEqual([answered, answered, { ok: false, error }, answered]);
    },
  );

  it('answers what it cannot start over as stopped', async () => {
    const reader = new PhotoReader({ file: new URL('file:///nowhere/worker.ts') });
    onTestFinished(() => reader.close());
    expect(await reader.measure(Uint8Array.of(0))).toEqual({ ok: false, error: { code: 'stopped' } });
  });
});

describe('a photo that is measured', () => {
  const reader = new PhotoReader();
  afterAll(() => reader.close());

  it('is answered in the order asked, a broken one between two whole ones with its own error', async () => {
    const scene = drawnScene(7, SURFACE.tan);
    const { width, height, rgb } = pictureOf(scene, { light: 'D65', balance: 1, exposure: 0.8, noise: 0.01, vivid: false });
    const photo = await sharp(rgb, { raw: { width, height, channels: 3 } }).resize(1600).jpeg({ quality: 92 }).toBuffer();
    const neutral = { x: 2 * scene.card.x, y: 2 * scene.card.y, w: 2 * scene.card.w, h: 2 * scene.card.h };
    const [first, broken, outside, last] = await Promise.all([
      reader.measure(photo, { neutral }), reader.measure(photo.subarray(0, 3000)),
      reader.measure(photo, { nose: { x: 5000, y: 10, r: 5 } }), reader.measure(photo),
    ]);
    expect(first).toMatchObject({ ok: true, value: { width: 1600, height: 1200, colour: 'yes' } });
    expect(first).toMatchObject({ value: { measurement: { tip: { reference: { kind: 'patch', taken: 'grey card' } } } } });
    expect(broken).toMatchObject({ ok: false, error: { code: 'incomplete' } });
    expect(outside).toEqual({ ok: false, error: { code: 'outside', which: 'nose', width: 1600, height: 1200 } });
    expect(last).toMatchObject({ ok: true, value: { measurement: { tip: { reference: { kind: 'estimated' } } } } });
  });
});
