import { useEffect, useRef } from 'react';
import { FILE_OPENED } from '../../../shared/channel-names.ts';
import { useStore } from '../../state/store.ts';
import { useText } from '../../text/index.ts';
import { useSheetImport } from './use-sheet-import.tsx';

/** Takes in the files that the system asks to open with the program, by a double-click say, as if each had been chosen here. */
export function OpenedSheets() {
  const { engines, shell } = useText();
  const { takeIn, complain, complaint } = useSheetImport();
  const askable = useStore((state) => state.info?.host === 'electron');
  const openedFile = useStore((state) => state.openedFile);

  const takeAll = async (): Promise<void> => {
    for (let reply = await openedFile(); ; reply = await openedFile()) {
      if (!reply.ok) return complain([shell.error(reply.error)]);
      const file = reply.value;
      if (file === null) return;
      const lines = 'text' in file ? await takeIn(file.text) : [engines.unread[file.unread]];
      complain(lines.map((line) => engines.ofFile(file.name, line)));
    }
  };
  const latest = useRef(takeAll);
  useEffect(() => { latest.current = takeAll; });
  useEffect(() => {
    if (!askable) return;
    let last = Promise.resolve();
    const ask = (): void => { last = last.then(() => latest.current()); };
    ask();
    window.addEventListener(FILE_OPENED, ask);
    return () => window.removeEventListener(FILE_OPENED, ask);
  }, [askable]);
  return complaint;
}
