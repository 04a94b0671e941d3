import { describe, expect, it } from 'vitest';
import { fourCylinder, twinPlugFlatFour } from '../../../fixtures/plain-sheets.ts';
import { testProgram, valueOf } from '../../../fixtures/test-program.ts';

const UNKNOWN = '00000000-0000-4000-8000-999999999999';

describe('engines', () => {
  it('are listed with the one changed last on top', async () => {
    const { handlers } = await testProgram();
    const four = valueOf(await handlers['engine.save']({ id: null, engine: fourCylinder }));
    const flat = valueOf(await handlers['engine.save']({ id: null, engine: twinPlugFlatFour }));
    valueOf(await handlers['engine.save']({ id: four.id, engine: { ...fourCylinder, boreMm: 80 } }));
    expect(valueOf(await handlers['engine.list'](null)).map(({ id, engine }) => [id, engine.boreMm])).toEqual([[four.id, 80], [flat.id, undefined]]);
  });

  it('that were removed are out of sight, and back whole when restored', async () => {
    const { handlers } = await testProgram();
    const saved = valueOf(await handlers['engine.save']({ id: null, engine: fourCylinder }));
    valueOf(await handlers['engine.remove']({ id: saved.id }));
    expect(valueOf(await handlers['engine.list'](null))).toEqual([]);
    expect(valueOf(await handlers['engine.restore']({ id: saved.id }))).toEqual(saved);
  });

  it('that are unknown are said to be so', async () => {
    const { handlers } = await testProgram();
    const unknown = { ok: false, error: { code: 'not-found', what: 'engine' } };
    expect(await handlers['engine.save']({ id: UNKNOWN, engine: fourCylinder })).toEqual(unknown);
    expect(await handlers['engine.remove']({ id: UNKNOWN })).toEqual(unknown);
    expect(await handlers['engine.restore']({ id: UNKNOWN })).toEqual(unknown);
    expect(await handlers['reading.start']({ engineId: UNKNOWN })).toEqual(unknown);
  });

  it('show how many readings were kept, when the last one was made, and whether one is open', async () => {
    const { handlers } = await testProgram();
    const { id: engineId } = valueOf(await handlers['engine.save']({ id: null, engine: fourCylinder }));
    const draft = valueOf(await handlers['reading.start']({ engineId }));
    expect(valueOf(await handlers['engine.list'](null))[0]).toMatchObject({ readings: 0, lastReadingAt: null, draft: true });
    valueOf(await handlers['reading.keep']({ id: draft.id }));
    expect(valueOf(await handlers['engine.list'](null))[0]).toMatchObject({ readings: 1, lastReadingAt: '2026-03-20', draft: false });
  });

  it('cannot lose a cylinder that an open draft has something on', async () => {
    const { handlers } = await testProgram();
    const { id: engineId } = valueOf(await handlers['engine.save']({ id: null, engine: fourCylinder }));
    const { id, revision, sheet } = valueOf(await handlers['reading.start']({ engineId }));
    const three = { ...fourCylinder, cylinders: 3, mixture: { kind: 'carburettor' as const } };
    const plugs = sheet.plugs.map((plug) => (plug.cylinder === 4 ? { ...plug, tip: { noseColour: 'black' as const } } : plug));
    valueOf(await handlers['reading.save']({ id, revision, sheet: { ...sheet, plugs }, pending: {} }));
    expect(await handlers['engine.save']({ id: engineId, engine: three })).toMatchObject({ ok: false, error: { code: 'conflict', message: expect.stringContaining('there is no cylinder 4') as string } });
    valueOf(await handlers['reading.keep']({ id }));
    expect(valueOf(await handlers['engine.save']({ id: engineId, engine: three })).engine.cylinders).toBe(3);
  });
});
