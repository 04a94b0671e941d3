import { describe, expect, it } from 'vitest';
import type { ReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';
import { sooty } from '../inference/guarded.ts';
import { after, changeAt, cureOf, findingsOf, followed } from './two-readings.ts';

const cool: ReadingSheet['plugs'][number]['tip'] = { noseColour: 'light tan', noseSurface: 'fine powder', deposit: 'light dusting', coverage: 'light', shellRim: 'light grey' };
const oily: ReadingSheet['plugs'][number]['tip'] = { noseColour: 'black', noseSurface: 'wet', deposit: 'wet oil', coverage: 'full', shellRim: 'wet oil' };
const sootyTip: ReadingSheet['plugs'][number]['tip'] = { noseColour: 'black', noseSurface: 'matt soot', deposit: 'dry soot', coverage: 'full', shellRim: 'heavy soot' };
const four: ReadingSheet['engine'] = { use: 'road', cycle: 'four-stroke', cylinders: 4, layout: 'inline', mixture: { kind: 'carburettor' }, ignition: { kind: 'breaker points' } };

const reading = (tips: readonly ReadingSheet['plugs'][number]['tip'][], more: Partial<ReadingSheet> = {}): ReadingSheet => ({
  format: 'corenose.reading-sheet', version: 1, engine: four, plugs: tips.map((tip, i) => ({ cylinder: i + 1, ...(tip && { tip }) })),
  conditions: { duty: 'mixed', stop: 'clean cut', warm: true, tags: ['plugs new'] }, ...more,
});
const thirdOily = reading([cool, cool, oily, cool], { date: '2026-02-14', symptoms: [{ what: 'blue smoke' }] });
const allCool = reading([cool, cool, cool, cool], { date: '2026-04-18' });

describe('after the cure', () => {
  it('a plug that looks normal is cured, and the cure is borne out', () => {
    const found = followed(after(thirdOily, allCool, [{ cause: 'guides-worn', cylinders: [3] }]));
    expect(found.summary).toBe('Cylinder 3 is cured; three plugs are sound as before.');
    expect(cureOf(found, 'guides-worn')).toMatchObject({ outcome: 'borne out', cylinders: [3] });
    expect(cureOf(found, 'guides-worn')!.beliefNow).toBeLessThan(0.01);
  });

  it('a cure that was called for and not noted as done is told as not done', () => {
    const found = followed(after(thirdOily, thirdOily));
    expect(found.cures.length).toBeGreaterThan(0);
    expect(found.cures.map(({ outcome }) => outcome)).toEqual(found.cures.map(() => 'not done'));
  });

  it('two cures at once that may both have helped are not told apart', () => {
    const found = followed(after(thirdOily, allCool, [{ cause: 'guides-worn', cylinders: [3] }, { cause: 'gasket-oil-leak', cylinders: [3] }]));
    expect(cureOf(found, 'guides-worn')?.why).toMatch(/Done together with: Head gasket .*cannot be told/);
  });

  it('a plug that came right after something else was put right is not called cured', () => {
    const found = followed(after(thirdOily, allCool, [{ cause: 'coil-weak' }]));
    expect(changeAt(found, 3)).toBe('better');
    expect(changeAt(followed(after(thirdOily, allCool, [{ cause: 'a cure of the house' }])), 3)).toBe('cured');
  });

  it('a cure on a plug that bore no mark of its cause says nothing', () => {
    expect(cureOf(followed(after(thirdOily, allCool, [{ cause: 'guides-worn', cylinders: [1] }])), 'guides-worn')?.outcome).toBe('cannot be told');
  });

  it('the same plug as before bears no cure out, and the belief in its cause falls', () => {
    const found = cureOf(followed(after(thirdOily, thirdOily, [{ cause: 'guides-worn', cylinders: [3] }])), 'guides-worn')!;
    expect(found.outcome).toBe('not borne out');
    expect(found.beliefNow).toBeLessThan(found.beliefBefore);
  });

  it('a set of which some plugs are well and some are not bears it out in part', () => {
    const all = reading([oily, oily, oily, oily]);
    expect(cureOf(followed(after(all, reading([cool, cool, oily, oily]), [{ cause: 'breather-blocked' }])), 'breather-blocked')?.outcome).toBe('partly borne out');
  });

  it('a plug that shows less of it bears it out in part', () => {
    const all = reading([sootyTip, sootyTip, sootyTip, sootyTip]);
    const less = reading([1, 2, 3, 4].map(() => ({ ...sootyTip, coverage: 'light' as const })));
    expect(cureOf(followed(after(all, less, [{ cause: 'air-filter-clogged' }])), 'air-filter-clogged')).toMatchObject({ outcome: 'partly borne out' });
  });

  it('plugs that nobody has looked at yet say nothing of it', () => {
    const found = followed(after(thirdOily, reading([undefined, undefined, undefined, undefined]), [{ cause: 'guides-worn', cylinders: [3] }]));
    expect(found.plugs.map(({ change }) => change)).toEqual(['cannot be told', 'cannot be told', 'cannot be told', 'cannot be told']);
    expect(cureOf(found, 'guides-worn')?.outcome).toBe('cannot be told');
  });

  it('a cause that the knowledge does not have is named, not passed over', () => {
    expect(followed(after(thirdOily, allCool, [{ cause: 'gremlins' }])).doubts.join()).toContain('"gremlins" is noted as put right');
  });
});

describe('what was felt', () => {
  it('is gone when somebody looked for it, and cannot be told when nobody did', () => {
    const felt = (more: Partial<ReadingSheet>): unknown => followed(after(thirdOily, { ...allCool, ...more })).symptoms;
    expect(felt({ symptomsAbsent: ['blue smoke'] })).toEqual([{ what: 'blue smoke', change: 'gone' }]);
    expect(felt({ symptoms: [{ what: 'misfire' }] })).toEqual([{ what: 'blue smoke', change: 'cannot be told' }, { what: 'misfire', change: 'new' }]);
  });
});

describe('two readings', () => {
  it('that follow different running are compared with a caution', () => {
    const idled = { ...allCool, conditions: { ...allCool.conditions, stop: 'idled before stop' as const } };
    expect(followed(after(thirdOily, idled)).doubts.join(' ')).toContain('how it was stopped: clean cut, now idled before stop');
  });

  it('in the wrong order of date are told', () => {
    expect(followed(after(allCool, thirdOily)).doubts.join()).toContain('dated later');
  });

  it('with old plugs put back after work are told', () => {
    const asTheyWere = { ...allCool, conditions: { ...allCool.conditions, tags: [] } };
    expect(followed(after(thirdOily, asTheyWere, [{ cause: 'guides-worn' }])).doubts.join()).toContain('not noted as cleaned or renewed');
  });

  it('give the same bytes every time, and none without a reading before', () => {
    const sheet = after(thirdOily, allCool, [{ cause: 'guides-worn', cylinders: [3] }]);
    expect(JSON.stringify(findingsOf(sheet))).toBe(JSON.stringify(findingsOf(structuredClone(sheet))));
    expect(findingsOf(allCool).followUp).toBeUndefined();
  });
});

describe('a check that was not made again', () => {
  const lowThird = {
    ...thirdOily,
    cylinderChecks: [1, 2, 3, 4].map((cylinder) => (
      cylinder === 3 ? { cylinder, compressionKPa: 700, compressionWetKPa: 1080 } : { cylinder, compressionKPa: 1150, compressionWetKPa: 1170 }
    )),
  };
  const rings = (sheet: ReadingSheet): number => findingsOf(sheet).plugs[2]!.causes.find(({ id }) => id === 'rings-worn @ 3')?.belief ?? 0;

  it('still counts, for less than one made today', () => {
    const [without, carried, again] = [thirdOily, after(lowThird, thirdOily), after(lowThird, lowThird)].map(rings);
    expect(carried).toBeGreaterThan(without!);
    expect(carried).toBeLessThan(again!);
  });

  it('is not called for again, and is told as of the reading before', () => {
    const { plugs } = findingsOf(after(lowThird, thirdOily));
    const checks = (sheet: ReadingSheet): string[] => findingsOf(sheet).plugs[2]!.nextChecks.map(({ id }) => id);
    expect(checks(thirdOily)).toContain('compression-test');
    expect(checks(after(lowThird, thirdOily))).not.toContain('compression-test');
    expect(JSON.stringify(plugs[2]!.causes)).toContain('(at the reading before)');
  });

  it('counts no more once somebody worked on that cylinder', () => {
    const done = after(lowThird, thirdOily, [{ cause: 'guides-worn', cylinders: [3] }]);
    expect(JSON.stringify(findingsOf(done).plugs[2]!.causes)).not.toContain('(at the reading before)');
  });

  it('keeps the engine stopped until it is cleared', () => {
    const broken = { ...thirdOily, cylinderChecks: [{ cylinder: 3, borescope: 'piston damage' as const }] };
    expect(findingsOf(after(broken, allCool)).stop.map(({ cylinder }) => cylinder)).toContain(3);
    expect(findingsOf(allCool).stop).toEqual([]);
  });
});

describe('the heat value', () => {
  const set = (steps: number): ReadingSheet => ({ ...sooty, plugs: sooty.plugs.map((plug) => ({ ...plug, fitted: { heatStepsFromSpecified: steps } })) });

  it('goes no second step after one just taken (one step a trial, then read again: TM 5-4210-230-14&P-1)', () => {
    expect(findingsOf(set(-1)).heat.step).toBe(1);
    expect(findingsOf(after(set(-2), set(-1))).heat.step).toBe(0);
    expect(followed(after(set(-2), set(-1))).heat).toContain('Every plug stands one step hotter than at the reading before');
  });

  it('goes no step either when it was changed by steps that nobody noted', () => {
    const changed = { ...set(-1), conditions: { ...set(-1).conditions, tags: ['heat step changed' as const] } };
    const unknown = { ...set(-1), plugs: set(-1).plugs.map(({ fitted: _, ...plug }) => plug) };
    expect(findingsOf(changed).heat.step).toBe(1);
    expect(findingsOf(after(unknown, changed)).heat.step).toBe(0);
    expect(followed(after(unknown, changed)).heat).toContain('by how many steps is not noted');
  });

  it('goes no step hotter while the reading before shows oil', () => {
    const oil = { ...set(-1), plugs: set(-1).plugs.map((plug, i) => (i === 2 ? { ...plug, tip: oily } : plug)) };
    expect(findingsOf(after(oil, set(-1))).heat.step).toBe(0);
    expect(findingsOf(after(set(-1), set(-1))).heat.step).toBe(1);
  });

  it('tells of plugs that went different ways', () => {
    const mixed = { ...set(0), plugs: set(0).plugs.map((plug, i) => (i === 1 ? { ...plug, fitted: { heatStepsFromSpecified: -1 } } : plug)) };
    expect(followed(after(set(0), mixed)).heat).toContain('cylinder 2 one step colder');
  });
});

describe('documented sequences', () => {
  const six: ReadingSheet['engine'] = { use: 'road', cycle: 'four-stroke', cylinders: 6, mixture: { kind: 'port injection' }, ignition: { kind: 'coil per cylinder' } };
  const firstSooty: ReadingSheet = { ...reading([sootyTip, cool, cool, cool, cool, cool]), engine: six };

  /** Newspaper motoring column, "one spark plug black", undated: new plugs, look again after a month, then the coil, then the injector. */
  it('one black plug of six that stays black on new plugs is laid less to the plug, more to coil and injector', () => {
    const newPlugs = ['cold-plug-in-this-hole', 'plug-defective', 'gap-misset-wide'].map((cause) => ({ cause }));
    const again = after(firstSooty, firstSooty, newPlugs);
    const [before, now] = [firstSooty, again].map((sheet) => new Map(findingsOf(sheet).plugs[0]!.causes.map(({ id, belief }) => [id, belief])));
    expect(cureOf(followed(again), 'cold-plug-in-this-hole')?.outcome).toBe('not borne out');
    expect(now!.get('cold-plug-in-this-hole @ 1') ?? 0).toBeLessThan(before!.get('cold-plug-in-this-hole @ 1')! / 2);
    for (const id of ['coil-weak @ coil of cylinder 1', 'injector-leaking @ 1']) expect(now!.get(id)).toBeGreaterThan(before!.get(id)!);
  });

  /** NTSB preliminary report on an accident at Suffolk, Virginia, January 2023: three plugs renewed, engine still skipping; cause left open. */
  it('a misfire that new plugs did not cure bears the new plugs out in part only, and is laid less to the plugs', () => {
    const skipping: ReadingSheet = {
      ...reading([], {}), engine: { use: 'aircraft', cylinders: 4, plugsPerCylinder: 2, layout: 'flat', ignition: { kind: 'magneto' } }, symptoms: [{ what: 'misfire' }, { what: 'rough running on one magneto' }],
      plugs: [1, 2, 3, 4].flatMap((cylinder) => (['upper', 'lower'] as const).map((position) => ({ cylinder, position, measured: { resistorKOhm: cylinder < 3 && position === 'upper' ? 20 : 1.5 } }))),
      conditions: { tags: ['plugs cleaned'] },
    };
    const renewed: ReadingSheet = { ...skipping, conditions: { tags: ['plugs new'] }, plugs: skipping.plugs.map((plug) => ({ ...plug, tip: cool, measured: { resistorKOhm: 1.5 } })) };
    const found = followed(after(skipping, renewed, [{ cause: 'resistor-burnt' }]));
    expect(cureOf(found, 'resistor-burnt')!.beliefNow).toBeLessThan(cureOf(found, 'resistor-burnt')!.beliefBefore);
    expect(cureOf(found, 'resistor-burnt')).toMatchObject({ outcome: 'partly borne out', why: expect.stringContaining('still felt: misfire') as string });
    expect(found.symptoms).toContainEqual({ what: 'misfire', change: 'still there' });
  });

  /** Confirmed repair, forum thread of 2016: plug not tightened, gas past its seat, electrodes lost; new plug, engine fine. */
  it('a loose plug that was renewed and tightened is cured', () => {
    const lost: ReadingSheet = { ...reading([cool, cool, cool, cool]), plugs: [{ cylinder: 1, tip: { seat: 'loose with leakage marks', centreElectrode: 'missing', groundElectrode: 'broken off' } }, ...[2, 3, 4].map((cylinder) => ({ cylinder, tip: cool }))] };
    const found = followed(after(lost, allCool, [{ cause: 'plug-loose', cylinders: [1] }]));
    expect(changeAt(found, 1)).toBe('cured');
    expect(cureOf(found, 'plug-loose')?.outcome).toBe('borne out');
  });
});
