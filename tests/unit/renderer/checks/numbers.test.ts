import { describe, expect, it } from 'vitest';
import { lossPercent, takeDifferential } from '../../../../renderer/features/checks/differential.ts';
import { compressionSpread } from '../../../../renderer/features/checks/spread.ts';

describe('a differential test', () => {
  it('loses 15 % with 690 kPa in and 586 kPa held (worked example of a trade magazine, 2012)', () => {
    expect(lossPercent({ heldKPa: 586, supplyKPa: 690 })).toBeCloseTo(15, 0);
  });
  it('of 60 over 80 is a loss of 25 % (FAA AC 43.13-1B, paragraph 8-14)', () => {
    const taken = takeDifferential('60/80', 'inch');
    expect(taken.kind === 'value' && lossPercent(taken.value)).toBeCloseTo(25, 5);
  });
  it('is kept in kPa: 80 psi are 551.6 kPa (NIST Special Publication 811)', () => {
    const taken = takeDifferential(' 72 / 80 ', 'inch');
    expect(taken.kind === 'value' && taken.value.heldKPa).toBeCloseTo(496.4225, 3);
    expect(taken.kind === 'value' && taken.value.supplyKPa).toBeCloseTo(551.5806, 3);
  });
  it.each(['72', '81/80', '72/80/3', '72/', '/80', 'a/80', '72/0'])('is not taken from "%s"', (raw) => expect(takeDifferential(raw, 'inch').kind).toBe('problem'));
  it('left empty is not observed', () => expect(takeDifferential('  ', 'metric').kind).toBe('empty'));
});

describe('the spread of compression', () => {
  it('is the lowest over the highest (75 % is the limit of S15 and W19)', () => {
    const measured = [{ cylinder: 1, compressionKPa: 1000 }, { cylinder: 2 }, { cylinder: 3, compressionKPa: 750 }, { cylinder: 4, compressionKPa: 940 }];
    expect(compressionSpread(measured)).toEqual({ lowest: 3, best: 1, ratio: 0.75 });
  });
  it('needs two cylinders, and one of them with compression', () => {
    expect(compressionSpread([{ cylinder: 1, compressionKPa: 1000 }])).toBeUndefined();
    expect(compressionSpread([{ cylinder: 1, compressionKPa: 0 }, { cylinder: 2, compressionKPa: 0 }])).toBeUndefined();
  });
});
