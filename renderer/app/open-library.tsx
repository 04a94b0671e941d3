import { useState } from 'react';
import { useStore } from '../state/store.ts';
import { useText } from '../text/index.ts';
import { Button } from '../ui/button.tsx';
import { navigate } from './use-route.ts';

/** Opens a library and shows its shelf. The demo library is filled the first time, which takes a few seconds. */
export function OpenLibrary({ kind, words }: { kind: 'own' | 'demo'; words: string }) {
  const { shell } = useText();
  const { openLibrary, tell } = useStore.getState();
  const [opening, setOpening] = useState(false);
  const open = async (): Promise<void> => {
    setOpening(true);
    const error = await openLibrary(kind);
    setOpening(false);
    if (error === null) navigate({ page: 'shelf' });
    else tell({ text: shell.error(error), tone: 'problem' });
  };
  return <Button aria-busy={opening} disabled={opening} onClick={() => void open()}>{opening ? shell.opening : words}</Button>;
}
