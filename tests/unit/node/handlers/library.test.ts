import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { DEFAULT_SETTINGS } from '../../../../shared/channels.ts';
import { fourCylinder, sootyThird } from '../../../fixtures/plain-sheets.ts';
import { countingIds, steppingClock, testProgram, valueOf } from '../../../fixtures/test-program.ts';
import { temporaryFolder } from '../../../fixtures/temporary-folder.ts';

const seeds = [{ name: 'four', sheets: [sootyThird, { ...sootyThird, date: '2026-03-15' }] }];

describe('settings', () => {
  it('start at their defaults and stay as they were saved', async () => {
    const folder = temporaryFolder();
    const first = await testProgram({ folder });
    expect(valueOf(await first.handlers['settings.get'](null))).toEqual(DEFAULT_SETTINGS);
    valueOf(await first.handlers['settings.save']({ theme: 'dark', units: 'inch', textSize: 'large' }));
    first.shelf.close();
    const second = await testProgram({ folder });
    expect(valueOf(await second.handlers['settings.get'](null))).toEqual({ theme: 'dark', units: 'inch', textSize: 'large' });
  });

  it('follow the person into the demo library', async () => {
    const { handlers } = await testProgram({ seeds });
    valueOf(await handlers['settings.save']({ theme: 'dark', units: 'inch', textSize: 'normal' }));
    valueOf(await handlers['library.use']({ kind: 'demo' }));
    expect(valueOf(await handlers['settings.get'](null)).theme).toBe('dark');
  });
});

describe('the demo library', () => {
  it('holds every seed once, however often it is opened, and leaves the own library alone', async () => {
    const { handlers } = await testProgram({ seeds });
    valueOf(await handlers['engine.save']({ id: null, engine: { ...fourCylinder, name: 'Mine' } }));
    for (const kind of ['demo', 'own', 'demo'] as const) expect(valueOf(await handlers['library.use']({ kind })).library.kind).toBe(kind);
    expect(valueOf(await handlers['engine.list'](null))).toMatchObject([{ engine: fourCylinder, readings: 2 }]);
    valueOf(await handlers['library.use']({ kind: 'own' }));
    expect(valueOf(await handlers['engine.list'](null)).map(({ engine }) => engine.name)).toEqual(['Mine']);
  });
});

describe('engines that came together', () => {
  it('are listed by name', async () => {
    const named = (name: string) => ({ ...sootyThird, engine: { ...fourCylinder, name } });
    const { handlers } = await testProgram({ seeds: ['Wren', 'Auk', 'Kite'].map((name) => ({ name, sheets: [named(name)] })) });
    valueOf(await handlers['library.use']({ kind: 'demo' }));
    expect(valueOf(await handlers['engine.list'](null)).map(({ engine }) => engine.name)).toEqual(['Auk', 'Kite', 'Wren']);
  });
});

describe('a library that cannot be used as it should', () => {
  it('can be read but not changed while another process has it, and works once that one has gone', async () => {
    const folder = temporaryFolder();
    const first = await testProgram({ folder });
    valueOf(await first.handlers['engine.save']({ id: null, engine: fourCylinder }));
    const second = await testProgram({ folder, newId: () => '00000000-0000-4000-8000-000000000777' });
    expect(valueOf(await second.handlers['app.info'](null)).library).toMatchObject({ readOnly: true, trouble: { code: 'in-use' } });
    expect(valueOf(await second.handlers['engine.list'](null))).toHaveLength(1);
    expect(await second.handlers['engine.save']({ id: null, engine: fourCylinder })).toMatchObject({ ok: false, error: { code: 'read-only' } });
    first.shelf.close();
    expect(valueOf(await second.handlers['library.use']({ kind: 'own' })).library).toMatchObject({ readOnly: false, trouble: null });
    valueOf(await second.handlers['engine.save']({ id: null, engine: fourCylinder }));
  });

  it('offers its backups when damaged and goes on from the chosen one', async () => {
    const folder = temporaryFolder();
    const first = await testProgram({ folder });
    valueOf(await first.handlers['engine.save']({ id: null, engine: fourCylinder }));
    first.shelf.close();
    (await testProgram({ folder, clock: steppingClock('2026-03-21T09:00:00.000Z') })).shelf.close();
    const file = join(folder, 'library.sqlite');
    writeFileSync(file, readFileSync(file).fill(0x5a, 100, 9000));
    const { handlers } = await testProgram({ folder, newId: countingIds(), clock: steppingClock('2026-03-22T09:00:00.000Z') });
    const { trouble } = valueOf(await handlers['app.info'](null)).library;
    expect(trouble).toMatchObject({ code: 'damaged', backups: ['2026-03-21T090001Z.sqlite'] });
    expect(await handlers['engine.list'](null)).toMatchObject({ ok: false, error: { code: 'library-unavailable' } });
    expect(valueOf(await handlers['library.recover']({ backup: trouble!.backups[0]! })).library.trouble).toBeNull();
    expect(valueOf(await handlers['engine.list'](null))).toHaveLength(1);
  });

  it('is not exchanged for a backup while it is sound', async () => {
    const { handlers } = await testProgram();
    expect(await handlers['library.recover']({ backup: '2026-03-21T090000Z.sqlite' })).toMatchObject({ ok: false, error: { code: 'conflict' } });
  });
});
