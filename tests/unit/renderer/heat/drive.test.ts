import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { PRIOR } from '../../../../core/thermal/belief.ts';
import { driveAnswer, REPEATS } from '../../../../core/heat/drive-answer.ts';
import { legsOf, legsOfLog } from '../../../../core/thermal/drive-log.ts';
import { DRIVES } from '../../../../renderer/features/heat/drives.ts';
import { problemWords } from '../../../../renderer/features/heat/problem-words.ts';
import { usualSetting } from '../../../../core/heat/setting.ts';
import { heat } from '../../../../renderer/text/en/heat.ts';
import type { Engine } from '../../../../shared/formats/engine.ts';

const car: Engine = { use: 'road', cylinders: 4, boreMm: 86, strokeMm: 86, compressionRatio: 9.8 };

function drive(text: string, start: number, heatStep = 0) {
  const legs = legsOf(text);
  if (!legs.ok) throw new Error(legs.error.map((one) => problemWords(one, heat.drive)).join(' '));
  const answer = driveAnswer({ engine: car, setting: { ...usualSetting(car), heatStep }, legs: legs.value, start, belief: PRIOR });
  if (!answer.ok) throw new Error(JSON.stringify(answer.error));
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

describe('a log of a drive', () => {
  it('is read with or without a heading; a sample holds until the next, and like neighbours become one leg', () => {
    const legs = [{ seconds: 4, rpm: 2000, load: 0.5, lambda: 0.75 }, { seconds: 1, rpm: 900, load: 0.34, lambda: 1 }];
    const rows = '100, 2003, 50.2, 0.751\n102, 1990, 49.8, 0.75\n104, 900, 34.5, 1';
    expect(legsOfLog(`time,speed,load,lambda\r\n${rows.replaceAll('\n', '\r\n')}\r\n`)).toEqual({ ok: true, value: legs });
    expect(legsOfLog(rows)).toEqual({ ok: true, value: legs });
  });

  it('may part its values by semicolons and write a decimal comma', () => {
    expect(legsOfLog('0;2000;50;0,9\n1;2000;50;0,9')).toEqual({ ok: true, value: [{ seconds: 2, rpm: 2000, load: 0.5, lambda: 0.9 }] });
  });

  it('keeps the last of several samples within one second', () => {
    expect(legsOfLog('0, 900, 30, 1\n0.2, 1000, 30, 1\n1, 1500, 40, 1')).toEqual({ ok: true, value: [{ seconds: 1, rpm: 1000, load: 0.3, lambda: 1 }, { seconds: 1, rpm: 1500, load: 0.4, lambda: 1 }] });
  });

  it.each([
    ['', 'No line yet.'],
    ['time;speed;load;lambda', 'No line yet.'],
    ['5, 2000, 50, 1', 'A log needs two samples at least, a second apart.'],
    ['time,speed,load,lambda\n0, 2000, 50, 1\n1, 2000, , 1', 'Line 3: 4 values; four are wanted: time in s, speed, load in %, lambda.'],
    ['0, 2000, 50, 1\n2, 2000, 50, 1\n1, 2000, 50, 1', 'Line 3: time 1 s does not come after 2 s; times must rise.'],
    ['0, 2000, 50, 1\n20000, 2000, 50, 1', 'The drive lasts 20001 s; at most 14400 s are taken.'],
    ['0, 2000, 50, 1\n1, 2000, 50, x', 'Line 2: lambda x; 0.5 to 1.8 are allowed.'],
  ])('says which line is wrong and what is allowed: %j', (text, problem) => {
    const legs = legsOfLog(text);
    expect(legs.ok ? [] : legs.error.map((one) => problemWords(one, heat.drive))).toEqual([problem]);
  });
});

describe('a drive', () => {
  it('fouls a plug by short trips in frost and keeps it clean on a long road (workshop practice)', () => {
    expect(drive(DRIVES['short trips in frost'], -10).foulsAfter!.middle).toBeLessThan(REPEATS);
    expect(drive(DRIVES['long road'], 15).foulsAfter).toBeUndefined();
  });

  it('tells time as a band, every second once, and a hotter plug is below the limit for no longer', () => {
    const { windows, seconds } = drive(DRIVES.commute, 5);
    for (const window of [windows.low, windows.middle, windows.high]) expect(window.below + window.inside + window.above).toBe(seconds);
    expect(windows.high.below).toBeLessThanOrEqual(windows.low.below);
    expect(drive(DRIVES.commute, 5, 1).windows.middle.below).toBeLessThan(windows.middle.below);
  });

  it('shows why: in the frost hardly anything burns off while the mixture is rich, on the road nearly all of it does', () => {
    const [short, long] = [drive(DRIVES['short trips in frost'], -10), drive(DRIVES['long road'], 15)];
    expect(short.sooting).toBeGreaterThan(0.9);
    expect(long.sooting).toBeLessThan(0.1);
    expect(short.fouling.at(-1)!.insulation).toBeLessThan(10);
    expect(short.insulation.slice(0, 8)).toEqual([...short.insulation.slice(0, 8)].sort((a, b) => b - a));
  });

  it('is refused where the engine cannot be so cold', () => {
    const legs = legsOf('40, 2000, 50, 1');
    expect(legs.ok && driveAnswer({ engine: car, setting: usualSetting(car), legs: legs.value, start: -90, belief: PRIOR })).toMatchObject({ ok: false, error: [{ kind: 'start too cold' }] });
  });
});
