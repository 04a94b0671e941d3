import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { flipFuses, FuseState, FuseV1Options, getCurrentFuseWire } from '@electron/fuses';
import { Ajv } from 'ajv';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { packageConfig } from '../../electron/packaging/config.ts';
import { FUSES } from '../../electron/packaging/fuses.ts';
import { drawIcons, ICON_SIZES } from '../../electron/packaging/icons.ts';
import { MARK } from '../../electron/packaging/pack.ts';
import { electronBinary } from '../../electron/start/electron-binary.ts';
import { ROOT } from '../../electron/start/targets.ts';
import { SHEET_EXTENSION, SHEET_MEDIA_TYPE } from '../../shared/formats/sheet-file.ts';
import { electronBinaryWith } from '../fixtures/electron-folder.ts';
import { temporaryFolder } from '../fixtures/temporary-folder.ts';

const config = packageConfig({ electron: '/electron', icons: '/icons', output: '/packages' });

describe('the configuration of the packager', () => {
  // electron-builder holds a configuration against this schema of its own before it does anything.
  const builder = createRequire(createRequire(import.meta.url).resolve('electron-builder'));
  const schema = JSON.parse(readFileSync(builder.resolve('app-builder-lib/scheme.json'), 'utf8')) as object;
  const fits = new Ajv({ strict: false }).compile(schema);

  it('fits the schema of electron-builder', () => {
    expect(fits(config), JSON.stringify(fits.errors)).toBe(true);
  });

  it.each([
    ['a word it does not know', { ...config, fuses: {} }], ['a list for a word', { ...config, appId: ['org'] }],
    ['an association without a suffix', { ...config, fileAssociations: [{ name: 'x' }] }],
  ])('would not with %s', (_what, wrong) => {
    expect(fits(wrong)).toBe(false);
  });

  it('associates saved sheets, and no file of anybody else', () => {
    expect(config.fileAssociations).toMatchObject([{ ext: SHEET_EXTENSION, mimeType: SHEET_MEDIA_TYPE }]);
    // RFC 6838: a vendor tree; RFC 6839: the suffix of JSON. Suffixes in common use elsewhere: from memory.
    expect(SHEET_MEDIA_TYPE).toMatch(/^application\/vnd\.corenose\.[a-z-]+\+json$/);
    expect(['json', 'txt', 'xml', 'csv', 'zip', 'sheet', 'reading']).not.toContain(SHEET_EXTENSION);
  });
});

describe('the fuses', () => {
  // The list of @electron/fuses, which the makers of Electron keep.
  const names = Object.values(FuseV1Options).filter((value) => typeof value === 'string');

  it.each(names)('state %s', (name) => {
    expect(typeof FUSES[FuseV1Options[name as keyof typeof FuseV1Options]]).toBe('boolean');
  });

  it('leave no way in from outside, and load the program from its checked archive only', async () => {
    const binary = electronBinaryWith(names.length);
    await flipFuses(binary, FUSES);
    const wire = await getCurrentFuseWire(binary);
    const on = names.filter((name) => wire[FuseV1Options[name as keyof typeof FuseV1Options]] === FuseState.ENABLE);
    expect(on).toEqual(['EnableEmbeddedAsarIntegrityValidation', 'OnlyLoadAppFromAsar', 'WasmTrapHandlers']);
  });

  it('refuse a binary that has one more than is stated', async () => {
    await expect(flipFuses(electronBinaryWith(names.length + 1), FUSES)).rejects.toThrow('strictlyRequireAllFuses');
  });
});

describe('npm run package', () => {
  const run = (...args: readonly string[]) => spawnSync(process.execPath, ['electron/start/gate.mjs', 'electron/packaging/package.ts', ...args], {
    cwd: ROOT, encoding: 'utf8', env: { ...process.env, ELECTRON_MIRROR: 'http://127.0.0.1:9/', electron_config_cache: temporaryFolder() },
  });

  it.skipIf(electronBinary() !== null)('says in one line that it packed nothing where the Electron binary cannot be had, and fails', () => {
    expect(run()).toMatchObject({ status: 1, stdout: '', stderr: '\nNothing was packaged: the Electron binary is not here and could not be fetched.\n' });
  });

  it('refuses an option that it does not know', () => {
    expect(run('--dri')).toMatchObject({ status: 1, stdout: '', stderr: expect.stringContaining("Unknown option '--dri'") as string });
  });
});

describe('the icons', () => {
  it('are there in every size, square, with a clear corner and the mark in the middle', async () => {
    const folder = temporaryFolder();
    await drawIcons(MARK, folder);
    for (const edge of ICON_SIZES) {
      const { data, info } = await sharp(join(folder, `${edge}x${edge}.png`)).raw().toBuffer({ resolveWithObject: true });
      expect(info).toMatchObject({ width: edge, height: edge, channels: 4 });
      const pixel = (x: number, y: number): number[] => [...data.subarray((y * edge + x) * 4, (y * edge + x) * 4 + 4)];
      expect(pixel(0, 0)[3]).toBe(0);
      expect(pixel(edge - 1, edge - 1)[3]).toBe(0);
      expect(pixel(Math.floor(edge / 2), Math.floor(edge / 2))[3]).toBe(255);
    }
  });

  it('come for macOS and Windows as one file that lists every picture where it lies', async () => {
    const folder = temporaryFolder();
    await drawIcons(MARK, folder);
    const [ico, icns] = [readFileSync(join(folder, 'icon.ico')), readFileSync(join(folder, 'icon.icns'))];
    const edgeAt = async (file: Buffer, start: number, length: number): Promise<number> => (await sharp(file.subarray(start, start + length)).metadata()).width;
    // Microsoft, "Icons": ICONDIR is 0, 1 and the number of pictures; in an entry of 16 bytes come width, height, and at 8 and 12 length and place.
    expect([ico.readUInt16LE(0), ico.readUInt16LE(2)]).toEqual([0, 1]);
    const entries = Array.from({ length: ico.readUInt16LE(4) }, (_, i) => 6 + 16 * i);
    const said = entries.map((at) => ico.readUInt8(at) || 256);
    expect(said).toEqual([16, 24, 32, 48, 64, 128, 256]);
    expect(await Promise.all(entries.map((at) => edgeAt(ico, ico.readUInt32LE(at + 12), ico.readUInt32LE(at + 8))))).toEqual(said);
    // The macOS format, from memory: a name of four letters and a length that counts both, around blocks made alike. ic09 is 512, ic10 is 512 twice as fine.
    expect([icns.toString('latin1', 0, 4), icns.readUInt32BE(4)]).toEqual(['icns', icns.length]);
    const edges: Record<string, number> = {};
    for (let at = 8; at < icns.length; at += icns.readUInt32BE(at + 4)) edges[icns.toString('latin1', at, at + 4)] = await edgeAt(icns, at + 8, icns.readUInt32BE(at + 4) - 8);
    expect(edges).toEqual({ ic11: 32, ic12: 64, ic07: 128, ic08: 256, ic09: 512, ic10: 1024 });
  });

  it('come in the sizes that the systems ask for', () => {
    // freedesktop.org, Icon Theme Specification: at least 48. electron-builder, Icons: Windows from 256, macOS from 512, retina 1024.
    for (const edge of [48, 256, 512, 1024] as const) expect(ICON_SIZES).toContain(edge);
  });

  it('show the mark: its nose is light, the metal around it grey, its ground dark', async () => {
    const folder = temporaryFolder();
    await drawIcons(MARK, folder);
    const { data } = await sharp(join(folder, '1024x1024.png')).removeAlpha().raw().toBuffer({ resolveWithObject: true });
    // Places and colours by mark.svg: 32 units fill the 896 pixels inside a margin of 64.
    const at = (x: number, y: number): string => {
      const start = (Math.round(64 + (y * 896) / 32) * 1024 + Math.round(64 + (x * 896) / 32)) * 3;
      return data.subarray(start, start + 3).toString('hex');
    };
    expect([at(16, 20.5), at(16, 27), at(3, 16), at(16, 17)]).toEqual(['e8e2d6', 'c9c9c9', '3a3a3a', '3a3a3a']);
  });
});
