import { useRef, useState } from 'react';
import { navigate } from '../../app/use-route.ts';
import { useStore } from '../../state/store.ts';
import { useText } from '../../text/index.ts';
import { Button } from '../../ui/button.tsx';
import { Dialog } from '../../ui/dialog.tsx';
import styles from './import-sheet.module.css';

/** Takes in a reading sheet from a file and goes to it; what is wrong with the file is told place by place. */
export function ImportSheet({ label, look = 'plain' }: { label: string; look?: 'plain' | 'quiet' }) {
  const { engines, shell } = useText();
  const file = useRef<HTMLInputElement>(null);
  const [problems, setProblems] = useState<readonly string[] | null>(null);
  const importReading = useStore((state) => state.importReading);
  const tell = useStore((state) => state.tell);

  const take = async (chosen: File | undefined): Promise<void> => {
    if (chosen === undefined) return;
    const reply = await importReading(await chosen.text());
    if (!reply.ok) return setProblems(shell.error(reply.error).split('\n'));
    tell({ text: reply.value.known ? engines.importedBefore : engines.imported, tone: 'plain' });
    navigate({ page: 'reading', id: reply.value.readingId, station: 'plugs' });
  };
  return (
    <>
      <Button look={look} onClick={() => file.current?.click()}>{label}</Button>
      <input ref={file} type="file" accept=".json,application/json" hidden aria-label={label}
        onChange={(event) => { void take(event.target.files?.[0]); event.target.value = ''; }} />
      <Dialog title={engines.importFailed} about={engines.importAbout} open={problems !== null} onOpenChange={() => setProblems(null)}>
        <ul className={styles.problems}>{problems?.map((line) => <li key={line}>{line}</li>)}</ul>
      </Dialog>
    </>
  );
}
