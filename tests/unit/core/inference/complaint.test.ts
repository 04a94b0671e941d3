import { describe, expect, it } from 'vitest';
import { contextOf } from '../../../../core/inference/context.ts';
import { diagnose } from '../../../../core/inference/diagnose.ts';
import { firstLooks } from '../../../../core/inference/engine-findings.ts';
import { evidenceOf } from '../../../../core/inference/evidence.ts';
import { networkFor } from '../../../../core/inference/network.ts';
import { solverFor } from '../../../../core/inference/posterior.ts';
import { KNOWLEDGE } from '../../../../core/knowledge/index.ts';
import type { Findings } from '../../../../shared/formats/findings.v1.ts';
import { parseReadingSheet, type ReadingSheet, type Tip } from '../../../../shared/formats/reading-sheet.v1.ts';

type Sheet = {
  readonly engine?: object; readonly symptoms?: readonly object[]; readonly cylinderChecks?: readonly object[];
  readonly plugs?: readonly { readonly cylinder: number; readonly position?: string; readonly tip: Tip }[];
};

const tan: Tip = { noseColour: 'light tan', noseSurface: 'fine powder', deposit: 'light dusting', centreElectrode: 'lightly worn' };
const oily: Tip = { noseColour: 'black', noseSurface: 'wet', deposit: 'wet oil' };
const sooty: Tip = { noseColour: 'black', noseSurface: 'matt soot', deposit: 'dry soot' };

function read({ engine, ...sheet }: Sheet): Findings {
  const parsed = parseReadingSheet({
    format: 'corenose.reading-sheet', version: 1,
    engine: { use: 'road', cylinders: 4, layout: 'inline', cycle: 'four-stroke', mixture: { kind: 'carburettor' }, ignition: { kind: 'breaker points' }, ...engine },
    plugs: [1, 2, 3, 4].map((cylinder) => ({ cylinder, tip: tan })), ...sheet,
  });
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.error));
  return diagnose(parsed.value, { knowledge: KNOWLEDGE, digest: 'test' });
}

type Symptom = NonNullable<ReadingSheet['symptoms']>[number]['what'];
const felt = (what: Symptom, more: Sheet = {}): Findings => read({ symptoms: [{ what }], ...more });
const ids = (list: readonly { readonly id: string }[]): string[] => list.map(({ id }) => id.split(' @ ')[0] as string);
const blank = [1, 2, 3, 4].map((cylinder) => ({ cylinder, tip: {} }));
const last = 'Read the plugs again after the same kind of running and compare.';

describe('a complaint that no plug shows', () => {
  // Of each: causes of which one at least the source names for the complaint, and checks it names for them.
  const PUBLISHED: readonly (readonly [Symptom, string, readonly string[], readonly string[]])[] = [
    ['knock under load', 'S68: low octane, over-advance; S16: loose plug', ['octane-low', 'timing-advanced', 'plug-loose'], ['fuel-check', 'timing-light', 'seat-and-torque-look']],
    ['oil use', 'S15: compression, then leak-down with oil added, breather, oil use', ['rings-worn', 'guides-worn', 'engine-worn'], ['compression-test', 'leak-down-test', 'compression-wet-test', 'oil-use-and-breather']],
    ['misfire under load', 'W17, W18, W6: dirty insulator, body cracked, worn plugs', ['insulator-dirty', 'plug-mishandled', 'plugs-old', 'boot-leaking'], ['leads-look', 'leads-in-the-dark', 'plug-resistance']],
    ['coolant loss', 'S58: a leak into a cylinder loses pressure', ['gasket-coolant-leak'], ['coolant-pressure', 'borescope']],
    ['hard start cold', 'W17, S14: damp insulator, bad lead', ['insulator-dirty', 'boot-leaking', 'lead-bad'], ['ignition-measure', 'spark-test', 'leads-look']],
  ];

  it.each(PUBLISHED)('"%s" on plugs that look normal: what the source names is believed, checked and planned (%s)', (what, _source, causes, checks) => {
    const { engine, plan, plugs } = felt(what);
    expect(plugs.map(({ verdict }) => verdict)).toEqual(['normal', 'normal', 'normal', 'normal']);
    expect(ids(engine.causes).filter((id) => causes.includes(id))).not.toEqual([]);
    expect(engine.nextChecks.map(({ id }) => id).filter((id) => checks.includes(id))).not.toEqual([]);
    expect(plan[0]?.do).toBe(engine.nextChecks[0]?.name);
    expect(plan.at(-1)?.do).toBe(last);
    expect(engine.pattern).toContain(what);
  });

  it('is asked about just as well when no plug was looked at', () => {
    const { engine, plan, plugs } = felt('misfire under load', { plugs: blank });
    expect(engine.nextChecks.length).toBeGreaterThan(0);
    expect(plan[0]?.do).toBe(engine.nextChecks[0]?.name);
    // What was not looked at tells nothing of itself.
    expect(plugs.flatMap(({ causes, nextChecks }) => [...causes, ...nextChecks])).toEqual([]);
  });

  it('is shared out among causes, however many cylinders there are in which each may sit', () => {
    const radial = {
      use: 'aircraft', cylinders: 18, layout: 'radial', plugsPerCylinder: 2, cooling: 'air', mixture: { kind: 'carburettor' }, ignition: { kind: 'magneto' },
    };
    const plugs = Array.from({ length: 18 }, (_, i) => (['front', 'rear'] as const).map((position) => ({ cylinder: i + 1, position, tip: tan }))).flat();
    const { causes, nextChecks } = felt('loss of power', { engine: radial, plugs }).engine;
    const local = causes.filter(({ scope }) => scope === 'plug' || scope === 'cylinder');
    expect(local.length).toBeGreaterThan(1);
    expect(local.reduce((sum, { belief }) => sum + belief, 0)).toBeLessThanOrEqual(1);
    expect(nextChecks.length).toBeGreaterThan(0);
  });

  it('tells a cause that may sit in any cylinder once, with all of them', () => {
    const { causes } = felt('misfire under load', { engine: { ignition: { kind: 'coil per cylinder' } }, plugs: blank }).engine;
    const coil = causes.find(({ id }) => id === 'coil-weak');
    expect(coil?.cylinders).toEqual([1, 2, 3, 4]);
    expect(new Set(ids(causes)).size).toBe(causes.length);
    expect(coil?.supports.map(({ text }) => text)).toContain('misfire under load');
  });

  it('has as many checks in the plan as give an order of looking, until a cause is worth its cure', () => {
    const { plan, engine } = felt('misfire under load', { plugs: blank });
    expect(Math.max(...engine.causes.map(({ belief }) => belief))).toBeLessThan(0.25);
    expect(plan.map(({ do: what }) => what)).toEqual([...engine.nextChecks.slice(0, 3).map(({ name }) => name), last]);
  });

  it('measures every cylinder where any may be at fault, and says so', () => {
    const compression = felt('oil use').engine.nextChecks.find(({ id }) => id === 'compression-test');
    expect(compression?.cylinder).toBeUndefined();
    expect(compression?.effortMinutes).toBe(4 * (KNOWLEDGE.checks.find(({ id }) => id === 'compression-test')?.minutes ?? NaN));
    expect(compression?.why).toMatch(/^On every cylinder\. /);
    expect(felt('misfire').engine.nextChecks.filter(({ id }) => /^(swap|known-good)/.test(id))).toEqual([]);
  });

  it('that no check decides sends to where its likeliest causes are looked for', () => {
    // Hot and flooding over: float, needle and injectors (W13, common practice).
    const { engine, plan } = felt('hard start hot');
    expect(engine.nextChecks).toEqual([]);
    const sent = KNOWLEDGE.causes.filter(({ gives }) => gives.some(({ symptom }) => symptom === 'hard start hot')).flatMap(({ checks }) => checks);
    const names = KNOWLEDGE.checks.filter(({ id }) => sent.includes(id)).map(({ name }) => name);
    expect(names).toContain(plan[0]?.do);
    expect(plan.at(-1)?.do).toBe(last);
  });

  it('asks nothing of the running engine when it does not start, or must not run', () => {
    const running = new Set(KNOWLEDGE.checks.filter((check) => check.running).map(({ id }) => id));
    const offered = ({ plugs, engine }: Findings): string[] => ids([...plugs.flatMap(({ nextChecks }) => nextChecks), ...engine.nextChecks]);
    const soot = [1, 2, 3, 4].map((cylinder) => ({ cylinder, tip: sooty }));
    expect(offered(felt('rough idle', { plugs: soot })).some((id) => running.has(id))).toBe(true);
    expect(offered(felt('no start', { plugs: soot })).filter((id) => running.has(id))).toEqual([]);
    const broken = read({ symptoms: [{ what: 'knock under load' }], plugs: [{ cylinder: 1, tip: { ...tan, specks: 'dark pepper', noseDamage: 'cracked' } }] });
    expect(broken.stop).not.toEqual([]);
    expect(offered(broken).filter((id) => running.has(id))).toEqual([]);
  });

  it('sends a lone cylinder to nothing that is compared with another', () => {
    const [lead] = KNOWLEDGE.causes.filter(({ id }) => id === 'lead-bad');
    if (lead === undefined) throw new Error('the lead is gone');
    const cause = { ...lead, checks: ['power-balance', 'spark-test'] };
    const world = { causes: [{ id: 'lead-bad', cause, group: '', cylinders: [1], plugs: ['1'], prior: 0.1, moves: [] }], probability: 1 };
    const sentTo = (cylinders: number): string[] => {
      const evidence = evidenceOf({ format: 'corenose.reading-sheet', version: 1, engine: { use: 'road', cylinders }, plugs: [{ cylinder: 1 }] });
      const solution = solverFor(networkFor(KNOWLEDGE, evidence))(evidence);
      const matter = { answers: () => true, cylinder: 1, worlds: [world] };
      return firstLooks(matter, contextOf({ solution, judged: [], stops: [], heat: felt('misfire').heat }, KNOWLEDGE)).map(({ check }) => check.id);
    };
    expect([sentTo(1), sentTo(2)]).toEqual([['spark-test'], ['power-balance']]);
  });

  it('is left to the plug that is at fault where there is one', () => {
    const tips = [sooty, tan, tan, tan].map((tip, i) => ({ cylinder: i + 1, tip }));
    expect(felt('misfire', { plugs: tips }).engine.pattern).not.toContain('No plug shows');
  });

  it('is none where nothing is felt: nothing is believed, checked or planned', () => {
    const { engine, plan } = read({});
    expect([...engine.causes, ...engine.nextChecks, ...plan]).toEqual([]);
  });

  it('felt on one cylinder is asked about on that cylinder, though its plug was not looked at', () => {
    const { plugs, plan } = read({ symptoms: [{ what: 'misfire', cylinder: 2 }], plugs: blank });
    expect(plugs.map(({ nextChecks }) => nextChecks.length > 0)).toEqual([false, true, false, false]);
    expect(plan[0]?.cylinder).toBe(2);
  });
});

describe('a cylinder that was checked though no plug of it was read', () => {
  const others = [1, 2, 4].map((cylinder) => ({ cylinder, compressionKPa: 1200 }));
  const two = [1, 2].map((cylinder) => ({ cylinder, tip: tan }));
  const weak = { cylinder: 3, compressionKPa: 500, compressionWetKPa: 510 };

  it('has its causes told of the engine, with its number, a check and a cure', () => {
    const { engine, plan, plugs } = read({ plugs: two, cylinderChecks: [...others, weak] });
    expect(plugs).toHaveLength(2);
    // Low and no better for oil: valves or gasket, not rings (US Army TM 9-8000 (S15), W4).
    expect(['valve-leaking', 'gasket-between', 'valve-sticking']).toContain(ids(engine.causes)[0]);
    expect(engine.causes[0]).toMatchObject({ scope: 'cylinder', cylinders: [3] });
    expect(engine.causes[0]?.supports.map(({ text }) => text).join()).toMatch(/cylinder 3: .*compression/);
    expect(engine.nextChecks.filter(({ cylinder }) => cylinder === 3)).not.toEqual([]);
    expect(plan[0]?.cylinder).toBe(3);
    expect(plan.some(({ do: what, cylinder }) => cylinder === 3 && what.includes('valve'))).toBe(true);
    expect(engine.pattern).toMatch(/cylinder 3 speaks of a fault/);
  });

  it('has causes of its own where another cylinder is found as weak', () => {
    const well = [1, 4].map((cylinder) => ({ cylinder, compressionKPa: 1200 }));
    const both = [...well, weak, { cylinder: 2, compressionKPa: 520, compressionWetKPa: 530 }];
    const { causes } = read({ plugs: [{ cylinder: 1, tip: tan }], cylinderChecks: both }).engine;
    for (const cylinder of [2, 3]) expect(causes.some(({ cylinders }) => cylinders.includes(cylinder))).toBe(true);
    expect(causes.every(({ scope, cylinders }) => scope === 'group' || scope === 'engine' || cylinders.length === 1)).toBe(true);
  });

  it('has them told so too when its plug was read and looks well', () => {
    const all = [1, 2, 3, 4].map((cylinder) => ({ cylinder, tip: tan }));
    const { engine, plugs } = read({ plugs: all, cylinderChecks: [...others, weak] });
    expect(plugs[2]?.verdict).toBe('normal');
    expect(engine.causes[0]).toMatchObject({ scope: 'cylinder', cylinders: [3] });
  });

  it('says nothing when the checks came out well', () => {
    const { engine, plan } = read({ plugs: two, cylinderChecks: [...others, { cylinder: 3, compressionKPa: 1190, spark: 'strong', borescope: 'clean' }] });
    expect([...engine.causes, ...engine.nextChecks, ...plan]).toEqual([]);
  });

  it('keeps its causes with its plug where that is at fault', () => {
    const plugs = [...two, { cylinder: 3, tip: oily }];
    const { engine, plugs: told } = read({ plugs, cylinderChecks: [{ cylinder: 3, compressionKPa: 500, compressionWetKPa: 900 }, ...others] });
    expect(told[2]?.causes[0]?.cylinders).toEqual([3]);
    expect(engine.causes.filter(({ scope }) => scope === 'plug' || scope === 'cylinder')).toEqual([]);
  });
});
