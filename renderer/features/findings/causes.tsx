import { useId, useState } from 'react';
import type { CauseFinding } from '../../../shared/formats/findings.v1.ts';
import { useText } from '../../text/index.ts';
import { Belief } from '../../ui/belief.tsx';
import { UnfoldGlyph } from '../../ui/glyphs.tsx';
import { useTold } from '../../ui/use-told.ts';
import { Balance } from './balance.tsx';
import { useOnPaper } from './paper.ts';
import styles from './causes.module.css';

type Of = 'plug' | 'engine';

/** Where the cause acts; told of the engine, a cause of one cylinder names it, or those of which it may be any. */
function useReach({ scope, cylinders }: CauseFinding, of: Of): string {
  const { scope: reach, cylinders: named, oneOf } = useText().findings;
  if (scope === 'group') return reach.group(cylinders);
  if (scope === 'engine' || of === 'plug') return reach[scope];
  return cylinders.length === 1 ? named(cylinders) : oneOf(cylinders);
}

function Cause({ cause, startOpen, of }: { cause: CauseFinding; startOpen: boolean; of: Of }) {
  const id = useId();
  const told = useTold();
  const [opened, setOpen] = useState(startOpen);
  const paper = useOnPaper();
  const open = paper ? startOpen : opened;
  const reach = useReach(cause, of);
  return (
    <li className={styles.cause}>
      <button type="button" className={styles.head} aria-expanded={open} aria-controls={id} onClick={() => setOpen(!open)}>
        <span className={styles.fold} data-open={open}><UnfoldGlyph /></span>
        <span className={styles.name}>{told.cause(cause.id, cause.name)}<span className={styles.scope}>{reach}</span></span>
        <Belief value={cause.belief} />
      </button>
      <div id={id} className={open ? styles.open : styles.folded}><Balance cause={cause} /></div>
    </li>
  );
}

/**
 * Causes by belief; on the screen the first lies open. Paper carries the evidence of every cause once: of a cause that several cylinders share,
 * where the engine as a whole is told of.
 */
export function Causes({ causes, of }: { causes: readonly CauseFinding[]; of: Of }) {
  const paper = useOnPaper();
  const shared = ({ scope }: CauseFinding): boolean => scope === 'engine' || scope === 'group';
  const startsOpen = (cause: CauseFinding, i: number): boolean => i === 0 && (paper ? of === 'engine' || !shared(cause) : of === 'plug');
  return <ol className={styles.causes}>{causes.map((cause, i) => <Cause key={cause.id} cause={cause} of={of} startOpen={startsOpen(cause, i)} />)}</ol>;
}
