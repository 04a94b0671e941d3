import { existsSync, readdirSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { Pictures } from '../../../../electron/node/photo-store/pictures.ts';
import { err, ok } from '../../../../shared/result.ts';
import { temporaryFolder } from '../../../fixtures/temporary-folder.ts';

const digest = (n: number): string => String(n).padStart(64, '0');
const drawing = (bytes: number) => (to: string) => { writeFileSync(to, Buffer.alloc(bytes)); return Promise.resolve(ok(null)); };

describe('the sizes in which photos are shown', () => {
  it('are drawn once for two who ask at the same time, and anew when they were deleted', async () => {
    const pictures = new Pictures(temporaryFolder());
    let drawn = 0;
    const draw = (to: string) => { drawn += 1; return drawing(10)(to); };
    const [one, other] = await Promise.all([pictures.of(digest(1), 'screen', draw), pictures.of(digest(1), 'screen', draw)]);
    expect(one).toEqual(other);
    await pictures.of(digest(1), 'screen', draw);
    expect(drawn).toBe(1);
    if (one.ok) rmSync(one.value);
    await pictures.of(digest(1), 'screen', draw);
    expect(drawn).toBe(2);
  });

  it('leave nothing half drawn', async () => {
    const folder = temporaryFolder();
    const pictures = new Pictures(folder);
    const failing = (to: string) => { writeFileSync(to, 'half'); return Promise.resolve(err({ code: 'damaged' as const })); };
    expect(await pictures.of(digest(1), 'screen', failing)).toEqual({ ok: false, error: { code: 'damaged' } });
    expect(readdirSync(folder, { recursive: true }).filter((name) => String(name).includes(digest(1)))).toEqual([]);
    expect(await pictures.of(digest(1), 'screen', drawing(5))).toMatchObject({ ok: true });
  });

  it('stay under their limit: the large ones looked at longest ago go, the small ones and the one just drawn stay', async () => {
    const folder = temporaryFolder();
    const pictures = new Pictures(folder, 1000);
    await pictures.of(digest(0), 'small', drawing(5000));
    for (let n = 1; n <= 3; n += 1) {
      await pictures.of(digest(n), 'screen', drawing(300));
      utimesSync(pictures.pathOf(digest(n), 'screen'), new Date(n * 1e9), new Date(n * 1e9));
    }
    await pictures.of(digest(1), 'screen', drawing(0));
    await pictures.of(digest(4), 'full', drawing(300));
    const there = (n: number, size: 'small' | 'screen' | 'full'): boolean => existsSync(pictures.pathOf(digest(n), size));
    expect([there(0, 'small'), there(1, 'screen'), there(2, 'screen'), there(3, 'screen'), there(4, 'full')]).toEqual([true, true, false, true, true]);
    expect(readdirSync(join(folder, 'small'))).toHaveLength(1);
  });
});
