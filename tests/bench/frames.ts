import type { Page } from 'playwright-core';

/** Notes the time between frames, ms. @returns what gives those since it was last asked. */
export async function watchFrames(page: Page): Promise<() => Promise<readonly number[]>> {
  await page.evaluate(() => {
    const gaps: number[] = [];
    let last: number | undefined;
    const note = (at: number): void => {
      if (last !== undefined) gaps.push(at - last);
      last = at;
      requestAnimationFrame(note);
    };
    requestAnimationFrame(note);
    Object.assign(globalThis, { frameGaps: gaps });
  });
  return () => page.evaluate(() => (globalThis as unknown as { frameGaps: number[] }).frameGaps.splice(0));
}

/** The middle and the long times between frames, in words. */
export function frameWords(gaps: readonly number[]): string {
  const sorted = gaps.toSorted((a, b) => a - b);
  const at = (share: number): string => (sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? NaN).toFixed(1);
  return `median ${at(0.5)} ms, 95 of 100 within ${at(0.95)} ms, longest ${at(1)} ms`;
}
