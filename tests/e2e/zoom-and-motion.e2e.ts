import type { BrowserContextOptions, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { demoHost } from './demo-host.ts';
import { ALL_SCREENS_MS, SIZES, visitScreens } from './screens.ts';

const demo = demoHost('zoom');

async function troubles(options: BrowserContextOptions, look: (page: Page) => Promise<readonly string[]>): Promise<readonly string[]> {
  const context = await demo.browser.newContext(options);
  const found: string[] = [];
  let seen = 0;
  const page = await context.newPage();
  await visitScreens(page, demo.address, async (name) => {
    seen += 1;
    found.push(...(await look(page)).map((trouble) => `${name}: ${trouble}`));
  });
  await context.close();
  expect(seen).toBeGreaterThan(10);
  return found;
}

/** Twice the size in a window of 1280 by 800 leaves the page half of each. */
const ZOOMED = { viewport: { width: SIZES[0].width / 2, height: SIZES[0].height / 2 }, deviceScaleFactor: 2 };

/** Controls that stand outside the window at the right, and cannot be scrolled to within their own part of the screen. */
const outOfReach = (page: Page): Promise<readonly string[]> => page.evaluate(() => {
  const scrolls = (element: Element): boolean => {
    for (let at = element.parentElement; at !== null; at = at.parentElement) if (['auto', 'scroll'].includes(getComputedStyle(at).overflowX) && at.scrollWidth > at.clientWidth) return true;
    return false;
  };
  const sideways = document.documentElement.scrollWidth > window.innerWidth ? ['scrolls sideways'] : [];
  const controls = [...document.querySelectorAll('button, a[href], input, select, textarea, [role="option"]')].filter((control) => {
    const { left, right, width } = control.getBoundingClientRect();
    return width > 1 && (right > window.innerWidth + 1 || left < -1) && !scrolls(control);
  });
  return [...sideways, ...controls.map((control) => `out of reach: ${control.getAttribute('aria-label') ?? control.textContent}`)];
});

/** Everything that moves or is about to. */
const moving = (page: Page): Promise<readonly string[]> => page.evaluate(() => {
  const still = (times: string): boolean => times.split(',').every((time) => Number.parseFloat(time) === 0);
  const elements = [...document.querySelectorAll('*')].filter((element) => {
    const { animationName, transitionDuration } = getComputedStyle(element);
    return animationName !== 'none' || !still(transitionDuration);
  });
  return elements.map((element) => `${element.tagName} ${element.className}`);
});

describe('every screen of the demo', { timeout: ALL_SCREENS_MS }, () => {
  it('at twice the size has every control within the window', async () => {
    expect(await troubles(ZOOMED, outOfReach)).toEqual([]);
  });

  it('stands still for people who asked for less motion', async () => {
    expect(await troubles({ viewport: SIZES[0], reducedMotion: 'reduce' }, moving)).toEqual([]);
  });
});
