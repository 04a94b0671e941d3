import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { demoHost } from './demo-host.ts';
import { ALL_SCREENS_MS, SIZES, visitScreens } from './screens.ts';

const demo = demoHost('keyboard');

/** More stops than any screen has; a walk that does not come round by then is caught somewhere. */
const MOST_STOPS = 900;

/** Notes in the page where Tab led, and whether the place showed that it has the focus. */
const note = (page: Page): Promise<'new' | 'seen' | 'outside'> => page.evaluate(() => {
  const at = document.activeElement;
  if (!(at instanceof HTMLElement) || at === document.body) return 'outside';
  if (at.dataset.walked !== undefined) return 'seen';
  const marked = (element: Element | null): boolean => element !== null && (getComputedStyle(element).outlineStyle !== 'none' || getComputedStyle(element).boxShadow !== 'none');
  at.dataset.walked = marked(at) || marked(at.parentElement) ? 'seen' : 'unseen';
  return 'new';
});

/** What Tab did not come to, and what did not show its focus. One stop is enough for a row or list that is walked with the arrows. */
const missed = (page: Page): Promise<readonly string[]> => page.evaluate(() => {
  const GROUP = '[role="radiogroup"], [role="listbox"], [role="group"], [role="tablist"], table, nav, ul';
  const within = document.querySelector('[role="dialog"]') ?? document.body;
  const name = (element: HTMLElement): string => {
    const label = element instanceof HTMLInputElement ? element.labels?.[0]?.textContent : undefined;
    return `${element.tagName.toLowerCase()} "${(element.getAttribute('aria-label') ?? label ?? element.textContent).trim().slice(0, 40)}"`;
  };
  const isWalked = (element: Element | null): boolean => element !== null && (element.matches('[data-walked]') || element.querySelector('[data-walked]') !== null);
  const isReached = (control: HTMLElement): boolean => {
    if (control.tabIndex >= 0) return false;
    for (let group = control.closest(GROUP); group !== null; group = group.parentElement?.closest(GROUP) ?? null) if (isWalked(group)) return true;
    return control.getAttribute('role') === 'option';
  };
  const controls = [...within.querySelectorAll<HTMLElement>('a[href], button, input, select, textarea, [role="option"], [role="slider"]')].filter((control) => {
    const { width, height } = control.getBoundingClientRect();
    return width > 1 && height > 1 && !control.matches(':disabled, [type="hidden"], [data-walked]') && control.closest('[aria-hidden="true"], [inert]') === null;
  });
  const unseen = [...document.querySelectorAll<HTMLElement>('[data-walked="unseen"]')].filter((element) => element.id !== 'bench');
  return [...controls.filter((control) => !isReached(control)).map((control) => `not reached: ${name(control)}`), ...unseen.map((element) => `shows no focus: ${name(element)}`)];
});

/** Walks from the first control of the page to its end, or once round a sheet that lies over it. */
async function walk(page: Page): Promise<readonly string[]> {
  await page.evaluate(() => {
    for (const element of document.querySelectorAll<HTMLElement>('[data-walked]')) delete element.dataset.walked;
    if (document.querySelector('[role="dialog"]') === null) document.querySelector('button')?.focus();
    if (document.activeElement instanceof HTMLElement) document.activeElement.dataset.walked = 'seen';
  });
  for (let stops = 0; stops < MOST_STOPS; stops += 1) {
    await page.keyboard.press('Tab');
    if ((await note(page)) !== 'new') return missed(page);
  }
  return ['Tab does not come to an end'];
}

it('Tab comes to every control of every screen, shows where it is, and is caught nowhere', { timeout: ALL_SCREENS_MS }, async () => {
  const page = await demo.browser.newPage({ viewport: SIZES[0], reducedMotion: 'reduce' });
  const troubles: string[] = [];
  let walked = 0;
  await visitScreens(page, demo.address, async (name) => {
    walked += 1;
    troubles.push(...(await walk(page)).map((trouble) => `${name}: ${trouble}`));
  }, (name) => !/^(brannoch|halvorn|tarnelle)-/.test(name));
  await page.close();
  expect(walked).toBeGreaterThan(25);
  expect(troubles).toEqual([]);
});
