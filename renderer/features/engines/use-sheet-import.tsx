import { useState, type ReactNode } from 'react';
import { navigate } from '../../app/use-route.ts';
import { useStore } from '../../state/store.ts';
import { useText } from '../../text/index.ts';
import { Dialog } from '../../ui/dialog.tsx';
import styles from './import-sheet.module.css';

export type SheetImport = {
  /** Takes in the text of a sheet and goes to its reading. @returns what is wrong with it, line by line; none when it was taken. */
  readonly takeIn: (text: string) => Promise<readonly string[]>;
  /** Shows lines of what is wrong, after those that are shown already. */
  readonly complain: (lines: readonly string[]) => void;
  readonly complaint: ReactNode;
};

/** The one way of a sheet from a file into the library, whoever chose the file. */
export function useSheetImport(): SheetImport {
  const { engines, shell } = useText();
  const [problems, setProblems] = useState<readonly string[]>([]);
  const { importReading, tell } = useStore.getState();
  return {
    takeIn: async (text) => {
      const reply = await importReading(text);
      if (!reply.ok) return shell.error(reply.error).split('\n');
      tell({ text: reply.value.known ? engines.importedBefore : engines.imported, tone: 'plain' });
      navigate({ page: 'reading', id: reply.value.readingId, station: 'plugs' });
      return [];
    },
    complain: (lines) => setProblems((shown) => [...new Set([...shown, ...lines])]),
    complaint: (
      <Dialog title={engines.importFailed} about={engines.importAbout} open={problems.length > 0} onOpenChange={() => setProblems([])}>
        <ul className={styles.problems}>{problems.map((line) => <li key={line}>{line}</li>)}</ul>
      </Dialog>
    ),
  };
}
