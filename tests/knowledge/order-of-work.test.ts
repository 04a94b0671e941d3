import { describe, expect, it } from 'vitest';
import { diagnose } from '../../core/inference/diagnose.ts';
import { KNOWLEDGE } from '../../core/knowledge/index.ts';
import type { Findings } from '../../shared/formats/findings.v1.ts';
import { parseReadingSheet, type Tip } from '../../shared/formats/reading-sheet.v1.ts';

/*
 * What comes first in the plan, against what the sources do first. Where the source is common practice or memory it says so.
 */

const tan: Tip = { noseColour: 'light tan', noseSurface: 'fine powder', deposit: 'light dusting' };
const soot: Tip = { noseColour: 'black', noseSurface: 'matt soot', deposit: 'dry soot' };
const oil: Tip = { noseColour: 'black', noseSurface: 'wet', deposit: 'wet oil', shellRim: 'wet oil' };

function read(engine: object, plugs: readonly object[]): Findings {
  const parsed = parseReadingSheet({
    format: 'corenose.reading-sheet', version: 1, engine: { use: 'road', cylinders: 4, cycle: 'four-stroke', ...engine },
    plugs: plugs.map((plug, i) => ({ cylinder: i + 1, ...plug })),
  });
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.error));
  return diagnose(parsed.value, { knowledge: KNOWLEDGE, digest: 'test' });
}
const first = ({ plan }: Findings): string => plan[0]?.do ?? '';
const nameOf = (check: string): string | undefined => KNOWLEDGE.checks.find(({ id }) => id === check)?.name;

describe('a low insulation reading', () => {
  // A car maker's manuals 1988 to 2007 (W1): 10 MΩ or more is good; below, clean the plug and measure again.
  const low = { measured: { insulationMOhm: 2 } };
  const cleanAndAgain = /^The plug of cylinder 1: clean and dry it, .* measure the insulation again/;

  it('that stands alone is measured again on the clean plug before anything is done to the engine', () => {
    expect(first(read({}, [low]))).toMatch(cleanAndAgain);
    expect(first(read({ cylinders: 1 }, [{ measured: { insulationMOhm: 0.2 } }]))).toMatch(cleanAndAgain);
  });

  it('on a tip that looks well is measured again too', () => {
    const findings = read({}, [{ tip: tan, ...low }, { tip: tan }, { tip: tan }, { tip: tan }]);
    expect(findings.plugs[0]?.verdict).toBe('normal');
    expect(first(findings)).toMatch(cleanAndAgain);
  });

  it('that the oil on the plug accounts for holds nothing up', () => {
    const { plan } = read({}, [{ tip: oil, ...low }, { tip: tan }, { tip: tan }, { tip: tan }]);
    expect(plan.filter(({ do: what }) => what.includes('insulation'))).toEqual([]);
  });
});

describe('two sooty plugs on one of two carburettors', () => {
  // From memory (high): those on one carburettor differ: balance, float level, jet, air leak of that body. An air filter mostly feeds both: common practice.
  const two = { mixture: { kind: 'carburettor', groups: [[1, 2], [3, 4]] } };
  const plugs = [soot, soot, tan, tan].map((tip) => ({ tip }));
  const engines = [two, { ...two, ignition: { kind: 'breaker points' } }, { ...two, layout: 'flat', banks: [[1, 2], [3, 4]] }];

  it.each(engines)('send to that carburettor first, not to what both draw through (%o)', (engine) => {
    const findings = read(engine, plugs);
    expect([nameOf('float-level'), nameOf('carburettor-inspection')]).toContain(first(findings));
    expect(findings.engine.causes[0]?.cylinders).toEqual([1, 2]);
    expect(findings.plan.map(({ do: what }) => what)).not.toContain(nameOf('air-filter-look'));
  });

  it('while a whole sooty set sends to what all share (S14: air cleaner, choke, running pattern)', () => {
    const whole = [nameOf('duty-interview'), nameOf('air-filter-look'), nameOf('choke-look'), nameOf('exhaust-mixture')];
    expect(whole).toContain(first(read(two, plugs.map(() => ({ tip: soot })))));
  });
});
