import type { z } from 'zod';
import { Choice } from '../../ui/choice.tsx';
import { QuantityField } from '../../ui/quantity-field.tsx';
import { rangeOf, type Quantity } from '../../ui/quantity.ts';
import { TextField } from '../../ui/text-field.tsx';
import styles from './engine-editor.module.css';
import { useEditing } from './editing.ts';

const read = (value: unknown, path: string): unknown =>
  path.split('.').reduce<unknown>((part, key) => (typeof part === 'object' && part !== null ? (part as Record<string, unknown>)[key] : undefined), value);

type WordsProps = { readonly path: string; readonly label: string; readonly hint?: string; readonly limit: number; readonly autoFocus?: boolean };

/** A text of the engine, by its path in the format. */
export function DraftText({ path, ...rest }: WordsProps) {
  const { draft, enter, problemAt } = useEditing();
  return <TextField {...rest} value={(read(draft.fields, path) ?? '') as string} problem={problemAt(path)} onChange={(text) => enter(path, text)} />;
}

type ChoiceProps<T extends string> = { readonly path: string; readonly label: string; readonly options: readonly T[]; readonly nameOf?: (option: T) => string };

export function DraftChoice<T extends string>({ path, ...rest }: ChoiceProps<T>) {
  const { draft, enter, problemAt } = useEditing();
  const problem = problemAt(path);
  return (
    <div data-problem={problem === undefined ? undefined : ''}>
      <Choice {...rest} value={read(draft.fields, path) as T | undefined} onChange={(value) => enter(path, value)} />
      {problem !== undefined && <p className={styles.problem}>{problem}</p>}
    </div>
  );
}

type NumberProps = { readonly path: string; readonly label: string; readonly quantity: Quantity; readonly schema: z.ZodOptional<z.ZodNumber> };

export function DraftNumber({ path, schema, ...rest }: NumberProps) {
  const { draft, enter } = useEditing();
  return (
    <QuantityField {...rest} range={rangeOf(schema)} value={read(draft.fields, path) as number | undefined} raw={draft.raw[path]}
      onEntry={(value, raw) => enter(path, value, raw)} />
  );
}
