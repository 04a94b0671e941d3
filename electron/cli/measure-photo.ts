import { photoErrorText, type PhotoError } from '../node/photo/photo-error.ts';
import { photoMeasureOf } from '../node/photo/photo-measure.ts';
import { PhotoReader } from '../node/photo/photo-reader.ts';
import { readPhotoFile } from '../node/photo/read-photo-file.ts';
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
  const bytes = await readPhotoFile(file);
  if (!bytes.ok) return refuse([told(file, bytes.error)]);
  const reader = new PhotoReader();
  const measured = await reader.measure(bytes.value, pointedOut);
  await reader.close();
  if (!measured.ok) return refuse([told(file, measured.error)]);
  process.stdout.write(`${JSON.stringify(photoMeasureOf(measured.value, pointedOut), null, 2)}\n`);
}

process.stdout.on('error', (error: NodeJS.ErrnoException) => { if (error.code !== 'EPIPE') throw error; });
await run(process.argv.slice(2));
