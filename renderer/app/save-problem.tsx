import type { AppError } from '../../shared/channels.ts';
import { useSheet } from '../state/hooks.ts';
import { useStore } from '../state/store.ts';
import { useText } from '../text/index.ts';
import { Button } from '../ui/button.tsx';
import { Notice } from '../ui/notice.tsx';
import { download } from './download.ts';
import styles from './library-trouble.module.css';

function Choices({ error }: { error: AppError }) {
  const { save, tryAgain, error: errorText } = useText().shell;
  const sheet = useSheet();
  const { resolveConflict, flushReading, tell } = useStore.getState();
  const resolve = async (choice: 'mine' | 'theirs'): Promise<void> => {
    const failed = await resolveConflict(choice);
    if (failed !== null) tell({ text: errorText(failed), tone: 'problem' });
  };
  return (
    <>
      {error.code === 'conflict' ? (
        <>
          <Button onClick={() => void resolve('mine')}>{save.mine}</Button>
          <Button onClick={() => void resolve('theirs')}>{save.theirs}</Button>
        </>
      ) : <Button onClick={() => void flushReading()}>{tryAgain}</Button>}
      <Button onClick={() => download(`${sheet.date?.slice(0, 10) ?? 'reading'}.reading-sheet.json`, JSON.stringify(sheet, null, 2))}>{save.copy}</Button>
    </>
  );
}

/** Why the reading is not saved and what can be done; nothing of it is lost meanwhile. Of a library that can only be read the notice above tells. */
export function SaveProblem() {
  const state = useStore((store) => store.reading?.save);
  const { save, error: errorText } = useText().shell;
  if (state?.kind !== 'not saved') return null;
  const conflict = state.error.code === 'conflict';
  return (
    <div className={styles.trouble}>
      <Notice tone="problem" title={save.problem}>
        {state.error.code !== 'read-only' && <p>{conflict ? save.conflict : errorText(state.error)}</p>}
        {!conflict && <p>{save.kept}</p>}
        <Choices error={state.error} />
      </Notice>
    </div>
  );
}
