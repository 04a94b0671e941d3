import { useEffect, useRef, useState } from 'react';
import { useStore } from '../../../state/store.ts';
import { useText } from '../../../text/index.ts';
import { isTyping } from '../../../ui/use-keys.ts';
import styles from './bring-in.module.css';
import { carriesFiles, droppedFiles } from './given-files.ts';

/** Takes photos that are dropped anywhere on a reading, or pasted there. `onGiven` is called when some were. */
export function DropPhotos({ readingId, onGiven }: { readingId: string; onGiven: () => void }) {
  const { bringIn: words } = useText().photos;
  const bringIn = useStore((state) => state.bringIn);
  const [over, setOver] = useState(false);
  const latest = useRef<(files: readonly File[]) => void>(() => undefined);
  useEffect(() => {
    latest.current = (files) => {
      if (files.length === 0) return;
      void bringIn(readingId, files);
      onGiven();
    };
  });
  useEffect(() => {
    const onDragOver = (event: DragEvent): void => {
      if (!carriesFiles(event.dataTransfer)) return;
      event.preventDefault();
      setOver(true);
    };
    const onDragLeave = (event: DragEvent): void => { if (event.relatedTarget === null) setOver(false); };
    const onDrop = (event: DragEvent): void => {
      const { dataTransfer } = event;
      setOver(false);
      if (dataTransfer === null || !carriesFiles(dataTransfer)) return;
      event.preventDefault();
      void droppedFiles(dataTransfer).then((files) => latest.current(files));
    };
    const onPaste = (event: ClipboardEvent): void => {
      const files = [...(event.clipboardData?.files ?? [])];
      if (files.length === 0 || isTyping(event.target)) return;
      event.preventDefault();
      latest.current(files);
    };
    window.addEventListener('dragover', onDragOver);
    window.addEventListener('dragleave', onDragLeave);
    window.addEventListener('drop', onDrop);
    window.addEventListener('paste', onPaste);
    return () => {
      window.removeEventListener('dragover', onDragOver);
      window.removeEventListener('dragleave', onDragLeave);
      window.removeEventListener('drop', onDrop);
      window.removeEventListener('paste', onPaste);
    };
  }, []);
  return over ? <div className={styles.over} aria-hidden="true"><span>{words.letGo}</span></div> : null;
}
