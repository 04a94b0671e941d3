import { mkdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';

/** Edges in pixels: the sizes of a Linux icon theme, and the large ones from which the Windows and macOS icons are made. */
export const ICON_SIZES = [16, 24, 32, 48, 64, 128, 256, 512, 1024] as const;

/** Drawn this large before it is made smaller, so that no edge is rough. Dots per inch; the drawing is 32 units wide. */
const DENSITY = 72 * 64;

/**
 * Draws the mark of the page as icons, `16x16.png` and so on, with a clear margin of a sixteenth of the edge.
 * @param mark file of the mark, an SVG
 * @param folder where the icons are put; made where it is missing
 */
export async function drawIcons(mark: string, folder: string): Promise<void> {
  const drawing = await readFile(mark);
  await mkdir(folder, { recursive: true });
  await Promise.all(ICON_SIZES.map((edge) => {
    const margin = Math.floor(edge / 16);
    return sharp(drawing, { density: DENSITY })
      .resize(edge - 2 * margin, edge - 2 * margin)
      .extend({ top: margin, bottom: margin, left: margin, right: margin, background: { r: 0, g: 0, b: 0, alpha: 0 } })
      .png()
      .toFile(join(folder, `${edge}x${edge}.png`));
  }));
}
