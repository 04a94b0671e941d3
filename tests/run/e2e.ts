import { buildAll } from '../../electron/start/targets.ts';
import { runBrowserTests } from './browser-tests.ts';
import { countLine } from './vitest.ts';

await buildAll((line) => process.stdout.write(line));
const count = await runBrowserTests(process.argv.slice(2));
process.stdout.write(`\n${countLine(count)}\n`);
process.exitCode = count.failed > 0 ? 1 : 0;
