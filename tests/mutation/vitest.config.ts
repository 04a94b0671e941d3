import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/** The quick tests of the inference and the heat advice; the long runs over random sheets would take a day for every change. */
export default defineConfig({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  test: {
    environment: 'node',
    include: ['tests/unit/core/inference/*.test.ts', 'tests/unit/core/heat/*.test.ts', 'tests/knowledge/{textbook-readings,stopping}.test.ts'],
    exclude: ['tests/unit/core/inference/guards-*.test.ts', 'tests/unit/core/inference/{invariants,findings-any-sheet}.test.ts'],
    testTimeout: 60_000,
  },
});
