import { sharingGroups } from '../../../core/domain/sharing.ts';
import { IGNITION_KINDS } from '../../../shared/vocabulary/engine.ts';
import { drawable, withEntry } from '../../state/engine-draft.ts';
import { useText } from '../../text/index.ts';
import { Choice } from '../../ui/choice.tsx';
import { useTold } from '../../ui/use-told.ts';
import { CylinderGroups } from './cylinder-groups.tsx';
import { useEditing } from './editing.ts';
import styles from './engine-editor.module.css';
import { IgnitionSets } from './ignition-sets.tsx';

export function IgnitionPart() {
  const { edit, kinds } = useText().engines;
  const told = useTold();
  const { draft, change } = useEditing();
  const { ignition } = draft.fields;
  const engine = drawable(draft);
  const derived = engine === null ? [] : sharingGroups(engine).filter((group) => group.kind === 'coil' && group.derived);
  return (
    <div className={styles.part}>
      <Choice label={edit.ignition} options={IGNITION_KINDS} nameOf={(kind) => kinds[kind]} value={ignition?.kind}
        onChange={(kind) => change(withEntry(draft, 'ignition', kind === undefined ? undefined : { ...ignition, kind }))} />
      {ignition === undefined && <p className={styles.hint}>{edit.ignitionFirst}</p>}
      {ignition !== undefined && engine?.plugsPerCylinder !== 2 && (
        <CylinderGroups path="ignition.groups" value={ignition.groups} label={edit.ignitionGroups} about={edit.ignitionGroupsAbout}
          derived={derived.map((group) => told.sentence(group.name)).join('; ')} />
      )}
      {ignition !== undefined && <IgnitionSets />}
    </div>
  );
}
