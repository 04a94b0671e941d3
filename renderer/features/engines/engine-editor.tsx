import { useState, type ReactNode } from 'react';
import { enginePlan } from '../../../core/domain/engine-plan.ts';
import { hrefOf } from '../../app/route.ts';
import { navigate } from '../../app/use-route.ts';
import { checkedDraft, drawable } from '../../state/engine-draft.ts';
import { useStore } from '../../state/store.ts';
import { useText } from '../../text/index.ts';
import { Button, ButtonLink } from '../../ui/button.tsx';
import { Fold } from '../../ui/fold.tsx';
import { Notice } from '../../ui/notice.tsx';
import { PlanCaption, PlanDrawing } from '../../ui/plan-drawing.tsx';
import { EditingContext, useEditing, useEngineDraft } from './editing.ts';
import styles from './engine-editor.module.css';
import { countAt } from './filled.ts';
import { BuildPart } from './part-build.tsx';
import { EssentialsPart } from './part-essentials.tsx';
import { FitmentPart } from './part-fitment.tsx';
import { IgnitionPart } from './part-ignition.tsx';
import { LayoutPart } from './part-layout.tsx';
import { MixturePart } from './part-mixture.tsx';

function Preview() {
  const { draft } = useEditing();
  const { edit } = useText().engines;
  const engine = drawable(draft);
  if (engine === null) return <div className={styles.preview}><p className={styles.hint}>{edit.drawnHere}</p></div>;
  const plan = enginePlan(engine);
  return (
    <figure className={styles.preview}>
      <div className={styles.drawing} style={{ aspectRatio: `${plan.width} / ${plan.height}` }}><PlanDrawing plan={plan} label={edit.plan} /></div>
      <figcaption><PlanCaption plan={plan} /></figcaption>
    </figure>
  );
}

type PartOf = { readonly title: string; readonly paths: readonly string[]; readonly part: ReactNode; readonly summary?: string | undefined };

/** Everything beyond the essentials, folded away until it is wanted or holds something that cannot be taken. */
function MoreParts() {
  const { edit, kinds } = useText().engines;
  const { draft: { fields }, problemAt } = useEditing();
  const parts: readonly PartOf[] = [
    { title: edit.layoutPart, paths: ['layout', 'cycle', 'plugsPerCylinder', 'firingOrder', 'banks'], part: <LayoutPart /> },
    { title: edit.mixturePart, paths: ['mixture'], part: <MixturePart />, summary: fields.mixture && kinds[fields.mixture.kind] },
    { title: edit.ignitionPart, paths: ['ignition'], part: <IgnitionPart />, summary: fields.ignition && kinds[fields.ignition.kind] },
    { title: edit.fitmentPart, paths: ['fitment'], part: <FitmentPart />, summary: edit.filled(Object.keys(fields.fitment ?? {}).length) },
    { title: edit.buildPart, paths: ['boreMm', 'strokeMm', 'rodMm', 'compressionRatio', 'headMaterial', 'aspiration', 'cooling'], part: <BuildPart /> },
  ];
  return parts.map(({ title, paths, part, summary }) => (
    <Fold key={title} level={2} title={title} summary={summary ?? edit.filled(countAt(fields, paths))}
      keepOpen={paths.some((path) => problemAt(path) !== undefined)}>
      {part}
    </Fold>
  ));
}

const focusFirstProblem = (): void =>
  document.querySelector<HTMLElement>('[aria-invalid="true"], [data-problem] button, [data-problem] input')?.focus();

/** Writes an engine down. What is not saved stays in the store, also when another screen is shown meanwhile. */
export function EngineEditor({ id }: { id: string | null }) {
  const { engines: { edit, unnamed }, shell } = useText();
  const [tried, setTried] = useState(false);
  const editing = useEngineDraft(id, tried);
  const draftProblem = useStore((state) => state.engineDraftProblem);
  const { saveEngine, setEngineDraft, tell } = useStore.getState();
  const checked = checkedDraft(editing.draft);
  const name = editing.draft.fields.name ?? unnamed;

  const save = async (): Promise<void> => {
    setTried(true);
    if (!checked.ok) {
      requestAnimationFrame(focusFirstProblem);
      return;
    }
    const reply = await saveEngine(id, checked.value);
    if (!reply.ok) {
      tell({ text: shell.error(reply.error), tone: 'problem' });
      return;
    }
    setEngineDraft(id ?? 'new', undefined);
    navigate({ page: 'engine', id: reply.value.id });
  };
  return (
    <EditingContext value={editing}>
      <form className={styles.editor} noValidate onSubmit={(event) => { event.preventDefault(); void save(); }}>
        <div className={styles.fields}>
          <h1>{id === null ? edit.newTitle : edit.title(name)}</h1>
          <p className={styles.hint}>{edit.need}</p>
          <EssentialsPart />
          <MoreParts />
        </div>
        <aside className={styles.side}>
          <Preview />
          {draftProblem !== null && <Notice tone="problem" title={edit.notKept}>{shell.error(draftProblem)}</Notice>}
          {tried && !checked.ok && (
            <Notice tone="problem" title={edit.problems}><ul>{checked.error.map(({ path, message }) => <li key={path}>{`${edit.placeName(path)}: ${message}`}</li>)}</ul></Notice>
          )}
          <div className={styles.actions}>
            <Button look="main" type="submit">{edit.save}</Button>
            {editing.changed && <Button onClick={() => setEngineDraft(id ?? 'new', undefined)}>{edit.discard}</Button>}
            <ButtonLink look="quiet" href={hrefOf(id === null ? { page: 'shelf' } : { page: 'engine', id })}>{shell.back}</ButtonLink>
          </div>
        </aside>
      </form>
    </EditingContext>
  );
}
