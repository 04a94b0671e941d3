import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { ELECTRON_FOLDER, electronBinary, fetchElectron } from '../start/electron-binary.ts';
import { reportFailure } from '../start/report-failure.ts';
import { buildAll, ROOT } from '../start/targets.ts';

/** A binary of over 100 MB may take its time here. */
const FETCH_MS = 10 * 60_000;

async function packageHere(form: 'dir' | 'default'): Promise<void> {
  if ((electronBinary() ?? (await fetchElectron(FETCH_MS))) === null) throw new Error('Nothing was packaged: the Electron binary is not here and could not be fetched.');
  await buildAll((text) => process.stdout.write(text));
  const [{ pack }, { Platform }] = await Promise.all([import('./pack.ts'), import('electron-builder')]);
  const made = await pack({ electron: ELECTRON_FOLDER, output: join(ROOT, 'dist/packages'), platform: Platform.current() }, form);
  for (const file of made) process.stdout.write(`${file}\n`);
}

/** `--dir`: only the folder to start the program from, without its installers. */
try {
  const { values } = parseArgs({ options: { dir: { type: 'boolean', default: false } } });
  await packageHere(values.dir ? 'dir' : 'default');
} catch (error) {
  reportFailure(error);
}
