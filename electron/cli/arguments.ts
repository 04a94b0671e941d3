import { err, ok, type Result } from '../../shared/result.ts';

export const USAGE = 'npm run --silent diagnose -- FILE.json [--text] [--since EARLIER.json] [--shop LINES.json]   (FILE - reads standard input)';

/** `since`: the file of an earlier reading of the same engine, to compare with. `shop`: a file of lines of a workshop's own, to judge by as well. */
export type DiagnoseArguments = { readonly file: string; readonly asText: boolean; readonly since?: string; readonly shop?: string } | { readonly help: true };

/** Options that take a file, and what is said when none follows. */
const FILES = {
  since: '--since: no file given; name the sheet of an earlier reading',
  shop: '--shop: no file given; name a file of shop lines',
} as const;
type FileOption = keyof typeof FILES;
type Taken = { readonly given: { readonly [O in FileOption]?: string }; readonly problems: readonly string[]; readonly others: readonly string[] };

/** Takes `--since FILE` and its like out of the arguments; the file is missing when another option or nothing follows. */
function withoutFiles(args: readonly string[]): Taken {
  return (Object.keys(FILES) as FileOption[]).reduce<Taken>(({ given, problems, others }, name) => {
    const at = others.indexOf(`--${name}`);
    if (at < 0) return { given, problems, others };
    const next = others[at + 1];
    const file = next === undefined || next.startsWith('-') ? undefined : next;
    const rest = others.filter((_, i) => i !== at && (file === undefined || i !== at + 1));
    return file === undefined ? { given, problems: [...problems, FILES[name]], others: rest } : { given: { ...given, [name]: file }, problems, others: rest };
  }, { given: {}, problems: [], others: args });
}

/** Reads the command line of `diagnose`; one line a problem. */
export function parseArguments(args: readonly string[]): Result<DiagnoseArguments, string[]> {
  const { given, problems: fileless, others } = withoutFiles(args);
  const options = others.filter((arg) => arg.startsWith('-') && arg !== '-');
  const files = others.filter((arg) => !options.includes(arg));
  if (options.includes('--help') || options.includes('-h')) return ok({ help: true });
  const unknown = options.filter((option) => option !== '--text');
  const problems = [...unknown.map((option) => `${option}: unknown option; allowed are --text, --since EARLIER.json and --shop LINES.json`), ...fileless];
  if (files.length !== 1) problems.push(`${files.length === 0 ? 'no file given' : `${files.length} files given, one is read at a time`}; use ${USAGE}`);
  return problems.length > 0 ? err(problems) : ok({ file: files[0] ?? '', asText: options.includes('--text'), ...given });
}
