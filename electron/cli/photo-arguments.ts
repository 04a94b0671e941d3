import type { PointedOut } from '../node/photo/pointed-out.ts';
import { err, ok, type Result } from '../../shared/result.ts';

export const PHOTO_USAGE = 'npm run --silent measure-photo -- FILE [--neutral X,Y,W,H] [--nose X,Y,R]   (pixels of the upright picture)';

export type PhotoArguments = { readonly file: string; readonly pointedOut: PointedOut } | { readonly help: true };

const OPTIONS = { '--neutral': 'X,Y,W,H', '--nose': 'X,Y,R' } as const;
type Option = keyof typeof OPTIONS;
const isOption = (arg: string): arg is Option => Object.hasOwn(OPTIONS, arg);

/** Reads the command line of `measure-photo`; one line a problem. */
export function parsePhotoArguments(args: readonly string[]): Result<PhotoArguments, string[]> {
  if (args.includes('--help') || args.includes('-h')) return ok({ help: true });
  const files: string[] = [];
  const problems: string[] = [];
  const given = new Map<Option, readonly number[]>();
  for (let at = 0; at < args.length; at += 1) {
    const arg = args[at] ?? '';
    if (isOption(arg)) {
      at += 1;
      const numbers = numbersOf(args[at], OPTIONS[arg]);
      if (given.has(arg)) problems.push(`${arg}: given twice; give it once`);
      if (typeof numbers === 'string') problems.push(`${arg}: ${numbers}`);
      else given.set(arg, numbers);
    } else if (arg.startsWith('-')) problems.push(`${arg}: unknown option; allowed are ${Object.keys(OPTIONS).join(', ')}`);
    else files.push(arg);
  }
  if (files.length !== 1) problems.push(`${files.length === 0 ? 'no file given' : `${files.length} files given, one is measured at a time`}; use ${PHOTO_USAGE}`);
  return problems.length > 0 ? err(problems) : ok({ file: files[0] ?? '', pointedOut: pointedOutBy(given) });
}

function numbersOf(given: string | undefined, form: string): readonly number[] | string {
  const count = form.split(',').length;
  const parts = (given ?? '').split(',');
  const numbers = parts.map((part) => (/^\d+([.]\d+)?$/.test(part) ? Number(part) : NaN));
  const sizes = numbers.slice(2);
  if (parts.length !== count || numbers.some(Number.isNaN)) return `${given === undefined ? 'missing' : `"${given}" is not ${form}`}; give ${form} in pixels of the upright picture, none below 0`;
  return sizes.some((size) => size === 0) ? `"${given ?? ''}" has no size; ${form.slice(4)} must be above 0` : numbers;
}

function pointedOutBy(given: ReadonlyMap<Option, readonly number[]>): PointedOut {
  const [neutral, nose] = [given.get('--neutral'), given.get('--nose')];
  const [nx = 0, ny = 0, w = 0, h = 0] = neutral ?? [];
  const [x = 0, y = 0, r = 0] = nose ?? [];
  return { ...(neutral && { white: { kind: 'patch' as const, x: nx, y: ny, w, h } }), ...(nose && { parts: { nose: { x, y, r } } }) };
}
