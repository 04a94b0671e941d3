import { err, ok, type Result } from '../../shared/result.ts';

export const USAGE = 'npm run --silent diagnose -- FILE.json [--text]   (FILE - reads standard input)';

export type DiagnoseArguments = { readonly file: string; readonly asText: boolean } | { readonly help: true };

/** Reads the command line of `diagnose`; one line a problem. */
export function parseArguments(args: readonly string[]): Result<DiagnoseArguments, string[]> {
  const options = args.filter((arg) => arg.startsWith('-') && arg !== '-');
  const files = args.filter((arg) => !options.includes(arg));
  if (options.includes('--help') || options.includes('-h')) return ok({ help: true });
  const problems = options.filter((option) => option !== '--text').map((option) => `${option}: unknown option; allowed is --text`);
  if (files.length !== 1) problems.push(`${files.length === 0 ? 'no file given' : `${files.length} files given, one is read at a time`}; use ${USAGE}`);
  return problems.length > 0 ? err(problems) : ok({ file: files[0] ?? '', asText: options.includes('--text') });
}
