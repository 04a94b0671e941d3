import { parseArgs } from 'node:util';
import { err, ok, type Result } from '../../shared/result.ts';

export type StartOptions = {
  readonly demo: boolean;
  readonly library: string | undefined;
  readonly host: 'electron' | 'loopback' | undefined;
  readonly open: boolean;
  /** 0 lets the system choose. */
  readonly port: number;
  readonly help: boolean;
};

export const USAGE = `npm start -- [options]

  --demo              open the demo library; your own stays untouched
  --library DIR       use this library folder (also: environment variable CORENOSE_LIBRARY)
  --host HOST         electron or loopback; without it the best of the two is taken
  --no-open           open no window; print the address
  --port N            port of the loopback host, 1024 to 65535; without it the system chooses`;

const OPTIONS = {
  demo: { type: 'boolean', default: false },
  library: { type: 'string' },
  host: { type: 'string' },
  'no-open': { type: 'boolean', default: false },
  port: { type: 'string' },
  help: { type: 'boolean', short: 'h', default: false },
} as const;

/** Reads the options of the start command. The error is one line that names the option and what is allowed. */
export function parseStartOptions(args: readonly string[]): Result<StartOptions, string> {
  try {
    const { values } = parseArgs({ args: [...args], options: OPTIONS, strict: true, allowPositionals: false });
    const { host, port } = values;
    if (host !== undefined && host !== 'electron' && host !== 'loopback') return err(`--host ${host}: allowed are electron, loopback`);
    if (port !== undefined && !(/^\d+$/.test(port) && Number(port) >= 1024 && Number(port) <= 65535)) return err(`--port ${port}: give a whole number from 1024 to 65535`);
    if (values.library === '') return err('--library: give a folder');
    return ok({ demo: values.demo, library: values.library, host, open: !values['no-open'], port: Number(port ?? 0), help: values.help });
  } catch (error) {
    return err((error instanceof Error ? error.message : String(error)).split('. ')[0] ?? '');
  }
}

/** The options that matter to a host that was handed a whole command line, of which it knows only a part, and the files it is to open. */
export function optionsAmong(args: readonly string[]): Pick<StartOptions, 'demo' | 'library'> & { readonly files: readonly string[] } {
  const { values, positionals } = parseArgs({ args: [...args], options: OPTIONS, strict: false, allowPositionals: true });
  return { demo: values.demo === true, library: typeof values.library === 'string' && values.library !== '' ? values.library : undefined, files: positionals };
}
