import { spawnSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import sharp, { type Sharp } from 'sharp';
import { describe, expect, it } from 'vitest';
import { SURFACE } from '../../../../core/photo/design-colours.ts';
import { tintDifference, tintOf } from '../../../../core/photo/tint.ts';
import { photoMeasure, type PhotoMeasure } from '../../../../shared/formats/photo-measure.v1.ts';
import { drawnScene, type Scene } from '../../../fixtures/photo/drawn-plug.ts';
import { pictureOf } from '../../../fixtures/photo/picture-of.ts';
import { temporaryFolder } from '../../../fixtures/temporary-folder.ts';

const root = fileURLToPath(new URL('../../../..', import.meta.url));
const scripts = (JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { scripts: Record<string, string> }).scripts;

/** Runs the command of package.json as npm would. */
function measure(args: readonly string[]): { status: number | null; stdout: string; stderr: string } {
  const [, ...command] = (scripts['measure-photo'] ?? '').split(' ');
  const { status, stdout, stderr } = spawnSync(process.execPath, [...command, ...args], { cwd: root, encoding: 'utf8' });
  return { status, stdout, stderr };
}
function measured(args: readonly string[]): PhotoMeasure {
  const { status, stdout, stderr } = measure(args);
  expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
  return photoMeasure.parse(JSON.parse(stdout));
}

const SCENE = drawnScene(31, SURFACE.tan);
async function photoFile(scene: Scene, change: (picture: Sharp) => Sharp = (picture) => picture): Promise<string> {
  const { width, height, rgb } = pictureOf(scene, { light: 'A', balance: 0.8, exposure: 0.9, noise: 0.01, vivid: false });
  const file = join(temporaryFolder(), 'plug.jpg');
  await change(sharp(rgb, { raw: { width, height, channels: 3 } }).resize(1200)).jpeg({ quality: 92 }).toFile(file);
  return file;
}
const inFile = (length: number): number => 1.5 * length;
const { card } = SCENE;
const neutral = [card.x, card.y, card.w, card.h].map(inFile).join(',');

describe('npm run measure-photo', () => {
  it('prints colours and geometry in pixels of the picture, following the format, the same each time', async () => {
    const file = await photoFile(SCENE);
    const found = measured([file, '--neutral', neutral]);
    expect(found).toMatchObject({ image: { width: 1200, height: 900 }, whiteReference: { kind: 'patch', taken: 'grey card', x: 24, y: 24, w: 150, h: 126 } });
    const { shell, nose, confidence } = found.geometry;
    expect(confidence).toBeGreaterThan(0.7);
    expect(Math.hypot(shell!.x - inFile(SCENE.x), shell!.y - inFile(SCENE.y))).toBeLessThan(0.05 * inFile(SCENE.bore));
    expect(nose!.r / inFile(SCENE.nose * SCENE.bore)).toBeCloseTo(1, 1);
    expect(shell!.r / inFile(SCENE.outline * SCENE.bore)).toBeCloseTo(1, 1);
    expect(tintDifference(tintOf(found.regions.nose!.lab as never), tintOf(SURFACE.tan))).toBeLessThan(2.5);
    expect(found.suggests).toContainEqual(expect.objectContaining({ facet: 'noseColour', value: 'light tan' }));
    expect(measure([file, '--neutral', neutral]).stdout).toBe(measure([file, '--neutral', neutral]).stdout);
  });

  it('takes the nose that a person points out', async () => {
    const { geometry } = measured([await photoFile(SCENE), '--nose', [SCENE.x, SCENE.y, SCENE.nose * SCENE.bore].map(inFile).join(',')]);
    const near = (length: number): number => expect.closeTo(inFile(length), 0) as number;
    expect(geometry.nose).toEqual({ x: near(SCENE.x), y: near(SCENE.y), r: near(SCENE.nose * SCENE.bore) });
  });

  it('says how doubtful the white is without a reference, and that a grey picture has no colour', async () => {
    expect(measured([await photoFile(SCENE)])).toMatchObject({ whiteReference: { kind: 'estimated' }, doubts: expect.arrayContaining([expect.stringContaining('no neutral reference')]) as string[] });
    const grey = measured([await photoFile(SCENE, (picture) => picture.greyscale())]);
    expect(grey).toMatchObject({ whiteReference: { kind: 'none' }, regions: {} });
    expect(grey.doubts).toContain('the picture is grey; its colours were not judged');
    expect(grey.suggests.some(({ facet }) => facet === 'noseColour')).toBe(false);
  });

  it('finds no plug where there is none, and claims nothing', async () => {
    const file = join(temporaryFolder(), 'wall.png');
    await sharp({ create: { width: 800, height: 600, channels: 3, background: '#a09080' } }).png().toFile(file);
    expect(measured([file])).toEqual({
      format: 'corenose.photo-measure', version: 1, image: { width: 800, height: 600 }, geometry: { confidence: 0 }, whiteReference: { kind: 'none' }, regions: {}, suggests: [],
      doubts: [expect.stringContaining('no plug found')],
    });
  });

  it.each([
    ['no file', [], ['no file given; use npm run --silent measure-photo -- FILE']],
    ['two files and an unknown option', ['a.jpg', 'b.jpg', '--white', '1'], ['--white: unknown option; allowed are --neutral, --nose', '3 files given, one is measured at a time']],
    ['a neutral area of three numbers', ['a.jpg', '--neutral', '1,2,3'], ['--neutral: "1,2,3" is not X,Y,W,H; give X,Y,W,H in pixels']],
    ['a nose without a size', ['a.jpg', '--nose', '1,2,0'], ['--nose: "1,2,0" has no size; R must be above 0']],
    ['a nose that is not told', ['a.jpg', '--nose'], ['--nose: missing; give X,Y,R in pixels']],
    ['a file that is not there', ['nowhere.jpg'], ['nowhere.jpg: there is no such file']],
  ])('refuses %s, one line a problem', (_what, args, lines) => {
    const { status, stdout, stderr } = measure(args);
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr.split('\n')).toEqual([...lines.map((start) => expect.stringContaining(start) as string), '']);
  });

  it('refuses what is not a photo whatever its name, and an area outside the picture', async () => {
    const file = join(temporaryFolder(), 'plug.jpg');
    writeFileSync(file, '<svg xmlns="http://www.w3.org/2000/svg" width="400" height="400"/>');
    expect(measure([file])).toEqual({ status: 2, stdout: '', stderr: `${file}: SVG files cannot be read; allowed are JPEG, PNG, WebP, TIFF, GIF, AVIF or HEIC\n` });
    const outside = measure([await photoFile(SCENE), '--neutral', '1100,10,200,50']);
    expect(outside).toEqual({ status: 2, stdout: '', stderr: '--neutral: not within the picture; it is 1200 x 900 pixels, upright\n' });
  });
});
