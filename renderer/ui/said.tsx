import type { ReactNode } from 'react';
import styles from './said.module.css';

/** Words for a screen reader only. */
export const Said = ({ children }: { children: ReactNode }) => <span className={styles.said}>{children}</span>;
