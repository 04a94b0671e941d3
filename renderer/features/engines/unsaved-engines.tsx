import { hrefOf } from '../../app/route.ts';
import { useReadOnly } from '../../state/hooks.ts';
import { useStore } from '../../state/store.ts';
import { useText } from '../../text/index.ts';
import { ButtonLink } from '../../ui/button.tsx';
import { Notice } from '../../ui/notice.tsx';

/** Engines that were begun and left: they are still there. */
export function UnsavedEngines() {
  const { engines } = useText();
  const drafts = useStore((state) => state.engineDrafts);
  const readOnly = useReadOnly();
  if (readOnly) return null;
  return Object.entries(drafts).map(([id, draft]) => (
    <Notice key={id}>
      <span>{engines.unsavedDraft(draft.fields.name ?? engines.unnamed)}</span>
      <ButtonLink href={hrefOf(id === 'new' ? { page: 'engine-new' } : { page: 'engine-edit', id })}>{engines.goOnEditing}</ButtonLink>
    </Notice>
  ));
}
