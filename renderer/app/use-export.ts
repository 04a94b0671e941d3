import { useStore } from '../state/store.ts';
import { useText } from '../text/index.ts';
import { bridge } from './bridge.ts';
import { download } from './download.ts';

/** Hands a reading to the person as a sheet. */
export function useExport(): (readingId: string) => Promise<void> {
  const { shell } = useText();
  return async (id) => {
    const reply = await bridge['reading.export']({ id });
    if (reply.ok) download(reply.value.fileName, reply.value.text);
    else useStore.getState().tell({ text: shell.error(reply.error), tone: 'problem' });
  };
}
