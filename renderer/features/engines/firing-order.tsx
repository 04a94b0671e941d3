import { useState } from 'react';
import { readFiringOrder } from '../../state/engine-draft.ts';
import { useText } from '../../text/index.ts';
import { TextField } from '../../ui/text-field.tsx';
import { useEditing } from './editing.ts';

/** The firing order as text. It shows what was typed, and the engine gets the list of numbers once it reads as one. */
export function FiringOrder() {
  const { edit } = useText().engines;
  const { draft, enter, problemAt } = useEditing();
  const [typed, setTyped] = useState(draft.raw.firingOrder ?? draft.fields.firingOrder?.join('-') ?? '');
  const type = (text: string): void => {
    setTyped(text);
    const order = readFiringOrder(text);
    enter('firingOrder', order, order === undefined && text.trim() !== '' ? text : undefined);
  };
  const problem = problemAt('firingOrder');
  const words = problem !== undefined && draft.raw.firingOrder !== undefined ? edit.firingOrderUnreadable : problem;
  return <TextField label={edit.firingOrder} hint={edit.firingOrderHint} problem={words} value={typed} onChange={type} />;
}
