import { Fragment } from 'react';
import { useText } from '../text/index.ts';
import type { Shortcut } from '../text/en/shell.ts';
import { Dialog } from '../ui/dialog.tsx';
import styles from './keys-sheet.module.css';

const Part = ({ title, list }: { title: string; list: readonly Shortcut[] }) => (
  <section className={styles.part}>
    <h3>{title}</h3>
    <dl className={styles.list}>
      {list.map(({ keys, does }) => (
        <Fragment key={does}>
          <dt className={styles.keys}>{keys.map((key) => <kbd key={key}>{key}</kbd>)}</dt>
          <dd>{does}</dd>
        </Fragment>
      ))}
    </dl>
  </section>
);

/** All keys of the program on one sheet. */
export function KeysSheet({ open, onOpenChange }: { open: boolean; onOpenChange: (open: boolean) => void }) {
  const { shell, tray } = useText();
  return (
    <Dialog title={shell.shortcuts.title} open={open} onOpenChange={onOpenChange}>
      <Part title={shell.shortcuts.onTheBench} list={shell.shortcuts.list} />
      <Part title={shell.shortcuts.inTheTray} list={tray.keys} />
    </Dialog>
  );
}
