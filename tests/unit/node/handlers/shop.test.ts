import { describe, expect, it } from 'vitest';
import { diagnoseSheet, firstLookAt } from '../../../../electron/node/diagnosing.ts';
import type { Input } from '../../../../shared/channels.ts';
import { fourCylinder, sootyThird } from '../../../fixtures/plain-sheets.ts';
import { testProgram, valueOf } from '../../../fixtures/test-program.ts';

type Line = Input<'shop.save'>;
const stored: Line = { id: null, on: true, by: 'Ann', because: 'Barn finds are all like that.', says: { kind: 'moved', of: 'rings-worn', when: { tag: 'stored long' }, how: 'likelier' } };
const ethanol: Line = { ...stored, says: { kind: 'moved', of: 'rings-worn', when: { fuel: 'E85' }, how: 'likelier' } };
const file = (...lines: readonly object[]): string => JSON.stringify({ format: 'corenose.shop-lines', version: 1, lines });

describe('the lines of a workshop', () => {
  it('are kept in the order in which they were added, changed in place, and taken off and put back', async () => {
    const { handlers } = await testProgram();
    const first = valueOf(await handlers['shop.save'](stored));
    const second = valueOf(await handlers['shop.save'](ethanol));
    const changed = valueOf(await handlers['shop.save']({ ...first, on: false }));
    expect(valueOf(await handlers['shop.list'](null))).toEqual([{ ...first, on: false }, second]);
    expect(changed.id).toBe(first.id);
    valueOf(await handlers['shop.remove']({ id: first.id }));
    expect(valueOf(await handlers['shop.list'](null))).toEqual([second]);
    expect(valueOf(await handlers['shop.restore']({ id: first.id }))).toEqual(changed);
    expect(valueOf(await handlers['shop.list'](null))).toEqual([changed, second]);
  });

  it('are refused at the field and with the reason when they break a rule of the knowledge', async () => {
    const { handlers } = await testProgram();
    valueOf(await handlers['shop.save'](stored));
    const refused = await handlers['shop.save']({ ...stored, because: 'because' });
    expect(refused).toMatchObject({ ok: false, error: { code: 'bad-request', problems: [{ path: 'because' }, { path: 'what', message: 'There is a line that says this already.' }] } });
    expect(valueOf(await handlers['shop.list'](null))).toHaveLength(1);
  });

  it('can be changed and stay what they are: a line does not stand in its own way', async () => {
    const { handlers } = await testProgram();
    const line = valueOf(await handlers['shop.save'](stored));
    expect(valueOf(await handlers['shop.save']({ ...line, because: 'Every barn find is like that.' }))).toMatchObject({ because: 'Every barn find is like that.' });
  });

  it('nobody knows are not changed', async () => {
    const { handlers } = await testProgram();
    expect(await handlers['shop.save']({ ...stored, id: 'nowhere' })).toEqual({ ok: false, error: { code: 'not-found', what: 'line' } });
    expect(await handlers['shop.remove']({ id: 'nowhere' })).toEqual({ ok: false, error: { code: 'not-found', what: 'line' } });
  });

  it('go out to a file and come in again from it, each once', async () => {
    const one = await testProgram();
    const lines = [valueOf(await one.handlers['shop.save'](stored)), valueOf(await one.handlers['shop.save'](ethanol))];
    const { text, fileName } = valueOf(await one.handlers['shop.export'](null));
    expect(fileName).toBe('own-lines.shop.json');
    const other = await testProgram();
    expect(valueOf(await other.handlers['shop.import']({ text }))).toEqual({ added: 2, known: 0 });
    expect(valueOf(await other.handlers['shop.import']({ text }))).toEqual({ added: 0, known: 2 });
    expect(valueOf(await other.handlers['shop.list'](null))).toEqual(lines);
  });

  it('come in all or none; the place of what is wrong is told', async () => {
    const { handlers } = await testProgram();
    const text = file({ ...stored, id: 'good' }, { ...ethanol, id: 'bad', says: { ...ethanol.says, of: 'rings' } });
    expect(await handlers['shop.import']({ text })).toMatchObject({ ok: false, error: { code: 'bad-request', problems: [{ path: 'lines.1.of' }] } });
    expect(await handlers['shop.import']({ text: '{"a": }' })).toMatchObject({ ok: false, error: { problems: [{ message: 'not JSON: value expected at line 1, column 7' }] } });
    expect(valueOf(await handlers['shop.list'](null))).toEqual([]);
  });

  it('are given to every first look and diagnosis, of a sheet, of a reading that is kept and of one that is read in', async () => {
    const seen: number[] = [];
    const { handlers } = await testProgram({
      firstLook: (sheet, lines) => { seen.push(lines.length); return firstLookAt(sheet, lines); },
      diagnose: (sheet, lines) => { seen.push(lines.length); return diagnoseSheet(sheet, lines); },
    });
    valueOf(await handlers['shop.save'](stored));
    valueOf(await handlers['first-look']({ sheet: sootyThird }));
    const { knowledge } = valueOf(await handlers.diagnose({ sheet: sootyThird }));
    expect(knowledge.shopLines).toMatchObject([{ because: stored.because }]);
    expect(knowledge.digest).not.toBe(diagnoseSheet(sootyThird).knowledge.digest);
    const { id: engineId } = valueOf(await handlers['engine.save']({ id: null, engine: fourCylinder }));
    const { id } = valueOf(await handlers['reading.start']({ engineId }));
    valueOf(await handlers['reading.keep']({ id }));
    valueOf(await handlers['reading.import']({ text: JSON.stringify(sootyThird) }));
    expect(seen).toEqual([1, 1, 1, 1]);
  });

  it('that took part stand in the findings that were kept, also when they are removed', async () => {
    const { handlers } = await testProgram({ diagnose: diagnoseSheet });
    const line = valueOf(await handlers['shop.save'](stored));
    const { readingId } = valueOf(await handlers['reading.import']({ text: JSON.stringify(sootyThird) }));
    valueOf(await handlers['shop.remove']({ id: line.id }));
    const { findings } = valueOf(await handlers['reading.get']({ id: readingId }));
    expect(findings?.knowledge.shopLines).toEqual([line]);
  });
});
