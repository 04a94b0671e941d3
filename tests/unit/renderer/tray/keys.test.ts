import { describe, expect, it } from 'vitest';
import { commandOf, VALUE_KEYS, type KeyPress } from '../../../../renderer/features/tray/keys.ts';
import { SEQUENCE, valuesOf } from '../../../../renderer/features/tray/questions.ts';
import { FACET_NAMES } from '../../../../shared/vocabulary/tip.ts';

const press = (key: string, more: Partial<KeyPress> = {}): KeyPress => ({ key, code: '', shiftKey: false, ctrlKey: false, altKey: false, metaKey: false, ...more });

describe('the keys at the plugs', () => {
  it('give every value of every question its own key', () => {
    expect(Math.max(...SEQUENCE.map((question) => valuesOf(question).length))).toBeLessThanOrEqual(VALUE_KEYS.length);
    expect(new Set(VALUE_KEYS).size).toBe(VALUE_KEYS.length);
  });

  it('ask every facet once, and the whole first', () => {
    expect([...SEQUENCE].sort()).toEqual([...FACET_NAMES, 'overall'].sort());
    expect(SEQUENCE.slice(0, 5)).toEqual(['overall', 'noseColour', 'noseSurface', 'deposit', 'coverage']);
  });

  it('never take a value key for a command', () => {
    for (const [index, key] of VALUE_KEYS.entries()) expect(commandOf(press(key), 17)).toEqual({ does: 'choose', index, then: 'question' });
    for (const key of ['u', 'o', 'c', 's', 'm', 'n', '/']) expect(commandOf(press(key), 17)?.does).not.toBe('choose');
  });

  it('leave a key beyond the last value alone', () => {
    expect(commandOf(press('9', { code: 'Digit9' }), 3)).toBeUndefined();
    expect(commandOf(press('q'), 10)).toBeUndefined();
  });

  it('work on layouts that write digits with Shift, on the number block, and where a bracket needs AltGr', () => {
    expect(commandOf(press('&', { code: 'Digit1' }), 5)).toEqual({ does: 'choose', index: 0, then: 'question' });
    expect(commandOf(press('2', { code: 'Numpad2' }), 5)).toEqual({ does: 'choose', index: 1, then: 'question' });
    expect(commandOf(press(']', { ctrlKey: true, altKey: true }), 5)).toEqual({ does: 'plug', steps: 1 });
    expect(commandOf(press('/', { code: 'Digit7', shiftKey: true }), 9)).toEqual({ does: 'search' });
  });

  it('leave the keys of the whole program alone', () => {
    expect(commandOf(press('z', { ctrlKey: true }), 17)).toBeUndefined();
    expect(commandOf(press('1', { code: 'Digit1', altKey: true }), 17)).toBeUndefined();
    expect(commandOf(press('c', { metaKey: true }), 17)).toBeUndefined();
    expect(commandOf(press('?', { shiftKey: true }), 17)).toBeUndefined();
  });
});
