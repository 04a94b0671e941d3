import { describe, expect, it } from 'vitest';
import { rounded } from '../../../../core/inference/rounding.ts';
import type { CauseFinding, Findings, PlugFindings } from '../../../../shared/formats/findings.v1.ts';
import { plainFindings } from '../../../fixtures/plain-findings.ts';
import { sheetOf } from './sheet-of.ts';

const plain = plainFindings(sheetOf());
const cause = (belief: number): CauseFinding => ({ id: 'a', name: 'A', belief, scope: 'engine', cylinders: [1], supports: [], speaksAgainst: [], sources: ['S16'] });
const withPlug = (parts: Partial<PlugFindings>): Findings => ({ ...plain, plugs: plain.plugs.map((plug) => ({ ...plug, ...parts })) });

describe('findings as they leave', () => {
  it('carry every belief to four places, the last place rounded', () => {
    const exact: Findings = {
      ...withPlug({ belief: 0.123456, causes: [cause(0.98764)] }),
      engine: { ...plain.engine, causes: [cause(0.00006)] },
      heat: { ...plain.heat, belief: 2 / 3 },
    };
    const told = rounded(exact);
    expect(told.plugs[0]?.belief).toBe(0.1235);
    expect(told.plugs[0]?.causes).toEqual([cause(0.9876)]);
    expect(told.engine).toEqual({ ...plain.engine, causes: [cause(0.0001)] });
    expect(told.heat).toEqual({ ...plain.heat, belief: 0.6667 });
  });

  it('hold no belief below 0 or above 1 that a sum of many small ones has left', () => {
    expect(rounded(withPlug({ belief: 1 + 1e-3 })).plugs[0]?.belief).toBe(1);
    expect(rounded(withPlug({ belief: -1e-3 })).plugs[0]?.belief).toBe(0);
  });

  it('keep the three chances of a tip at a sum of 1', () => {
    const { plugs } = rounded(withPlug({ thermal: { tooCold: 0.33335, inWindow: 0.5, tooHot: 0.12344 } }));
    expect(plugs[0]?.thermal).toEqual({ tooCold: 0.3334, inWindow: 0.5432, tooHot: 0.1234 });
  });

  it('round the beliefs of followed cures, and tell of none where there was no reading before', () => {
    const cure = { cause: 'a', name: 'A', cylinders: [1], do: 'Mend it.', outcome: 'borne out', beliefBefore: 0.71236, beliefNow: 0.04321, why: 'It went.' } as const;
    const followUp = { before: {}, summary: 'One plug is cured.', plugs: [], symptoms: [], cures: [{ ...cure, cylinders: [1] }], doubts: [] };
    expect(rounded({ ...plain, followUp }).followUp).toEqual({ ...followUp, cures: [{ ...cure, beliefBefore: 0.7124, beliefNow: 0.0432 }] });
    expect(rounded(plain)).not.toHaveProperty('followUp');
  });

  it('are otherwise as they were', () => {
    expect(rounded(plain)).toEqual(plain);
  });
});
