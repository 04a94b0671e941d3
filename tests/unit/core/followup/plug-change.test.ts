import { describe, expect, it } from 'vitest';
import { plugChange, type PlugThen } from '../../../../core/followup/plug-change.ts';
import type { Tip } from '../../../../shared/formats/reading-sheet.v1.ts';
import type { Verdict } from '../../../../shared/vocabulary/verdicts.ts';

const plug = (verdict: Verdict, tip: Tip = {}, more: Partial<PlugThen> = {}): PlugThen => ({ verdict, also: [], tip, read: true, ...more });
const change = (before: PlugThen | undefined, now: PlugThen | undefined, worked = true): string => plugChange(before, now, worked).change;

/** What a workshop would call it. Common practice, no source. */
describe('one plug at two readings', () => {
  it.each<[string, PlugThen, PlugThen, string]>([
    ['oily, then dry and tan', plug('oil fouling'), plug('normal'), 'cured'],
    ['sound, then sound', plug('normal'), plug('normal'), 'unchanged'],
    ['sound, then sooty', plug('normal'), plug('dry carbon fouling'), 'new'],
    ['oily, then sooty', plug('oil fouling'), plug('dry carbon fouling'), 'new'],
    ['sooty all over, then over a part', plug('dry carbon fouling', { coverage: 'full' }), plug('dry carbon fouling', { coverage: 'partial' }), 'better'],
    ['sooty over a part, then all over', plug('dry carbon fouling', { coverage: 'partial' }), plug('dry carbon fouling', { coverage: 'full' }), 'worse'],
    ['sooty as before', plug('dry carbon fouling', { coverage: 'full' }), plug('dry carbon fouling', { coverage: 'full' }), 'unchanged'],
    ['less soot on the nose, more on the rim', plug('dry carbon fouling', { coverage: 'full', shellRim: 'even soot' }), plug('dry carbon fouling', { coverage: 'light', shellRim: 'heavy soot' }), 'unchanged'],
    ['oily, then oily and silent', plug('oil fouling'), plug('oil fouling', {}, { also: ['not firing'] }), 'worse'],
    ['oily and silent, then oily', plug('oil fouling', {}, { also: ['not firing'] }), plug('oil fouling'), 'better'],
    ['worn, with the gap grown on', plug('worn', {}, { measured: { gapMm: 1.1 } }), plug('worn', {}, { measured: { gapMm: 1.3 } }), 'worse'],
    ['worn, the gap within the wire gauge', plug('worn', {}, { measured: { gapMm: 1.1 } }), plug('worn', {}, { measured: { gapMm: 1.13 } }), 'unchanged'],
    ['too hot, electrodes further gone', plug('too hot', { centreElectrode: 'lightly worn' }), plug('too hot', { centreElectrode: 'eroded' }), 'worse'],
    ['oily, wear of the metal aside', plug('oil fouling', { centreElectrode: 'sharp' }), plug('oil fouling', { centreElectrode: 'eroded' }), 'unchanged'],
    ['oily, insulation back by a hundredfold', plug('oil fouling', {}, { measured: { insulationMOhm: 2 } }), plug('oil fouling', {}, { measured: { insulationMOhm: 200 } }), 'better'],
  ])('%s', (_, before, now, expected) => { expect(change(before, now)).toBe(expected); });

  it('is not called cured when nothing was put right: the fault went by itself', () => {
    expect(plugChange(plug('oil fouling'), plug('normal'), false)).toMatchObject({ change: 'better', why: expect.stringContaining('nothing is noted as put right') as string });
  });

  it('cannot be compared when it was not read, or not judged, at one of them', () => {
    for (const [before, now] of [
      [undefined, plug('normal')], [plug('normal'), undefined], [plug('normal', {}, { read: false }), plug('normal')],
      [plug('normal'), plug('normal', {}, { read: false })], [plug('undetermined'), plug('normal')], [plug('oil fouling'), plug('undetermined')],
    ]) expect(change(before, now)).toBe('cannot be told');
  });

  it.each<[string, PlugThen | undefined, PlugThen | undefined]>([
    ['Looks normal, as before.', plug('normal'), plug('normal')],
    ['Normal before, oil fouling now.', plug('normal'), plug('oil fouling')],
    ['Oil fouling before, normal now.', plug('oil fouling'), plug('normal')],
    ['Oil fouling and not firing before, normal now.', plug('oil fouling', {}, { also: ['not firing'] }), plug('normal')],
    ['Another fault: oil fouling before, worn now.', plug('oil fouling'), plug('worn')],
    ['Still oil fouling.', plug('oil fouling'), plug('oil fouling')],
    ['Still oil fouling; besides, not firing now.', plug('oil fouling'), plug('oil fouling', {}, { also: ['not firing'] })],
    ['Still oil fouling; no longer: not firing.', plug('oil fouling', {}, { also: ['not firing'] }), plug('oil fouling')],
    ['Still worn, and more of it: gap 1.1 mm, now 1.3 mm.', plug('worn', {}, { measured: { gapMm: 1.1 } }), plug('worn', {}, { measured: { gapMm: 1.3 } })],
    ['Still oil fouling, but less of it: insulation 2 MΩ, now 200 MΩ.', plug('oil fouling', {}, { measured: { insulationMOhm: 2 } }), plug('oil fouling', {}, { measured: { insulationMOhm: 200 } })],
    [
      'Still dry carbon fouling; some signs went one way, some the other: coverage full, now light; shell rim even soot, now heavy soot.',
      plug('dry carbon fouling', { coverage: 'full', shellRim: 'even soot' }), plug('dry carbon fouling', { coverage: 'light', shellRim: 'heavy soot' }),
    ],
    ['Not read this time.', plug('normal'), plug('normal', {}, { read: false })],
    ['Not read the time before.', undefined, plug('normal')],
    ['It could not be judged this time.', plug('normal'), plug('undetermined')],
    ['It could not be judged the time before.', plug('undetermined'), plug('normal')],
  ])('is told so: %s', (words, before, now) => { expect(plugChange(before, now, true).why).toBe(words); });
});
