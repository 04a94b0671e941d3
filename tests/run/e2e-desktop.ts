import { buildAll } from '../../electron/start/targets.ts';
import { whyNotOnBinary } from '../e2e/desktop.ts';
import { countLine, runVitest } from './vitest.ts';

/** The desktop tests on the real Electron binary. Where it is absent they are skipped and say so. */
await buildAll((line) => process.stdout.write(line));
const count = await runVitest(['e2e'], ['tests/e2e/desktop', ...process.argv.slice(2)], { ...process.env, CORENOSE_E2E_BINARY: '1' });
process.stdout.write(`\n${countLine(count)}${whyNotOnBinary() === null ? '' : ` (${whyNotOnBinary() ?? ''})`}\n`);
process.exitCode = count.failed > 0 ? 1 : 0;
