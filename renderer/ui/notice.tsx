import type { ReactNode } from 'react';
import styles from './notice.module.css';

/** Something the person has to know before going on; it stays until it no longer holds. */
export const Notice = ({ tone = 'plain', title, children }: { tone?: 'plain' | 'problem'; title?: string; children: ReactNode }) => (
  <div className={styles.notice} data-tone={tone} role={tone === 'problem' ? 'alert' : 'status'}>
    {title !== undefined && <strong className={styles.title}>{title}</strong>}
    <div className={styles.body}>{children}</div>
  </div>
);
