import { PHOTO_FILE_BYTES } from '../../../shared/channels-photo.ts';

/** What a picture may take at most. A phone's largest has 108 million pixels; HEIC is decoded whole in memory and is bounded tighter. */
export const LIMITS = {
  bytes: PHOTO_FILE_BYTES,
  pixels: 120_000_000,
  heicBytes: 40_000_000,
  heicPixels: 60_000_000,
  /** Shorter side, in pixels. */
  leastSide: 200,
  seconds: 30,
} as const;
