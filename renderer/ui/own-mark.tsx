import { useText } from '../text/index.ts';
import styles from './own-mark.module.css';

/** Marks what rests on a line that the people of this workshop added. */
export const OwnMark = ({ by }: { by: string }) => <span className={styles.mark}>{useText().knowledge.yours.mark(by)}</span>;
