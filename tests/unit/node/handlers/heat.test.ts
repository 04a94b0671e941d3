import { describe, expect, it } from 'vitest';
import type { HeatEntry, HeatSetting } from '../../../../shared/channels-heat.ts';
import { fourCylinder } from '../../../fixtures/plain-sheets.ts';
import { testProgram, valueOf } from '../../../fixtures/test-program.ts';

const UNKNOWN = '00000000-0000-4000-8000-999999999999';
const setting: HeatSetting = {
  load: 0.45, rpm: 2500, lambda: 1, advance: 34, boost: 0, inlet: 20, coolant: 90, altitude: 0, heatStep: 0, gap: 0.8, coil: 25, fuel: 'petrol',
};
const probe: HeatEntry = { kind: 'probe', probe: 'thermocouple', celsius: 540, setting };

describe('the heat record of an engine', () => {
  it('gives its kept readings, the oldest first, but no open draft, and what was entered by hand', async () => {
    const { handlers } = await testProgram();
    const { id: engineId } = valueOf(await handlers['engine.save']({ id: null, engine: fourCylinder }));
    const first = valueOf(await handlers['reading.start']({ engineId }));
    valueOf(await handlers['reading.keep']({ id: first.id }));
    const second = valueOf(await handlers['reading.start']({ engineId }));
    valueOf(await handlers['reading.save']({ id: second.id, revision: second.revision, sheet: { ...second.sheet, date: '2027-01-01' }, pending: {} }));
    valueOf(await handlers['reading.keep']({ id: second.id }));
    valueOf(await handlers['reading.start']({ engineId }));
    const added = valueOf(await handlers['heat.add']({ engineId, entry: probe }));
    const record = valueOf(await handlers['heat.record']({ engineId }));
    expect(record.kept.map(({ id }) => id)).toEqual([first.id, second.id]);
    expect(record.entries).toEqual([added]);
    expect(added.entry).toEqual(probe);
  });

  it('loses nothing: an entry taken away comes back whole', async () => {
    const { handlers } = await testProgram();
    const { id: engineId } = valueOf(await handlers['engine.save']({ id: null, engine: fourCylinder }));
    const added = valueOf(await handlers['heat.add']({ engineId, entry: probe }));
    valueOf(await handlers['heat.remove']({ id: added.id }));
    expect(valueOf(await handlers['heat.record']({ engineId })).entries).toEqual([]);
    expect(valueOf(await handlers['heat.restore']({ id: added.id }))).toEqual(added);
    expect(valueOf(await handlers['heat.record']({ engineId })).entries).toEqual([added]);
  });

  it('says what is unknown', async () => {
    const { handlers } = await testProgram();
    expect(await handlers['heat.record']({ engineId: UNKNOWN })).toEqual({ ok: false, error: { code: 'not-found', what: 'engine' } });
    expect(await handlers['heat.add']({ engineId: UNKNOWN, entry: probe })).toEqual({ ok: false, error: { code: 'not-found', what: 'engine' } });
    expect(await handlers['heat.remove']({ id: UNKNOWN })).toEqual({ ok: false, error: { code: 'not-found', what: 'entry' } });
    expect(await handlers['heat.restore']({ id: UNKNOWN })).toEqual({ ok: false, error: { code: 'not-found', what: 'entry' } });
  });
});
