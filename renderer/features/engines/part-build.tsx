import { engineFields } from '../../../shared/formats/engine.ts';
import { ASPIRATIONS, COOLINGS, HEAD_MATERIALS } from '../../../shared/vocabulary/engine.ts';
import { useText } from '../../text/index.ts';
import { DraftChoice, DraftNumber } from './draft-fields.tsx';
import styles from './engine-editor.module.css';

export function BuildPart() {
  const { edit, kinds } = useText().engines;
  const { boreMm, strokeMm, rodMm, compressionRatio } = engineFields.shape;
  return (
    <div className={styles.part}>
      <div className={styles.grid}>
        <DraftNumber path="boreMm" label={edit.bore} quantity="length" schema={boreMm} />
        <DraftNumber path="strokeMm" label={edit.stroke} quantity="length" schema={strokeMm} />
        <DraftNumber path="rodMm" label={edit.rod} quantity="length" schema={rodMm} />
        <DraftNumber path="compressionRatio" label={edit.compressionRatio} quantity="ratio" schema={compressionRatio} />
      </div>
      <div className={styles.choices}>
        <DraftChoice path="headMaterial" label={edit.headMaterial} options={HEAD_MATERIALS} nameOf={(kind) => kinds[kind]} />
        <DraftChoice path="aspiration" label={edit.aspiration} options={ASPIRATIONS} nameOf={(kind) => kinds[kind]} />
        <DraftChoice path="cooling" label={edit.cooling} options={COOLINGS} nameOf={(kind) => kinds[kind]} />
      </div>
    </div>
  );
}
