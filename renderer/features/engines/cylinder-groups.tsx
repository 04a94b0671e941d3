import { enginePlan } from '../../../core/domain/engine-plan.ts';
import { drawable } from '../../state/engine-draft.ts';
import { useText } from '../../text/index.ts';
import { cylinderSpots } from '../../ui/plan-drawing.tsx';
import { useEditing } from './editing.ts';
import styles from './engine-editor.module.css';
import { GroupEditor } from './group-editor.tsx';
import { fromNumbers, toNumbers } from './groups.ts';

type Props = {
  readonly path: string;
  readonly value: readonly (readonly number[])[] | undefined;
  readonly label: string;
  readonly about: string;
  readonly derived?: string;
};

/** Groups of cylinders at a path of the engine, with what is supposed as long as none are noted. */
export function CylinderGroups({ path, value, label, about, derived }: Props) {
  const { draft, enter, problemAt } = useEditing();
  const { groups: words } = useText().engines.edit;
  const engine = drawable(draft);
  if (engine === null || engine.cylinders === 1) return null;
  const plan = enginePlan(engine);
  const spots = cylinderSpots(plan).map(({ cylinder, x, y }) => ({ key: String(cylinder), label: String(cylinder), name: words.cylinder(cylinder), x, y }));
  const problem = problemAt(path);
  return (
    <fieldset className={styles.groupPart}>
      <legend className={styles.legend}>{label}</legend>
      <p className={styles.hint}>{about}</p>
      {value === undefined && derived !== undefined && derived !== '' && <p className={styles.hint}>{words.derived(derived)}</p>}
      {problem !== undefined && <p className={styles.problem}>{problem}</p>}
      <GroupEditor plan={plan} spots={spots} groups={fromNumbers(value)} onChange={(groups) => enter(path, toNumbers(groups))} />
    </fieldset>
  );
}
