import { useStore } from '../state/store.ts';
import { useText } from '../text/index.ts';
import { formatDate } from '../text/numbers.ts';
import { navigate } from './use-route.ts';

/** Keeps the open reading with its findings, says so, and goes to the log of its engine. */
export function useKeep(): () => Promise<void> {
  const { shell } = useText();
  return async () => {
    const { reading, keepReading, tell } = useStore.getState();
    if (reading === null) return;
    const { sheet: { title, date }, pending } = reading.history.now;
    const untaken = Object.keys(pending).length;
    const error = await keepReading();
    if (error !== null) return void tell({ text: shell.error(error), tone: 'problem' });
    const kept = shell.reading.keptMessage(title ?? (date === undefined ? shell.reading.untitled : formatDate(date)));
    tell(untaken === 0 ? { text: kept, tone: 'plain' } : { text: `${kept} ${shell.reading.untaken(untaken)}`, tone: 'problem' });
    navigate({ page: 'engine', id: reading.engineId });
  };
}
