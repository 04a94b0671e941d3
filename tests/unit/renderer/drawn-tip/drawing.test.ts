import { converter } from 'culori';
import { describe, expect, it } from 'vitest';
import type { Tip } from '../../../../shared/formats/reading-sheet.v1.ts';
import { FACET_NAMES, OVERALL, TIP_FACETS } from '../../../../shared/vocabulary/tip.ts';
import { drawTip, svgText, type View } from '../../../../renderer/ui/drawn-tip/index.ts';
import { CHALK, DEPOSIT_TONE, GROUND, hex, NOSE_TONE } from '../../../../renderer/ui/drawn-tip/palette.ts';

const markup = (tip: Tip, view: View, size = 480, seed = 'bench'): string => svgText(drawTip(tip, view, size, seed, 'test'), size);
const both = (tip: Tip, size = 480): string => markup(tip, 'end', size) + markup(tip, 'side', size);
const paints = (text: string): string[] => [...new Set([...text.matchAll(/(?:fill|stroke|stop-color)="(#[0-9a-f]{6})"/g)].map((match) => match[1] ?? ''))];

const PLAIN: Tip = {};
const READ: Tip = { noseColour: 'light tan', noseSurface: 'fine powder', centreElectrode: 'sharp', groundElectrode: 'as new', shellRim: 'even soot' };
const values = FACET_NAMES.flatMap((facet) => TIP_FACETS[facet].map((value) => [facet, value] as const));
describe('the drawn tip', () => {
  it.each(values)('shows %s %s, on a bare drawing and on one that is read', (facet, value) => {
    const { [facet]: _, ...rest } = READ;
    expect(both({ [facet]: value })).not.toBe(both(PLAIN));
    expect(both({ ...rest, [facet]: value })).not.toBe(both(rest));
  });

  it.each(OVERALL)('shows "%s" as strokes in both views', (overall) => {
    for (const view of ['end', 'side'] as const) expect(markup({ overall }, view)).not.toBe(markup(PLAIN, view));
  });

  it('draws what was not observed in one line colour on the grey, without a surface', () => {
    expect(paints(both(PLAIN)).sort()).toEqual([CHALK, GROUND].sort());
    expect(both(PLAIN)).not.toMatch(/gradient/i);
  });

  it('keeps the colours of deposits and noses out of a drawing in which only the terminal was looked at', () => {
    const there = paints(both({ terminal: 'corroded', threads: 'clean' }));
    const tones = [...Object.entries(DEPOSIT_TONE).filter(([name]) => name !== 'none').map(([, tone]) => tone), ...Object.values(NOSE_TONE)].map(hex);
    expect(there.filter((colour) => tones.includes(colour))).toEqual([]);
  });

  it('paints the nose in the colour that a photo measured, as culori converts it, whatever it was called', () => {
    const measured = converter('lab65')('#96643c');
    for (const view of ['end', 'side'] as const) {
      const drawing = drawTip({ noseColour: 'white' }, view, 480, 'bench', 'test', undefined, [measured?.l ?? 0, measured?.a ?? 0, measured?.b ?? 0]);
      expect(paints(svgText(drawing, 480))).toContain('#96643c');
      expect(paints(svgText(drawing, 480))).not.toContain(hex(NOSE_TONE.white));
    }
  });

  it('tells "looked for, none" from "not observed"', () => {
    for (const facet of ['deposit', 'coverage', 'specks', 'bridge', 'sootRing', 'noseDamage', 'contact'] as const) {
      expect(markup({ [facet]: 'none' }, 'end')).not.toBe(markup(PLAIN, 'end'));
    }
  });

  it('is the same drawing every time for the same seed, and another grain for another', () => {
    const tip: Tip = { deposit: 'lead beads', coverage: 'partial', specks: 'dark pepper', noseColour: 'brown' };
    expect(markup(tip, 'end', 480, '3 upper')).toBe(markup(tip, 'end', 480, '3 upper'));
    expect(markup(tip, 'end', 480, '3 upper')).not.toBe(markup(tip, 'end', 480, '3 lower'));
  });

  it('leaves the deposit where it lay when specks are added', () => {
    const deposit: Tip = { deposit: 'dry soot', coverage: 'light' };
    const island = (tip: Tip): string | undefined => /<path d="([^"]+)" fill="#2c2b2a"/.exec(markup(tip, 'end'))?.[1] ?? /clip-path[^>]*><path d="([^"]+)"/.exec(markup(tip, 'end'))?.[1];
    expect(island(deposit)).toBeDefined();
    expect(island({ ...deposit, specks: 'dark pepper' })).toBe(island(deposit));
  });

  it('uses presentation attributes only, as a strict content policy asks', () => {
    const everything = values.map(([facet, value]) => both({ ...READ, [facet]: value })).join('');
    expect(everything).not.toMatch(/style=|NaN|undefined|Infinity|<script|href=|data:/);
  });
});
