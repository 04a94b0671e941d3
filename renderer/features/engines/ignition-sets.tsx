import { enginePlan } from '../../../core/domain/engine-plan.ts';
import { plugKey } from '../../../core/domain/plugs.ts';
import type { Engine } from '../../../shared/formats/engine.ts';
import { drawable } from '../../state/engine-draft.ts';
import { placeOf } from '../../state/places.ts';
import { useText } from '../../text/index.ts';
import { Choice } from '../../ui/choice.tsx';
import { useEditing } from './editing.ts';
import styles from './engine-editor.module.css';
import { GroupEditor } from './group-editor.tsx';
import type { Group } from './groups.ts';
import { PAIRS, pairOf, renamedSets, straightSets } from './twin-names.ts';

type Sets = NonNullable<NonNullable<Engine['ignition']>['sets']>;

const toGroups = (sets: Sets): Group[] => sets.map((set) => ({ name: set.name, members: set.plugs.map((plug) => plugKey(plug.cylinder, plug.position)) }));
const toSets = (groups: readonly Group[]): Sets => groups.map(({ name = '', members }) => ({ name, plugs: members.flatMap((key) => placeOf(key) ?? []) }));

/** Two plugs a cylinder: what they are called, and which magneto or coil pack fires which. */
export function IgnitionSets() {
  const { engines: { edit }, tray } = useText();
  const { draft, enter } = useEditing();
  const engine = drawable(draft);
  if (engine === null || engine.plugsPerCylinder !== 2) return null;
  const sets = engine.ignition?.sets ?? [];
  const pair = pairOf(engine);
  const plan = enginePlan(engine);
  const spots = plan.places.map(({ cylinder, position, x, y }) => {
    const key = plugKey(cylinder, position);
    return { key, label: `${cylinder}${tray.positionShort[position]}`, name: key, x, y };
  });
  const call = (words: string | undefined): void => {
    const next = PAIRS.find((other) => edit.twin(other) === words);
    if (next !== undefined) enter('ignition.sets', sets.length > 0 ? renamedSets(sets, pair, next) : straightSets(engine.cylinders, next, edit.setName));
  };
  return (
    <>
      <Choice label={edit.twinNames} options={PAIRS.map(edit.twin)} value={edit.twin(pair)} always onChange={call} />
      <fieldset className={styles.groupPart}>
        <legend className={styles.legend}>{edit.sets}</legend>
        <p className={styles.hint}>{edit.setsAbout}</p>
        <GroupEditor plan={plan} spots={spots} groups={toGroups(sets)} nameOfNew={edit.setName} nameLabel={edit.setNameLabel}
          onChange={(groups) => enter('ignition.sets', toSets(groups))} />
      </fieldset>
    </>
  );
}
