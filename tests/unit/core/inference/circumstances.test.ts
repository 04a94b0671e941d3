import { describe, expect, it } from 'vitest';
import { applies, holds, type Truth } from '../../../../core/inference/circumstances.ts';
import type { Circumstance, Needs } from '../../../../core/knowledge/types.ts';
import type { Engine } from '../../../../shared/formats/engine.ts';
import type { PlugReading, ReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';
import { sheetOf } from './sheet-of.ts';

const engineSheet = (engine: Partial<Engine>): ReadingSheet => sheetOf({ engine: { use: 'road', cylinders: 4, ...engine } });
const run = (conditions: ReadingSheet['conditions']): ReadingSheet => sheetOf({ conditions });
const told = (circumstance: Circumstance, sheet: ReadingSheet): Truth => holds(circumstance, sheet, []);

describe('a circumstance of the running', () => {
  it.each<[string, Circumstance, NonNullable<ReadingSheet['conditions']>, NonNullable<ReadingSheet['conditions']>]>([
    ['the fuel', { fuel: ['E10', 'petrol'] }, { fuel: 'petrol' }, { fuel: 'methanol' }],
    ['the duty', { duty: ['idle', 'town'] }, { duty: 'idle' }, { duty: 'full load' }],
    ['the stop', { stop: ['clean cut'] }, { stop: 'clean cut' }, { stop: 'driven home' }],
    ['a warm engine', { warm: true }, { warm: true }, { warm: false }],
    ['a cold engine', { warm: false }, { warm: false }, { warm: true }],
    // Best power about 0.85 to 0.9, economy to 1.1 (textbooks, from memory); a rich mixture begins under 0.82, a lean one over 1.08.
    ['a rich mixture', { lambda: 'rich' }, { lambda: 0.81 }, { lambda: 0.82 }],
    ['a lean mixture', { lambda: 'lean' }, { lambda: 1.09 }, { lambda: 1.08 }],
    ['a right mixture, at its rich end', { lambda: 'right' }, { lambda: 0.82 }, { lambda: 0.81 }],
    ['a right mixture, at its lean end', { lambda: 'right' }, { lambda: 1.08 }, { lambda: 1.09 }],
    ['cold coolant', { coolant: 'cold' }, { coolantC: 69 }, { coolantC: 70 }],
    ['hot coolant', { coolant: 'hot' }, { coolantC: 106 }, { coolantC: 105 }],
    ['cold air', { ambient: 'cold' }, { ambientC: 4 }, { ambientC: 5 }],
    ['thin air', { altitude: 'high' }, { altitudeM: 1201 }, { altitudeM: 1200 }],
    ['new plugs, by distance', { served: 'new' }, { distanceKm: 79 }, { distanceKm: 80 }],
    ['new plugs, by hours', { served: 'new' }, { hours: 0.9 }, { hours: 1 }],
    ['new plugs, by distance beside many hours', { served: 'new' }, { distanceKm: 79, hours: 5 }, { distanceKm: 80, hours: 5 }],
    ['old plugs, by distance', { served: 'long' }, { distanceKm: 30_001 }, { distanceKm: 30_000 }],
    ['old plugs, by hours', { served: 'long' }, { hours: 401 }, { hours: 400 }],
    ['old plugs, by hours beside little distance', { served: 'long' }, { distanceKm: 9, hours: 401 }, { distanceKm: 9, hours: 400 }],
  ])('is true or false where it was recorded, and neither where it was not: %s', (_what, circumstance, yes, no) => {
    expect([run(yes), run(no), run({}), sheetOf()].map((sheet) => told(circumstance, sheet))).toEqual([true, false, undefined, undefined]);
  });

  it('that somebody noted is true; that nobody noted it does not make it false', () => {
    expect(told({ tag: 'choke sticking' }, run({ tags: ['dirty fuel', 'choke sticking'] }))).toBe(true);
    expect(told({ tag: 'choke sticking' }, run({ tags: ['dirty fuel'] }))).toBeUndefined();
    expect(told({ tag: 'choke sticking' }, run({}))).toBeUndefined();
    expect(told({ tag: 'choke sticking' }, sheetOf())).toBeUndefined();
  });

  it('of plugs noted as new is true whatever the hours say, and does not speak of old ones', () => {
    const noted = run({ tags: ['plugs new'], hours: 500 });
    expect([told({ served: 'new' }, noted), told({ served: 'long' }, noted)]).toEqual([true, true]);
    expect(told({ served: 'long' }, run({ tags: ['plugs new'] }))).toBeUndefined();
    expect(told({ served: 'new' }, run({ tags: ['plugs cleaned'], hours: 500 }))).toBe(false);
  });
});

describe('a circumstance of the engine', () => {
  it.each<[string, Circumstance, Partial<Engine>, Partial<Engine>]>([
    ['its cycle', { cycle: 'two-stroke' }, { cycle: 'two-stroke' }, { cycle: 'four-stroke' }],
    ['its aspiration', { aspiration: 'boosted' }, { aspiration: 'boosted' }, { aspiration: 'natural' }],
    ['its cooling', { cooling: 'air' }, { cooling: 'air' }, { cooling: 'liquid' }],
    ['its mixture', { mixture: ['carburettor', 'gas mixer'] }, { mixture: { kind: 'carburettor' } }, { mixture: { kind: 'port injection' } }],
    ['its ignition', { ignition: ['magneto'] }, { ignition: { kind: 'magneto' } }, { ignition: { kind: 'breaker points' } }],
  ])('is true or false where it was recorded, and neither where it was not: %s', (_what, circumstance, yes, no) => {
    expect([yes, no, {}].map((engine) => told(circumstance, engineSheet(engine)))).toEqual([true, false, undefined]);
  });

  it('is known where it is its use, which every sheet says', () => {
    expect([told({ use: ['road', 'farm'] }, engineSheet({})), told({ use: ['farm'] }, engineSheet({}))]).toEqual([true, false]);
  });
});

describe('a circumstance of plugs', () => {
  const fitted = (...all: readonly PlugReading['fitted'][]): PlugReading[] => all.map((one, i) => ({ cylinder: i + 1, ...(one && { fitted: one }) }));
  const is = (how: Extract<Circumstance, { fitted: unknown }>['fitted'], plugs: PlugReading[], fitment?: Engine['fitment']): Truth =>
    holds({ fitted: how }, engineSheet(fitment === undefined ? {} : { fitment }), plugs);

  it('is their place in the cylinder, where there are any', () => {
    const lower: PlugReading = { cylinder: 1, position: 'lower' };
    expect(holds({ position: ['lower', 'exhaust'] }, sheetOf(), [lower, { cylinder: 2, position: 'exhaust' }])).toBe(true);
    expect(holds({ position: ['lower'] }, sheetOf(), [lower, { cylinder: 2, position: 'upper' }])).toBe(false);
    expect(holds({ position: ['only'] }, sheetOf(), [{ cylinder: 1 }])).toBe(true);
    expect(holds({ position: ['lower'] }, sheetOf(), [])).toBeUndefined();
  });

  it('is a heat value above or below the one asked for', () => {
    const [up, down, same] = [1, -1, 0].map((heatStepsFromSpecified) => fitted({ heatStepsFromSpecified }));
    expect([up, down, same, fitted({}), fitted(undefined)].map((plugs) => is('hotter', plugs!))).toEqual([true, false, false, undefined, undefined]);
    expect([up, down, same, fitted({})].map((plugs) => is('colder', plugs!))).toEqual([false, true, false, undefined]);
  });

  it('is the plug asked for or another, by what was noted, else by the heat value', () => {
    const [right, wrong] = [true, false].map((matchesSpecified) => fitted({ matchesSpecified, heatStepsFromSpecified: 1 }));
    expect([right, wrong, fitted({ heatStepsFromSpecified: 0 }), fitted({ heatStepsFromSpecified: 2 }), fitted({})].map((plugs) => is('as specified', plugs!))).toEqual(
      [true, false, true, false, undefined],
    );
    expect([right, wrong, fitted({ heatStepsFromSpecified: 2 })].map((plugs) => is('not as specified', plugs!))).toEqual([false, true, undefined]);
  });

  it('is another reach from 1 mm on, and another seat, where both are noted', () => {
    const long = (reachMm: number): Truth => is('longer reach', fitted({ reachMm }), { reachMm: 19 });
    const short = (reachMm: number): Truth => is('shorter reach', fitted({ reachMm }), { reachMm: 19 });
    expect([20.1, 20, 17].map(long)).toEqual([true, false, false]);
    expect([17.9, 18, 21].map(short)).toEqual([true, false, false]);
    for (const how of ['longer reach', 'shorter reach', 'other seat'] as const) {
      expect(is(how, fitted({ reachMm: 40, seat: 'conical' }))).toBeUndefined();
      for (const one of [{}, undefined]) expect(is(how, fitted(one), { reachMm: 19, seat: 'gasket' })).toBeUndefined();
    }
    expect([is('other seat', fitted({ seat: 'conical' }), { seat: 'gasket' }), is('other seat', fitted({ seat: 'gasket' }), { seat: 'gasket' })]).toEqual([true, false]);
  });

  it('holds where all plugs agree that say it at all', () => {
    expect(is('hotter', fitted({ heatStepsFromSpecified: 1 }, {}, { heatStepsFromSpecified: 2 }))).toBe(true);
    expect(is('hotter', fitted({ heatStepsFromSpecified: 1 }, { heatStepsFromSpecified: 0 }))).toBe(false);
    expect(is('hotter', [])).toBeUndefined();
  });
});

describe('a cause or check', () => {
  it.each<[string, Needs, Partial<ReadingSheet>, Partial<ReadingSheet>]>([
    ['a cycle', { cycle: 'two-stroke' }, { engine: { use: 'road', cylinders: 4, cycle: 'two-stroke' } }, { engine: { use: 'small', cylinders: 4, cycle: 'four-stroke' } }],
    ['a mixture', { mixture: ['carburettor'] }, { engine: { use: 'road', cylinders: 4, mixture: { kind: 'carburettor' } } }, { engine: { use: 'road', cylinders: 4, mixture: { kind: 'port injection' } } }],
    ['an ignition', { ignition: ['magneto'] }, { engine: { use: 'road', cylinders: 4, ignition: { kind: 'magneto' } } }, { engine: { use: 'road', cylinders: 4, ignition: { kind: 'breaker points' } } }],
    ['a use', { use: ['road', 'farm'] }, { engine: { use: 'road', cylinders: 4 } }, { engine: { use: 'marine', cylinders: 4 } }],
    ['another use', { notUse: ['marine', 'farm'] }, { engine: { use: 'road', cylinders: 4 } }, { engine: { use: 'marine', cylinders: 4 } }],
    ['boost', { aspiration: 'boosted' }, { engine: { use: 'road', cylinders: 4, aspiration: 'boosted' } }, { engine: { use: 'road', cylinders: 4, aspiration: 'natural' } }],
    ['a cooling', { cooling: 'air' }, { engine: { use: 'road', cylinders: 4, cooling: 'air' } }, { engine: { use: 'road', cylinders: 4, cooling: 'liquid' } }],
    ['a fuel', { fuel: ['avgas', 'leaded petrol'] }, { conditions: { fuel: 'avgas' } }, { conditions: { fuel: 'petrol' } }],
    ['two plugs a cylinder', { plugsPerCylinder: 2 }, { engine: { use: 'road', cylinders: 4, plugsPerCylinder: 2 } }, { engine: { use: 'road', cylinders: 4 } }],
    ['several cylinders', { cylinders: 'several' }, { engine: { use: 'road', cylinders: 2 } }, { engine: { use: 'road', cylinders: 1 } }],
  ])('exists where its part exists: %s', (_what, needs, with_, without) => {
    expect([applies(needs, sheetOf(with_)), applies(needs, sheetOf(without))]).toEqual([true, false]);
  });

  it('that needs nothing exists everywhere', () => {
    const full = sheetOf({
      engine: {
        use: 'marine', cylinders: 4, cycle: 'four-stroke', aspiration: 'natural', cooling: 'liquid', plugsPerCylinder: 2, mixture: { kind: 'carburettor' }, ignition: { kind: 'magneto' },
      },
      conditions: { fuel: 'petrol' },
    });
    for (const sheet of [full, sheetOf()]) expect([applies(undefined, sheet), applies({}, sheet)]).toEqual([true, true]);
  });

  it('is not ruled out by what was not recorded', () => {
    const needs: Needs = { mixture: ['carburettor'], ignition: ['magneto'], aspiration: 'boosted', cooling: 'air', fuel: ['avgas'] };
    expect(applies(needs, sheetOf())).toBe(true);
  });

  it('needs every part that it names', () => {
    expect(applies({ use: ['road'], cylinders: 'several' }, engineSheet({ cylinders: 1 }))).toBe(false);
  });

  it('of two-strokes is left open only on small engines, unless the fuel tells', () => {
    // Two-strokes are noted as such or fed premix (common practice, no source).
    const two = (use: Engine['use'], conditions: ReadingSheet['conditions'] = {}): boolean => applies({ cycle: 'two-stroke' }, sheetOf({ engine: { use, cylinders: 1 }, conditions }));
    expect([two('road'), two('small'), two('road', { fuel: 'two-stroke premix' }), two('small', { fuel: 'petrol' })]).toEqual([false, true, true, true]);
    expect(applies({ cycle: 'four-stroke' }, sheetOf({ engine: { use: 'small', cylinders: 1 }, conditions: { fuel: 'two-stroke premix' } }))).toBe(false);
    expect(applies({ cycle: 'four-stroke' }, sheetOf())).toBe(true);
  });
});
