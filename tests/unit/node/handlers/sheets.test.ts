import { describe, expect, it } from 'vitest';
import { diagnoseSheet, firstLookAt } from '../../../../electron/node/diagnosing.ts';
import { openDoor } from '../../../../electron/node/door.ts';
import { sootyThird, fourCylinder } from '../../../fixtures/plain-sheets.ts';
import { testProgram, valueOf } from '../../../fixtures/test-program.ts';

const text = (value: unknown): string => JSON.stringify(value, null, 2);

describe('a sheet that is read in', () => {
  it('comes out again as it went in', async () => {
    const { handlers } = await testProgram();
    const { readingId } = valueOf(await handlers['reading.import']({ text: text(sootyThird) }));
    const out = valueOf(await handlers['reading.export']({ id: readingId }));
    expect(JSON.parse(out.text)).toEqual(sootyThird);
    expect(out.fileName).toBe('workshop-four-2026-03-14.corenose');
  });

  it('stands under its engine as a kept reading with findings', async () => {
    const { handlers } = await testProgram();
    const { engineId, readingId } = valueOf(await handlers['reading.import']({ text: text(sootyThird) }));
    expect(valueOf(await handlers['engine.list'](null))).toMatchObject([{ id: engineId, engine: fourCylinder, readings: 1, lastReadingAt: '2026-03-14' }]);
    expect(valueOf(await handlers['reading.get']({ id: readingId }))).toMatchObject({ state: 'kept', findings: { format: 'corenose.findings' } });
  });

  it('goes to the engine that is described alike, whatever the order of its fields, and to a new one when anything differs', async () => {
    const { handlers } = await testProgram();
    const first = valueOf(await handlers['reading.import']({ text: text(sootyThird) }));
    const turned = Object.fromEntries(Object.entries(fourCylinder).reverse());
    const again = valueOf(await handlers['reading.import']({ text: text({ ...sootyThird, engine: turned, date: '2026-03-15' }) }));
    const bored = valueOf(await handlers['reading.import']({ text: text({ ...sootyThird, engine: { ...fourCylinder, boreMm: 81 } }) }));
    expect(again.engineId).toBe(first.engineId);
    expect(bored.engineId).not.toBe(first.engineId);
  });

  it('twice is one reading, and the answer says so', async () => {
    const { handlers } = await testProgram();
    const first = valueOf(await handlers['reading.import']({ text: text(sootyThird) }));
    expect(first.known).toBe(false);
    expect(valueOf(await handlers['reading.import']({ text: text(sootyThird) }))).toEqual({ ...first, known: true });
  });

  it('that the system asked to open is given to the page once, through its channel', async () => {
    const { handlers, opened } = await testProgram();
    expect(valueOf(await handlers['reading.opened'](null))).toBeNull();
    opened.add(['/nowhere/gone.corenose']);
    expect(valueOf(await handlers['reading.opened'](null))).toEqual({ name: 'gone.corenose', unread: 'missing' });
    expect(valueOf(await handlers['reading.opened'](null))).toBeNull();
  });

  it('is refused with every problem and its path, and nothing is stored', async () => {
    const { handlers } = await testProgram();
    const wrong = { ...sootyThird, plugs: [{ cylinder: 9 }], engine: { ...fourCylinder, colour: 'red' } };
    expect(await handlers['reading.import']({ text: text(wrong) })).toMatchObject({ ok: false, error: { code: 'bad-request', problems: [{ path: 'engine.colour', message: expect.stringContaining('allowed are name') as string }, { path: 'plugs.0.cylinder', message: 'there is no cylinder 9; allowed are 1 to 4' }] } });
    expect(await handlers['reading.import']({ text: '{"a": }' })).toEqual({ ok: false, error: { code: 'bad-request', problems: [{ path: '', message: 'not JSON: value expected at line 1, column 7' }] } });
    expect(valueOf(await handlers['engine.list'](null))).toEqual([]);
  });
});

describe('a first look at a sheet that is in no library', () => {
  it('decides what its findings decide', async () => {
    const { handlers } = await testProgram({ firstLook: firstLookAt, diagnose: diagnoseSheet });
    const { plugs, stop } = valueOf(await handlers['first-look']({ sheet: sootyThird }));
    const findings = valueOf(await handlers.diagnose({ sheet: sootyThird }));
    expect(plugs.map(({ cylinder, verdict }) => [cylinder, verdict])).toEqual([[1, 'normal'], [2, 'normal'], [3, 'dry carbon fouling'], [4, 'normal']]);
    expect(findings.plugs).toMatchObject(plugs);
    expect(findings).toMatchObject({ stop });
  });

  it('is refused at the door with the place of what is wrong', async () => {
    const { handlers } = await testProgram();
    const answer = await openDoor(handlers, () => undefined).call('first-look', { sheet: { ...sootyThird, plugs: [{ cylinder: 9 }] } }, true);
    expect(answer).toEqual({ ok: false, error: { code: 'bad-request', problems: [{ path: 'sheet.plugs.0.cylinder', message: 'there is no cylinder 9; allowed are 1 to 4' }] } });
  });
});
