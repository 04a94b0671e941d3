import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vitest/config';
import { LongFirst } from './run/long-first.ts';

const root = fileURLToPath(new URL('..', import.meta.url));

/** A busy machine is no reason to fail. Milliseconds. */
const PATIENCE = 60_000;

/** One project a kind of test: plain Node, the page in jsdom, and the whole program in a real browser. */
export default defineConfig({
  root,
  cacheDir: 'node_modules/.cache/vitest',
  test: {
    slowTestThreshold: 5000,
    sequence: { sequencer: LongFirst },
    projects: [
      {
        root,
        test: {
          name: 'unit',
          environment: 'node',
          testTimeout: PATIENCE,
          hookTimeout: PATIENCE,
          include: ['tests/{unit,knowledge,architecture}/**/*.test.ts'],
          exclude: ['tests/unit/renderer/**'],
        },
      },
      {
        root,
        plugins: [react()],
        test: {
          name: 'page',
          environment: 'jsdom',
          testTimeout: PATIENCE,
          include: ['tests/unit/renderer/**/*.test.{ts,tsx}'],
          setupFiles: ['tests/run/clean-page.ts'],
          css: { include: /.+/, modules: { classNameStrategy: 'non-scoped' } },
          restoreMocks: true,
        },
      },
      {
        root,
        test: {
          name: 'e2e',
          environment: 'node',
          include: ['tests/e2e/**/*.e2e.ts'],
          fileParallelism: false,
          testTimeout: 120_000,
          hookTimeout: 120_000,
        },
      },
    ],
  },
});
