import { VERDICTS } from '../../shared/vocabulary/verdicts.ts';
import { Belief } from '../ui/belief.tsx';
import { Judgement, toneOf, type Tone } from '../ui/judgement.tsx';
import styles from './gallery.module.css';

const TONES: readonly Tone[] = ['sound', 'watch', 'act', 'stop', 'open'];

/** All verdicts, in the order of their tones, and all beliefs. */
export const Verdicts = () => (
  <section className={styles.part}>
    <h2>Verdicts</h2>
    {TONES.map((tone) => (
      <div key={tone} className={styles.row}>
        {VERDICTS.filter((verdict) => toneOf(verdict) === tone).map((verdict) => <Judgement key={verdict} tone={tone}>{verdict}</Judgement>)}
      </div>
    ))}
    <h2>Beliefs</h2>
    {[0.005, 0.1, 0.3, 0.5, 0.7, 0.9, 0.995].map((value) => <Belief key={value} value={value} />)}
  </section>
);
