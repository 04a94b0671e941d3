import { crc32, deflateSync } from 'node:zlib';
import sharp from 'sharp';

const PNG_HEAD = 8 + 25; // signature and the IHDR chunk

/** `width` and `height` are those of the whole picture, `png` is it at the size asked for. */
type UprightHeic = { readonly width: number; readonly height: number; readonly png: Buffer };

/**
 * Decodes a HEIC picture and hands it on as a PNG that carries its colour profile, since the decoder drops it. The decoder turns the picture upright by
 * what the container says. Holds the process and some 400 MB for a large picture: only for one that may die.
 * @throws when the bytes are not a whole HEIC picture
 */
export async function uprightHeic(bytes: Uint8Array, side: number, profile: Uint8Array | undefined): Promise<UprightHeic> {
  const { default: decode } = await import('heic-decode');
  const { width, height, data } = await decode({ buffer: bytes });
  const whole = sharp(data, { raw: { width, height, channels: 4 } });
  const sized = side < Math.max(width, height) ? whole.resize(side, side, { fit: 'inside' }) : whole;
  const png = await sized.png({ compressionLevel: 1 }).toBuffer();
  const chunk = profile === undefined ? Buffer.alloc(0) : profileChunk(profile);
  return { width, height, png: Buffer.concat([png.subarray(0, PNG_HEAD), chunk, png.subarray(PNG_HEAD)]) };
}

/** The iCCP chunk of PNG (ISO/IEC 15948): a name, a zero, the method zero, the deflated profile. */
function profileChunk(profile: Uint8Array): Buffer {
  const body = Buffer.concat([Buffer.from('iCCPphoto\0\0', 'latin1'), deflateSync(profile)]);
  const chunk = Buffer.alloc(body.length + 8);
  chunk.writeUInt32BE(body.length - 4, 0);
  body.copy(chunk, 4);
  chunk.writeUInt32BE(crc32(body), body.length + 4);
  return chunk;
}
