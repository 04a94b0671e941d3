import { err, ok, type Result } from '../../shared/result.ts';

export const USAGE = 'npm run --silent diagnose -- FILE.json [--text] [--since EARLIER.json]   (FILE - reads standard input)';

/** `since`: the file of an earlier reading of the same engine, to compare with. */
export type DiagnoseArguments = { readonly file: string; readonly asText: boolean; readonly since?: string } | { readonly help: true };

/** Takes `--since FILE` out of the arguments; the file is missing when another option or nothing follows. */
function sinceOption(args: readonly string[]): { readonly asked: boolean; readonly file: string | undefined; readonly others: readonly string[] } {
  const at = args.indexOf('--since');
  if (at < 0) return { asked: false, file: undefined, others: args };
  const next = args[at + 1];
  const file = next === undefined || next.startsWith('-') ? undefined : next;
  return { asked: true, file, others: args.filter((_, i) => i !== at && (file === undefined || i !== at + 1)) };
}

/** Reads the command line of `diagnose`; one line a problem. */
export function parseArguments(args: readonly string[]): Result<DiagnoseArguments, string[]> {
  const { asked, file: since, others } = sinceOption(args);
  const options = others.filter((arg) => arg.startsWith('-') && arg !== '-');
  const files = others.filter((arg) => !options.includes(arg));
  if (options.includes('--help') || options.includes('-h')) return ok({ help: true });
  const problems = options.filter((option) => option !== '--text').map((option) => `${option}: unknown option; allowed are --text and --since EARLIER.json`);
  if (asked && since === undefined) problems.push('--since: no file given; name the sheet of an earlier reading');
  if (files.length !== 1) problems.push(`${files.length === 0 ? 'no file given' : `${files.length} files given, one is read at a time`}; use ${USAGE}`);
  return problems.length > 0 ? err(problems) : ok({ file: files[0] ?? '', asText: options.includes('--text'), ...(since !== undefined && { since }) });
}
