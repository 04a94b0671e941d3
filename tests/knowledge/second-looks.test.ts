import { describe, expect, it } from 'vitest';
import { diagnose } from '../../core/inference/diagnose.ts';
import { KNOWLEDGE } from '../../core/knowledge/index.ts';
import type { Findings } from '../../shared/formats/findings.v1.ts';
import { parseReadingSheet, type ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';

/* Sparse and odd sheets, read as an old hand would read them: what must not be said, and what must. Common practice, no source, except where one is named. */

type Tip = NonNullable<ReadingSheet['plugs'][number]['tip']>;

const CAR = { use: 'road', cylinders: 4, layout: 'inline', cycle: 'four-stroke', cooling: 'liquid' } as const;
const healthy: Tip = { noseColour: 'light tan', deposit: 'light dusting' };

function read(tips: readonly Tip[], more: object = {}, engine: object = CAR): Findings {
  const parsed = parseReadingSheet({
    format: 'corenose.reading-sheet', version: 1, engine, plugs: tips.map((tip, i) => ({ cylinder: i + 1, tip })), ...more,
  });
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.error));
  return diagnose(parsed.value, { knowledge: KNOWLEDGE, digest: 'test' });
}
const set = (tip: Tip, more?: object, engine?: object): Findings => read([tip, tip, tip, tip], more, engine);
const second = (tip: Tip, more?: object, engine?: object): Findings => read([healthy, tip, healthy, healthy], more, engine);

const saying = (findings: Findings): string => findings.plan.map((step) => `${step.do} ${step.because}`).join('\n');
const doubts = ({ plugs }: Findings): string => plugs.flatMap((plug) => plug.doubts).join('\n');
const leading = (findings: Findings, cylinder: number, n = 3): string[] =>
  (findings.plugs.find((plug) => plug.cylinder === cylinder)?.causes ?? []).slice(0, n).map(({ id }) => id.split(' @ ')[0] as string);

describe('the plan', () => {
  it('speaks of the deposit that was seen, not of another that is called alike', () => {
    expect(saying(set({ deposit: 'heavy tan' }))).toContain('thick tan coat');
    expect(saying(set({ deposit: 'heavy tan' }))).not.toContain('Phosphorus');
  });

  it('tells a dead cylinder to ask spark, compression, fuel, not to set a gap', () => {
    const findings = second({ overall: 'looks unfired' }, { symptoms: [{ what: 'misfire', cylinder: 2 }] });
    expect(saying(findings)).toContain('spark first, then compression, then fuel');
    expect(saying(findings)).not.toContain('bend the ground electrode');
  });

  it('names no check whose outcomes all lead to the same cause', () => {
    for (const findings of [set({ deposit: 'carbon of unknown kind' }), second({ deposit: 'wet oil' }), set({ noseColour: 'white' })]) {
      for (const { why } of [...findings.engine.nextChecks, ...findings.plugs.flatMap((plug) => plug.nextChecks)]) {
        const pointed = [...why.matchAll(/%\): ([^;.]+)/g)].map((match) => match[1]);
        expect(new Set(pointed).size, why).toBe(pointed.length);
        expect(pointed.length, why).toBeGreaterThan(1);
      }
    }
  });

  it('does not ask to measure what was measured', () => {
    const parsed = read([healthy, healthy], {
      plugs: [{ cylinder: 1, measured: { resistorKOhm: 30 } }, { cylinder: 2, measured: { resistorKOhm: 1.5 } }],
    }, { use: 'aircraft', cylinders: 4 });
    expect(parsed.engine.nextChecks.map(({ id }) => id)).not.toContain('plug-resistance');
  });
});

describe('a sheet that says little', () => {
  it.each([
    [{ deposit: 'wet of unknown kind' }, 'Wet with what?'],
    [{ deposit: 'carbon of unknown kind' }, 'What kind of carbon?'],
    [{ overall: 'fouled, kind unknown' }, 'Fouled with what?'],
  ] as const)('of %j asks the question that decides', (tip, question) => {
    expect(doubts(second(tip))).toContain(question);
  });

  it('does not blame leaded fuel for a fouled road set whose fuel was not noted', () => {
    expect(leading(set({ overall: 'fouled, kind unknown' }), 1)).not.toContain('leaded-cool-running');
  });

  it('thinks of fuel where a single will not start and its plug is dry', () => {
    const findings = read([{ deposit: 'none', noseSurface: 'bare' }], { symptoms: [{ what: 'no start' }] }, { use: 'small', cylinders: 1, cycle: 'four-stroke' });
    expect(leading(findings, 1)).toContain('no-fuel');
  });

  it('thinks of coolant where one plug among tan ones is red, and of the fuel where all are (W3, W12)', () => {
    expect(leading(second({ noseColour: 'reddish' }), 2)).toContain('gasket-coolant-leak');
    expect(leading(set({ noseColour: 'reddish' }), 2, 1)).toEqual(['manganese-in-fuel']);
  });

  it('takes a deep brown, dry set for a healthy one', () => {
    expect(set({ noseColour: 'dark brown', specks: 'none' }).plugs.map(({ verdict }) => verdict)).toEqual(Array(4).fill('normal'));
  });

  it('does not set a whole engine against one of its cylinders where there is only one', () => {
    const findings = read([{ deposit: 'wet oil', noseSurface: 'wet' }], {}, { use: 'small', cylinders: 1, cycle: 'four-stroke' });
    expect(leading(findings, 1, 1)).toEqual(['rings-worn']);
    expect(leading(findings, 1, 5)).not.toContain('engine-worn');
  });
});

describe('what stands out along the row and between upper and lower', () => {
  const SIX = { use: 'road', cylinders: 6, layout: 'inline', cycle: 'four-stroke', mixture: { kind: 'carburettor' } } as const;
  const sooty: Tip = { noseColour: 'black', deposit: 'dry soot' };
  const at = (places: readonly number[], tip: Tip): Findings => read([1, 2, 3, 4, 5, 6].map((n) => (places.includes(n) ? tip : healthy)), {}, SIX);

  it('sooty ends of a row on one carburettor are the share of the manifold', () => {
    expect(leading(at([1, 6], sooty), 1, 1)).toEqual(['ends-rich']);
    expect(leading(at([2, 3, 4, 5], sooty), 3)).toContain('middle-rich');
    expect(leading(at([1, 3], sooty), 1, 5)).not.toContain('ends-rich');
  });

  it('lead in every lower plug and in no upper one has run down', () => {
    const engine = { use: 'aircraft', cylinders: 4, layout: 'flat', plugsPerCylinder: 2 };
    const plugs = [1, 2, 3, 4].flatMap((cylinder) => [
      { cylinder, position: 'upper', tip: { noseColour: 'light grey', deposit: 'light dusting' } }, { cylinder, position: 'lower', tip: { deposit: 'lead beads' } },
    ]);
    const findings = read([], { plugs, conditions: { fuel: 'avgas' } }, engine);
    expect(findings.engine.causes[0]?.id).toContain('lead-at-the-bottom');
    expect(findings.plugs.filter(({ verdict }) => verdict === 'lead fouling').map(({ position }) => position)).toEqual(Array(4).fill('lower'));
  });
});
