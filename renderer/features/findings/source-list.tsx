import { useText } from '../../text/index.ts';
import { sourceOf } from '../../ui/sources.ts';
import { Fold } from '../../ui/fold.tsx';
import styles from './findings.module.css';

function List({ ids }: { ids: readonly string[] }) {
  return <dl className={styles.sources}>{ids.map((id) => <div key={id}><dt>{id}</dt><dd>{sourceOf(id)?.title}</dd></div>)}</dl>;
}

/** The register entries behind the citations, folded on the screen and printed in full. */
export function SourceList({ ids }: { ids: readonly string[] }) {
  const text = useText().findings;
  const known = ids.filter((id) => sourceOf(id) !== undefined);
  if (known.length === 0) return null;
  return (
    <>
      <div className={styles.onScreen}><Fold title={text.sourceList}><List ids={known} /></Fold></div>
      <div className={styles.onPaper}><h3>{text.sourceList}</h3><List ids={known} /></div>
    </>
  );
}
