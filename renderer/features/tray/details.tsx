import { measured as measuredFormat } from '../../../shared/formats/reading-sheet.v1.ts';
import type { FittedPlug } from '../../../shared/formats/engine.ts';
import { fittedPlug } from '../../../shared/formats/engine.ts';
import type { PlugKey } from '../../../core/domain/plugs.ts';
import { useAct, usePending, usePlug, useSheet } from '../../state/hooks.ts';
import { keyOf } from '../../state/places.ts';
import { pruned } from '../../state/prune.ts';
import type { Typed } from '../../state/reading-slice.ts';
import { useText } from '../../text/index.ts';
import { Button } from '../../ui/button.tsx';
import { Choice } from '../../ui/choice.tsx';
import { QuantityField } from '../../ui/quantity-field.tsx';
import { rangeOf, type Quantity } from '../../ui/quantity.ts';
import { TextField } from '../../ui/text-field.tsx';
import styles from './details.module.css';

const MEASURED = {
  gapMm: 'length', resistorKOhm: 'resistance', insulationMOhm: 'insulation', removalTorqueNm: 'torque',
} as const satisfies Record<string, Quantity>;
type MeasuredField = keyof typeof MEASURED;
const MEASURED_FIELDS = Object.keys(MEASURED) as MeasuredField[];

function MeasuredQuantity({ plug, field }: { plug: PlugKey; field: MeasuredField }) {
  const { measured } = useText().tray;
  const act = useAct();
  const path = `plugs.${plug}.measured.${field}`;
  return (
    <QuantityField label={measured[field].label} hint={measured[field].hint} quantity={MEASURED[field]} range={rangeOf(measuredFormat.shape[field])}
      value={usePlug(plug)?.measured?.[field]} raw={usePending(path)} onEntry={(value, raw) => act({ type: 'measured', plug, field, value }, { path, raw })} />
  );
}

export const MeasuredFields = ({ plug }: { plug: PlugKey }) => (
  <div className={styles.fields}>{MEASURED_FIELDS.map((field) => <MeasuredQuantity key={`${plug} ${field}`} plug={plug} field={field} />)}</div>
);

export function NoteField({ plug }: { plug: PlugKey }) {
  const { entry } = useText().tray;
  const act = useAct();
  const note = usePlug(plug)?.note ?? '';
  return <TextField label={entry.details.note} lines="several" limit={4000} value={note} onChange={(text) => act({ type: 'note', plug, text })} />;
}

/** What was in the hole, as far as it bears on the reading. */
export function FittedFields({ plug }: { plug: PlugKey }) {
  const { fitted: words } = useText().tray;
  const act = useAct();
  const fitted = usePlug(plug)?.fitted ?? {};
  const path = `plugs.${plug}.fitted.heatStepsFromSpecified`;
  const inReading = useSheet().plugs.map(keyOf);
  const enter = (part: Partial<Record<keyof FittedPlug, unknown>>, typed?: Typed): void => {
    const next: FittedPlug = pruned<object>({ ...fitted, ...part });
    act({ type: 'fitted', plugs: [plug], fitted: Object.keys(next).length === 0 ? undefined : next }, typed);
  };
  const matches = fitted.matchesSpecified === undefined ? undefined : fitted.matchesSpecified ? words.yes : words.no;
  return (
    <div className={styles.fields}>
      <TextField label={words.designation} limit={60} value={fitted.designation ?? ''} onChange={(designation) => enter({ designation })} />
      <QuantityField label={words.steps} hint={words.stepsHint} quantity="count" whole range={rangeOf(fittedPlug.shape.heatStepsFromSpecified)}
        value={fitted.heatStepsFromSpecified} raw={usePending(path)} onEntry={(value, raw) => enter({ heatStepsFromSpecified: value }, { path, raw })} />
      <Choice label={words.matches} options={[words.yes, words.no]} value={matches}
        onChange={(word) => enter({ matchesSpecified: word === undefined ? undefined : word === words.yes })} />
      <Button disabled={Object.keys(fitted).length === 0} onClick={() => act({ type: 'fitted', plugs: inReading, fitted })}>{words.forAll}</Button>
    </div>
  );
}
