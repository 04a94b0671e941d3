import { mkdir, readdir, rename, rm, stat, utimes } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { PhotoError } from '../photo/photo-error.ts';
import type { PictureSize } from '../photo/picture.ts';
import type { Result } from '../../../shared/result.ts';

/** Shown sizes beyond the small one take at most this much; the ones looked at longest ago go first. */
const LARGE_PICTURES_BYTES = 1_000_000_000;

type Kept = { readonly path: string; readonly bytes: number; readonly seen: number };
export type Drawing = (to: string) => Promise<Result<null, PhotoError>>;

/** Photos in the sizes in which they are shown, each made when it is first asked for. All of it can be deleted at any time. */
export class Pictures {
  readonly #folder: string;
  readonly #limit: number;
  readonly #underway = new Map<string, Promise<Result<string, PhotoError>>>();
  #large: number | undefined;
  #next = 0;

  constructor(folder: string, limit = LARGE_PICTURES_BYTES) {
    this.#folder = folder;
    this.#limit = limit;
  }

  pathOf(sha256: string, size: PictureSize): string {
    return join(this.#folder, size, sha256.slice(0, 2), `${sha256}.jpg`);
  }

  /** Where the picture lies, drawn first where it is missing; two who ask at once wait for the same drawing. */
  async of(sha256: string, size: PictureSize, draw: Drawing): Promise<Result<string, PhotoError>> {
    const path = this.pathOf(sha256, size);
    const there = await stat(path).catch(() => undefined);
    if (there !== undefined) {
      if (size !== 'small') await utimes(path, new Date(), new Date()).catch(() => undefined);
      return { ok: true, value: path };
    }
    const begun = this.#underway.get(path) ?? this.#drawn(path, size, draw).finally(() => this.#underway.delete(path));
    this.#underway.set(path, begun);
    return begun;
  }

  /** Takes a picture that was drawn already. */
  async put(drawn: string, sha256: string, size: PictureSize): Promise<void> {
    const path = this.pathOf(sha256, size);
    await mkdir(dirname(path), { recursive: true });
    await rename(drawn, path);
  }

  async #drawn(path: string, size: PictureSize, draw: Drawing): Promise<Result<string, PhotoError>> {
    await mkdir(dirname(path), { recursive: true });
    const passing = `${path}.${process.pid}-${(this.#next += 1)}`;
    try {
      const drawn = await draw(passing);
      if (!drawn.ok) return drawn;
      await rename(passing, path);
    } finally {
      await rm(passing, { force: true });
    }
    if (size !== 'small') await this.#bound(path);
    return { ok: true, value: path };
  }

  async #bound(added: string): Promise<void> {
    this.#large = this.#large === undefined ? sumOf(await this.#largeOnes()) : this.#large + (await stat(added)).size;
    if (this.#large <= this.#limit) return;
    const oldestFirst = (await this.#largeOnes()).filter(({ path }) => path !== added).sort((one, other) => one.seen - other.seen);
    this.#large = sumOf(oldestFirst) + (await stat(added)).size;
    for (const { path, bytes } of oldestFirst) {
      if (this.#large <= 0.9 * this.#limit) return;
      await rm(path, { force: true });
      this.#large -= bytes;
    }
  }

  async #largeOnes(): Promise<Kept[]> {
    const folders = (['screen', 'full'] as const).map((size) => join(this.#folder, size));
    const lists = await Promise.all(folders.map(async (folder) => {
      const entries = await readdir(folder, { recursive: true, withFileTypes: true }).catch(() => []);
      return entries.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name));
    }));
    return Promise.all(lists.flat().map(async (path) => {
      const { size, mtimeMs } = await stat(path);
      return { path, bytes: size, seen: mtimeMs };
    }));
  }
}

const sumOf = (kept: readonly Kept[]): number => kept.reduce((sum, { bytes }) => sum + bytes, 0);
