import { useState } from 'react';
import { useCanRedo, useCanUndo, useIsKept, useSaveState, useSheet } from '../state/hooks.ts';
import { useStore } from '../state/store.ts';
import { useText } from '../text/index.ts';
import { formatDate } from '../text/numbers.ts';
import { Button, GlyphButton } from '../ui/button.tsx';
import { Dialog } from '../ui/dialog.tsx';
import { RedoGlyph, UndoGlyph } from '../ui/glyphs.tsx';
import { TextField } from '../ui/text-field.tsx';
import { useKeys } from '../ui/use-keys.ts';
import styles from './reading-head.module.css';
import { IfWritable } from './if-writable.tsx';
import { hrefOf } from './route.ts';
import { useKeep } from './use-keep.ts';
import { useSteps } from './use-steps.ts';

function NameAndDate() {
  const { title, date } = useSheet();
  const { reading: words } = useText().shell;
  const act = useStore((state) => state.act);
  const [open, setOpen] = useState(false);
  return (
    <>
      <button type="button" className={styles.date} onClick={() => setOpen(true)} title={words.nameAndDate}>
        {title !== undefined && <span className={styles.title}>{title}</span>}
        <span className={styles.day}>{title !== undefined && ' · '}{date === undefined ? words.noDate : formatDate(date)}</span>
      </button>
      <Dialog title={words.nameAndDate} open={open} onOpenChange={setOpen}>
        <form className={styles.form} onSubmit={(event) => { event.preventDefault(); setOpen(false); }}>
          <TextField label={words.title} hint={words.titleHint} limit={200} value={title ?? ''} onChange={(next) => act({ type: 'meta', title: next })} />
          <TextField label={words.date} type="date" value={date?.slice(0, 10) ?? ''} onChange={(next) => act({ type: 'meta', date: next })} />
        </form>
      </Dialog>
    </>
  );
}

function SaveMark() {
  const { kind } = useSaveState();
  return <span className={styles.save} data-kind={kind}>{useText().shell.save[kind]}</span>;
}

function DraftTools() {
  const { shell } = useText();
  const { undo, redo } = useSteps();
  const [canUndo, canRedo] = [useCanUndo(), useCanRedo()];
  const keep = useKeep();
  useKeys({ 'Ctrl Enter': () => void keep() });
  return (
    <>
      <SaveMark />
      <GlyphButton name={shell.undo} onClick={undo} disabled={!canUndo}><UndoGlyph /></GlyphButton>
      <GlyphButton name={shell.redo} onClick={redo} disabled={!canRedo}><RedoGlyph /></GlyphButton>
      <IfWritable><Button look="main" title={shell.reading.keepHint} onClick={() => void keep()}>{shell.reading.keep}</Button></IfWritable>
    </>
  );
}

function KeptTools() {
  const { shell } = useText();
  const { reopenReading, tell } = useStore.getState();
  const reopen = async (): Promise<void> => {
    const error = await reopenReading();
    if (error !== null) tell({ text: shell.error(error), tone: 'problem' });
  };
  return (
    <>
      <span className={styles.save} data-kind="saved">{shell.reading.kept}</span>
      <IfWritable><Button title={shell.reading.closedAbout} onClick={() => void reopen()}>{shell.reading.reopen}</Button></IfWritable>
    </>
  );
}

/** Which reading lies on the bench, whether it is saved, and what can be done with it as a whole. */
export function ReadingHead() {
  const sheet = useSheet();
  const text = useText();
  const engineId = useStore((state) => state.reading?.engineId ?? '');
  const kept = useIsKept();
  return (
    <>
      <a className={styles.engine} title={sheet.engine.name} href={hrefOf({ page: 'engine', id: engineId })}>{sheet.engine.name ?? text.engines.unnamed}</a>
      <NameAndDate />
      <div className={styles.tools}>{kept ? <KeptTools /> : <DraftTools />}</div>
    </>
  );
}
