import { MIXTURE_KINDS } from '../../../shared/vocabulary/engine.ts';
import { withEntry } from '../../state/engine-draft.ts';
import { useText } from '../../text/index.ts';
import { Choice } from '../../ui/choice.tsx';
import { CylinderGroups } from './cylinder-groups.tsx';
import { useEditing } from './editing.ts';
import styles from './engine-editor.module.css';

/** Groups need a kind to hang on: taking the kind back takes the groups with it. */
export function MixturePart() {
  const { edit, kinds } = useText().engines;
  const { draft, change } = useEditing();
  const { mixture } = draft.fields;
  return (
    <div className={styles.part}>
      <Choice label={edit.mixture} options={MIXTURE_KINDS} nameOf={(kind) => kinds[kind]} value={mixture?.kind}
        onChange={(kind) => change(withEntry(draft, 'mixture', kind === undefined ? undefined : { ...mixture, kind }))} />
      {mixture === undefined
        ? <p className={styles.hint}>{edit.mixtureFirst}</p>
        : <CylinderGroups path="mixture.groups" value={mixture.groups} label={edit.mixtureGroups} about={edit.mixtureGroupsAbout} />}
    </div>
  );
}
