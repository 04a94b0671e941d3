// @vitest-environment node
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import type { Tip } from '../../../../shared/formats/reading-sheet.v1.ts';
import { FACET_NAMES, OVERALL, TIP_FACETS } from '../../../../shared/vocabulary/tip.ts';
import { CLOSE_UP } from '../../../../renderer/ui/drawn-tip/crop.ts';
import { drawTip, svgText } from '../../../../renderer/ui/drawn-tip/index.ts';

/** The sample beside a choice, as the pixels of a screen. */
async function pixels(tip: Tip, facet: keyof typeof CLOSE_UP, size: number): Promise<Buffer> {
  const { view, window } = CLOSE_UP[facet];
  return sharp(Buffer.from(svgText(drawTip(tip, view, size, 'bench', 'test', window), size))).removeAlpha().raw().toBuffer();
}

/** Pixels whose three channels, of 255 each, differ by more than 30 in sum. */
function differing(a: Buffer, b: Buffer): number {
  let count = 0;
  for (let i = 0; i < a.length; i += 3) {
    if ([0, 1, 2].reduce((sum, c) => sum + Math.abs((a[i + c] ?? 0) - (b[i + c] ?? 0)), 0) > 30) count += 1;
  }
  return count;
}

const SIZE = 48;
/** One in a hundred of the sample's pixels: less is not seen at a glance. */
const LEAST = (SIZE * SIZE) / 100;

const questions = [...FACET_NAMES.map((facet) => [facet, TIP_FACETS[facet]] as const), ['overall', OVERALL] as const];

describe('what an eye can tell apart', () => {
  it.each(questions)('shows every value of %s unlike "not observed" and unlike each other value', async (facet, values) => {
    const pictures = await Promise.all([{}, ...values.map((value) => ({ [facet]: value }))].map((tip) => pixels(tip, facet, SIZE)));
    const names = ['not observed', ...values];
    const alike = pictures.flatMap((one, i) => pictures.slice(i + 1).map((other, j) => [`${names[i]} / ${names[i + 1 + j]}`, differing(one, other)] as const)).filter(([, count]) => count < LEAST);
    expect(alike).toEqual([]);
  });

  it('shows more of a deposit the more of the nose it covers, and half of it on one side', async () => {
    const bare = await pixels({}, 'deposit', 200);
    const shown = async (coverage: 'light' | 'partial' | 'one-sided' | 'full'): Promise<number> => differing(bare, await pixels({ deposit: 'dry soot', coverage }, 'deposit', 200));
    const [light, partial, half, full] = [await shown('light'), await shown('partial'), await shown('one-sided'), await shown('full')];
    expect(light).toBeLessThan(partial);
    expect(partial).toBeLessThan(full);
    expect(half / full).toBeGreaterThan(0.35);
    expect(half / full).toBeLessThan(0.65);
  });
});
