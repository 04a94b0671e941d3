import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';

export const ROOT = join(import.meta.dirname, '../..');

export type Count = { readonly passed: number; readonly failed: number; readonly skipped: number };
export const NOTHING: Count = { passed: 0, failed: 0, skipped: 0 };

export const sum = (a: Count, b: Count): Count => ({ passed: a.passed + b.passed, failed: a.failed + b.failed, skipped: a.skipped + b.skipped });

/** One plain line, as a runner reads it. */
export const countLine = ({ passed, failed, skipped }: Count): string => `${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`;

type Report = { readonly numPassedTests: number; readonly numFailedTests: number; readonly numPendingTests: number; readonly numTodoTests: number };

/**
 * Runs test projects and counts. A run that ends badly without a failed test, say a file that does not load, counts as one failure.
 * @param projects names of `tests/vitest.config.ts`
 */
export async function runVitest(projects: readonly string[], more: readonly string[] = [], env: NodeJS.ProcessEnv = process.env): Promise<Count> {
  const report = join(ROOT, 'node_modules/.cache/corenose-tests', `${projects.join('-')}.json`);
  mkdirSync(dirname(report), { recursive: true });
  rmSync(report, { force: true });
  const args = [
    join(ROOT, 'node_modules/vitest/vitest.mjs'), 'run', '--config', 'tests/vitest.config.ts', ...projects.flatMap((name) => ['--project', name]),
    '--reporter=default', '--reporter=json', `--outputFile.json=${report}`, ...more,
  ];
  const child = spawn(process.execPath, args, { cwd: ROOT, env, stdio: ['ignore', 'inherit', 'inherit'] });
  const [code] = (await once(child, 'exit')) as [number | null];
  const count = readCount(report);
  return code === 0 || count.failed > 0 ? count : { ...count, failed: 1 };
}

function readCount(report: string): Count {
  try {
    const { numPassedTests, numFailedTests, numPendingTests, numTodoTests } = JSON.parse(readFileSync(report, 'utf8')) as Report;
    return { passed: numPassedTests, failed: numFailedTests, skipped: numPendingTests + numTodoTests };
  } catch {
    return { ...NOTHING, failed: 1 };
  }
}
