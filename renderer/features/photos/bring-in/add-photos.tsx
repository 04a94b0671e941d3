import { useRef } from 'react';
import { useStore } from '../../../state/store.ts';
import { useText } from '../../../text/index.ts';
import { Button } from '../../../ui/button.tsx';
import { AddGlyph } from '../../../ui/glyphs.tsx';
import { picturesIn, PICTURE_TYPES } from './given-files.ts';

/** Photos from a dialog, one by one or a whole folder at once. */
export function AddPhotos({ readingId }: { readingId: string }) {
  const { bringIn: words } = useText().photos;
  const { bringIn, tell } = useStore.getState();
  const files = useRef<HTMLInputElement>(null);
  const folder = useRef<HTMLInputElement>(null);
  const take = (chosen: readonly File[], wanted: readonly File[]): void => {
    if (wanted.length > 0) void bringIn(readingId, wanted);
    const left = chosen.length - wanted.length;
    if (left > 0) tell({ text: words.leftOut(left), tone: 'plain' });
  };
  const chosenIn = (input: HTMLInputElement): readonly File[] => {
    const chosen = [...(input.files ?? [])];
    input.value = '';
    return chosen;
  };
  return (
    <>
      <Button look="main" onClick={() => files.current?.click()}><AddGlyph />{words.add}</Button>
      <Button onClick={() => folder.current?.click()}>{words.addFolder}</Button>
      <input ref={files} type="file" multiple hidden accept={PICTURE_TYPES} aria-label={words.add}
        onChange={({ target }) => { const chosen = chosenIn(target); take(chosen, chosen); }} />
      <input ref={folder} type="file" multiple hidden aria-label={words.addFolder} {...{ webkitdirectory: '' }}
        onChange={({ target }) => { const chosen = chosenIn(target); take(chosen, picturesIn(chosen)); }} />
    </>
  );
}
