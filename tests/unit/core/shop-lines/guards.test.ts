import { describe, expect, it } from 'vitest';
import { conclude } from '../../../../core/inference/conclude.ts';
import { concludeWith } from '../../../../core/inference/conclude-with.ts';
import { graver, guardedHeat } from '../../../../core/shop-lines/guards.ts';
import type { Findings } from '../../../../shared/formats/findings.v1.ts';
import { RISKS, type Risk } from '../../../../shared/vocabulary/verdicts.ts';
import { sooty } from '../inference/guarded.ts';
import { cause, condition, knowledge, makes, shows } from '../inference/small-knowledge.ts';

/** A step with what stands beside it: `w` of the side with lines, `o` of the program's own. */
const heat = (step: -1 | 0 | 1, of: string): Findings['heat'] => ({
  step, when: 'now', words: 'stay', belief: 0.5, why: [`why ${of}`], first: ['both', `first ${of}`], cautions: ['both', `caution ${of}`],
});

describe('the heat step beside lines of a workshop', () => {
  it('is the program’s own where the lines ask for a hotter one, and the reasons begin with that', () => {
    const held = guardedHeat(heat(1, 'w'), heat(0, 'o'));
    expect(held).toEqual({ ...heat(0, 'o'), why: [expect.stringContaining('does not allow it'), 'why o'] });
  });

  it('is that of the lines where they ask for a colder one', () => {
    expect(guardedHeat(heat(-1, 'w'), heat(0, 'o'))).toEqual(heat(-1, 'w'));
  });

  it('comes after what either side asks for where both agree, each thing said once', () => {
    expect(guardedHeat(heat(1, 'w'), heat(1, 'o'))).toEqual({
      ...heat(1, 'w'), first: ['both', 'first w', 'first o'], cautions: ['both', 'caution w', 'caution o'],
    });
  });
});

describe('the graver of two risks', () => {
  it('is the later of the two in the list of risks, whichever stands first', () => {
    const order = new Map(RISKS.map((risk, i) => [risk, i]));
    for (const a of RISKS) for (const b of RISKS) {
      const expected: Risk = (order.get(a) ?? 0) > (order.get(b) ?? 0) ? a : b;
      expect(graver(a, b)).toBe(expected);
    }
  });
});

/** Soot that comes from too cold a plug alone, or just as well from two other causes. */
const soot = condition('soot', { thermal: 'cold', shows: [shows('deposit', 'dry soot', 'almost always')] });
const tooCold = cause('plugs-too-cold', { kind: 'heat value', heatStep: 'hotter', makes: [makes('soot', 'almost always')] });
const own = knowledge([soot], [tooCold, ...['rich', 'weak-spark'].map((id) => cause(id, { makes: [makes('soot', 'almost always')] }))]);
const withLines = knowledge([soot], [tooCold]);

describe('a reading concluded with lines of a workshop', () => {
  it('keeps beside it what follows without them, and is not hotter than that', () => {
    expect([conclude(sooty, withLines).heat.step, conclude(sooty, own).heat.step]).toEqual([1, 0]);
    const { heat: held, guard, judged } = concludeWith(sooty, withLines, { lines: [], without: own });
    expect(held.step).toBe(0);
    expect(guard?.heat).toEqual(conclude(sooty, own).heat);
    expect(judged).toEqual(conclude(sooty, withLines).judged);
  });

  it('has nothing beside it where there are none', () => {
    expect(concludeWith(sooty, withLines, undefined)).not.toHaveProperty('guard');
    expect(concludeWith(sooty, withLines, undefined).heat.step).toBe(1);
  });
});
