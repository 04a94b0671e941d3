import { z } from 'zod';
import { cylinderNumber } from './formats/engine.ts';
import { photoBox, photoCircle, photoMeasure, photoParts, photoPoint } from './formats/photo-measure.v1.ts';
import { count, oneOf, record, text } from './formats/strict.ts';
import { POSITIONS } from './vocabulary/engine.ts';

/**
 * Photos of firing ends. Every length is in pixels of the whole upright picture. The bytes travel beside the channels, same origin:
 *
 *   POST photos/incoming?readingId=ID&name=FILE   the file as body; answers Result<IncomingPhoto, AppError> as JSON
 *   GET  photos/ID/small                          at most 320 pixels long, upright, sRGB, without metadata (JPEG)
 *   GET  photos/ID/screen                         the same, at most 2048 pixels
 *   GET  photos/ID/full                           the same, every pixel
 *   GET  photos/ID/export                         as full, to be saved under a neutral name
 *   GET  photos/ID/original                       byte for byte with all its metadata, to be saved under its own name
 */
/** Larger files are refused. */
export const PHOTO_FILE_BYTES = 150_000_000;

const id = z.uuid();
const instant = z.iso.datetime();
/** By the camera's clock; it seldom says in which zone. */
const cameraTime = z.iso.datetime({ offset: true, local: true });

export const PHOTO_VIEWS = ['end-on', 'side', 'strap'] as const;
export type PhotoView = (typeof PHOTO_VIEWS)[number];

/** The plug a photo shows. */
const photoPlace = record({ cylinder: cylinderNumber, position: oneOf(POSITIONS) });
export type PhotoPlace = z.output<typeof photoPlace>;

/**
 * The neutral thing a person pointed out: a card or paper (told apart by its brightness where `taken` is absent), the bare shell, or the reference of
 * another photo under the same lamp.
 */
const whiteGiven = z.discriminatedUnion('kind', [
  record({ kind: z.literal('patch'), taken: z.enum(['grey card', 'white paper']).optional(), ...photoBox.shape }),
  record({ kind: z.literal('metal'), ...photoBox.shape }),
  record({ kind: z.literal('photo'), id }),
]);
export type WhiteGiven = z.output<typeof whiteGiven>;

/** Marks lie beside the picture, never in it. */
const words = text(300);
const annotation = z.discriminatedUnion('kind', [
  record({ kind: z.literal('arrow'), from: photoPoint, to: photoPoint, words }),
  record({ kind: z.literal('circle'), ...photoCircle.shape, words }),
  record({ kind: z.literal('text'), ...photoPoint.shape, words }),
]);
export type Annotation = z.output<typeof annotation>;

const size = count('pixels', 1, 1_000_000);
const order = count('a place in order', 0, 1_000_000);

/** What a list shows of a photo. `problem`: why the picture is incomplete or cannot be shown, in words. */
const card = {
  id, engineId: id, readingId: id, name: text(255), bytes: count('bytes', 1, 1_000_000_000), width: size, height: size,
  takenAt: cameraTime.nullable(), addedAt: instant, place: photoPlace.nullable(), view: oneOf(PHOTO_VIEWS), order,
  measured: z.boolean(), problem: text(400).nullable(),
};
const photoCard = record(card);
export type PhotoCard = z.output<typeof photoCard>;

/** `white`, `geometry`: what a person pointed out or put right; null where all was found by the program. `camera`: maker and model, as the file has them. */
const photoRecord = record({
  ...card,
  sha256: text(64), camera: text(200).nullable(), colour: z.enum(['yes', 'greyscale', 'cmyk', 'transparent']),
  white: whiteGiven.nullable(), geometry: photoParts.nullable(), measure: photoMeasure.nullable(), annotations: z.array(annotation),
});
export type PhotoRecord = z.output<typeof photoRecord>;

/** `known`: the same bytes are in this reading already, and nothing was added. */
export type IncomingPhoto = { readonly photo: PhotoRecord; readonly known: boolean };

const page = { offset: count('photos', 0, 10_000_000), limit: count('photos', 1, 500) };
const total = z.number().int();
const ids = z.array(id).min(1).max(1000);

export const photoChannels = {
  /** All photos of a reading: those laid to plugs in order, then the others by the camera's clock and name. */
  'photo.list': { input: record({ readingId: id }), output: z.array(photoRecord) },
  'photo.get': { input: record({ id }), output: photoRecord },
  /** All photos of an engine, newest first; `place` asks for those of one plug. */
  'photo.ofEngine': {
    input: record({ engineId: id, place: photoPlace.optional(), view: oneOf(PHOTO_VIEWS).optional(), ...page }),
    output: record({ total, photos: z.array(photoRecord) }),
  },
  /** The whole library, newest first; `find` looks in the name of the file and of the engine. */
  'photo.library': {
    input: record({ find: text(200).optional(), view: oneOf(PHOTO_VIEWS).optional(), unplaced: z.boolean().optional(), ...page }),
    output: record({ total, photos: z.array(photoCard) }),
  },
  /** Lays photos to plugs, all or none. Undone by placing back. */
  'photo.place': {
    input: record({ photos: z.array(record({ id, place: photoPlace.nullable(), view: oneOf(PHOTO_VIEWS), order })).min(1).max(1000) }),
    output: z.array(photoRecord),
  },
  'photo.remove': { input: record({ ids }), output: z.null() },
  'photo.restore': { input: record({ ids }), output: z.array(photoRecord) },
  /** Measures and keeps the result. What is absent stays as it was given before; null forgets it. */
  'photo.measure': { input: record({ id, white: whiteGiven.nullable().optional(), geometry: photoParts.nullable().optional() }), output: photoRecord },
  'photo.mark': { input: record({ id, annotations: z.array(annotation).max(200) }), output: photoRecord },
  /** Reads every original of the library again and compares its digest. */
  'photo.check': { input: z.null(), output: record({ checked: total, missing: z.array(photoCard), damaged: z.array(photoCard) }) },
} as const;
