import { buildAll } from '../../electron/start/targets.ts';
import { runBrowserTests } from './browser-tests.ts';
import { countLine } from './vitest.ts';

/** `--renew-pictures` keeps how drawn tips and tray look now as the pictures to hold later ones against. */
const RENEW = '--renew-pictures';
const args = process.argv.slice(2);
if (args.includes(RENEW)) process.env['CORENOSE_RENEW_PICTURES'] = '1';

await buildAll((line) => process.stdout.write(line));
const count = await runBrowserTests(args.map((arg) => (arg === RENEW ? 'tests/e2e/pictures.e2e.ts' : arg)));
process.stdout.write(`\n${countLine(count)}\n`);
process.exitCode = count.failed > 0 ? 1 : 0;
