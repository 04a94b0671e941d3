import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { dataFolder, libraryFolder } from '../../../../electron/node/storage/place.ts';

describe('the library folder', () => {
  it('is the one asked for, before the one in the environment, before the platform\'s place for data', () => {
    expect(libraryFolder('asked', { CORENOSE_LIBRARY: '/env' })).toBe(resolve('asked'));
    expect(libraryFolder(undefined, { CORENOSE_LIBRARY: '/env' })).toBe(resolve('/env'));
    for (const environment of [{}, { CORENOSE_LIBRARY: '' }]) expect(libraryFolder(undefined, environment)).toBe(join(dataFolder(), 'library'));
  });

  it('carries the program\'s name where the platform keeps data', () => {
    expect(dataFolder()).toMatch(/Corenose/);
  });
});
