import { SWAP_PARTS } from '../../../shared/vocabulary/checks.ts';
import { FROM_MEMORY } from '../../../core/knowledge/types.ts';
import { useFieldFocus } from '../../app/use-field-focus.ts';
import { useSheet } from '../../state/hooks.ts';
import { useText } from '../../text/index.ts';
import { Citations } from '../../ui/citations.tsx';
import { BenchSheet } from './bench-sheet.tsx';
import { OddCylinders } from './odd-cylinders.tsx';
import { PartsTried } from './parts-tried.tsx';
import styles from './tried.module.css';

/** `swap-coil-3` and `substitute-coil-3` name the form for a trial of that part in that cylinder. */
function trialOf(field: string | undefined) {
  const [how, word, number] = field?.split('-') ?? [];
  const part = SWAP_PARTS.find((one) => one === word);
  if ((how !== 'swap' && how !== 'substitute') || part === undefined) return {};
  return { how, part, ...(number !== undefined && { cylinder: Number(number) }) } as const;
}

/** What was measured and tried on each cylinder. */
export function CylindersStation() {
  const text = useText().checks;
  const { use } = useSheet().engine;
  const field = useFieldFocus((name) => ('how' in trialOf(name) ? 'parts' : name));
  return (
    <div className={styles.station}>
      <header className={styles.head}>
        <h2 id="bench-sheet">{text.title}</h2>
        <p className={styles.about}>{text.about}</p>
        {use === 'aircraft' && <p className={styles.caution}>{text.aircraft} <Citations ids={[FROM_MEMORY]} /></p>}
      </header>
      <BenchSheet />
      <OddCylinders />
      <PartsTried start={trialOf(field)} />
    </div>
  );
}
