import sharp, { type Sharp } from 'sharp';
import { describe, expect, it } from 'vitest';
import { SURFACE } from '../../../../core/photo/design-colours.ts';
import { measureTip, type TipMeasurement } from '../../../../core/photo/measure-tip.ts';
import type { PixelImage } from '../../../../core/photo/pixels.ts';
import { encoded, LIGHT_OF_BYTE } from '../../../../core/photo/srgb.ts';
import { tintDifference, tintOf } from '../../../../core/photo/tint.ts';
import type { Camera } from '../../../fixtures/photo/camera.ts';
import { drawnScene, type Scene } from '../../../fixtures/photo/drawn-plug.ts';
import { pictureOfThing, ROUND_THINGS } from '../../../fixtures/photo/other-round-things.ts';
import { pictureOf } from '../../../fixtures/photo/picture-of.ts';

const SEEDS = [1, 2, 3, 4, 5, 6];
const NOSES = ['tan', 'brown', 'grey', 'rust', 'glaze', 'cleanCeramic'] as const;
const CAMERA: Camera = { light: 'D65', balance: 1, exposure: 0.9, noise: 0.012, vivid: false };
const NO_CARD = { x: -900, y: 0, w: 1, h: 1 };
const SLOW = 60_000;

const sceneOf = (seed: number, changed: Partial<Scene> = {}): Scene => drawnScene(seed, SURFACE[NOSES[seed % NOSES.length] ?? 'tan'], changed);
const taken = (scene: Scene, changed: Partial<Camera> = {}): PixelImage => pictureOf(scene, { ...CAMERA, ...changed });
const redrawn = async ({ width, height, rgb }: PixelImage, change: (picture: Sharp) => Sharp): Promise<PixelImage> =>
  ({ width, height, rgb: await change(sharp(rgb, { raw: { width, height, channels: 3 } })).removeAlpha().raw().toBuffer() });
function withDrawing(image: PixelImage, drawing: string): Promise<PixelImage> {
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${image.width}" height="${image.height}">${drawing}</svg>`;
  return redrawn(image, (picture) => picture.composite([{ input: Buffer.from(svg) }]));
}

/** Whether the bore and the nose lie where they were drawn. */
function isRight({ tip }: TipMeasurement, { x, y, bore, nose }: Scene): boolean {
  const found = tip?.geometry;
  return found !== undefined && Math.hypot(found.bore.x - x, found.bore.y - y) < 0.15 * bore && Math.abs(found.bore.r / bore - 1) < 0.12
    && Math.abs(found.nose.r / bore / nose - 1) < 0.15;
}
function finger(x: number, y: number, turn: number): string {
  const shape = '<rect y="-55" width="600" height="110" rx="55" fill="#c48b6c"/><ellipse cx="40" rx="34" ry="30" fill="#e6bba6"/>';
  return `<g transform="translate(${x} ${y}) rotate(${turn})">${shape}</g>`;
}

type Hard = (seed: number) => Promise<{ readonly scene: Scene; readonly image: PixelImage }>;
const plain: (scene: Scene, camera?: Partial<Camera>) => ReturnType<Hard> = (scene, camera) => Promise.resolve({ scene, image: taken(scene, camera) });
const HARD: Readonly<Record<string, Hard>> = {
  'far off the middle': (seed) => plain(sceneOf(seed, { bore: 90, x: 160 + 80 * seed, y: 160 + 45 * seed, card: NO_CARD })),
  'with its rim out of the picture': (seed) => plain(sceneOf(seed, { bore: 235, x: 400, y: 300, card: NO_CARD })),
  'small': (seed) => plain(sceneOf(seed, { bore: 36, card: NO_CARD })),
  'held by fingers': async (seed) => {
    const scene = sceneOf(seed);
    const [r, turn] = [1.15 * scene.bore * scene.outline, 47 * seed];
    const from = (degrees: number): string => {
      const angle = (degrees * Math.PI) / 180;
      return finger(scene.x + r * Math.cos(angle), scene.y + r * Math.sin(angle), degrees);
    };
    return { scene, image: await withDrawing(taken(scene), from(turn) + from(turn + 132)) };
  },
  'on a dark bench': async (seed) => {
    const scene = sceneOf(seed);
    const r = scene.bore * scene.outline;
    const hole = `M${scene.x - r} ${scene.y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0`;
    const around = `<path fill-rule="evenodd" fill="#0a0a0b" d="M0 0H800V600H0Z ${hole}"/>`;
    return { scene, image: await withDrawing(taken(scene), around) };
  },
  'blurred': async (seed) => ({ scene: sceneOf(seed), image: await redrawn(taken(sceneOf(seed)), (picture) => picture.blur(5)) }),
  'under a warm lamp, the camera set for daylight': (seed) => plain(sceneOf(seed), { light: 'A', balance: 0, exposure: 0.6 }),
  'in dim light': (seed) => plain(sceneOf(seed), { exposure: 0.12, noise: 0.03 }),
  'twenty degrees from end-on': (seed) => plain(sceneOf(seed, { tilt: (20 * Math.PI) / 180 })),
  'sooty all over': (seed) => plain(drawnScene(seed, SURFACE.soot, { rimLab: [20, 0.4, 1], groundLab: [20, 0.4, 1] })),
};

describe('a plug in a hard picture is found where it lies', () => {
  it.each(Object.keys(HARD))('%s', async (name) => {
    const results = await Promise.all(SEEDS.map(async (seed) => {
      const { scene, image } = await (HARD[name] as Hard)(seed);
      const found = measureTip(image, { colour: true });
      return { right: isRight(found, scene), sure: found.confidence >= 0.7 };
    }));
    console.info(`${name}: ${results.filter(({ right }) => right).length} of ${SEEDS.length} right, ${results.filter(({ sure }) => sure).length} proposed`);
    expect(results.filter(({ right }) => right).length).toBeGreaterThanOrEqual(SEEDS.length - 1);
    expect(results.filter(({ right, sure }) => sure && !right)).toEqual([]);
  }, SLOW);
});

describe('what makes a picture doubtful is said', () => {
  const doubtsOf = (image: PixelImage): string => measureTip(image, { colour: true }).doubts.join('; ');

  it('two plugs in it', async () => {
    const [left, right] = [sceneOf(1, { bore: 75, x: 230, y: 300, card: NO_CARD }), sceneOf(4, { bore: 75, x: 580, y: 300, card: NO_CARD })];
    const one = taken(left);
    const whole = sharp(taken(right).rgb, { raw: { width: 800, height: 600, channels: 3 } });
    const half = await whole.extract({ left: 410, top: 0, width: 390, height: 600 }).png().toBuffer();
    expect(doubtsOf(await redrawn(one, (picture) => picture.composite([{ input: half, left: 410, top: 0 }])))).toContain('more than one plug');
    expect(doubtsOf(one)).not.toContain('more than one plug');
  }, SLOW);

  it('blur, a missing electrode, too much light, and a view from the side', async () => {
    const scene = sceneOf(2);
    expect(doubtsOf(taken(scene))).not.toMatch(/blurred|overexposed|no ground electrode|from the side/);
    const blurred = measureTip(await redrawn(taken(scene), (picture) => picture.blur(9)), { colour: true });
    expect(blurred.doubts.join()).toContain('blurred at the shell');
    expect(blurred.tip?.specks).toBeUndefined();
    expect(doubtsOf(taken({ ...scene, strap: { ...scene.strap, end: 9, half: 0 } }))).toContain('no ground electrode was recognised');
    const white = measureTip(taken(sceneOf(5), { exposure: 3 }), { colour: true });
    expect(white.doubts.join()).toContain('overexposed');
    expect(white.tip?.suggestions.map(({ facet }) => facet)).not.toContain('noseColour');
    expect(doubtsOf(taken({ ...scene, tilt: (35 * Math.PI) / 180 }))).toContain('seen from the side');
  }, SLOW);

  it('light of two colours, but not light of one', () => {
    const scene = sceneOf(6);
    const image = taken(scene, { exposure: 0.6 });
    const underTwo = ({ width, height, rgb }: PixelImage): PixelImage => ({
      width, height,
      rgb: rgb.map((byte, i) => {
        const share = Math.min(1, Math.max(0, 0.5 + ((Math.floor(i / 3) % width) - scene.x) / (3 * scene.bore)));
        return Math.round(255 * encoded(Math.min(1, (LIGHT_OF_BYTE[byte] ?? 0) * (1 + share * ([0.5, 0, -0.5][i % 3] ?? 0)))));
      }),
    });
    expect(doubtsOf(image)).not.toContain('light of two colours');
    expect(doubtsOf(underTwo(image))).toContain('light of two colours');
  });
});

describe('something that is not the end of a plug', () => {
  it.each(ROUND_THINGS)('is hardly ever proposed as one: %s', async (thing) => {
    const confidences = await Promise.all(SEEDS.slice(0, 4).map(async (seed) => measureTip(await pictureOfThing(thing, seed), { colour: true }).confidence));
    console.info(`${thing}: confidences ${confidences.map((confidence) => confidence.toFixed(2)).join(', ')}`);
    expect(confidences.filter((confidence) => confidence >= 0.7).length).toBeLessThanOrEqual(thing === 'rings of a target' || thing === 'a lens' ? 1 : 0);
  }, SLOW);
});

describe('a heat line on the ground electrode', () => {
  it('is found where it was drawn, and none where there is none', () => {
    let [right, false_] = [0, 0];
    for (const seed of SEEDS) {
      const scene = sceneOf(seed, { groundLab: [60, 1, 4] });
      const { end } = scene.strap;
      const at = end + (0.97 - end) * (0.35 + 0.08 * (seed % 5));
      const line = measureTip(taken({ ...scene, heatLine: { at, lab: [42, 3, 13] } }), { colour: true }).tip?.heatLine;
      if (line !== undefined && Math.abs(end + 0.1 + line.along * (0.87 - end) - at) < 0.15) right += 1;
      if (measureTip(taken(scene), { colour: true }).tip?.heatLine !== undefined) false_ += 1;
    }
    console.info(`heat line within 0.15 bore radii: ${right} of ${SEEDS.length}; seen where there is none: ${false_} of ${SEEDS.length}`);
    expect(right).toBeGreaterThanOrEqual(SEEDS.length - 1);
    expect(false_).toBeLessThanOrEqual(1);
  }, SLOW);
});

describe('gloss', () => {
  it('is a hint: more often on glossy noses than on matt ones, and not always', () => {
    const hint = (glossy: boolean): number[] => SEEDS.map((seed) => {
      const scene = drawnScene(seed, SURFACE.glaze, { glossy });
      return measureTip(taken(scene), { colour: true, white: { kind: 'patch', box: scene.card } }).tip?.gloss ?? 0;
    });
    const [glossy, matt] = [hint(true), hint(false)];
    const above = glossy.flatMap((one) => matt.map((other): number => (one > other ? 1 : one === other ? 0.5 : 0)));
    const separation = above.reduce((sum, value) => sum + value, 0) / above.length;
    console.info(`gloss, separation of glossy from matt (0.5 is chance): ${separation.toFixed(2)}`);
    expect(separation).toBeGreaterThan(0.65);
  }, SLOW);
});

describe('the colour of a nose under a lamp of another photo', () => {
  it('stands on that photo\'s card as well as on its own, and says when the lamp was another', () => {
    const [one, other] = [sceneOf(1), sceneOf(7)];
    const warm: Partial<Camera> = { light: 'A', balance: 0.5, exposure: 0.7 };
    const first = measureTip(taken(one, warm), { colour: true, white: { kind: 'patch', box: one.card } });
    const white = first.tip?.balance.white ?? [1, 1, 1];
    const borrowed = measureTip(taken(other, warm), { colour: true, white: { kind: 'light', white, reference: 'patch' } });
    expect(borrowed.tip?.balance.reference).toEqual({ kind: 'patch', taken: 'other photo' });
    expect(tintDifference(borrowed.tip?.regions.nose?.tint ?? { u: 9, v: 9 }, tintOf(other.noseLab))).toBeLessThan(2.5);
    expect(borrowed.doubts.join()).not.toContain('was the lamp the same');
    const elsewhere = measureTip(taken(other, { light: 'D65', balance: 0.5 }), { colour: true, white: { kind: 'light', white, reference: 'patch' } });
    expect(elsewhere.doubts.join()).toContain('was the lamp the same');
  });
});
