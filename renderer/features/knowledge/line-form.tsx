import { useMemo, useRef, useState, type SubmitEvent } from 'react';
import { KNOWLEDGE } from '../../../core/knowledge/index.ts';
import { withShopLines } from '../../../core/shop-lines/with-shop-lines.ts';
import { circumstanceOf } from '../../../core/shop-lines/teach.ts';
import { MOST_NAME, MOST_REASON } from '../../../shared/formats/shop-lines.v1.ts';
import { SYMPTOMS } from '../../../shared/vocabulary/conditions.ts';
import { MOVE_WORDS, STRENGTH_WORDS } from '../../../shared/vocabulary/knowledge.ts';
import { useStore } from '../../state/store.ts';
import { useText } from '../../text/index.ts';
import { Button } from '../../ui/button.tsx';
import { SelectField } from '../../ui/select-field.tsx';
import { TextField } from '../../ui/text-field.tsx';
import { useTold } from '../../ui/use-told.ts';
import { check, CIRCUMSTANCES, findingsFor, kindsFor, type LineDraft, type Problems } from './line-draft.ts';
import styles from './line-form.module.css';

type PartProps = { readonly draft: LineDraft; readonly problems: Problems; readonly onChange: (change: Partial<LineDraft>) => void };

const names: ReadonlyMap<string, string> = new Map([...KNOWLEDGE.causes, ...KNOWLEDGE.conditions].map(({ id, name }) => [id, name]));
const byName = (a: string, b: string): number => (names.get(a) ?? a).localeCompare(names.get(b) ?? b, 'en');
const causeIds = KNOWLEDGE.causes.map(({ id }) => id).sort(byName);
const conditionIds = KNOWLEDGE.conditions.map(({ id }) => id).sort(byName);

/** What a cause or a condition is called. */
function useNameOf(): (id: string) => string {
  const told = useTold();
  return (id) => told.sentence(names.get(id) ?? id);
}

/** Whose line it is and of which kind. Choosing another owner takes back what it cannot say. */
function Subject({ draft, problems, onChange }: PartProps) {
  const { knowledge: { shelves, yours: { form } } } = useText();
  const nameOf = useNameOf();
  const kinds = kindsFor(draft.of, KNOWLEDGE);
  const choose = (of: string | undefined): void => {
    const kind = draft.kind !== undefined && kindsFor(of, KNOWLEDGE).includes(draft.kind) ? draft.kind : undefined;
    onChange({ of, kind, finding: undefined, is: undefined });
  };
  return (
    <>
      <SelectField label={form.of} none={form.ofNone} options={[...causeIds, ...conditionIds]} value={draft.of} problem={problems.of}
        nameOf={nameOf} groupOf={(id) => (conditionIds.includes(id) ? shelves.looks : shelves.causes)} onChange={choose} />
      <SelectField label={form.kind} none={form.choose} options={kinds} value={draft.kind} problem={problems.kind}
        nameOf={(kind) => form.kinds[kind]} onChange={(kind) => onChange({ kind })} />
    </>
  );
}

/** What is said: a condition, a value of a finding, a symptom or a circumstance, as the kind asks. */
function Said({ draft, problems, onChange }: PartProps) {
  const { knowledge: { finding, circumstance, yours: { form } }, run: { symptoms }, tray: { valueName } } = useText();
  const nameOf = useNameOf();
  const findings = findingsFor(draft.of, KNOWLEDGE);
  switch (draft.kind) {
    case undefined: return null;
    case 'makes': return (
      <SelectField label={form.condition} none={form.choose} options={conditionIds} value={draft.condition} problem={problems.what}
        nameOf={nameOf} onChange={(condition) => onChange({ condition })} />
    );
    case 'gives': return (
      <SelectField label={form.symptom} none={form.choose} options={SYMPTOMS} value={draft.symptom} problem={problems.what}
        nameOf={(symptom) => symptoms[symptom]} onChange={(symptom) => onChange({ symptom })} />
    );
    case 'moved': return (
      <SelectField label={form.when} none={form.choose} options={[...CIRCUMSTANCES.keys()]} value={draft.when} problem={problems.what}
        nameOf={(key) => circumstance(circumstanceOf(CIRCUMSTANCES.get(key) ?? {}))} onChange={(when) => onChange({ when })} />
    );
    case 'shows': return (
      <div className={styles.pair}>
        <SelectField label={form.finding} none={form.choose} options={Object.keys(findings)} value={draft.finding} problem={problems.what}
          nameOf={finding} onChange={(next) => onChange({ finding: next, is: undefined })} />
        <SelectField label={form.value} none={form.choose} options={findings[draft.finding ?? ''] ?? []} value={draft.is} problem={problems.is}
          nameOf={valueName} onChange={(is) => onChange({ is })} />
      </div>
    );
  }
}

function HowOften({ draft, problems, onChange }: PartProps) {
  const { moves, strengths, yours: { form } } = useText().knowledge;
  if (draft.kind === undefined) return null;
  const shared = { none: form.choose, problem: problems.strength };
  return draft.kind === 'moved'
    ? <SelectField {...shared} label={form.how} options={MOVE_WORDS} nameOf={(how) => moves[how]} value={draft.how} onChange={(how) => onChange({ how })} />
    : <SelectField {...shared} label={form.strength} options={STRENGTH_WORDS} nameOf={(strength) => strengths[strength]} value={draft.strength}
      onChange={(strength) => onChange({ strength })} />;
}

/** A line of the workshop's own, written or changed. What the rules of the knowledge object to is said at its field. */
export function LineForm({ start, onDone }: { start: LineDraft; onDone: () => void }) {
  const { knowledge: { yours: { form } }, shell } = useText();
  const told = useTold();
  const lines = useStore((state) => state.shopLines);
  const besides = useMemo(() => withShopLines(KNOWLEDGE, lines.filter(({ id }) => id !== start.id)).knowledge, [lines, start.id]);
  const saveLine = useStore((state) => state.saveShopLine);
  const [draft, setDraft] = useState(start);
  const [tried, setTried] = useState(false);
  const [refusal, setRefusal] = useState<string | null>(null);
  const element = useRef<HTMLFormElement>(null);
  const { line, problems } = check(draft, besides, form.missing, told.sentence);
  const part: PartProps = { draft, problems: tried ? problems : {}, onChange: (change) => setDraft({ ...draft, ...change }) };
  const submit = async (event: SubmitEvent): Promise<void> => {
    event.preventDefault();
    setTried(true);
    if (line === undefined) {
      requestAnimationFrame(() => element.current?.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus());
      return;
    }
    const error = await saveLine({ ...line, id: start.id });
    if (error === null) onDone();
    else setRefusal(shell.error(error));
  };
  return (
    <form ref={element} className={styles.form} onSubmit={(event) => void submit(event)} noValidate>
      <Subject {...part} />
      <Said {...part} />
      <HowOften {...part} />
      <TextField label={form.because} hint={form.becauseHint} lines="several" limit={MOST_REASON} value={draft.because} problem={part.problems.because}
        onChange={(because) => part.onChange({ because })} />
      <TextField label={form.by} hint={form.byHint} limit={MOST_NAME} value={draft.by} problem={part.problems.by}
        onChange={(by) => part.onChange({ by })} />
      {refusal !== null && <p role="alert" className={styles.refusal}>{refusal}</p>}
      <div><Button look="main" type="submit">{start.id === null ? form.save : form.saveChanged}</Button></div>
    </form>
  );
}
