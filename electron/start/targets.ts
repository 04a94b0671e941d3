import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { InlineConfig } from 'vite';

export const ROOT = fileURLToPath(new URL('../..', import.meta.url));
export const PAGE = join(ROOT, 'dist/page');

/** One thing to build: what it is made from, what comes out, and how. */
type Target = {
  readonly name: string;
  readonly sources: readonly string[];
  readonly output: string;
  readonly config: () => InlineConfig;
};

/** Not bundled: the host itself, and libraries with files of their own; that for HEIC can be exchanged for another build. */
const OUTSIDE = ['electron', 'sharp', 'heic-decode'];

const electronBundle = (entry: string, file: string): InlineConfig => ({
  configFile: false, root: ROOT, logLevel: 'warn',
  ssr: { noExternal: true, external: OUTSIDE },
  build: {
    ssr: join(ROOT, entry), outDir: join(ROOT, 'dist/electron'), emptyOutDir: false, target: 'node24', minify: false, sourcemap: false,
    rolldownOptions: { external: OUTSIDE, output: { format: 'cjs', entryFileNames: file, codeSplitting: false } },
  },
});

const TARGETS = {
  page: {
    name: 'the page', sources: ['renderer', 'core', 'shared'], output: 'dist/page/index.html',
    config: () => ({ configFile: join(ROOT, 'renderer/vite.config.ts'), logLevel: 'warn', build: { outDir: PAGE, emptyOutDir: true } }),
  },
  main: {
    name: 'the desktop host', sources: ['electron', 'core', 'shared', 'seeds'], output: 'dist/electron/main.cjs',
    config: () => electronBundle('electron/main/main.ts', 'main.cjs'),
  },
  photoWorker: {
    name: 'the reader of photos', sources: ['electron/node/photo', 'core/photo', 'shared'], output: 'dist/electron/photo-worker.cjs',
    config: () => electronBundle('electron/node/photo/worker.ts', 'photo-worker.cjs'),
  },
  preload: {
    name: 'the desktop bridge', sources: ['electron/preload', 'shared'], output: 'dist/electron/preload.cjs',
    config: () => electronBundle('electron/preload/preload.ts', 'preload.cjs'),
  },
} satisfies Record<string, Target>;
type TargetName = keyof typeof TARGETS;

export const buildAll = (say: (text: string) => void): Promise<void> => buildWhatIsStale(['page', 'main', 'photoWorker', 'preload'], say);

/**
 * Builds the targets whose sources changed since they were built, telling each as it goes.
 * @throws when a source does not compile; the message names the target and the place.
 */
export async function buildWhatIsStale(names: readonly TargetName[], say: (text: string) => void): Promise<void> {
  for (const name of names) {
    const target: Target = TARGETS[name];
    const digest = digestOf(target.sources);
    const stamp = join(ROOT, 'dist/.built', name);
    if (existsSync(join(ROOT, target.output)) && existsSync(stamp) && readFileSync(stamp, 'utf8') === digest) continue;
    say(`Building ${target.name} ... `);
    const begun = performance.now();
    await buildOne(target);
    mkdirSync(join(ROOT, 'dist/.built'), { recursive: true });
    writeFileSync(stamp, digest);
    say(`${((performance.now() - begun) / 1000).toFixed(1)} s\n`);
  }
}

async function buildOne({ name, config }: Target): Promise<void> {
  /* Built for use, whatever the environment says; that of a test runner would make a page several times slower. */
  process.env['NODE_ENV'] = 'production';
  const { build } = await import('vite');
  try {
    await build(config());
  } catch (error) {
    throw new Error(`${name} could not be built: ${error instanceof Error ? error.message : String(error)}`, { cause: error });
  }
}

/** Digest of every source file and of the exact packages, so that a change of either builds anew. */
function digestOf(folders: readonly string[]): string {
  const hash = createHash('sha256').update(readFileSync(join(ROOT, 'package-lock.json')));
  for (const folder of folders) {
    const entries = readdirSync(join(ROOT, folder), { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
    for (const path of entries.map((entry) => join(entry.parentPath, entry.name)).sort()) hash.update(path).update(readFileSync(path));
  }
  return hash.digest('hex');
}
