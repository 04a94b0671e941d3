import type { Tip } from '../../shared/formats/reading-sheet.v1.ts';
import { FACET_NAMES, OVERALL, TIP_FACETS } from '../../shared/vocabulary/tip.ts';
import { DrawnTip, TipSample, type Sample } from '../ui/drawn-tip/index.ts';
import styles from './gallery.module.css';

const READ: Tip = { noseColour: 'light tan', noseSurface: 'fine powder', shellRim: 'even soot', centreElectrode: 'sharp', groundElectrode: 'as new' };
const QUESTIONS = [...FACET_NAMES.map((facet) => [facet, TIP_FACETS[facet]] as const), ['overall', OVERALL] as const];

/** One value: bare, on a plug that was read, from the side, at the size of the tray, and as the sample beside its word. */
function Value({ facet, value }: { facet: string; value: string }) {
  const bare: Tip = { [facet]: value };
  const read: Tip = { ...READ, ...bare };
  return (
    <figure className={styles.tip}>
      <div className={styles.views}>
        <DrawnTip tip={bare} view="end" size={120} seed="gallery" title="" />
        <DrawnTip tip={read} view="end" size={120} seed="gallery" title="" />
        <DrawnTip tip={read} view="side" size={220} seed="gallery" title="" />
        <DrawnTip tip={read} view="end" size={48} seed="gallery" title="" />
        <TipSample sample={{ facet, value } as Sample} size={48} />
      </div>
      <figcaption>{value}</figcaption>
    </figure>
  );
}

/** Every value of every facet of a tip. */
export const Tips = () => QUESTIONS.map(([facet, values]) => (
  <section key={facet} className={styles.part}>
    <h2>{facet}</h2>
    <div className={styles.row}>{values.map((value) => <Value key={value} facet={facet} value={value} />)}</div>
  </section>
));
