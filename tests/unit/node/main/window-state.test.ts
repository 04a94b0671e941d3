import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readWindowState, writeWindowState } from '../../../../electron/main/window-state.ts';
import { temporaryFolder } from '../../../fixtures/temporary-folder.ts';

const displays = [{ workArea: { x: 0, y: 0, width: 1920, height: 1080 } }];
const usual = { width: 1280, height: 800 };
const file = (): string => join(temporaryFolder(), 'deep', 'window.json');

describe('the place of the window', () => {
  it('is where it was when it was closed', () => {
    const at = file();
    writeWindowState(at, { x: 100, y: 50, width: 1000, height: 700 }, true);
    expect(readWindowState(at, displays)).toEqual({ x: 100, y: 50, width: 1000, height: 700, maximised: true });
  });

  it.each([
    ['is on a display that is gone', { x: 2500, y: 50, width: 1000, height: 700 }],
    ['is above the display', { x: 100, y: -500, width: 1000, height: 700 }],
    ['has its title bar below the display', { x: 100, y: 1075, width: 1000, height: 700 }],
  ])('is the usual one when the last one %s', (_where, bounds) => {
    const at = file();
    writeWindowState(at, bounds, false);
    expect(readWindowState(at, displays)).toEqual(usual);
  });

  it('is the usual one when nothing readable was saved', () => {
    expect(readWindowState(file(), displays)).toEqual(usual);
    const at = join(temporaryFolder(), 'window.json');
    for (const text of ['', 'null', '{"x":1}', '{"x":"1","y":0,"width":1000,"height":700,"maximised":false}']) {
      writeFileSync(at, text);
      expect(readWindowState(at, displays)).toEqual(usual);
    }
  });
});
