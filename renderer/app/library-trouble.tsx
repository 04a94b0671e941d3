import { useState } from 'react';
import { useStore } from '../state/store.ts';
import { useText } from '../text/index.ts';
import { Button } from '../ui/button.tsx';
import { Dialog } from '../ui/dialog.tsx';
import { Notice } from '../ui/notice.tsx';
import styles from './library-trouble.module.css';

function Backups({ names }: { names: readonly string[] }) {
  const text = useText();
  const [asked, setAsked] = useState<string | null>(null);
  const recover = useStore((state) => state.recoverLibrary);
  const tell = useStore((state) => state.tell);
  const goBack = async (backup: string): Promise<void> => {
    setAsked(null);
    const error = await recover(backup);
    tell(error === null ? { text: text.shell.library.recovered, tone: 'plain' } : { text: text.shell.error(error), tone: 'problem' });
  };
  return (
    <>
      {names.map((name) => <Button key={name} onClick={() => setAsked(name)}>{text.shell.library.recover(name)}</Button>)}
      {asked !== null && (
        <Dialog open title={text.shell.library.recoverTitle} about={text.shell.library.recoverAbout(asked)} onOpenChange={() => setAsked(null)}>
          <div className={styles.choices}>
            <Button look="main" onClick={() => void goBack(asked)}>{text.shell.library.recover(asked)}</Button>
            <Button onClick={() => setAsked(null)}>{text.shell.cancel}</Button>
          </div>
        </Dialog>
      )}
    </>
  );
}

/** Says what is wrong with the library and what can be done about it, for as long as it holds. */
export function LibraryTrouble() {
  const text = useText();
  const library = useStore((state) => state.info?.library);
  const openLibrary = useStore((state) => state.openLibrary);
  const tell = useStore((state) => state.tell);
  const trouble = library?.trouble;
  if (library === undefined || trouble === null || trouble === undefined) return null;
  const tryAgain = async (): Promise<void> => {
    const error = await openLibrary(library.kind);
    if (error !== null) tell({ text: text.shell.error(error), tone: 'problem' });
  };
  return (
    <div className={styles.trouble}>
      <Notice tone="problem" title={text.shell.library[trouble.code]}>
        <p>{trouble.message}</p>
        <Button onClick={() => void tryAgain()}>{text.shell.tryAgain}</Button>
        <Backups names={trouble.backups} />
      </Notice>
    </div>
  );
}
