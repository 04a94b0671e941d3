import { readFileSync } from 'node:fs';
import { crc32, deflateSync } from 'node:zlib';
import sharp, { type Sharp } from 'sharp';
import { describe, expect, it } from 'vitest';
import { decodePhoto, openPhoto, type DecodedPhoto } from '../../../../electron/node/photo/decode.ts';
import { shutOtherLoaders } from '../../../../electron/node/photo/loaders.ts';
import { photoErrorText, type PhotoError } from '../../../../electron/node/photo/photo-error.ts';
import type { Result } from '../../../../shared/result.ts';

type Colour = readonly [number, number, number];
const TAN: Colour = [200, 160, 112];
const RUST: Colour = [176, 96, 60];

/** Left half of one colour, right half of another. */
function halves(left: Colour, right: Colour, width = 256, height = 224): Sharp {
  const data = Buffer.alloc(width * height * 3);
  for (let i = 0; i < width * height; i += 1) data.set(i % width < width / 2 ? left : right, i * 3);
  return sharp(data, { raw: { width, height, channels: 3 } });
}
const fixture = (name: string): Buffer => readFileSync(new URL(`../../../fixtures/photo/${name}`, import.meta.url));

async function openedAndDecoded(bytes: Uint8Array): Promise<Result<DecodedPhoto, PhotoError>> {
  const opened = await openPhoto(bytes);
  return opened.ok ? decodePhoto(opened.value) : opened;
}
async function decoded(bytes: Uint8Array): Promise<DecodedPhoto> {
  const result = await openedAndDecoded(bytes);
  if (!result.ok) throw new Error(photoErrorText(result.error));
  return result.value;
}
async function refusal(bytes: Uint8Array): Promise<string> {
  const result = await openedAndDecoded(bytes);
  return result.ok ? 'taken' : photoErrorText(result.error);
}
/** Colour of the pixel at a share of the width and height. */
function colourAt({ image: { width, height, rgb } }: DecodedPhoto, x: number, y: number): number[] {
  const at = 3 * (Math.floor(y * height) * width + Math.floor(x * width));
  return [...rgb.subarray(at, at + 3)];
}
const near = (told: Colour, by: number): unknown[] => told.map((value) => ({ asymmetricMatch: (found: number) => Math.abs(found - value) <= by, toString: () => `near ${value}` }));

describe('a photo that can be read', () => {
  it.each([
    ['JPEG', (picture: Sharp) => picture.jpeg({ quality: 95 })], ['PNG', (picture: Sharp) => picture.png()], ['WebP', (picture: Sharp) => picture.webp({ quality: 95 })],
    ['TIFF', (picture: Sharp) => picture.tiff({ compression: 'lzw' })], ['AVIF', (picture: Sharp) => picture.avif({ quality: 90 })],
    ['16-bit PNG', (picture: Sharp) => picture.toColourspace('rgb16').png()], ['palette PNG', (picture: Sharp) => picture.png({ palette: true })],
    ['JPEG in Display P3', (picture: Sharp) => picture.withIccProfile('p3').jpeg({ quality: 95, chromaSubsampling: '4:4:4' })],
  ] as const)('keeps its colours: %s', async (_, as) => {
    const photo = await decoded(await as(halves(TAN, RUST)).toBuffer());
    expect(photo).toMatchObject({ width: 256, height: 224, colour: 'yes', pages: 1 });
    expect(colourAt(photo, 0.2, 0.5)).toEqual(near(TAN, 4));
    expect(colourAt(photo, 0.8, 0.5)).toEqual(near(RUST, 4));
  });

  it('keeps its colours as HEIC with a Display P3 profile, which the decoder itself drops', async () => {
    const photo = await decoded(fixture('tan-and-rust-display-p3.heic'));
    expect(colourAt(photo, 0.2, 0.5)).toEqual(near(TAN, 2));
    expect(colourAt(photo, 0.8, 0.5)).toEqual(near(RUST, 2));
  });

  it('is made smaller to be measured, and remembers its size', async () => {
    const photo = await decoded(await halves(TAN, RUST, 3000, 2000).jpeg().toBuffer());
    expect([photo.width, photo.height, photo.image.width, photo.image.height]).toEqual([3000, 2000, 1024, 683]);
  });
});

/** CIPA DC-008 (EXIF 2.32), tag 274: which side of the scene the first row and the first column show. */
describe('the orientation of a photo', () => {
  const [A, B, C, D]: readonly [Colour, Colour, Colour, Colour] = [[220, 40, 40], [40, 200, 40], [40, 40, 220], [220, 220, 40]];
  it.each([
    [1, [A, B, C, D]], [2, [B, A, D, C]], [3, [D, C, B, A]], [4, [C, D, A, B]], [5, [A, C, B, D]], [6, [C, A, D, B]], [7, [D, B, C, A]], [8, [B, D, A, C]],
  ] as const)('%i is turned upright', async (orientation, corners) => {
    const data = Buffer.alloc(300 * 240 * 3);
    for (let i = 0; i < 300 * 240; i += 1) data.set([A, B, C, D][(i % 300 < 150 ? 0 : 1) + (i < 300 * 120 ? 0 : 2)] ?? A, i * 3);
    const stored = sharp(data, { raw: { width: 300, height: 240, channels: 3 } }).withMetadata({ orientation });
    const photo = await decoded(await stored.jpeg({ quality: 95 }).toBuffer());
    expect([photo.width, photo.height]).toEqual(orientation < 5 ? [300, 240] : [240, 300]);
    expect([[0.2, 0.2], [0.8, 0.2], [0.2, 0.8], [0.8, 0.8]].map(([x, y]) => colourAt(photo, x!, y!))).toEqual(corners.map((corner) => near(corner, 8)));
  });
});

describe('a photo whose colours cannot be judged says so', () => {
  it('greyscale', async () => { expect((await decoded(await halves(TAN, RUST).greyscale().jpeg().toBuffer())).colour).toBe('greyscale'); });
  it('CMYK', async () => { expect((await decoded(await halves(TAN, RUST).toColourspace('cmyk').jpeg().toBuffer())).colour).toBe('cmyk'); });
  it('partly transparent', async () => {
    const photo = await decoded(await halves(TAN, RUST).ensureAlpha(0.5).png().toBuffer());
    expect(photo.colour).toBe('transparent');
  });
  it('but not one with an alpha channel that hides nothing', async () => {
    const photo = await decoded(await halves(TAN, RUST).ensureAlpha(1).png().toBuffer());
    expect(photo.colour).toBe('yes');
    expect(colourAt(photo, 0.2, 0.5)).toEqual(near(TAN, 1));
  });
});

describe('a file of several pictures', () => {
  it.each([['WebP', 'webp'], ['GIF', 'gif']] as const)('gives its first: moving %s', async (_, as) => {
    const frames = await Promise.all([halves(TAN, RUST), halves([10, 10, 10], [240, 240, 240])].map((frame) => frame.png().toBuffer()));
    const photo = await decoded(await sharp(frames, { join: { animated: true } })[as]().toBuffer());
    expect(photo).toMatchObject({ width: 256, height: 224, pages: 2 });
    expect(colourAt(photo, 0.2, 0.5)).toEqual(near(TAN, 12));
  });
  it('gives its first: HEIC', async () => {
    const photo = await decoded(fixture('two-pictures.heic'));
    expect(photo.pages).toBe(2);
    expect(colourAt(photo, 0.2, 0.5)).toEqual(near(TAN, 2));
  });
});

/** A PNG (ISO/IEC 15948) that claims a size and holds next to nothing. */
function bombPng(side: number): Buffer {
  const chunk = (type: string, body: Buffer): Buffer => {
    const named = Buffer.concat([Buffer.from(type, 'latin1'), body]);
    const [size, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
    size.writeUInt32BE(body.length);
    sum.writeUInt32BE(crc32(named));
    return Buffer.concat([size, named, sum]);
  };
  const head = Buffer.alloc(13);
  head.writeUInt32BE(side, 0);
  head.writeUInt32BE(side, 4);
  head.set([1, 0, 0, 0, 0], 8);
  return Buffer.concat([Buffer.from('89504e470d0a1a0a', 'hex'), chunk('IHDR', head), chunk('IDAT', deflateSync(Buffer.alloc(1000))), chunk('IEND', Buffer.alloc(0))]);
}

/** A JPEG (ITU-T T.81) whose frame header claims another size. */
async function bombJpeg(side: number): Promise<Buffer> {
  const bytes = await halves(TAN, RUST).jpeg().toBuffer();
  const frame = bytes.indexOf(Buffer.from([0xff, 0xc0]));
  bytes.writeUInt16BE(side, frame + 5);
  bytes.writeUInt16BE(side, frame + 7);
  return bytes;
}

describe('a photo that cannot be read is refused in words', () => {
  const cut = (bytes: Uint8Array, share: number): Uint8Array => bytes.subarray(0, Math.floor(bytes.length * share));
  const noisy = async (): Promise<Sharp> => {
    const { data, info } = await halves(TAN, RUST, 600, 600).raw().toBuffer({ resolveWithObject: true });
    for (let i = 0; i < data.length; i += 1) data[i] = ((data[i] ?? 0) + ((i * 2654435761) >>> 27)) & 255;
    return sharp(data, { raw: { width: info.width, height: info.height, channels: 3 } });
  };

  it.each([
    ['a JPEG cut in half', async () => cut(await (await noisy()).jpeg().toBuffer(), 0.5)],
    ['a JPEG without its last 200 bytes', async () => (await (await noisy()).jpeg().toBuffer()).subarray(0, -200)],
    ['a PNG cut in half', async () => cut(await (await noisy()).png().toBuffer(), 0.5)],
    ['a WebP cut in half', async () => cut(await (await noisy()).webp().toBuffer(), 0.5)],
    ['a TIFF cut in half', async () => cut(await (await noisy()).tiff().toBuffer(), 0.5)],
    ['a HEIC cut in half', async () => cut(fixture('tan-and-rust-display-p3.heic'), 0.5)],
  ] as const)('%s', async (_, make) => { expect(await refusal(await make())).toMatch(/incomplete|damaged/); });

  it.each([
    ['nothing at all', Buffer.alloc(0), /^the file is empty/],
    ['text', Buffer.from('a note on plugs, named plug.jpg'), /^not a picture that can be read; allowed are JPEG, PNG/],
    ['an SVG', Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="400" height="400"><rect width="400" height="400"/></svg>'), /^SVG files cannot be read; allowed are/],
    ['a PDF', Buffer.from('%PDF-1.7\n1 0 obj\n<<>>\nendobj\n'), /^PDF files cannot be read; allowed are/],
    ['a PNG that would unpack to 3600 million pixels', bombPng(60_000), /^the picture has too many pixels; at most 120 million are read/],
  ] as const)('%s', async (_, bytes, words) => { expect(await refusal(bytes)).toMatch(words); });

  it('a JPEG that would unpack to 4225 million pixels', async () => { expect(await refusal(await bombJpeg(65_000))).toMatch(/too many pixels/); });
  it('a single pixel', async () => { expect(await refusal(await halves(TAN, RUST, 1, 1).png().toBuffer())).toBe('the picture is too small (1 x 1 pixels); at least 200 on either side are needed'); });
  it('a strip', async () => { expect(await refusal(await halves(TAN, RUST, 2000, 150).png().toBuffer())).toMatch(/too small \(2000 x 150 pixels\)/); });

  it('an SVG, also where every needless decoder is shut', async () => {
    shutOtherLoaders();
    expect(await refusal(Buffer.from('<?xml version="1.0"?><svg xmlns="http://www.w3.org/2000/svg" width="400" height="400"/>'))).toMatch(/^SVG files cannot be read/);
    expect(await refusal(await halves(TAN, RUST).jpeg().toBuffer())).toBe('taken');
  });
});
