import type { Basis, Note } from '../../../core/band.ts';
import type { Learned } from '../../../core/heat/anchors.ts';
import { heatEngine, type Setting } from '../../../core/heat/setting.ts';
import type { Engine } from '../../../shared/formats/engine.ts';
import { hrefOf } from '../../app/route.ts';
import { useText } from '../../text/index.ts';
import { formatNumber } from '../../text/numbers.ts';
import { useQuantity } from '../../ui/use-quantity.ts';
import styles from './heat.module.css';
import { useHeatWords } from './use-words.ts';

/** What stands behind a computed temperature: the model alone, the heat value asked for as well, or what this engine's tips told. */
export function basisOf({ steps }: Learned): 'predicted' | 'specified' | 'calibrated' {
  if (steps.length === 0) return 'predicted';
  return steps.every(({ kind }) => kind === 'specified') ? 'specified' : 'calibrated';
}

/** Whether a value is computed, corrected by this engine's tips, or read off an instrument: dashed, solid, filled. */
export function BasisMark({ basis }: { basis: Basis | 'specified' }) {
  const { heat } = useText();
  return <span className={styles.basis} data-basis={basis}>{heat.basis[basis]}</span>;
}

/** Why a band is wider than usual. */
export function Wider({ notes }: { notes: readonly Note[] }) {
  const { heat } = useText();
  const words = useHeatWords();
  return notes.length === 0 ? null : <p className={styles.soft}>{heat.wider} {notes.map(words.note).join(' ')}</p>;
}

/** Sizes of the engine that its page does not say and that were assumed. */
export function Assumptions({ engine }: { engine: Engine }) {
  const { heat } = useText();
  const quantity = useQuantity();
  const { assumed, engine: { cylinder } } = heatEngine(engine);
  if (assumed.length === 0) return null;
  const value = { bore: quantity('length', cylinder.bore), stroke: quantity('length', cylinder.stroke), compressionRatio: formatNumber(cylinder.compressionRatio) };
  return <p className={styles.soft}>{heat.assumed(assumed.map((name) => heat.assumedNames[name](value[name])))}</p>;
}

/** The running that a part takes from the sliders, and the way to them. */
export function AsSet({ id, setting }: { id: string; setting: Setting }) {
  const { heat } = useText();
  const words = useHeatWords();
  return <p className={styles.soft}>{heat.asSet(words.running(setting))} <a href={hrefOf({ page: 'engine-heat', id, part: 'what-if' })}>{heat.change}</a></p>;
}

/** Rows of a name and its value. */
export function Rows({ label, rows }: { label: string; rows: readonly (readonly [name: string, value: string])[] }) {
  return (
    <table className={styles.table} aria-label={label}>
      <tbody>{rows.map(([name, value]) => <tr key={name}><th scope="row">{name}</th><td>{value}</td></tr>)}</tbody>
    </table>
  );
}
