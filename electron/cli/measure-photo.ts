import { resolve } from 'node:path';
import { photoErrorText, type PhotoError } from '../node/photo/photo-error.ts';
import { forkedPhotoProcess } from '../node/photo/photo-process.ts';
import { PhotoReader } from '../node/photo/photo-reader.ts';
import { parsePhotoArguments, PHOTO_USAGE } from './photo-arguments.ts';

/** What cannot be measured is told on standard error, one line a problem, with nothing on standard output. */
function refuse(lines: readonly string[]): void {
  process.stderr.write(`${lines.join('\n')}\n`);
  process.exitCode = 2;
}

const told = (file: string, error: PhotoError): string => `${error.code === 'outside' ? `--${error.which}` : file}: ${photoErrorText(error)}`;

async function run(args: readonly string[]): Promise<void> {
  const asked = parsePhotoArguments(args);
  if (!asked.ok) return refuse(asked.error);
  if ('help' in asked.value) return void process.stdout.write(`${PHOTO_USAGE}\n`);
  const { file, pointedOut } = asked.value;
  const reader = new PhotoReader({ start: () => forkedPhotoProcess(new URL('../node/photo/worker.ts', import.meta.url)), lanes: 1 });
  const measured = await reader.do({ kind: 'measure', file: resolve(file), pointedOut });
  reader.close();
  if (!measured.ok) return refuse([told(file, measured.error)]);
  process.stdout.write(`${JSON.stringify(measured.value, null, 2)}\n`);
}

process.stdout.on('error', (error: NodeJS.ErrnoException) => { if (error.code !== 'EPIPE') throw error; });
await run(process.argv.slice(2));
