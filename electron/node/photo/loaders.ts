import sharp from 'sharp';

/** The decoders that are needed; every other one of the library stays shut, among them those that draw (SVG, PDF) or run other programs. */
const NEEDED = ['Jpeg', 'Png', 'Webp', 'Tiff', 'Nsgif', 'Heif'].map((name) => `VipsForeignLoad${name}`);

/** Shuts all decoders of this process but the needed ones. */
export function shutOtherLoaders(): void {
  sharp.block({ operation: ['VipsForeignLoad'] });
  sharp.unblock({ operation: NEEDED });
}
