import { useRef } from 'react';
import { SHEET_EXTENSION } from '../../../shared/formats/sheet-file.ts';
import { Button } from '../../ui/button.tsx';
import { useSheetImport } from './use-sheet-import.tsx';

/** Takes in a reading sheet from a file and goes to it; what is wrong with the file is told place by place. */
export function ImportSheet({ label, look = 'plain' }: { label: string; look?: 'plain' | 'quiet' }) {
  const file = useRef<HTMLInputElement>(null);
  const { takeIn, complain, complaint } = useSheetImport();
  const take = async (chosen: File | undefined): Promise<void> => {
    if (chosen !== undefined) complain(await takeIn(await chosen.text()));
  };
  return (
    <>
      <Button look={look} onClick={() => file.current?.click()}>{label}</Button>
      <input ref={file} type="file" accept={`.${SHEET_EXTENSION},.json,application/json`} hidden aria-label={label}
        onChange={(event) => { void take(event.target.files?.[0]); event.target.value = ''; }} />
      {complaint}
    </>
  );
}
