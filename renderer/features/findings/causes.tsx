import { useId, useState } from 'react';
import type { CauseFinding } from '../../../shared/formats/findings.v1.ts';
import { useText } from '../../text/index.ts';
import { Belief } from '../../ui/belief.tsx';
import { UnfoldGlyph } from '../../ui/glyphs.tsx';
import { useTold } from '../../ui/use-told.ts';
import { Balance } from './balance.tsx';
import styles from './causes.module.css';

function Cause({ cause, startOpen }: { cause: CauseFinding; startOpen: boolean }) {
  const id = useId();
  const text = useText().findings;
  const told = useTold();
  const [open, setOpen] = useState(startOpen);
  const scope = cause.scope === 'group' ? text.scope.group(cause.cylinders) : text.scope[cause.scope];
  return (
    <li className={styles.cause}>
      <button type="button" className={styles.head} aria-expanded={open} aria-controls={id} onClick={() => setOpen(!open)}>
        <span className={styles.fold} data-open={open}><UnfoldGlyph /></span>
        <span className={styles.name}>{told.cause(cause.id, cause.name)}<span className={styles.scope}>{scope}</span></span>
        <Belief value={cause.belief} />
      </button>
      <div id={id} className={open ? styles.open : styles.folded}><Balance cause={cause} /></div>
    </li>
  );
}

/** Causes by belief; the first lies open. Paper shows what lies open. */
export const Causes = ({ causes, firstOpen = true }: { causes: readonly CauseFinding[]; firstOpen?: boolean }) => (
  <ol className={styles.causes}>{causes.map((cause, i) => <Cause key={cause.id} cause={cause} startOpen={firstOpen && i === 0} />)}</ol>
);
