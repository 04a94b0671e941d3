import { statSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** Sums over every world and whole readings come last: most changes fall to a test of their own part before. */
const WHOLE = /(posterior|other-program|complaint|diagnose|inference.guards)\.test\.ts$/;

class PartsFirst extends BaseSequencer {
  override sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const weight = ({ moduleId }: TestSpecification): number => (WHOLE.test(moduleId) ? 1e9 : 0) + statSync(moduleId).size;
    return Promise.resolve([...files].sort((a, b) => weight(a) - weight(b)));
  }
}

/** The quick tests of the inference and the heat advice; the long runs over random sheets would take a day for every change. */
export default defineConfig({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  test: {
    environment: 'node',
    include: [
      'tests/unit/core/inference/*.test.ts', 'tests/unit/core/once.test.ts', 'tests/unit/core/heat/advice.test.ts',
      'tests/unit/core/followup/earlier-bars.test.ts', 'tests/unit/core/shop-lines/guards.test.ts', 'tests/knowledge/stopping.test.ts',
    ],
    exclude: ['tests/unit/core/inference/{guards-*,*any-sheet,invariants,explained-lines,first-look,remembered}.test.ts'],
    sequence: { sequencer: PartsFirst },
    testTimeout: 60_000,
  },
});
