import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { engine as engineFormat } from '../../../../shared/formats/engine.ts';
import { checkedDraft, draftOf, drawable, emptyDraft, readFiringOrder, withCylinders, withEntry } from '../../../../renderer/state/engine-draft.ts';
import { anyEngine } from '../../../fixtures/any-engine.ts';

describe('an engine while it is written down', () => {
  it('needs its use and its cylinders, and says so for each', () => {
    const checked = checkedDraft(emptyDraft);
    expect(checked.ok ? [] : checked.error.map(({ path }) => path)).toEqual(['use', 'cylinders']);
    expect(checkedDraft(withEntry(withEntry(emptyDraft, 'use', 'road'), 'cylinders', 4))).toEqual({ ok: true, value: { use: 'road', cylinders: 4 } });
  });

  it('comes back unchanged when it is opened and saved', () => {
    fc.assert(fc.property(anyEngine, (engine) => { expect(checkedDraft(draftOf(engine))).toEqual({ ok: true, value: engine }); }));
  });

  it('can be drawn at any stage once the cylinders are counted', () => {
    fc.assert(fc.property(anyEngine, fc.integer({ min: 1, max: 18 }), (engine, cylinders) => {
      expect(drawable(withCylinders(draftOf(engine), cylinders))?.cylinders).toBe(cylinders);
    }));
  });

  it('with fewer cylinders keeps no group, pair or set of a cylinder that is gone', () => {
    fc.assert(fc.property(anyEngine, fc.integer({ min: 1, max: 18 }), (engine, cylinders) => {
      const { firingOrder: _, layout: __, ...fields } = withCylinders(draftOf(engine), cylinders).fields;
      expect(engineFormat.safeParse(fields).error?.issues).toBeUndefined();
    }));
  });

  it('keeps a firing order that no longer fits, and says what is wrong with it', () => {
    const six = withCylinders(draftOf({ use: 'road', cylinders: 4, firingOrder: [1, 3, 4, 2] }), 6);
    expect(six.fields.firingOrder).toEqual([1, 3, 4, 2]);
    expect(checkedDraft(six)).toMatchObject({ ok: false, error: [{ path: 'firingOrder', message: '4 numbers; give each of the 6 cylinders once' }] });
  });

  it('is not saved while a number in it cannot be taken', () => {
    const draft = withEntry(draftOf({ use: 'road', cylinders: 4 }), 'fitment.reachMm', undefined, '19mm');
    expect(checkedDraft(draft)).toEqual({ ok: false, error: [{ path: 'fitment.reachMm', message: '"19mm" cannot be taken here' }] });
    expect(checkedDraft(withEntry(draft, 'fitment.reachMm', 19))).toEqual({ ok: true, value: { use: 'road', cylinders: 4, fitment: { reachMm: 19 } } });
  });

  it('takes back the whole of a part when its last field is emptied', () => {
    const draft = withEntry(withEntry(emptyDraft, 'fitment.heat.scale', 'Tarn'), 'fitment.heat.scale', '');
    expect(draft.fields).toEqual({});
  });
});

describe('a firing order', () => {
  it.each([['1-3-4-2'], ['1, 3, 4, 2'], ['1 3 4 2'], [' 1–3–4–2 ']])('%s is read', (text) => {
    expect(readFiringOrder(text)).toEqual([1, 3, 4, 2]);
  });
  it.each(['', '1-', 'one', '1-3-x'])('"%s" is not', (text) => {
    expect(readFiringOrder(text)).toBeUndefined();
  });
});
