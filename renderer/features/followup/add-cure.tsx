import { useState } from 'react';
import { applies } from '../../../core/inference/circumstances.ts';
import { useAct, useSheet } from '../../state/hooks.ts';
import { useText } from '../../text/index.ts';
import { Button } from '../../ui/button.tsx';
import { Fold } from '../../ui/fold.tsx';
import { SelectField } from '../../ui/select-field.tsx';
import { useTold } from '../../ui/use-told.ts';
import { causeName, causeOf, CURABLE } from './causes.ts';
import styles from './since-panel.module.css';

const OF_ONE_CYLINDER = ['plug', 'cylinder'];

/** Notes a cure that the reading before did not call for. */
export function AddCure() {
  const text = useText();
  const words = text.followUp;
  const told = useTold();
  const act = useAct();
  const sheet = useSheet();
  const [cause, setCause] = useState<string>();
  const [cylinder, setCylinder] = useState<string>();
  const scope = cause === undefined ? undefined : causeOf(cause)?.scope;
  const placed = scope !== undefined && OF_ONE_CYLINDER.includes(scope) && sheet.engine.cylinders > 1;
  const options = CURABLE.filter(({ needs }) => applies(needs, sheet)).map(({ id }) => id);
  const cylinders = Array.from({ length: sheet.engine.cylinders }, (_, i) => String(i + 1));
  const add = (): void => {
    if (cause === undefined) return;
    act({ type: 'cure', cure: { cause, ...(placed && cylinder !== undefined && { cylinders: [Number(cylinder)] }) }, on: true });
    setCause(undefined);
    setCylinder(undefined);
  };
  return (
    <Fold title={words.addTitle} level={3}>
      <div className={styles.add}>
        <SelectField label={words.addCause} options={options} value={cause} none={words.addNone} onChange={setCause}
          nameOf={(id) => told.cause(id, causeName(id))} groupOf={(id) => words.kinds[causeOf(id)?.kind ?? 'harmless']} />
        {placed && (
          <SelectField label={words.addWhere} options={cylinders} value={cylinder} none={words.addEverywhere}
            onChange={setCylinder} nameOf={words.addCylinder} />
        )}
        <Button onClick={add} disabled={cause === undefined}>{words.add}</Button>
      </div>
    </Fold>
  );
}
