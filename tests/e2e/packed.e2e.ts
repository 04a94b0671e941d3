import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire, isBuiltin } from 'node:module';
import { join, sep } from 'node:path';
import asar from '@electron/asar';
import { FuseState, FuseV1Options, getCurrentFuseWire } from '@electron/fuses';
import { Arch, Platform } from 'electron-builder';
import { beforeAll, beforeEach, describe, expect, it, onTestFinished, vi } from 'vitest';
import { FUSES } from '../../electron/packaging/fuses.ts';
import { pack } from '../../electron/packaging/pack.ts';
import { buildAll, ROOT } from '../../electron/start/targets.ts';
import { SHEET_EXTENSION } from '../../shared/formats/sheet-file.ts';
import { SEEDS } from '../../seeds/index.ts';
import { electronForLinux, electronForMac } from '../fixtures/electron-folder.ts';
import { sootyThird } from '../fixtures/plain-sheets.ts';
import { onBinary, openDesktop, type Desktop } from './desktop.ts';
import { callFrom } from './library-steps.ts';
import { scratchFolder } from './scratch.ts';

/** Packs the program as a release does, only around a folder that is laid out like Electron and holds none of it. */
const scratch = scratchFolder();
const output = join(scratch, 'packages');
const resources = join(output, 'linux-unpacked/resources');
const archive = join(resources, 'app.asar');
const unfolded = join(scratch, 'unfolded');
/** How the fuses of a packed binary stand. */
async function fusesOf(binary: string): Promise<readonly unknown[]> {
  const wire = await getCurrentFuseWire(binary);
  return FUSE_OPTIONS.map((fuse) => wire[fuse]);
}
const FUSE_OPTIONS = Object.values(FuseV1Options).filter((value) => typeof value === 'number');
const STATED = FUSE_OPTIONS.map((fuse): unknown => (FUSES[fuse] ? FuseState.ENABLE : FuseState.DISABLE));

beforeAll(async () => {
  if (onBinary) return;
  vi.stubEnv('CSC_IDENTITY_AUTO_DISCOVERY', 'false'); // nobody's name is put to it
  await buildAll(() => undefined);
  await pack({ electron: electronForLinux(join(scratch, 'electron'), FUSE_OPTIONS.length), output, platform: Platform.LINUX }, 'dir', Arch.x64);
  asar.extractAll(archive, unfolded);
});
beforeEach((context) => { if (onBinary) context.skip('skipped: packs around a stand-in for the binary'); });

const below = (folder: string): readonly string[] =>
  readdirSync(join(ROOT, folder), { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name).slice(ROOT.length).split(sep).join('/'));

const packed = (): readonly string[] => asar.listPackage(archive, { isPack: false }).map((path) => path.split(sep).join('/').slice(1)).filter((path) => !('files' in asar.statFile(archive, path)));
const packageOf = (path: string): string => /^node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(path)?.[1] ?? '';

/** What a bundle asks Node for that neither Node nor Electron has. */
const asksFor = (bundle: string): readonly string[] =>
  [...readFileSync(join(ROOT, bundle), 'utf8').matchAll(/\b(?:require|import)\(["'`]([^"'`]+)["'`]\)/g)].map(([, name = '']) => name).filter((name) => !isBuiltin(name) && name !== 'electron');

/** A package and all that it needs in turn and that is installed on this system. */
function withAllItNeeds(name: string, known = new Set<string>()): ReadonlySet<string> {
  const file = join(ROOT, 'node_modules', name, 'package.json');
  if (known.has(name) || !existsSync(file)) return known;
  known.add(name);
  const { dependencies = {}, optionalDependencies = {} } = JSON.parse(readFileSync(file, 'utf8')) as Record<string, Record<string, string> | undefined>;
  for (const needed of Object.keys({ ...dependencies, ...optionalDependencies })) withAllItNeeds(needed, known);
  return known;
}

const bundles = (): readonly string[] => below('dist/electron').filter((path) => path.endsWith('.cjs'));

describe('the packed program', () => {
  it('holds of our own files those that run, and no others', () => {
    const pictures = SEEDS.flatMap(({ photos }) => (photos === undefined ? [] : below(`seeds/${photos}/photos`)));
    expect(bundles().length).toBeGreaterThan(2);
    expect(pictures.length).toBeGreaterThan(0);
    expect(packed().filter((path) => packageOf(path) === '').sort()).toEqual([...below('dist/electron'), ...below('dist/page'), ...pictures, 'LICENSE', 'package.json'].sort());
  });

  it('holds the packages that its bundles ask for with all they need, and no others', () => {
    const needed = bundles().flatMap(asksFor).reduce((known, name) => new Set([...known, ...withAllItNeeds(name)]), new Set<string>());
    expect(needed.size).toBeGreaterThan(2);
    expect([...new Set(packed().map(packageOf))].filter((name) => name !== '').sort()).toEqual([...needed].sort());
  });

  it('finds in itself everything its bundles ask for', () => {
    const from = createRequire(join(unfolded, 'dist/electron/main.cjs'));
    for (const name of bundles().flatMap(asksFor)) expect(from.resolve(name)).toContain(unfolded);
  });

  it('keeps what the system loads from disk beside its archive', () => {
    const native = packed().filter((path) => /[.](node|dll|dylib|so)([.0-9]*)$/.test(path));
    expect(native.some((path) => path.endsWith('.node'))).toBe(true);
    expect(native.filter((path) => !existsSync(join(`${archive}.unpacked`, path)))).toEqual([]);
  });

  it('has every fuse as it is stated, and nothing of the program that Electron shows of itself', async () => {
    expect(await fusesOf(join(output, 'linux-unpacked/corenose'))).toEqual(STATED);
    expect(readdirSync(resources).sort()).toEqual(['app.asar', 'app.asar.unpacked']);
  });

  it('names itself, its window and its main file', () => {
    const { version } = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8')) as { version: string };
    expect(JSON.parse(readFileSync(join(unfolded, 'package.json'), 'utf8'))).toMatchObject({ name: 'corenose', version, main: 'dist/electron/main.cjs', desktopName: 'corenose.desktop' });
  });
});

describe.skipIf(process.platform === 'win32')('packed for macOS, it', () => {
  const app = join(output, 'mac/Corenose.app');
  const contents = join(app, 'Contents');
  let info = '';
  beforeAll(async () => {
    if (onBinary) return;
    await pack({ electron: electronForMac(join(scratch, 'electron-mac'), FUSE_OPTIONS.length), output, platform: Platform.MAC }, 'dir', Arch.x64);
    info = readFileSync(join(contents, 'Info.plist'), 'utf8').replaceAll(/>\s+</g, '><');
  });

  it('owns the sheets it saves, and no other file', () => {
    const types = /<key>CFBundleDocumentTypes<\/key><array>(.*?)<\/array><key>CFBundleExecutable/.exec(info)?.[1] ?? '';
    expect(types).toContain(`<key>CFBundleTypeExtensions</key><array><string>${SHEET_EXTENSION}</string></array>`);
    expect(types).toContain('<key>LSHandlerRank</key><string>Owner</string>');
    expect(types.match(/<dict>/g)).toHaveLength(1);
  });

  it('carries the digest of its archive, which the system checks', () => {
    // Electron, "ASAR Integrity": the hash is that of the header of the archive.
    const header = asar.getRawHeader(join(contents, 'Resources/app.asar')).headerString;
    expect(info).toContain(`<key>algorithm</key><string>SHA256</string><key>hash</key><string>${createHash('sha256').update(header).digest('hex')}</string>`);
  });

  it('has its fuses, its icon, and no sample program', async () => {
    expect(await fusesOf(app)).toEqual(STATED);
    expect(readFileSync(join(contents, 'Resources/icon.icns'))).toEqual(readFileSync(join(output, 'icons/icon.icns')));
    expect(existsSync(join(contents, 'Resources/default_app.asar'))).toBe(false);
  });
});

describe('the packed program, run on the stand-in', () => {
  const opened = async (name: string, ...args: readonly string[]): Promise<Desktop> => {
    const desktop = await openDesktop({ library: join(scratch, name, 'library'), profile: join(scratch, name, 'profile'), args, packed: unfolded });
    onTestFinished(() => desktop.kill());
    return desktop;
  };

  it('opens a sheet that it is started with', async () => {
    const file = join(scratch, 'sheet.corenose');
    writeFileSync(file, JSON.stringify(sootyThird));
    const { page } = await opened('sheet', file);
    await page.getByText('The sheet was taken in.').waitFor();
    await page.getByText('14 March 2026').first().waitFor();
    expect(await page.getByRole('dialog').count()).toBe(0);
  });

  it('shows the demo with its pictures, measured by its own reader of photos', async () => {
    const { page, stderr } = await opened('demo', '--demo');
    const library = await callFrom(page, 'photo.library', { offset: 0, limit: 200 });
    expect(library).toMatchObject({ ok: true, value: { total: SEEDS.flatMap(({ photos }) => (photos === undefined ? [] : below(`seeds/${photos}/photos`))).length } });
    expect(stderr()).not.toContain('could not be shown');
  });
});
