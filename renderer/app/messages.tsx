import { useEffect } from 'react';
import type { Message } from '../state/app-slice.ts';
import { useStore } from '../state/store.ts';
import { useText } from '../text/index.ts';
import { Button, GlyphButton } from '../ui/button.tsx';
import { CloseGlyph } from '../ui/glyphs.tsx';
import { returnToBench } from './focus-on-bench.ts';
import styles from './messages.module.css';

const PLAIN_FOR_MS = 6000;

function Slip({ message }: { message: Message }) {
  const text = useText();
  const dismiss = useStore((state) => state.dismiss);
  const passing = message.tone === 'plain' && message.undo === undefined;
  useEffect(() => {
    if (!passing) return;
    const timer = setTimeout(() => dismiss(message.id), PLAIN_FOR_MS);
    return () => clearTimeout(timer);
  }, [passing, dismiss, message.id]);
  /** The button that was pressed goes with the slip, and would take the focus with it. */
  const putAway = (): void => {
    dismiss(message.id);
    returnToBench();
  };
  const undo = (): void => {
    message.undo?.();
    putAway();
  };
  return (
    <li className={styles.slip} data-tone={message.tone}>
      <span className={styles.words}>{message.text}</span>
      {message.undo !== undefined && <Button onClick={undo}>{text.shell.undo}</Button>}
      <GlyphButton name={text.shell.close} onClick={putAway}><CloseGlyph /></GlyphButton>
    </li>
  );
}

/** Slips at the lower edge. One that can be undone, or tells of a problem, stays until it is put away. */
export function Messages() {
  const text = useText();
  const messages = useStore((state) => state.messages);
  return (
    <section aria-label={text.shell.messages} aria-live="polite" className={styles.region}>
      <ul className={styles.slips}>{messages.map((message) => <Slip key={message.id} message={message} />)}</ul>
    </section>
  );
}
