import { useStore } from '../../state/store.ts';
import { useText } from '../../text/index.ts';

/** Takes an entry away and offers to take that back. @param words what is said when it is gone */
export function useRemoval(words: string): (id: string) => Promise<void> {
  const { shell } = useText();
  const { removeHeatEntry, restoreHeatEntry, tell } = useStore.getState();
  const told = async (doing: ReturnType<typeof removeHeatEntry>): Promise<boolean> => {
    const error = await doing;
    if (error !== null) tell({ text: shell.error(error), tone: 'problem' });
    return error === null;
  };
  return async (id) => {
    if (await told(removeHeatEntry(id))) tell({ text: words, tone: 'plain', undo: () => void told(restoreHeatEntry(id)) });
  };
}
