import { navigate } from '../../app/use-route.ts';
import { useStore } from '../../state/store.ts';
import { useText } from '../../text/index.ts';
import { Button } from '../../ui/button.tsx';

type Props = { readonly engineId: string; readonly label: string; readonly look?: 'plain' | 'main'; readonly words: string };

/** Starts a reading of an engine, or goes on with the draft that is open, and lays it on the bench. */
export function StartReading({ engineId, label, look = 'plain', words }: Props) {
  const { shell } = useText();
  const { startReading, tell } = useStore.getState();
  const start = async (): Promise<void> => {
    const reply = await startReading(engineId);
    if (reply.ok) navigate({ page: 'reading', id: reply.value, station: 'plugs' });
    else tell({ text: shell.error(reply.error), tone: 'problem' });
  };
  return <Button look={look} aria-label={label} onClick={() => void start()}>{words}</Button>;
}
