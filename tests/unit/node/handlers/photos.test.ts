import { existsSync, readdirSync, readFileSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import sharp, { type Sharp } from 'sharp';
import { afterAll, describe, expect, it } from 'vitest';
import type { IncomingPhoto, PhotoRecord } from '../../../../shared/channels-photo.ts';
import type { Engine } from '../../../../shared/formats/engine.ts';
import { cardIn, inPieces, plugPicture, withPhoneNotes } from '../../../fixtures/photo/photo-files.ts';
import { fourCylinder, twinPlugFlatFour } from '../../../fixtures/plain-sheets.ts';
import { photoReader, testProgram, valueOf } from '../../../fixtures/test-program.ts';

const reader = photoReader();
afterAll(() => reader.close());

async function started(engine: Engine = fourCylinder) {
  const program = await testProgram({ reader });
  const { id: engineId } = valueOf(await program.handlers['engine.save']({ id: null, engine }));
  const { id: readingId } = valueOf(await program.handlers['reading.start']({ engineId }));
  const bringIn = (bytes: Uint8Array, name = 'plug.jpg', to = readingId) => program.photos.bringIn({ readingId: to, name, body: inPieces(bytes) });
  const brought = async (bytes: Uint8Array, name?: string): Promise<IncomingPhoto> => valueOf(await bringIn(bytes, name));
  return { ...program, engineId, readingId, bringIn, brought };
}

const flat = (colour: string): Sharp => sharp({ create: { width: 400, height: 300, channels: 3, background: colour } });
const small = (colour: string): Promise<Buffer> => flat(colour).jpeg().toBuffer();
const filesIn = (folder: string): string[] => (existsSync(folder) ? readdirSync(folder, { recursive: true, withFileTypes: true }) : [])
  .filter((entry) => entry.isFile()).map(({ name }) => name);

describe('a photo brought into a reading', () => {
  it('is kept byte for byte, once, under its digest, with what the camera says of time and itself', async () => {
    const { folder, brought } = await started();
    const bytes = await withPhoneNotes(plugPicture().picture).jpeg().toBuffer();
    const { photo, known } = await brought(bytes, 'IMG_0412.JPG');
    expect(photo).toMatchObject({ name: 'IMG_0412.JPG', bytes: bytes.length, width: 1600, height: 1200, takenAt: '2025-07-19T18:04:31+02:00', camera: 'Quillon Q7', colour: 'yes' });
    expect(photo).toMatchObject({ place: null, view: 'end-on', white: null, geometry: null, measure: null, annotations: [], problem: null });
    expect(known).toBe(false);
    const kept = readdirSync(join(folder, 'photos'), { recursive: true }).map(String).filter((name) => name.endsWith('.jpg'));
    expect(kept).toEqual([join(photo.sha256.slice(0, 2), `${photo.sha256}.jpg`)]);
    expect(readFileSync(join(folder, 'photos', kept[0]!)).equals(bytes)).toBe(true);
    expect(filesIn(join(folder, 'photos/incoming'))).toEqual([]);
  });

  it('is recognised when it comes again, also at the same time, and comes back when it was removed', async () => {
    const { handlers, readingId, brought } = await started();
    const bytes = await small('#987');
    const both = await Promise.all([brought(bytes, 'a.jpg'), brought(bytes, 'b.jpg')]);
    expect(both.map(({ known }) => known).sort()).toEqual([false, true]);
    expect(both[0].photo.id).toBe(both[1].photo.id);
    const { id } = both[0].photo;
    valueOf(await handlers['photo.remove']({ ids: [id] }));
    expect(valueOf(await handlers['photo.list']({ readingId }))).toEqual([]);
    expect(await brought(bytes)).toMatchObject({ known: true, photo: { id } });
    expect(valueOf(await handlers['photo.list']({ readingId }))).toHaveLength(1);
  });

  it('may stand in two readings, lies on the disk once, and mends an original that was lost', async () => {
    const { handlers, folder, brought, bringIn, photos } = await started();
    const { id: other } = valueOf(await handlers['engine.save']({ id: null, engine: fourCylinder }));
    const { id: secondReading } = valueOf(await handlers['reading.start']({ engineId: other }));
    const bytes = await small('#654');
    const first = await brought(bytes);
    const second = valueOf(await bringIn(bytes, 'again.jpg', secondReading));
    expect(second).toMatchObject({ known: false, photo: { sha256: first.photo.sha256, name: 'again.jpg' } });
    expect(filesIn(join(folder, 'photos'))).toHaveLength(1);
    const original = photos.originalOf({ sha256: first.photo.sha256, format: 'jpeg' });
    rmSync(original);
    expect(await brought(bytes)).toMatchObject({ known: true });
    expect(readFileSync(original).equals(bytes)).toBe(true);
  });

  it('keeps its camera notes out of every picture made from it', async () => {
    const { brought, photos } = await started();
    const bytes = await withPhoneNotes(plugPicture().picture.withIccProfile('p3')).jpeg().toBuffer();
    expect(bytes.includes('SN-4711')).toBe(true);
    const { photo } = await brought(bytes);
    for (const size of ['small', 'screen', 'full'] as const) {
      const picture = readFileSync(valueOf(await photos.picture(photo.id, size)).path);
      const { exif, icc, xmp, iptc, width } = await sharp(picture).metadata();
      expect({ exif, icc, xmp, iptc, width }).toEqual({ width: { small: 320, screen: 1600, full: 1600 }[size] });
      for (const personal of ['SN-4711', 'A. Person', 'Quillon']) expect(picture.includes(personal)).toBe(false);
    }
    expect(readFileSync(valueOf(await photos.original(photo.id)).path).equals(bytes)).toBe(true);
  });

  it('is shown again after every shown size was deleted', async () => {
    const { brought, photos, folder } = await started();
    const { photo } = await brought(await small('#765'));
    rmSync(join(folder, 'pictures'), { recursive: true });
    expect((await sharp(valueOf(await photos.picture(photo.id, 'small')).path).metadata()).width).toBe(320);
  });

  it('leaves nothing behind when its sender breaks off or its reading is not there', async () => {
    const { folder, photos, readingId, bringIn } = await started();
    const broken = async function* (): AsyncGenerator<Uint8Array> { yield await small('#111'); throw new Error('aborted'); };
    await expect(photos.bringIn({ readingId, name: 'a.jpg', body: broken() })).rejects.toThrow('aborted');
    expect(await bringIn(await small('#222'), 'b.jpg', '00000000-0000-4000-8000-00000000ffff')).toEqual({ ok: false, error: { code: 'not-found', what: 'reading' } });
    expect(filesIn(join(folder, 'photos'))).toEqual([]);
  });

  it('clears what a power cut left half written', async () => {
    const { folder, photos, brought } = await started();
    const { photo } = await brought(await small('#333'));
    writeFileSync(join(folder, 'photos/incoming/half'), 'half a picture');
    await photos.tidy();
    expect(filesIn(join(folder, 'photos'))).toEqual([`${photo.sha256}.jpg`]);
  });
});

describe('a file that is no photo to keep is refused by name, keeps nothing, and stops nothing else', () => {
  it.each([
    ['nothing at all', () => Buffer.alloc(0), 'the file is empty'],
    ['text under a picture\'s name', () => Buffer.from('plugs were fine'), 'not a picture that can be read; allowed are JPEG, PNG'],
    ['an SVG', () => Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="400" height="400"/>'), 'SVG files cannot be read'],
    ['a single pixel', () => flat('#888').resize(1, 1).png().toBuffer(), 'the picture is too small (1 x 1 pixels)'],
    ['a picture of too many pixels', () => sharp({ create: { width: 12_000, height: 10_100, channels: 3, background: '#777' } }).png({ compressionLevel: 9 }).toBuffer(), 'the picture has too many pixels; at most 120 million'],
    ['a PNG whose inside is rubbish', async () => { const png = await flat('#456').png().toBuffer(); return png.fill(0x55, 60, png.length - 20); }, 'the picture'],
  ] as const)('%s', async (_, make, words) => {
    const { folder, handlers, readingId, bringIn, brought } = await started();
    const [refused] = await Promise.all([bringIn(await make(), 'odd.jpg'), brought(await small('#abc'), 'whole.jpg')]);
    expect(refused).toMatchObject({ ok: false, error: { code: 'bad-request', problems: [{ path: 'odd.jpg', message: expect.stringContaining(words) as string }] } });
    expect(valueOf(await handlers['photo.list']({ readingId })).map(({ name }) => name)).toEqual(['whole.jpg']);
    expect(filesIn(join(folder, 'photos'))).toHaveLength(1);
  }, 30_000);

  it('a file over the limit, as soon as it is over', async () => {
    const { folder, photos, readingId } = await started();
    let sent = 0;
    const endless = async function* (): AsyncGenerator<Uint8Array> {
      for (;;) { sent += 10_000_000; yield await Promise.resolve(new Uint8Array(10_000_000)); }
    };
    expect(await photos.bringIn({ readingId, name: 'film.jpg', body: endless() })).toMatchObject({ ok: false, error: { problems: [{ message: 'the file is too large; at most 150 MB are read' }] } });
    expect(sent).toBeLessThan(180_000_000);
    expect(filesIn(join(folder, 'photos'))).toEqual([]);
  });
});

describe('a photo whose colours cannot be judged is kept, and measured without them', () => {
  it.each([
    ['greyscale', (picture: Sharp) => picture.greyscale().jpeg()], ['cmyk', (picture: Sharp) => picture.toColourspace('cmyk').jpeg()],
    ['transparent', (picture: Sharp) => picture.ensureAlpha(0.6).png()],
  ] as const)('%s', async (colour, as) => {
    const { handlers, brought } = await started();
    const { photo } = await brought(await as(plugPicture().picture).toBuffer());
    expect(photo).toMatchObject({ colour, problem: null });
    const { measure } = valueOf(await handlers['photo.measure']({ id: photo.id }));
    expect(measure?.geometry.nose).toBeDefined();
    expect(measure?.regions).toEqual({});
    expect(measure?.whiteReference).toEqual({ kind: 'none' });
    expect(measure?.suggests.map(({ facet }) => facet)).not.toContain('noseColour');
  });

  it('an incomplete JPEG is kept and shown with its problem, and not measured', async () => {
    const { handlers, brought, photos } = await started();
    const bytes = await plugPicture().picture.jpeg().toBuffer();
    const { photo } = await brought(bytes.subarray(0, Math.floor(0.7 * bytes.length)));
    expect(photo.problem).toMatch(/^the picture is incomplete/);
    expect((await sharp(valueOf(await photos.picture(photo.id, 'screen')).path).metadata()).height).toBe(1200);
    expect(await handlers['photo.measure']({ id: photo.id })).toMatchObject({ ok: false, error: { problems: [{ path: 'plug.jpg' }] } });
  });

  it('a 16-bit picture, a moving one and a wrong ending are taken for what they are', async () => {
    const { brought } = await started();
    expect((await brought(await plugPicture().picture.toColourspace('rgb16').png().toBuffer(), 'scan.jpg')).photo).toMatchObject({ colour: 'yes', name: 'scan.jpg' });
    const frames = await Promise.all(['#a98', '#123'].map((colour) => flat(colour).png().toBuffer()));
    expect((await brought(await sharp(frames, { join: { animated: true } }).gif().toBuffer(), 'moving.gif')).photo).toMatchObject({ width: 400, height: 300 });
    const heic = readFileSync(new URL('../../../fixtures/photo/two-pictures.heic', import.meta.url));
    expect((await brought(heic, 'two.heic')).photo).toMatchObject({ colour: 'yes', problem: null });
  });
});

describe('photos laid to plugs', () => {
  const three = async () => {
    const program = await started(twinPlugFlatFour);
    const photos: PhotoRecord[] = [];
    for (const colour of ['#211', '#322', '#433']) photos.push((await program.brought(await small(colour), `${colour}.jpg`)).photo);
    return { ...program, ids: photos.map(({ id }) => id) };
  };
  const upper = (cylinder: number) => ({ cylinder, position: 'upper' as const });

  it('stand in tray order, several to a plug, then those not laid; laying back undoes it', async () => {
    const { handlers, readingId, ids: [a = '', b = '', c = ''] } = await three();
    const before = valueOf(await handlers['photo.list']({ readingId }));
    valueOf(await handlers['photo.place']({ photos: [
      { id: c, place: upper(2), view: 'side', order: 1 }, { id: a, place: upper(2), view: 'end-on', order: 0 },
    ] }));
    expect(valueOf(await handlers['photo.list']({ readingId })).map(({ id, view }) => [id, view])).toEqual([[a, 'end-on'], [c, 'side'], [b, 'end-on']]);
    valueOf(await handlers['photo.place']({ photos: before.map(({ id, place, view, order }) => ({ id, place, view, order })) }));
    expect(valueOf(await handlers['photo.list']({ readingId }))).toEqual(before);
  });

  it('are laid all or none: a plug that the engine has not is refused by its place in the list', async () => {
    const { handlers, readingId, ids: [a = '', b = ''] } = await three();
    const refused = await handlers['photo.place']({ photos: [{ id: a, place: upper(1), view: 'end-on', order: 0 }, { id: b, place: { cylinder: 5, position: 'upper' }, view: 'end-on', order: 0 }] });
    expect(refused).toMatchObject({ ok: false, error: { code: 'bad-request', problems: [{ path: 'photos.1.place', message: expect.stringContaining('the engine has no plug 5 upper; it has 1 upper, 1 lower') as string }] } });
    expect(valueOf(await handlers['photo.list']({ readingId })).every(({ place }) => place === null)).toBe(true);
    expect(await handlers['photo.place']({ photos: [{ id: a, place: { cylinder: 4, position: 'unknown' }, view: 'end-on', order: 0 }] })).toMatchObject({ ok: true });
  });

  it('come back as they were laid, whatever was removed between', async () => {
    const { handlers, readingId, ids } = await three();
    await fc.assert(fc.asyncProperty(fc.shuffledSubarray(ids, { minLength: 1 }), fc.integer({ min: 1, max: 4 }), async (some, cylinder) => {
      valueOf(await handlers['photo.place']({ photos: some.map((id, order) => ({ id, place: upper(cylinder), view: 'strap', order })) }));
      const laid = valueOf(await handlers['photo.list']({ readingId }));
      valueOf(await handlers['photo.remove']({ ids: some }));
      expect(valueOf(await handlers['photo.list']({ readingId }))).toHaveLength(ids.length - some.length);
      valueOf(await handlers['photo.restore']({ ids: some }));
      expect(valueOf(await handlers['photo.list']({ readingId }))).toEqual(laid);
    }), { numRuns: 20 });
  });

  it('are found by engine and plug, over the whole library page by page, and hidden with their engine', async () => {
    const { handlers, engineId, ids: [a = '', b = ''] } = await three();
    valueOf(await handlers['photo.place']({ photos: [{ id: a, place: upper(1), view: 'end-on', order: 0 }, { id: b, place: upper(1), view: 'side', order: 1 }] }));
    const page = { offset: 0, limit: 2 };
    expect(valueOf(await handlers['photo.ofEngine']({ engineId, place: upper(1), view: 'side', ...page }))).toMatchObject({ total: 1, photos: [{ id: b }] });
    const first = valueOf(await handlers['photo.library'](page));
    const second = valueOf(await handlers['photo.library']({ offset: 2, limit: 2 }));
    expect([first.total, first.photos.length, second.photos.length]).toEqual([3, 2, 1]);
    expect(new Set([...first.photos, ...second.photos].map(({ id }) => id)).size).toBe(3);
    expect(valueOf(await handlers['photo.library']({ unplaced: true, ...page })).total).toBe(1);
    expect(valueOf(await handlers['photo.library']({ find: '#32', ...page })).photos.map(({ name }) => name)).toEqual(['#322.jpg']);
    expect(valueOf(await handlers['photo.library']({ find: '%', ...page })).total).toBe(0);
    valueOf(await handlers['engine.remove']({ id: engineId }));
    expect(valueOf(await handlers['photo.library'](page)).total).toBe(0);
    valueOf(await handlers['engine.restore']({ id: engineId }));
    expect(valueOf(await handlers['photo.library'](page)).total).toBe(3);
  });
});

describe('a photo measured in the library', () => {
  it('keeps what a person pointed out, measures anew when that changes, and forgets it when told', async () => {
    const { handlers, brought } = await started();
    const { scene, picture } = plugPicture();
    const { id } = (await brought(await picture.jpeg({ quality: 92 }).toBuffer())).photo;
    const found = valueOf(await handlers['photo.measure']({ id }));
    expect(found.measure).toMatchObject({ whiteReference: { kind: 'estimated', taken: 'bare metal' } });
    const white = { kind: 'patch' as const, ...cardIn(scene) };
    const nose = { x: 2 * scene.x + 3, y: 2 * scene.y - 2, r: 2 * scene.bore * scene.nose };
    const given = valueOf(await handlers['photo.measure']({ id, white, geometry: { nose } }));
    expect(given).toMatchObject({ white, geometry: { nose }, measure: { whiteReference: { kind: 'patch', taken: 'grey card' }, geometry: { nose: { x: expect.closeTo(nose.x, 0) as number } } } });
    expect(valueOf(await handlers['photo.measure']({ id })).measure).toEqual(given.measure);
    expect(valueOf(await handlers['photo.measure']({ id, white: null, geometry: null })).measure).toEqual(found.measure);
  });

  it('stands on the card of another photo under the same lamp, and only on one that has a white', async () => {
    const { handlers, brought } = await started();
    const one = plugPicture(31);
    const a = (await brought(await one.picture.jpeg({ quality: 92 }).toBuffer(), 'a.jpg')).photo.id;
    const b = (await brought(await plugPicture(32).picture.jpeg({ quality: 92 }).toBuffer(), 'b.jpg')).photo.id;
    const refused = { ok: false, error: { code: 'bad-request', problems: [{ path: 'b.jpg', message: expect.stringContaining('no white of its own') as string }] } };
    expect(await handlers['photo.measure']({ id: b, white: { kind: 'photo', id: a } })).toMatchObject(refused);
    expect(await handlers['photo.measure']({ id: b, white: { kind: 'photo', id: b } })).toMatchObject(refused);
    const own = valueOf(await handlers['photo.measure']({ id: b, white: { kind: 'patch', ...cardIn(plugPicture(32).scene) } })).measure;
    valueOf(await handlers['photo.measure']({ id: a, white: { kind: 'patch', ...cardIn(one.scene) } }));
    const borrowed = valueOf(await handlers['photo.measure']({ id: b, white: { kind: 'photo', id: a } })).measure;
    expect(borrowed?.whiteReference).toMatchObject({ kind: 'patch', taken: 'other photo' });
    borrowed?.regions.nose?.lab.forEach((value, i) => { expect(Math.abs(value - (own?.regions.nose?.lab[i] ?? NaN))).toBeLessThan(1); });
  });

  it('carries marks beside it', async () => {
    const { handlers, brought } = await started();
    const { id } = (await brought(await small('#777'))).photo;
    const annotations = [{ kind: 'arrow' as const, from: { x: 1, y: 2 }, to: { x: 30, y: 40 }, words: 'bead' }, { kind: 'circle' as const, x: 5, y: 5, r: 3, words: '' }];
    expect(valueOf(await handlers['photo.mark']({ id, annotations }))).toMatchObject({ annotations });
  });

  it('says which originals of the library are missing or damaged', async () => {
    const { handlers, brought, photos } = await started();
    const [whole, gone, bad] = [await brought(await small('#121')), await brought(await small('#232'), 'gone.jpg'), await brought(await small('#343'), 'bad.jpg')];
    expect(valueOf(await handlers['photo.check'](null))).toEqual({ checked: 3, missing: [], damaged: [] });
    rmSync(photos.originalOf({ sha256: gone.photo.sha256, format: 'jpeg' }));
    truncateSync(photos.originalOf({ sha256: bad.photo.sha256, format: 'jpeg' }), 100);
    expect(valueOf(await handlers['photo.check'](null))).toMatchObject({ checked: 3, missing: [{ name: 'gone.jpg' }], damaged: [{ name: 'bad.jpg' }] });
    expect(await handlers['photo.measure']({ id: gone.photo.id })).toMatchObject({ ok: false, error: { problems: [{ path: 'gone.jpg', message: 'there is no such file' }] } });
    expect(await photos.original(whole.photo.id)).toMatchObject({ ok: true });
  });
});
