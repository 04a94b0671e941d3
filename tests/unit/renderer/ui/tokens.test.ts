import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const css = readFileSync('renderer/ui/tokens.css', 'utf8');
const blockAfter = (selector: string): string => css.slice(css.indexOf(selector)).split('}')[0] ?? '';
const colours = (block: string): Record<string, string> => Object.fromEntries([...block.matchAll(/--([\w-]+): (#[0-9a-f]{6})/g)].map(([, name = '', value = '']) => [name, value]));

const light = colours(blockAfter(':root {'));
const dark = { ...light, ...colours(blockAfter(":root[data-theme='dark']")) };
const themes = { light, dark };

const channels = (hex: string): number[] => [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16) / 255);
/** Relative luminance as WCAG 2.2 defines it. */
function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = channels(hex).map((c) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}
function contrast(a: string, b: string): number {
  const [high = 0, low = 0] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (high + 0.05) / (low + 0.05);
}

const GROUNDS = ['bench', 'sheet', 'well', 'raised'] as const;
/** What text lies on in the findings. */
const FINDINGS_GROUNDS = ['bench', 'sheet', 'raised'] as const;
const TONES = ['open', 'sound', 'watch', 'act', 'stop'] as const;

describe.each(Object.entries(themes))('the %s theme', (_, theme) => {
  const of = (name: string): string => theme[name] ?? 'missing';

  it.each<[string, string]>([...GROUNDS.flatMap((ground) => [['ink', ground], ['ink-soft', ground]] as [string, string][]), ['on-accent', 'accent'], ['ink', 'accent-wash'], ['on-surround', 'surround'],
    ...TONES.map((tone): [string, string] => [`${tone}-ink`, `${tone}-fill`]), ['accent', 'bench'], ['accent', 'sheet'], ['problem', 'raised'], ['problem', 'bench']])(
    // WCAG 2.2, success criterion 1.4.3: text needs 4.5 to 1.
    '%s on %s can be read', (ink, ground) => { expect(contrast(of(ink), of(ground))).toBeGreaterThanOrEqual(4.5); });

  it.each<[string, string]>([...FINDINGS_GROUNDS.flatMap((ground) => ['ink', 'ink-soft', 'accent', 'problem'].map((ink): [string, string] => [ink, ground])), ['ink', 'accent-wash'],
    ...TONES.map((tone): [string, string] => [`${tone}-ink`, `${tone}-fill`])])(
    // WCAG 2.2, success criterion 1.4.6: at level AAA text needs 7 to 1.
    '%s on %s can be read in the findings at arm\'s length', (ink, ground) => { expect(contrast(of(ink), of(ground))).toBeGreaterThanOrEqual(7); });

  it.each<[string, string]>(GROUNDS.flatMap((ground) => [['edge', ground], ['focus', ground]]))(
    // WCAG 2.2, success criterion 1.4.11: the border of a control and the focus ring need 3 to 1.
    '%s stands out on %s', (line, ground) => { expect(contrast(of(line), of(ground))).toBeGreaterThanOrEqual(3); });

  it('is grey without hue wherever a tip is judged', () => {
    for (const name of [...GROUNDS, 'surround', 'surround-line', 'line', 'edge', 'ink']) expect(new Set(channels(of(name))).size, name).toBe(1);
  });

  it('shows a graver judgement with more contrast, so that the order holds without colour', () => {
    const strength = (['sound', 'watch', 'act', 'stop'] as const).map((tone) => contrast(of(`${tone}-fill`), of('sheet')));
    expect([...strength].sort((a, b) => a - b)).toEqual(strength);
    strength.slice(1).forEach((value, i) => expect(value / (strength[i] ?? value)).toBeGreaterThan(1.2));
  });

  it('lays tips on a grey near Munsell N5', () => {
    // ASTM D1535: luminance of Munsell value V in per cent, 1.1914 V - 0.22533 V^2 + 0.23352 V^3 - 0.020484 V^4 + 0.00081939 V^5; V = 5 gives 19.3.
    const value = 5;
    const expected = 1.1914 * value - 0.22533 * value ** 2 + 0.23352 * value ** 3 - 0.020484 * value ** 4 + 0.00081939 * value ** 5;
    expect(Math.abs(luminance(of('surround')) * 100 - expected)).toBeLessThan(1);
  });
});

describe('the style sheets of the findings', () => {
  const sheets = readdirSync('renderer/features/findings').filter((name) => name.endsWith('.css')).map((name) => readFileSync(`renderer/features/findings/${name}`, 'utf8'));

  /** Beside those above: the rung that is advised is the sheet on ink, and on the surround of a tip stands no text. */
  it('take no other ink and no other ground', () => {
    const used = (property: string): string[] => [...new Set(sheets.flatMap((sheet) => [...sheet.matchAll(new RegExp(`[\\s{;]${property}: ([^;}]+)`, 'g'))].map(([, value = '']) => value.trim())))];
    const inks = ['sheet', 'ink', 'ink-soft', 'accent', 'problem', ...TONES.map((tone) => `${tone}-ink`)].map((name) => `var(--${name})`);
    const grounds = ['ink', 'surround', 'bench', 'sheet', 'raised', 'accent-wash', ...TONES.map((tone) => `${tone}-fill`)].map((name) => `var(--${name})`);
    expect(used('color').filter((value) => ![...inks, 'inherit'].includes(value))).toEqual([]);
    expect(used('background').filter((value) => ![...grounds, 'none', 'transparent'].includes(value))).toEqual([]);
  });
});
