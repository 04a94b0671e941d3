import axe from 'axe-core';
import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, it } from 'vitest';
import { demoHost } from './demo-host.ts';
import { ALL_SCREENS_MS, SIZES, THEMES, visitScreens } from './screens.ts';

const demo = demoHost('screens');

/** Rules of WCAG 2.2, levels A and AA, as axe-core checks them. */
const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

type Looked = { readonly broken: readonly string[]; readonly passed: number; readonly tooWide: boolean };

async function look(page: Page): Promise<Looked> {
  await page.evaluate(axe.source);
  return page.evaluate(async (rules) => {
    const { violations, passes } = await (window as unknown as { axe: typeof axe }).axe.run({ runOnly: rules });
    const broken = violations.map(({ id, nodes }) => `${id} at ${nodes.map((node) => node.target.join(' ')).join(', ')}`);
    return { broken, passed: passes.length, tooWide: document.documentElement.scrollWidth > window.innerWidth };
  }, RULES);
}

describe.each(THEMES)('every screen of the demo in the %s theme', (colorScheme) => {
  const looked = new Map<string, Looked>();
  const named = (troubled: (one: Looked) => readonly string[]): readonly string[] =>
    [...looked].flatMap(([name, one]) => troubled(one).map((trouble) => `${name}: ${trouble}`));

  beforeAll(async () => {
    const context = await demo.browser.newContext({ viewport: SIZES[0], colorScheme, reducedMotion: 'reduce' });
    const page = await context.newPage();
    await visitScreens(page, demo.address, async (name) => { looked.set(name, await look(page)); });
    await context.close();
  }, ALL_SCREENS_MS);

  it('was looked at', () => {
    expect(looked.size).toBeGreaterThan(10);
    expect(named(({ passed }) => (passed > 5 ? [] : [`only ${passed} rules applied`]))).toEqual([]);
  });

  it('breaks no rule of the Web Content Accessibility Guidelines that a machine can check', () => {
    expect(named(({ broken }) => broken)).toEqual([]);
  });

  it('fits the window from side to side', () => {
    expect(named(({ tooWide }) => (tooWide ? ['scrolls sideways'] : []))).toEqual([]);
  });
});
