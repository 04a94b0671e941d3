import type { ReactNode } from 'react';
import type { Change, CureOutcome } from '../../../shared/vocabulary/follow-up.ts';
import { useText } from '../../text/index.ts';
import styles from './change-tag.module.css';

type Sign = 'tick' | 'up' | 'level' | 'down' | 'plus' | 'open' | 'half' | 'cross';
type Weight = 'good' | 'plain' | 'grave';

const SIGNS: { readonly [S in Sign]: ReactNode } = {
  tick: <path d="M2.5 8.5 6.5 12.5 13.5 4" />,
  up: <path d="M3 13 13 3M6 3h7v7" />,
  level: <path d="M2.5 6h11M2.5 10h11" />,
  down: <path d="M3 3 13 13M13 6v7H6" />,
  plus: <path d="M8 2.5v11M2.5 8h11" />,
  open: <circle cx="8" cy="8" r="5.5" strokeDasharray="2.6 2.6" />,
  half: <path d="M2.5 8h11M8 8v5.5" />,
  cross: <path d="M3.5 3.5l9 9M12.5 3.5l-9 9" />,
};

const OF_CHANGE: { readonly [C in Change]: readonly [Sign, Weight] } = {
  cured: ['tick', 'good'], better: ['up', 'good'], unchanged: ['level', 'plain'], worse: ['down', 'grave'], new: ['plus', 'grave'], 'cannot be told': ['open', 'plain'],
};
const OF_OUTCOME: { readonly [O in CureOutcome]: readonly [Sign, Weight] } = {
  'borne out': ['tick', 'good'], 'partly borne out': ['half', 'plain'], 'not borne out': ['cross', 'grave'], 'cannot be told': ['open', 'plain'], 'not done': ['open', 'plain'],
};

const Tag = ({ sign: [sign, weight], children }: { sign: readonly [Sign, Weight]; children: ReactNode }) => (
  <span className={styles.tag} data-weight={weight}><svg className={styles.sign} viewBox="0 0 16 16" aria-hidden="true">{SIGNS[sign]}</svg>{children}</span>
);

/** What became of a plug: a sign and a word first, contrast second. */
export function ChangeTag({ change }: { change: Change }) {
  return <Tag sign={OF_CHANGE[change]}>{useText().followUp.changes[change]}</Tag>;
}

/** What became of a cure. */
export function OutcomeTag({ outcome }: { outcome: CureOutcome }) {
  return <Tag sign={OF_OUTCOME[outcome]}>{useText().followUp.outcomes[outcome]}</Tag>;
}
