import { spawnSync } from 'node:child_process';
import { rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it, onTestFinished, type TestContext } from 'vitest';
import { addEngine, listEngines } from '../../../../electron/node/storage/engines.ts';
import { appErrorOf } from '../../../../electron/node/storage/failure.ts';
import { openLibrary, type Library } from '../../../../electron/node/storage/library.ts';
import { fourCylinder } from '../../../fixtures/plain-sheets.ts';
import { temporaryFolder } from '../../../fixtures/temporary-folder.ts';

/** A disk of 600 kB, where this user may mount one. */
function smallDisk(context: TestContext): string {
  const folder = temporaryFolder();
  const mounted = process.platform === 'linux' && process.getuid?.() === 0 && spawnSync('mount', ['-t', 'tmpfs', '-o', 'size=600k', 'tmpfs', folder]).status === 0;
  if (!mounted) context.skip('skipped: no small disk can be mounted here');
  onTestFinished(() => { spawnSync('umount', [folder]); });
  return folder;
}

async function open(folder: string): Promise<Library> {
  const library = await openLibrary({ folder, kind: 'own', now: new Date('2026-03-20T09:00:00Z') });
  onTestFinished(() => library.close());
  return library;
}

const add = ({ db }: Library, id: string): Promise<void> => addEngine(db!, id, { ...fourCylinder, name: id.repeat(500) }, '2026-03-20T09:00:00.000Z');

describe('a disk that fills up while the program runs', () => {
  it('costs nothing that was saved, and saving goes on once there is room again', async (context) => {
    const disk = smallDisk(context);
    const filler = join(disk, 'filler');
    writeFileSync(filler, Buffer.alloc(250_000));
    const library = await open(join(disk, 'library'));
    const saved: string[] = [];
    let refused: unknown;
    for (let n = 0; refused === undefined && n < 1000; n++) {
      const id = `engine ${n}`;
      await add(library, id).then(() => saved.push(id), (error: unknown) => { refused = error; });
    }
    expect(appErrorOf(refused)).toMatchObject({ code: 'disk-full', message: expect.stringContaining('What was saved before is safe') as string });
    expect(saved.length).toBeGreaterThan(5);
    rmSync(filler);
    await add(library, 'afterwards');
    library.close();
    const again = await open(join(disk, 'library'));
    expect(again.state.trouble?.code).not.toBe('damaged');
    expect((await listEngines(again.db!)).map(({ id }) => id).sort()).toEqual([...saved, 'afterwards'].sort());
  });

  it('that is full from the start is told as such', async (context) => {
    const disk = smallDisk(context);
    writeFileSync(join(disk, 'filler'), Buffer.alloc(590_000));
    expect(await open(join(disk, 'library'))).toMatchObject({ db: null, state: { trouble: { code: 'disk-full' } } });
  });
});
