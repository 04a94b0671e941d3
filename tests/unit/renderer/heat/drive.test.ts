import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { PRIOR } from '../../../../core/thermal/belief.ts';
import { driveOf, DRIVES, legsOf, REPEATS } from '../../../../renderer/features/heat/drive.ts';
import { problemWords } from '../../../../renderer/features/heat/problem-words.ts';
import { usualSetting } from '../../../../renderer/features/heat/setting.ts';
import { heat } from '../../../../renderer/text/en/heat.ts';
import type { Engine } from '../../../../shared/formats/engine.ts';

const car: Engine = { use: 'road', cylinders: 4, boreMm: 86, strokeMm: 86, compressionRatio: 9.8 };

function drive(text: string, start: number, heatStep = 0) {
  const legs = legsOf(text);
  if (!legs.ok) throw new Error(legs.error.map((one) => problemWords(one, heat.drive)).join(' '));
  const answer = driveOf(car, { ...usualSetting(car), heatStep }, legs.value, start, PRIOR);
  if (!answer.ok) throw new Error(answer.error.join(' '));
  return answer.value;
}

describe('the legs of a drive', () => {
  it('are read from lines with commas, semicolons or tabs, empty lines passed over', () => {
    expect(legsOf('40, 2000, 50, 0.75\n\n10;900;35;1\n5\t800\t30\t0.9')).toEqual({
      ok: true,
      value: [
        { seconds: 40, rpm: 2000, load: 0.5, lambda: 0.75 }, { seconds: 10, rpm: 900, load: 0.35, lambda: 1 }, { seconds: 5, rpm: 800, load: 0.3, lambda: 0.9 },
      ],
    });
  });

  it.each([
    ['', 'No line yet.'],
    ['40, 2000, 50', 'Line 1: 3 values; four are wanted: seconds, speed, load in %, lambda.'],
    ['40, 2000, 50, 1\n40, 2000, 150, 1', 'Line 2: load 150; 20 to 100 are allowed.'],
    ['1.5, 2000, 50, 1', 'Line 1: seconds 1.5; whole numbers from 1 to 3600 are allowed.'],
    ['40, fast, 50, 1', 'Line 1: speed fast; 300 to 16000 are allowed.'],
    ['3600, 2000, 50, 1\n'.repeat(5), 'The drive lasts 18000 s; at most 14400 s are taken.'],
    ['1, 2000, 50, 1\n'.repeat(201), '201 lines; at most 200 are taken.'],
  ])('say which line is wrong and what is allowed: %j', (text, problem) => {
    const legs = legsOf(text);
    expect(legs.ok ? [] : legs.error.map((one) => problemWords(one, heat.drive))).toEqual([problem]);
  });

  it('never come to grief on any text', () => {
    fc.assert(fc.property(fc.string(), (text) => { expect(typeof legsOf(text).ok).toBe('boolean'); }));
  });
});

describe('a drive', () => {
  it('fouls a plug by short trips in frost and keeps it clean on a long road (workshop practice)', () => {
    expect(drive(DRIVES['short trips in frost'], -10).foulsAfter!.middle).toBeLessThan(REPEATS);
    expect(drive(DRIVES['long road'], 15).foulsAfter).toBeUndefined();
  });

  it('tells time as a band, every second once, and a hotter plug is below the limit for no longer', () => {
    const { windows, low, middle, high } = drive(DRIVES.commute, 5);
    for (const [window, seconds] of [[windows.low, low], [windows.middle, middle], [windows.high, high]] as const) {
      expect(window.below + window.inside + window.above).toBe(seconds.length);
    }
    expect(windows.high.below).toBeLessThanOrEqual(windows.low.below);
    expect(drive(DRIVES.commute, 5, 1).windows.middle.below).toBeLessThan(windows.middle.below);
  });

  it('is refused where the engine cannot be so cold', () => {
    const legs = legsOf('40, 2000, 50, 1');
    expect(legs.ok && driveOf(car, usualSetting(car), legs.value, -90, PRIOR)).toMatchObject({ ok: false });
  });
});
