/**
 * Changes the program in small ways and asks whether a test notices: `npm run mutation`. The inference and the guards of the heat advice, by their own tests.
 */
export default {
  packageManager: 'npm',
  testRunner: 'vitest',
  plugins: ['@stryker-mutator/vitest-runner'],
  vitest: { configFile: 'tests/mutation/vitest.config.ts', related: false },
  mutate: ['core/inference/*.ts', 'core/heat/advice.ts', '!core/inference/summary.ts'],
  ignorePatterns: ['dist', 'renderer', 'electron', 'docs', 'tests/e2e', '*.tsbuildinfo'],
  ignoreStatic: true,
  coverageAnalysis: 'perTest',
  concurrency: 1,
  timeoutMS: 20_000,
  reporters: ['clear-text', 'progress-append-only'],
  clearTextReporter: { logTests: false, allowEmojis: false },
  tempDirName: 'node_modules/.cache/stryker',
};
