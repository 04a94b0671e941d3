import { engineFields } from '../../../shared/formats/engine.ts';
import { USES } from '../../../shared/vocabulary/engine.ts';
import { withCylinders } from '../../state/engine-draft.ts';
import { useText } from '../../text/index.ts';
import { QuantityField } from '../../ui/quantity-field.tsx';
import { rangeOf } from '../../ui/quantity.ts';
import { DraftChoice, DraftText } from './draft-fields.tsx';
import { useEditing } from './editing.ts';
import styles from './engine-editor.module.css';

export function EssentialsPart() {
  const { edit, uses } = useText().engines;
  const { draft, change, problemAt } = useEditing();
  const problem = draft.raw.cylinders === undefined ? problemAt('cylinders') : undefined;
  return (
    <div className={styles.part}>
      <DraftText path="name" label={edit.name} hint={edit.nameHint} limit={120} autoFocus />
      <DraftChoice path="use" label={edit.use} options={USES} nameOf={(use) => uses[use]} />
      <div className={styles.short} data-problem={problem === undefined ? undefined : ''}>
        <QuantityField label={edit.cylinders} quantity="count" whole range={rangeOf(engineFields.shape.cylinders)} value={draft.fields.cylinders} raw={draft.raw.cylinders}
          onEntry={(value, raw) => change(withCylinders(draft, value, raw))} />
        {problem !== undefined && <p className={styles.problem}>{problem}</p>}
      </div>
    </div>
  );
}
