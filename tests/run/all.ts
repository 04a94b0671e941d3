import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';
import { runBrowserTests } from './browser-tests.ts';
import { countLine, NOTHING, ROOT, runVitest, sum, type Count } from './vitest.ts';

/** Everything that must hold, cheapest first. The first stage that fails ends the run. */
type Stage = { readonly name: string; readonly run: () => Promise<Count> };

const CLOSING_LINES = 3;
const SOURCES = ['shared', 'core', 'electron', 'renderer', 'seeds', 'tests'];

/** Runs one tool of the house. Quiet when all is well: its closing lines; its whole output when not. */
async function tool(file: string, ...args: readonly string[]): Promise<Count> {
  const child = spawn(process.execPath, [join(ROOT, file), ...args], { cwd: ROOT, env: { ...process.env, NO_COLOR: '1' }, stdio: ['ignore', 'pipe', 'pipe'] });
  let said = '';
  for (const stream of [child.stdout, child.stderr]) stream.on('data', (chunk: Buffer) => { said += chunk.toString('utf8'); });
  const [code] = (await once(child, 'close')) as [number | null];
  const lines = said.split('\n').filter((line) => line.trim() !== '');
  const shown = code === 0 ? lines.slice(-CLOSING_LINES) : lines;
  for (const line of shown) process.stdout.write(`${line}\n`);
  return code === 0 ? NOTHING : { ...NOTHING, failed: 1 };
}

const STAGES: readonly Stage[] = [
  { name: 'types', run: () => tool('node_modules/typescript/bin/tsc', '--build') },
  { name: 'lint', run: () => tool('node_modules/eslint/bin/eslint.js', '--config', 'tests/architecture/eslint.config.js', '--max-warnings', '0', '.') },
  { name: 'layers', run: () => tool('node_modules/dependency-cruiser/bin/dependency-cruiser.mjs', '--config', 'tests/architecture/layers.cjs', ...SOURCES) },
  { name: 'dead code', run: () => tool('node_modules/knip/bin/knip.js', '--config', 'tests/architecture/knip.json') },
  { name: 'format files up to date', run: () => tool('electron/cli/write-schemas.ts', '--check') },
  { name: 'unit, page and architecture tests', run: () => runVitest(['unit', 'page']) },
  { name: 'build', run: () => tool('electron/start/build.ts') },
  { name: 'browser tests', run: () => runBrowserTests() },
];

let count = NOTHING;
for (const [i, { name, run }] of STAGES.entries()) {
  process.stdout.write(`\n== ${i + 1} of ${STAGES.length}: ${name}\n`);
  const begun = performance.now();
  const now = await run();
  count = sum(count, now);
  process.stdout.write(`-- ${now.failed > 0 ? 'FAILED' : 'holds'} after ${((performance.now() - begun) / 1000).toFixed(1)} s\n`);
  if (now.failed > 0) {
    process.stdout.write(`\nStopped at "${name}"; ${STAGES.length - i - 1} stages were not run.\n`);
    process.exitCode = 1;
    break;
  }
}
process.stdout.write(`${countLine(count)}\n`);
