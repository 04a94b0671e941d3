import { describe, expect, it } from 'vitest';
import type { Engine } from '../../../../shared/formats/engine.ts';
import type { ReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';
import { fourCylinder, twinPlugFlatFour } from '../../../fixtures/plain-sheets.ts';
import { testProgram, valueOf } from '../../../fixtures/test-program.ts';

async function started(engine: Engine = fourCylinder) {
  const program = await testProgram();
  const { id: engineId } = valueOf(await program.handlers['engine.save']({ id: null, engine }));
  return { ...program, engineId, draft: valueOf(await program.handlers['reading.start']({ engineId })) };
}

const withColour = (sheet: ReadingSheet, noseColour: 'black' | 'brown'): ReadingSheet => ({ ...sheet, plugs: sheet.plugs.map((plug) => ({ ...plug, tip: { noseColour } })) });

describe('a new draft', () => {
  it('has today\'s date and one empty entry for every plug hole in tray order', async () => {
    const { draft } = await started(twinPlugFlatFour);
    expect(draft).toMatchObject({ state: 'draft', revision: 0, findings: null, pending: {}, sheet: { date: '2026-03-20', engine: twinPlugFlatFour } });
    expect(draft.sheet.plugs).toEqual([1, 2, 3, 4].flatMap((cylinder) => [{ cylinder, position: 'upper' }, { cylinder, position: 'lower' }]));
  });

  it('takes over which plugs were fitted from the reading kept last, but nothing that was seen', async () => {
    const { handlers, engineId, draft } = await started();
    const plugs = draft.sheet.plugs.map((plug) => ({ ...plug, fitted: { gapNewMm: 0.7, designation: `P${plug.cylinder}` }, tip: { noseColour: 'black' as const } }));
    valueOf(await handlers['reading.save']({ id: draft.id, revision: 0, sheet: { ...draft.sheet, plugs }, pending: {} }));
    valueOf(await handlers['reading.keep']({ id: draft.id }));
    const next = valueOf(await handlers['reading.start']({ engineId }));
    expect(next.sheet.plugs).toEqual([1, 2, 3, 4].map((cylinder) => ({ cylinder, fitted: { gapNewMm: 0.7, designation: `P${cylinder}` } })));
  });

  it('is given back as long as it is open, instead of a second one', async () => {
    const { handlers, engineId, draft } = await started();
    expect(valueOf(await handlers['reading.start']({ engineId }))).toEqual(draft);
  });
});

describe('saving a draft', () => {
  it('keeps the sheet and what was typed but cannot be taken yet', async () => {
    const { handlers, draft } = await started();
    const sheet = withColour(draft.sheet, 'brown');
    const pending = { 'plugs.0.measured.gapMm': '0,7 mm?' };
    expect(valueOf(await handlers['reading.save']({ id: draft.id, revision: 0, sheet, pending })).revision).toBe(1);
    expect(valueOf(await handlers['reading.get']({ id: draft.id }))).toMatchObject({ revision: 1, sheet, pending });
  });

  it('from a page that saw an older state overwrites nothing', async () => {
    const { handlers, draft } = await started();
    valueOf(await handlers['reading.save']({ id: draft.id, revision: 0, sheet: withColour(draft.sheet, 'brown'), pending: {} }));
    expect(await handlers['reading.save']({ id: draft.id, revision: 0, sheet: withColour(draft.sheet, 'black'), pending: {} })).toMatchObject({ ok: false, error: { code: 'conflict' } });
    expect(valueOf(await handlers['reading.get']({ id: draft.id })).sheet.plugs[0]?.tip).toEqual({ noseColour: 'brown' });
  });

  it('is refused for a cylinder that the engine does not have, with the path', async () => {
    const { handlers, draft } = await started();
    const sheet = { ...draft.sheet, engine: { ...fourCylinder, cylinders: 5 }, plugs: [...draft.sheet.plugs, { cylinder: 5, note: 'seen' }] };
    expect(await handlers['reading.save']({ id: draft.id, revision: 0, sheet, pending: {} })).toMatchObject({ ok: false, error: { code: 'bad-request', problems: [{ path: 'plugs.4.cylinder' }] } });
  });
});

describe('keeping a reading', () => {
  it('stores the findings with it and closes it for changes until it is opened again', async () => {
    const { handlers, engineId, draft } = await started();
    const kept = valueOf(await handlers['reading.keep']({ id: draft.id }));
    expect(kept).toMatchObject({ state: 'kept', findings: { plugs: [{ verdict: 'undetermined' }, {}, {}, {}] } });
    expect(await handlers['reading.save']({ id: draft.id, revision: kept.revision, sheet: draft.sheet, pending: {} })).toMatchObject({ error: { code: 'conflict' } });
    const open = valueOf(await handlers['reading.reopen']({ id: draft.id }));
    expect(open).toMatchObject({ state: 'draft', findings: null });
    valueOf(await handlers['reading.save']({ id: draft.id, revision: open.revision, sheet: withColour(draft.sheet, 'black'), pending: {} }));
    expect(valueOf(await handlers['reading.list']({ engineId }))).toMatchObject([{ state: 'draft', plugsRead: 4, verdicts: [] }]);
  });

  it('keeps the engine as it was that day, while a draft follows the engine\'s record', async () => {
    const { handlers, engineId, draft } = await started();
    valueOf(await handlers['reading.keep']({ id: draft.id }));
    const next = valueOf(await handlers['reading.start']({ engineId }));
    valueOf(await handlers['engine.save']({ id: engineId, engine: { ...fourCylinder, cylinders: 6, compressionRatio: 9.5 } }));
    expect(valueOf(await handlers['reading.get']({ id: draft.id })).sheet.engine).toEqual(fourCylinder);
    const followed = valueOf(await handlers['reading.get']({ id: next.id })).sheet;
    expect(followed.engine.compressionRatio).toBe(9.5);
    expect(followed.plugs.map(({ cylinder }) => cylinder)).toEqual([1, 2, 3, 4, 5, 6]);
  });

  it('cannot be opened again while another draft of the engine is open', async () => {
    const { handlers, engineId, draft } = await started();
    valueOf(await handlers['reading.keep']({ id: draft.id }));
    valueOf(await handlers['reading.start']({ engineId }));
    expect(await handlers['reading.reopen']({ id: draft.id })).toMatchObject({ ok: false, error: { code: 'conflict' } });
  });
});

describe('the list of readings', () => {
  it('puts an open draft first and then the newest reading', async () => {
    const { handlers, engineId, draft } = await started();
    const dated = async (id: string, revision: number, sheet: ReadingSheet, date: string): Promise<void> => {
      valueOf(await handlers['reading.save']({ id, revision, sheet: { ...sheet, date }, pending: {} }));
      valueOf(await handlers['reading.keep']({ id }));
    };
    await dated(draft.id, 0, draft.sheet, '2026-01-02');
    const second = valueOf(await handlers['reading.start']({ engineId }));
    await dated(second.id, 0, second.sheet, '2026-02-03');
    const third = valueOf(await handlers['reading.start']({ engineId }));
    expect(valueOf(await handlers['reading.list']({ engineId })).map(({ id, date }) => [id, date])).toEqual([
      [third.id, '2026-03-20'], [second.id, '2026-02-03'], [draft.id, '2026-01-02'],
    ]);
  });

  it('leaves out a removed reading and has it back, unchanged, when it is restored', async () => {
    const { handlers, engineId, draft } = await started();
    valueOf(await handlers['reading.remove']({ id: draft.id }));
    expect(valueOf(await handlers['reading.list']({ engineId }))).toEqual([]);
    expect(await handlers['reading.get']({ id: draft.id })).toMatchObject({ error: { code: 'not-found' } });
    expect(valueOf(await handlers['reading.restore']({ id: draft.id }))).toEqual(draft);
  });
});
