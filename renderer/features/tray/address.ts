import type { PlugKey } from '../../../core/domain/plugs.ts';
import { placeOf } from '../../state/places.ts';
import type { Question } from '../../ui/drawn-tip/index.ts';
import { SEQUENCE } from './questions.ts';
import type { Detail } from './use-entry.ts';

/** What an address can ask for at the plugs: `3`, `3 upper`, `measured`, `3 upper.measured`, `3.deposit`. */
export type Asked = { readonly plug?: PlugKey; readonly detail?: Detail; readonly question?: Question };

const DETAILS: readonly Detail[] = ['measured', 'fitted', 'note'];

export function askedBy(field: string): Asked {
  const [first = '', second] = field.split('.');
  const plug = placeOf(first) === undefined ? undefined : first;
  const word = plug === undefined ? first : second;
  const detail = DETAILS.find((name) => name === word);
  const question = SEQUENCE.find((name) => name === word);
  return { ...(plug !== undefined && { plug }), ...(detail !== undefined && { detail }), ...(question !== undefined && { question }) };
}
