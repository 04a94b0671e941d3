import { CYCLES, LAYOUTS } from '../../../shared/vocabulary/engine.ts';
import { withEntry } from '../../state/engine-draft.ts';
import { useText } from '../../text/index.ts';
import { Choice } from '../../ui/choice.tsx';
import { CylinderGroups } from './cylinder-groups.tsx';
import { DraftChoice } from './draft-fields.tsx';
import { useEditing } from './editing.ts';
import styles from './engine-editor.module.css';
import { FiringOrder } from './firing-order.tsx';

export function LayoutPart() {
  const { edit, kinds, layouts } = useText().engines;
  const { draft, change } = useEditing();
  const { cylinders = 1, plugsPerCylinder, layout, banks } = draft.fields;
  const setPlugs = (count: 'one' | 'two' | undefined): void => {
    const next = withEntry(draft, 'plugsPerCylinder', count === undefined ? undefined : count === 'two' ? 2 : 1);
    change(count === 'two' ? next : withEntry(next, 'ignition.sets', undefined));
  };
  const fitting = LAYOUTS.filter((name) => name !== 'single' || cylinders === 1 || layout === 'single');
  return (
    <div className={styles.part}>
      <DraftChoice path="layout" label={edit.layout} options={fitting} nameOf={(name) => layouts[name]} />
      <DraftChoice path="cycle" label={edit.cycle} options={CYCLES} nameOf={(kind) => kinds[kind]} />
      <Choice label={edit.plugsPerCylinder} options={['one', 'two'] as const} nameOf={(count) => edit.plugCount[count]}
        value={plugsPerCylinder === undefined ? undefined : plugsPerCylinder === 2 ? 'two' : 'one'} onChange={setPlugs} />
      {cylinders > 1 && <FiringOrder key={cylinders} />}
      {(layout === 'vee' || layout === 'flat' || layout === 'radial') && <CylinderGroups path="banks" value={banks} label={edit.banks} about={edit.banksAbout} />}
    </div>
  );
}
