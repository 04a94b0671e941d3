/** What a picture may take at most. A phone's largest has 108 million pixels; HEIC is decoded whole in memory and is bounded tighter. */
export const LIMITS = {
  bytes: 150_000_000,
  pixels: 120_000_000,
  heicBytes: 40_000_000,
  heicPixels: 60_000_000,
  /** Shorter side, in pixels. */
  leastSide: 200,
  seconds: 30,
} as const;
