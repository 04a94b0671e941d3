import { readFile, stat } from 'node:fs/promises';
import { err, ok, type Result } from '../../shared/result.ts';

/** A sheet of 18 cylinders with every field filled has some 60 kB; far above that, the file is something else. */
export const FILE_LIMIT_BYTES = 8_000_000;

/** The text of a file, or of standard input for `-`. The error is one line that names the file. */
export async function readInput(file: string): Promise<Result<string, string>> {
  const name = file === '-' ? 'standard input' : file;
  const bytes = file === '-' ? await fromStandardInput() : await fromFile(file);
  if (!bytes.ok) return err(`${name}: ${bytes.error}`);
  try {
    return ok(new TextDecoder('utf-8', { fatal: true }).decode(bytes.value));
  } catch {
    return err(`${name}: not UTF-8 text; save it as UTF-8`);
  }
}

const tooLarge = `too large; at most ${FILE_LIMIT_BYTES / 1_000_000} MB are read`;

async function fromFile(file: string): Promise<Result<Uint8Array, string>> {
  try {
    const { size } = await stat(file);
    return size > FILE_LIMIT_BYTES ? err(tooLarge) : ok(await readFile(file));
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? error.code : undefined;
    if (code === 'ENOENT') return err('there is no such file');
    if (code === 'EISDIR') return err('this is a folder; give a file');
    if (code === 'EACCES' || code === 'EPERM') return err('this file may not be read');
    return err(error instanceof Error ? error.message : String(error));
  }
}

async function fromStandardInput(): Promise<Result<Uint8Array, string>> {
  const chunks: Buffer[] = [];
  let size = 0;
  for await (const chunk of process.stdin as AsyncIterable<Buffer>) {
    size += chunk.length;
    if (size > FILE_LIMIT_BYTES) return err(tooLarge);
    chunks.push(chunk);
  }
  return ok(Buffer.concat(chunks));
}
