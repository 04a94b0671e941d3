import { readFile } from 'node:fs/promises';
import { extname, isAbsolute, join, relative, sep } from 'node:path';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8', '.js': 'text/javascript; charset=utf-8', '.css': 'text/css; charset=utf-8', '.json': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml', '.png': 'image/png', '.jpg': 'image/jpeg', '.webp': 'image/webp', '.woff2': 'font/woff2', '.woff': 'font/woff', '.ico': 'image/x-icon',
};

export type PageFile = { readonly bytes: Uint8Array<ArrayBuffer>; readonly type: string };

/**
 * The path on disk that an address means, or null when it means nothing inside the folder. The path of the address is decoded once, joined,
 * and must then still lie inside.
 */
export function pathInside(folder: string, pathname: string): string | null {
  let decoded: string;
  try { decoded = decodeURIComponent(pathname); } catch { return null; }
  if (/[\0\\:]/.test(decoded)) return null;
  const file = join(folder, decoded === '/' ? 'index.html' : decoded);
  const inside = relative(folder, file);
  return inside === '' || inside === '..' || inside.startsWith(`..${sep}`) || isAbsolute(inside) ? null : file;
}

/** The built page's file at this address; null for anything else, also for a folder. Only types of file that a page is made of are served. */
export async function pageFile(folder: string, pathname: string): Promise<PageFile | null> {
  const file = pathInside(folder, pathname);
  const type = file === null ? undefined : TYPES[extname(file)];
  if (file === null || type === undefined) return null;
  try { return { bytes: new Uint8Array(await readFile(file)), type }; } catch { return null; }
}
