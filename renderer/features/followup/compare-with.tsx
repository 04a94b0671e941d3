import { useEffect } from 'react';
import type { ReadingSummary } from '../../../shared/channels.ts';
import type { Since } from '../../../shared/formats/reading-sheet.v1.ts';
import { useStore } from '../../state/store.ts';
import { useText } from '../../text/index.ts';
import { formatDate } from '../../text/numbers.ts';
import { SelectField } from '../../ui/select-field.tsx';

/** The kept readings of this engine that this one can be compared with, the newest first. */
export function useEarlier(): readonly ReadingSummary[] {
  const { id, engineId } = useStore((state) => state.reading) ?? {};
  const log = useStore((state) => state.log);
  const loadLog = useStore((state) => state.loadLog);
  const known = log?.engineId === engineId;
  useEffect(() => { if (!known && engineId !== undefined) void loadLog(engineId); }, [known, engineId, loadLog]);
  return known ? (log?.readings ?? []).filter((reading) => reading.state === 'kept' && reading.id !== id && reading.plugsRead > 0) : [];
}

const isThe = ({ reading }: Since, { title, date }: ReadingSummary): boolean => (reading.date ?? null) === date && (reading.title ?? '') === title;

/** Chooses the earlier reading, or none. */
export function CompareWith({ earlier, since }: { earlier: readonly ReadingSummary[]; since: Since | undefined }) {
  const { followUp: text, shell } = useText();
  const { compareWith, tell } = useStore.getState();
  const chosen = since && earlier.find((reading) => isThe(since, reading));
  const nameOf = (id: string): string => {
    const { date = null, title = '' } = earlier.find((each) => each.id === id) ?? {};
    return [date === null ? text.undated : formatDate(date), title].filter(Boolean).join(': ');
  };
  const choose = async (id: string | undefined): Promise<void> => {
    const error = await compareWith(id);
    if (error !== null) tell({ text: shell.error(error), tone: 'problem' });
  };
  return (
    <SelectField label={text.compareWith} options={earlier.map(({ id }) => id)} value={chosen?.id} none={text.compareNone} nameOf={nameOf}
      onChange={(id) => void choose(id)} />
  );
}
