import type { Page } from 'playwright-core';

/** Two hands on a keyboard and no mouse. A chord such as Alt 4 is one stroke. */
export type Hands = {
  readonly press: (...keys: readonly string[]) => Promise<void>;
  readonly type: (text: string) => Promise<void>;
  /** Presses Tab until what has the focus has a name that begins so, or matches. @throws when it comes round without having met it. */
  readonly tabTo: (name: string | RegExp) => Promise<void>;
  /** Presses the key that stands on this value of the open question. */
  readonly choose: (value: string) => Promise<void>;
  /** Waits until the screen of this heading has the keyboard. */
  readonly at: (heading: string) => Promise<void>;
  readonly strokes: () => number;
};

/** The name of what has the focus, as a screen reader would say it. */
async function focused(page: Page): Promise<string> {
  const said = await page.locator(':focus').or(page.locator('body')).last().ariaSnapshot();
  return /^- '?\w+ "(.*?)"/.exec(said)?.[1] ?? '';
}

const MOST_TABS = 60;

export function handsOn(page: Page): Hands {
  let strokes = 0;
  const press = async (...keys: readonly string[]): Promise<void> => {
    for (const key of keys) {
      await page.keyboard.press(key);
      strokes += 1;
    }
  };
  return {
    press,
    type: async (text) => {
      await page.keyboard.type(text);
      strokes += text.length;
    },
    tabTo: async (name) => {
      for (let tabs = 0; tabs < MOST_TABS; tabs += 1) {
        const said = await focused(page);
        if (typeof name === 'string' ? said.startsWith(name) : name.test(said)) return;
        await press('Tab');
      }
      throw new Error(`Tab does not come to "${String(name)}"`);
    },
    choose: async (value) => {
      const key = await page.getByRole('radiogroup').getByRole('radio', { name: value, exact: true }).getAttribute('aria-keyshortcuts');
      if (key === null) throw new Error(`no key stands on "${value}"`);
      await press(key);
    },
    at: async (heading) => {
      await page.waitForFunction((words) => {
        const bench = document.getElementById('bench');
        return bench?.querySelector('h1')?.textContent === words && bench.contains(document.activeElement);
      }, heading);
    },
    strokes: () => strokes,
  };
}
