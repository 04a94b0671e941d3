import type { PixelImage } from './pixels.ts';

/** One number a pixel. */
export type Plane = { readonly width: number; readonly height: number; readonly values: Float32Array };

/** Contrast on a logarithmic scale, so that rings under soot count as much as those in the light; 60 is a factor of e well above black. */
const LOG_OF_LUMA = Float32Array.from({ length: 256 }, (_, luma) => 60 * Math.log(luma + 12));

/** 256 times the luma of a pixel. */
const lumaAt = (rgb: Uint8Array, at: number): number => 54 * (rgb[at] ?? 0) + 183 * (rgb[at + 1] ?? 0) + 19 * (rgb[at + 2] ?? 0);

/** The picture's logarithmic luma (weights of ITU-R BT.709) at half its size. */
export function halfSizeLuma({ width, height, rgb }: PixelImage): Plane {
  const [w, h, stride] = [width >> 1, height >> 1, width * 3];
  const values = new Float32Array(w * h);
  for (let y = 0; y < h; y += 1) {
    let at = 2 * y * stride;
    for (let x = 0; x < w; x += 1, at += 6) {
      const sum = lumaAt(rgb, at) + lumaAt(rgb, at + 3) + lumaAt(rgb, at + stride) + lumaAt(rgb, at + stride + 3);
      values[y * w + x] = LOG_OF_LUMA[(sum + 512) >> 10] ?? 0;
    }
  }
  return { width: w, height: h, values };
}

export function halved({ width, height, values }: Plane): Plane {
  const [w, h] = [width >> 1, height >> 1];
  const half = new Float32Array(w * h);
  for (let y = 0; y < h; y += 1) {
    for (let x = 0; x < w; x += 1) {
      const at = 2 * y * width + 2 * x;
      half[y * w + x] = ((values[at] ?? 0) + (values[at + 1] ?? 0) + (values[at + width] ?? 0) + (values[at + width + 1] ?? 0)) / 4;
    }
  }
  return { width: w, height: h, values: half };
}

/** The value at a place between pixels; outside the plane, that of its edge. */
export function sampled(plane: Plane, x: number, y: number): number {
  const { width, height, values } = plane;
  const px = Math.min(width - 1.001, Math.max(0, x - 0.5));
  const py = Math.min(height - 1.001, Math.max(0, y - 0.5));
  const ix = px | 0;
  const iy = py | 0;
  const fx = px - ix;
  const fy = py - iy;
  const at = iy * width + ix;
  const top = (values[at] ?? 0) * (1 - fx) + (values[at + 1] ?? 0) * fx;
  const bottom = (values[at + width] ?? 0) * (1 - fx) + (values[at + width + 1] ?? 0) * fx;
  return top * (1 - fy) + bottom * fy;
}
