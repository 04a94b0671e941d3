import { chromium } from './chromium.ts';
import { runVitest, NOTHING, type Count } from './vitest.ts';

/** Runs the tests that drive the whole program in a real browser. Without a browser that is one failure, not a skip. */
export async function runBrowserTests(more: readonly string[] = []): Promise<Count> {
  const browser = chromium();
  if (browser === null) return { ...NOTHING, failed: 1 };
  process.stdout.write(`Browser: ${browser}\n`);
  return runVitest(['e2e'], more, { ...process.env, CORENOSE_CHROMIUM: browser });
}
