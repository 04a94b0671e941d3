import { describe, expect, it, vi } from 'vitest';
import { Kept, once } from '../../../core/once.ts';

describe('what was worked out', () => {
  it('is worked out the first time it is asked for, then kept under its key', () => {
    const known = new Map<string, { readonly at: number }>();
    let count = 0;
    const make = vi.fn(() => ({ at: (count += 1) }));
    const first = once(known, 'a', make);
    expect(once(known, 'a', make)).toBe(first);
    expect(once(known, 'b', make)).toEqual({ at: 2 });
    expect(make).toHaveBeenCalledTimes(2);
    expect(known.get('a')).toBe(first);
  });

  it('is kept under two keys, or three', () => {
    const kept = new Kept<string, string, number, string>();
    let count = 0;
    const make = (): number => (count += 1);
    const ask = (): number[] => [
      kept.once('a', 'b', make), kept.once('a', 'c', make), kept.once('d', 'b', make), kept.once('a', 'b', make, 'e'), kept.once('a', 'b', make, 'f'),
    ];
    expect(ask()).toEqual([1, 2, 3, 4, 5]);
    expect(ask()).toEqual([1, 2, 3, 4, 5]);
  });
});
