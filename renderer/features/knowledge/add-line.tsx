import { useState } from 'react';
import { useStore } from '../../state/store.ts';
import { useText } from '../../text/index.ts';
import { Button } from '../../ui/button.tsx';
import { Dialog } from '../../ui/dialog.tsx';
import type { LineDraft } from './line-draft.ts';
import { LineForm } from './line-form.tsx';

/** The form for one line over the bench; `start`: null while it is put away. */
export function LineDialog({ start, onClose }: { start: LineDraft | null; onClose: () => void }) {
  const { form } = useText().knowledge.yours;
  return (
    <Dialog title={form.title} about={form.about} open={start !== null} onOpenChange={onClose}>
      {start !== null && <LineForm start={start} onDone={onClose} />}
    </Dialog>
  );
}

/** Opens the form for a line of one's own, on this cause or appearance where one is given. */
export function AddLine({ of, name }: { of?: string; name?: string }) {
  const { yours } = useText().knowledge;
  const lastBy = useStore((state) => state.shopLines.at(-1)?.by ?? '');
  const readOnly = useStore((state) => state.info?.library.readOnly ?? true);
  const [start, setStart] = useState<LineDraft | null>(null);
  if (readOnly) return null;
  return (
    <>
      <Button aria-label={name === undefined ? undefined : yours.addTo(name)} onClick={() => setStart({ id: null, on: true, of, because: '', by: lastBy })}>{yours.add}</Button>
      <LineDialog start={start} onClose={() => setStart(null)} />
    </>
  );
}
