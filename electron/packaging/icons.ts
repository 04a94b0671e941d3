import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';

/** Edges in pixels: the sizes of a Linux icon theme, and the large ones that screens of high resolution ask for. */
export const ICON_SIZES = [16, 24, 32, 48, 64, 128, 256, 512, 1024] as const;
type Edge = (typeof ICON_SIZES)[number];
type Drawn = ReadonlyMap<Edge, Buffer>;

/** Drawn this large before it is made smaller, so that no edge is rough. Dots per inch; the drawing is 32 units wide. */
const DENSITY = 72 * 64;

/**
 * Draws the mark of the page as icons with a clear margin of a sixteenth of the edge: `16x16.png` and so on for Linux, `icon.ico` for Windows
 * and `icon.icns` for macOS.
 * @param mark file of the mark, an SVG
 * @param folder where the icons are put; made where it is missing
 */
export async function drawIcons(mark: string, folder: string): Promise<void> {
  const drawing = await readFile(mark);
  await mkdir(folder, { recursive: true });
  const drawn: Drawn = new Map(await Promise.all(ICON_SIZES.map(async (edge) => [edge, await draw(drawing, edge)] as const)));
  await Promise.all([
    ...[...drawn].map(([edge, png]) => writeFile(join(folder, `${edge}x${edge}.png`), png)),
    writeFile(join(folder, 'icon.ico'), windowsIcon(drawn)),
    writeFile(join(folder, 'icon.icns'), macIcon(drawn)),
  ]);
}

function draw(drawing: Buffer, edge: Edge): Promise<Buffer> {
  const margin = Math.floor(edge / 16);
  return sharp(drawing, { density: DENSITY })
    .resize(edge - 2 * margin, edge - 2 * margin)
    .extend({ top: margin, bottom: margin, left: margin, right: margin, background: { r: 0, g: 0, b: 0, alpha: 0 } })
    .png()
    .toBuffer();
}

const pngOf = (drawn: Drawn, edge: Edge): Buffer => drawn.get(edge) ?? Buffer.alloc(0);

const WINDOWS_SIZES: readonly Edge[] = [16, 24, 32, 48, 64, 128, 256];
const ICO_HEADER = 6;
const ICO_ENTRY = 16;

/** A list of pictures behind a directory of them, each picture a PNG (Microsoft, "Icons": ICONDIR and ICONDIRENTRY; PNG since Windows Vista). */
function windowsIcon(drawn: Drawn): Buffer {
  const pictures = WINDOWS_SIZES.map((edge) => pngOf(drawn, edge));
  const directory = Buffer.alloc(ICO_HEADER + ICO_ENTRY * pictures.length);
  directory.writeUInt16LE(1, 2); // an icon
  directory.writeUInt16LE(pictures.length, 4);
  let place = directory.length;
  for (const [i, picture] of pictures.entries()) {
    const entry = ICO_HEADER + ICO_ENTRY * i;
    const edge = (WINDOWS_SIZES[i] ?? 0) % 256; // 0 means 256
    directory.writeUInt8(edge, entry);
    directory.writeUInt8(edge, entry + 1);
    directory.writeUInt16LE(1, entry + 4); // colour planes
    directory.writeUInt16LE(32, entry + 6); // bits a pixel
    directory.writeUInt32LE(picture.length, entry + 8);
    directory.writeUInt32LE(place, entry + 12);
    place += picture.length;
  }
  return Buffer.concat([directory, ...pictures]);
}

/** The kinds of picture in a macOS icon that are PNG at every system, by their edge. From memory of the published format. */
const MAC_KINDS: readonly (readonly [string, Edge])[] = [['ic11', 32], ['ic12', 64], ['ic07', 128], ['ic08', 256], ['ic09', 512], ['ic10', 1024]];

/** Blocks of a name of four letters, the length of the block and a picture, inside one such block. */
function macIcon(drawn: Drawn): Buffer {
  const block = (name: string, content: Buffer): Buffer => {
    const head = Buffer.from(`${name}    `, 'latin1');
    head.writeUInt32BE(head.length + content.length, 4);
    return Buffer.concat([head, content]);
  };
  return block('icns', Buffer.concat(MAC_KINDS.map(([name, edge]) => block(name, pngOf(drawn, edge)))));
}
