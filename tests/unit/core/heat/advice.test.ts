import { describe, expect, it } from 'vitest';
import { heatAdvice, type HeatGrounds, type PlugHeat } from '../../../../core/heat/advice.ts';
import type { Bar } from '../../../../core/knowledge/types.ts';
import type { Engine } from '../../../../shared/formats/engine.ts';
import type { PlugReading, ReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';
import type { Verdict } from '../../../../shared/vocabulary/verdicts.ts';

/** Nothing that the thermal model needs: the tips alone decide. */
const sheetOf = (fitted: PlugReading['fitted'] = {}, use: Engine['use'] = 'road'): ReadingSheet => ({
  format: 'corenose.reading-sheet', version: 1, engine: { use, cylinders: 2 }, plugs: [{ cylinder: 1 }, { cylinder: 2, fitted }],
});

const plugHeat = (cylinder: number, verdict: Verdict, more: Partial<PlugHeat> = {}): PlugHeat => ({
  where: `cylinder ${cylinder}`, verdict, read: true, beliefs: new Map([[verdict, 0.9]]), thermal: { tooCold: 0, tooHot: 0 }, ...more,
});
const pair = (verdict: Verdict, more: Partial<PlugHeat> = {}): PlugHeat[] => [1, 2].map((n) => plugHeat(n, verdict, more));
const nothing: HeatGrounds = { sheet: sheetOf(), plugs: [], stopped: false, bars: [], plugTooCold: 0.01, plugTooHot: 0.01, barring: undefined, rivals: [] };
/** A whole sooty set whose plugs are the likeliest cause: the one picture that leads to a hotter plug. */
const sooty = (more: Partial<HeatGrounds> = {}): HeatGrounds => ({ ...nothing, plugs: pair('dry carbon fouling', { thermal: { tooCold: 0.9, tooHot: 0 } }), plugTooCold: 0.8, ...more });
/** An overheated set whose plugs are the likeliest cause. */
const overheated = (more: Partial<HeatGrounds> = {}): HeatGrounds => ({ ...nothing, plugs: pair('too hot', { thermal: { tooCold: 0, tooHot: 0.9 } }), plugTooHot: 0.8, ...more });

const step = (grounds: HeatGrounds): number => heatAdvice(grounds).step;
const why = (grounds: HeatGrounds): string[] => heatAdvice(grounds).why;
const signed = (verdict: Verdict, belief: number, read = true): PlugHeat[] => [
  plugHeat(1, 'dry carbon fouling'), plugHeat(2, 'dry carbon fouling', { beliefs: new Map<Verdict, number>([['dry carbon fouling', 0.9], [verdict, belief]]), read }),
];

describe('a hotter plug', () => {
  it('is advised for a whole sooty set whose heat value is the likeliest cause, after all that comes first', () => {
    const advice = heatAdvice(sooty({ rivals: ['Weak spark', 'LPG mixer set rich'] }));
    expect(advice).toMatchObject({ step: 1, when: 'after what comes first', words: 'one step hotter', belief: 0.8 });
    expect(advice.why.join()).toMatch(/whole set is sooty.*plug is the likeliest cause/);
    expect(advice.first).toHaveLength(7);
    expect(advice.first.join()).toMatch(/specified type.*torque.*Mixture.*timing.*Cooling/);
    expect(advice.first.slice(5)).toEqual(['Rule out: weak spark', 'Rule out: LPG mixer set rich']);
    expect(advice.cautions.join()).toMatch(/engine maker’s data come first.*one step a trial.*go back/);
  });

  it('needs every plug read and sooty, and more than one', () => {
    expect(step(sooty({ plugs: [plugHeat(1, 'dry carbon fouling')] }))).toBe(0);
    expect(step(sooty({ plugs: [plugHeat(1, 'dry carbon fouling'), plugHeat(2, 'dry carbon fouling', { read: false })] }))).toBe(0);
    expect(step(sooty({ plugs: [...pair('dry carbon fouling'), plugHeat(3, 'dry carbon fouling', { read: false })] }))).toBe(0);
    expect(step(sooty({ plugs: [plugHeat(1, 'dry carbon fouling'), plugHeat(2, 'normal')] }))).toBe(0);
    const soot = (belief: number): PlugHeat[] => pair('dry carbon fouling', { beliefs: new Map([['dry carbon fouling', belief]]) });
    expect([soot(0.5), soot(0.49)].map((plugs) => step(sooty({ plugs })))).toEqual([1, 0]);
  });

  it('needs a heat value that is at least as likely as not the cause, and no sign that it is too high', () => {
    expect([0.5, 0.49].map((plugTooCold) => step(sooty({ plugTooCold })))).toEqual([1, 0]);
    expect([0.1, 0.11].map((plugTooHot) => step(sooty({ plugTooHot })))).toEqual([1, 0]);
  });

  it('is not advised where a hotter one than specified is fitted already; a colder one is no hindrance', () => {
    expect([1, 0, -1].map((heatStepsFromSpecified) => step(sooty({ sheet: sheetOf({ heatStepsFromSpecified }) })))).toEqual([0, 1, 1]);
  });

  it.each<Verdict>([
    'oil fouling', 'detonation damage', 'pre-ignition damage', 'mechanical damage', 'insulator damage', 'coolant entry', 'too hot', 'not sealing', 'wrong reach',
  ])('is barred by one chance in ten of %s on one plug', (verdict) => {
    expect([0.1, 0.09].map((belief) => step(sooty({ plugs: signed(verdict, belief) })))).toEqual([0, 1]);
    expect(why(sooty({ plugs: signed(verdict, 0.1) }))).toContain(`A sign of ${verdict} on cylinder 2 bars a hotter plug.`);
  });

  it('is not barred by what is no sign of oil, heat or damage', () => {
    expect(step(sooty({ plugs: signed('worn', 0.9) }))).toBe(1);
  });

  it('is barred by a stop, by a bar, and by one chance in ten of a cause that it would hide', () => {
    expect(why(sooty({ stopped: true }))).toContain('A stop rule fired: no step until its cause is found.');
    const bar = (sign: string, id: string): Bar => ({ id, sign, because: `${id} says so.`, anyOf: [], source: 'S16' });
    const barred = why(sooty({ bars: [bar('oil', 'first'), bar('oil', 'second'), bar('knock', 'third')] }));
    expect(barred.filter((line) => line.startsWith('Noted'))).toEqual(['Noted: oil. first says so.', 'Noted: knock. third says so.']);
    const rings = (belief: number): HeatGrounds => sooty({ barring: { name: 'Worn rings', belief } });
    expect([0.1, 0.09].map((belief) => step(rings(belief)))).toEqual([0, 1]);
    expect(why(rings(0.1))).toContain('A possible cause is worn rings; a hotter plug would hide it or make it worse.');
    for (const grounds of [sooty({ stopped: true }), sooty({ bars: [bar('oil', 'first')] })]) expect(step(grounds)).toBe(0);
  });
});

describe('a colder plug', () => {
  it('is advised for overheated tips whose heat value is the likeliest cause, after all that comes first', () => {
    const advice = heatAdvice(overheated({ rivals: ['Mixture too weak'] }));
    expect(advice).toMatchObject({ step: -1, when: 'after what comes first', words: 'one step colder', belief: 0.8 });
    expect(advice.why).toEqual(['Overheated tips on cylinders 1 and 2; the plug’s heat value is the likeliest cause.']);
    expect(advice.first).toHaveLength(6);
    expect(advice.first.at(-1)).toBe('Rule out: mixture too weak');
    expect(advice.cautions.join()).toMatch(/engine maker’s data come first.*one step a trial.*does not cure knock/);
  });

  it('needs one plug that was read and is too hot', () => {
    expect(heatAdvice(overheated({ plugs: [plugHeat(1, 'normal'), plugHeat(2, 'too hot')] })).why.join()).toMatch(/^Overheated tips on cylinder 2;/);
    expect(step(overheated({ plugs: pair('too hot', { read: false }) }))).toBe(0);
    expect(step(overheated({ plugs: pair('normal') }))).toBe(0);
  });

  it('needs a heat value that is at least as likely as not the cause, and is not advised twice or for an aircraft', () => {
    expect([0.5, 0.49].map((plugTooHot) => step(overheated({ plugTooHot })))).toEqual([-1, 0]);
    expect([-1, 0, 1].map((heatStepsFromSpecified) => step(overheated({ sheet: sheetOf({ heatStepsFromSpecified }) })))).toEqual([0, -1, -1]);
    expect(step(overheated({ sheet: sheetOf({}, 'aircraft') }))).toBe(0);
  });
});

describe('the advice to stay', () => {
  it('holds, and is as sure as no other heat value is likely', () => {
    const advice = heatAdvice({ ...nothing, plugs: pair('normal'), plugTooCold: 0.2, plugTooHot: 0.3 });
    expect(advice).toMatchObject({ step: 0, when: 'now', words: 'stay', first: [], why: ['The tips look normal: the heat value fits this use.'] });
    expect(advice.belief).toBeCloseTo(0.7, 12);
    expect(heatAdvice({ ...nothing, plugTooCold: 1.001 }).belief).toBe(0);
  });

  it('always carries the cautions of the heat value, and for an aircraft that of its own', () => {
    const cautions = (use: Engine['use']): string[] => heatAdvice({ ...nothing, sheet: sheetOf({}, use) }).cautions;
    expect(cautions('road').join()).toMatch(/engine maker’s data come first.*one step a trial/);
    expect(cautions('road')).toHaveLength(2);
    expect(cautions('aircraft')).toHaveLength(3);
    expect(cautions('aircraft')[2]).toMatch(/^Aircraft: only plugs of the approved list/);
  });

  it('says that nothing was read, where nothing was', () => {
    expect(why(nothing)).toEqual(['No tip was read; nothing speaks for a step.']);
    expect(why({ ...nothing, plugs: pair('normal', { read: false }) })).toEqual(['No tip was read; nothing speaks for a step.']);
  });

  const reasons = (verdict: Verdict, tooCold: number, tooHot: number, more: Partial<HeatGrounds> = {}): string[] =>
    why({ ...nothing, plugs: [plugHeat(1, 'normal'), plugHeat(2, verdict, { thermal: { tooCold, tooHot } })], plugTooCold: 0.234, plugTooHot: 0.345, ...more });
  const ofSoot = 'The heat value is not the likeliest cause of the soot (belief 23 %); mixture, use and ignition come first.';
  const ofHeat = 'The heat value is not the likeliest cause of the heat (belief 35 %); cure what overheats the plug first.';

  it('says of soot and of heat that the heat value is not the likeliest cause, each where there is any', () => {
    expect(reasons('fuel wet', 0.11, 0)).toEqual([ofSoot]);
    expect(reasons('dry carbon fouling', 0, 0)).toEqual([ofSoot]);
    expect(reasons('worn', 0, 0.11)).toEqual([ofHeat]);
    expect(reasons('worn', 0.11, 0.11)).toEqual([ofSoot, ofHeat]);
  });

  it('says where there is neither that another heat value cures nothing of it', () => {
    expect(reasons('worn', 0.1, 0.1)).toEqual(['What was found is not cured by a change of heat value.']);
    expect(reasons('worn', 0, 0, { stopped: true })).toEqual(['A stop rule fired: no step until its cause is found.']);
  });

  it('speaks of what was read only', () => {
    const plugs = [plugHeat(1, 'worn'), plugHeat(2, 'dry carbon fouling', { read: false, thermal: { tooCold: 0.9, tooHot: 0.9 } })];
    expect(why({ ...nothing, plugs })).toEqual(['What was found is not cured by a change of heat value.']);
    expect(why({ ...nothing, plugs: [plugHeat(1, 'normal'), plugHeat(2, 'oil fouling', { read: false })] })).toEqual(['The tips look normal: the heat value fits this use.']);
  });
});

describe('tips and thermal model together', () => {
  const engine: Engine = { use: 'road', cylinders: 2, boreMm: 80, strokeMm: 80, compressionRatio: 9, cycle: 'four-stroke', fitment: { heat: { scale: 'Ostrin', value: '6' } } };
  const pull = { duty: 'full load', stop: 'clean cut', warm: true, speedRpm: 5000, lambda: 0.88, advanceDeg: 26 } as const;
  const computed = (fittedStep: number, conditions: ReadingSheet['conditions'] = pull): ReadingSheet => ({
    ...sheetOf(), engine, conditions, plugs: [1, 2].map((cylinder) => ({ cylinder, fitted: { heatStepsFromSpecified: fittedStep } })),
  });

  it('stay where they disagree: the model’s word first, then that of the tips, and nothing to do before', () => {
    const tips = heatAdvice(sooty()).why;
    const advice = heatAdvice(sooty({ sheet: computed(0) }));
    expect(advice).toMatchObject({ step: 0, when: 'now', words: 'stay', first: [], model: { tipsStep: 1, standing: 'disagrees' } });
    expect(advice.belief).toBeCloseTo(0.2, 12);
    expect(advice.why).toHaveLength(2);
    expect(advice.why[0]).toBe(advice.model?.words[0]);
    expect(advice.why[1]).toBe(tips[0]);
  });

  it('go the way of the tips where they agree, and of the tips alone where the model lacks something', () => {
    expect(heatAdvice(overheated({ sheet: computed(2) }))).toMatchObject({ step: -1, model: { standing: 'agrees' } });
    expect(heatAdvice(sooty())).toMatchObject({ step: 1, model: { tipsStep: 1, says: 'not computed', standing: 'silent' } });
  });

  it('stay with the reasons of the tips where these ask for no step, whatever the model says', () => {
    const normal = heatAdvice({ ...nothing, sheet: computed(2), plugs: pair('normal') });
    expect(normal).toMatchObject({ step: 0, model: { standing: 'disagrees' }, why: ['The tips look normal: the heat value fits this use.'] });
    expect(normal.belief).toBeCloseTo(0.99, 12);
  });

  it('leave the model out after a stop and beside signs that it knows nothing of, but not beside mere heat', () => {
    const says = (more: Partial<HeatGrounds>): string | undefined => heatAdvice({ ...nothing, sheet: computed(2), plugs: pair('normal'), ...more }).model?.says;
    expect(says({})).toBe('colder');
    expect(says({ stopped: true })).toBe('overridden');
    expect(says({ plugs: pair('oil fouling') })).toBe('overridden');
    expect(says({ plugs: [plugHeat(1, 'normal'), plugHeat(2, 'oil fouling')] })).toBe('overridden');
    expect(says({ plugs: pair('oil fouling', { read: false }) })).toBe('colder');
    expect(says({ plugs: pair('too hot') })).toBe('colder');
    expect(says({ plugs: pair('worn') })).toBe('colder');
  });
});
