import { libraryFolder } from '../node/storage/place.ts';
import { parseStartOptions, USAGE, type StartOptions } from '../node/options.ts';
import { programVersion } from '../node/program.ts';
import { electronBinary, fetchElectron } from './electron-binary.ts';
import { chooseHost, hasDisplay } from './host-choice.ts';
import { reportFailure } from './report-failure.ts';
import { startElectron } from './start-electron.ts';
import { startLoopback } from './start-loopback.ts';
import { buildWhatIsStale } from './targets.ts';

const say = (text: string): void => { process.stdout.write(text); };
const administrator = process.platform !== 'win32' && process.getuid?.() === 0;

async function start(options: StartOptions): Promise<void> {
  const version = programVersion(new URL('../../package.json', import.meta.url));
  const folder = libraryFolder(options.library, process.env);
  const display = hasDisplay(process.platform, process.env);
  say(`Corenose ${version}\n`);
  await buildWhatIsStale(['page'], say);
  const choice = await chooseHost(options, {
    display, administrator,
    electron: async () => electronBinary() ?? (say('Fetching Electron, for a few seconds at most ...\n'), await fetchElectron()),
  });
  let why = choice.why;
  if (choice.binary !== null) {
    await buildWhatIsStale(['main', 'photoWorker', 'preload'], say);
    say(`Host: Electron, because ${why}.\n`);
    const failed = await startElectron(choice.binary, { folder, demo: options.demo });
    if (failed === null) return;
    why = `Electron would not start (${failed})`;
  }
  if (options.host === 'electron') {
    process.stderr.write(`Electron was asked for, but ${why}. Leave --host out to use the browser instead.\n`);
    process.exitCode = 1;
    return;
  }
  say(`Host: loopback, because ${why}.\n`);
  await startLoopback({ version, folder, demo: options.demo, port: options.port, open: options.open && display && !administrator }, say);
}

const options = parseStartOptions(process.argv.slice(2));
if (!options.ok) {
  process.stderr.write(`${options.error}\n\n${USAGE}\n`);
  process.exitCode = 2;
} else if (options.value.help) {
  say(`${USAGE}\n`);
} else {
  await start(options.value).catch(reportFailure);
}
