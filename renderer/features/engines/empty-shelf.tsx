import type { Tip } from '../../../shared/formats/reading-sheet.v1.ts';
import { IfWritable } from '../../app/if-writable.tsx';
import { OpenLibrary } from '../../app/open-library.tsx';
import { hrefOf } from '../../app/route.ts';
import { useStore } from '../../state/store.ts';
import { useText, type Text } from '../../text/index.ts';
import { ButtonLink } from '../../ui/button.tsx';
import { DrawnTip } from '../../ui/drawn-tip/index.ts';
import styles from './empty-shelf.module.css';
import { ImportSheet } from './import-sheet.tsx';

const TIPS: { readonly [name in keyof Text['engines']['empty']['tips']]: Tip } = {
  sound: { noseColour: 'light tan', noseSurface: 'fine powder', deposit: 'light dusting', shellRim: 'light grey', centreElectrode: 'lightly worn', groundElectrode: 'as new' },
  sooty: { noseColour: 'black', noseSurface: 'matt soot', deposit: 'dry soot', coverage: 'full', shellRim: 'even soot', centreElectrode: 'sharp', groundElectrode: 'as new' },
  oily: { noseColour: 'black', noseSurface: 'wet', deposit: 'wet oil', coverage: 'full', shellRim: 'wet oil', centreElectrode: 'lightly worn', groundElectrode: 'lightly worn' },
  hot: { noseColour: 'white', noseSurface: 'blistered', deposit: 'none', specks: 'dark pepper', centreElectrode: 'eroded', groundElectrode: 'blued', shellRim: 'bare metal' },
};

/** What a newcomer sees: what the program is for, how it goes, and three ways to begin. */
export function EmptyShelf() {
  const { engines: { empty, import: importWords } } = useText();
  const isDemo = useStore((state) => state.info?.library.kind === 'demo');
  return (
    <div className={styles.empty}>
      <h1>{empty.title}</h1>
      <p className={styles.lead}>{empty.lead}</p>
      <ul className={styles.tips}>
        {(['sound', 'sooty', 'oily', 'hot'] as const).map((name) => (
          <li key={name} className={styles.tip}><DrawnTip tip={TIPS[name]} view="end" size={132} seed={name} title="" /><span>{empty.tips[name]}</span></li>
        ))}
      </ul>
      <ol className={styles.steps}>
        {empty.steps.map(({ what, how }, i) => (
          <li key={what} className={styles.step}>
            <span className={styles.count} aria-hidden="true">{i + 1}</span>
            <h2>{what}</h2>
            <p>{how}</p>
          </li>
        ))}
      </ol>
      <div className={styles.ways}>
        <IfWritable><ButtonLink look="main" href={hrefOf({ page: 'engine-new' })}>{empty.addFirst}</ButtonLink></IfWritable>
        {!isDemo && <OpenLibrary kind="demo" words={empty.demo} />}
        <IfWritable><ImportSheet label={importWords} /></IfWritable>
      </div>
      <p className={styles.hint}>{isDemo ? '' : `${empty.demoHint} `}{empty.importHint}</p>
    </div>
  );
}
