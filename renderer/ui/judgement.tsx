import type { ReactNode } from 'react';
import type { Verdict } from '../../shared/vocabulary/verdicts.ts';
import styles from './judgement.module.css';

/** How grave a judgement is: sound, to be watched, to be acted on, to be stopped for; open when nothing decides. */
export type Tone = 'sound' | 'watch' | 'act' | 'stop' | 'open';

const TONES: { readonly [V in Verdict]: Tone } = {
  normal: 'sound',
  'too cold': 'watch', 'dry carbon fouling': 'watch', 'fuel wet': 'watch', 'lead fouling': 'watch', 'ash deposits': 'watch', glazing: 'watch',
  'additive deposits': 'watch', worn: 'watch', 'reversed polarity': 'watch',
  'too hot': 'act', 'oil fouling': 'act', bridged: 'act', 'not sealing': 'act', 'not firing': 'act', 'wrong reach': 'act', 'ignition leakage': 'act',
  'coolant entry': 'stop', 'detonation damage': 'stop', 'pre-ignition damage': 'stop', 'insulator damage': 'stop', 'mechanical damage': 'stop',
  undetermined: 'open',
};
export const toneOf = (verdict: Verdict): Tone => TONES[verdict];

const shapes: { readonly [T in Tone]: ReactNode } = {
  sound: <circle cx="8" cy="8" r="5.5" />,
  watch: <><circle cx="8" cy="8" r="5.5" /><path className={styles.solid} d="M8 2.5a5.5 5.5 0 0 1 0 11z" /></>,
  act: <path className={styles.solid} d="M1.8 3h12.4L8 14z" />,
  stop: <path className={styles.solid} fillRule="evenodd" d="M2 2h12v12H2zM4.5 6.8v2.4h7V6.8z" />,
  open: <circle cx="8" cy="8" r="5.5" strokeDasharray="2.6 2.6" />,
};

/** The shape of a tone without its word; use it only beside the word. */
export const ToneShape = ({ tone }: { tone: Tone }) => <svg className={styles.shape} viewBox="0 0 16 16" aria-hidden="true">{shapes[tone]}</svg>;

/** A judgement: shape and word first, colour second. */
export const Judgement = ({ tone, children }: { tone: Tone; children: ReactNode }) => (
  <span className={styles.judgement} data-tone={tone}><ToneShape tone={tone} />{children}</span>
);
