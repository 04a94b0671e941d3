import { useRef, useState } from 'react';
import { lineKey } from '../../../core/shop-lines/line-key.ts';
import { taught } from '../../../core/shop-lines/teach.ts';
import type { Complaint } from '../../../core/shop-lines/complaints.ts';
import type { ShopLine } from '../../../shared/formats/shop-lines.v1.ts';
import type { AppError } from '../../../shared/channels.ts';
import { bridge } from '../../app/bridge.ts';
import { download } from '../../app/download.ts';
import { useStore } from '../../state/store.ts';
import { useText } from '../../text/index.ts';
import { Button } from '../../ui/button.tsx';
import { Dialog } from '../../ui/dialog.tsx';
import { OwnMark } from '../../ui/own-mark.tsx';
import { Tag } from '../../ui/tag.tsx';
import { useTold } from '../../ui/use-told.ts';
import { AddLine, LineDialog } from './add-line.tsx';
import { lineHref } from './addresses.ts';
import { draftOf, type LineDraft } from './line-draft.ts';
import { lineWords } from './line-words.ts';
import { useLooking } from './looking.ts';
import styles from './page.module.css';
import yoursStyles from './yours.module.css';
import { MoveWord, StrengthWord } from './strength.tsx';

function useTellError(): (error: AppError | null) => void {
  const { shell } = useText();
  return (error) => { if (error !== null) useStore.getState().tell({ text: shell.error(error), tone: 'problem' }); };
}

type OwnLineProps = {
  readonly line: ShopLine;
  readonly complaints: readonly Complaint[];
  readonly readOnly: boolean;
  readonly onChange: (draft: LineDraft) => void;
};

function Deeds({ line, words, onChange }: { line: ShopLine; words: string; onChange: (draft: LineDraft) => void }) {
  const { yours } = useText().knowledge;
  const { removeShopLine, restoreShopLine, saveShopLine, tell } = useStore.getState();
  const tellError = useTellError();
  const remove = async (): Promise<void> => {
    const error = await removeShopLine(line.id);
    if (error !== null) return tellError(error);
    tell({ text: yours.removed, tone: 'plain', undo: () => void restoreShopLine(line.id).then(tellError) });
  };
  return (
    <div className={styles.tools}>
      <Tag on={line.on} onChange={(on) => void saveShopLine({ ...line, on }).then(tellError)}>{line.on ? yours.on : yours.off}</Tag>
      <Button look="quiet" aria-label={yours.changeOf(words)} onClick={() => onChange(draftOf(line))}>{yours.change}</Button>
      <Button look="quiet" aria-label={yours.removeOf(words)} onClick={() => void remove()}>{yours.remove}</Button>
    </div>
  );
}

function OwnLine({ line, complaints, readOnly, onChange }: OwnLineProps) {
  const { knowledge: counted } = useLooking();
  const knowledge = { ...counted, ...(line.on && complaints.length === 0 ? {} : taught(counted, [line])) };
  const text = useText().knowledge;
  const key = lineKey(line);
  const told = useTold();
  const words = lineWords(key, knowledge, { knowledge: text, told });
  return (
    <li className={yoursStyles.line} data-off={line.on ? undefined : ''}>
      <div className={yoursStyles.says}>
        <a className={yoursStyles.words} href={lineHref(key, knowledge)}>{words}</a>
        {line.says.kind === 'moved' ? <MoveWord word={line.says.how} /> : <StrengthWord word={line.says.strength} />}
        <p>{line.because} <OwnMark by={line.by} /></p>
        {complaints.length > 0 && (
          <div className={yoursStyles.refused}>
            <strong>{text.yours.refused}</strong>{complaints.map(({ message }) => <p key={message}>{told.sentence(message)}</p>)}
          </div>
        )}
      </div>
      {!readOnly && <Deeds line={line} words={words} onChange={onChange} />}
    </li>
  );
}

/** Lines out to a file and in from one. */
function FileTools({ any }: { any: boolean }) {
  const { knowledge: { yours }, shell } = useText();
  const file = useRef<HTMLInputElement>(null);
  const [problems, setProblems] = useState<readonly string[] | null>(null);
  const { importShopLines, tell } = useStore.getState();
  const tellError = useTellError();
  const take = async (chosen: File | undefined): Promise<void> => {
    if (chosen === undefined) return;
    const reply = await importShopLines(await chosen.text());
    if (reply.ok) tell({ text: yours.imported(reply.value.added, reply.value.known), tone: 'plain' });
    else setProblems(shell.error(reply.error).split('\n'));
  };
  const save = async (): Promise<void> => {
    const reply = await bridge['shop.export'](null);
    if (reply.ok) download(reply.value.fileName, reply.value.text);
    else tellError(reply.error);
  };
  return (
    <>
      <Button onClick={() => file.current?.click()}>{yours.import}</Button>
      {any && <Button onClick={() => void save()}>{yours.export}</Button>}
      <input ref={file} type="file" accept=".json,application/json" hidden aria-label={yours.import}
        onChange={(event) => { void take(event.target.files?.[0]); event.target.value = ''; }} />
      <Dialog title={yours.importFailed} about={yours.importAbout} open={problems !== null} onOpenChange={() => setProblems(null)}>
        <ul className={styles.plain}>{problems?.map((line) => <li key={line}>{line}</li>)}</ul>
      </Dialog>
    </>
  );
}

/** The lines that this workshop added on its own word: what they say, whether they count, and what stands against them. */
export function Yours() {
  const text = useText().knowledge;
  const lines = useStore((state) => state.shopLines);
  const readOnly = useStore((state) => state.info?.library.readOnly ?? true);
  const refused = useStore((state) => state.taught.refused);
  const [changing, setChanging] = useState<LineDraft | null>(null);
  return (
    <>
      <header className={styles.head}>
        <h2>{text.shelves.yours}</h2>
        <p className={styles.lead}>{text.yours.about}</p>
      </header>
      <div className={styles.tools}><AddLine /><FileTools any={lines.length > 0} /></div>
      {lines.length === 0 ? <p className={styles.soft}>{text.yours.none}</p> : (
        <ul className={yoursStyles.lines}>
          {lines.map((line) => (
            <OwnLine key={line.id} line={line} readOnly={readOnly} onChange={setChanging}
              complaints={refused.find((one) => one.line.id === line.id)?.complaints ?? []} />
          ))}
        </ul>
      )}
      <LineDialog start={changing} onClose={() => setChanging(null)} />
    </>
  );
}
