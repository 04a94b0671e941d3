import type { ComponentProps, ReactNode } from 'react';
import styles from './button.module.css';
import { classes } from './class-names.ts';

type Look = 'plain' | 'main' | 'quiet' | 'danger';

/** A button of full size. `main` is the one thing to do next on a screen. */
export const Button = ({ look = 'plain', className, ...rest }: ComponentProps<'button'> & { look?: Look }) => (
  <button type="button" {...rest} className={classes(styles.button, styles[look], className)} />
);

/** A button that shows a glyph; its name is said and appears on hover. */
export const GlyphButton = ({ name, children, className, ...rest }: Omit<ComponentProps<'button'>, 'children'> & { name: string; children: ReactNode }) => (
  <button type="button" title={name} {...rest} aria-label={name} className={classes(styles.button, styles.quiet, styles.square, className)}>{children}</button>
);

/** A link that looks like a button, for going to another screen. */
export const ButtonLink = ({ look = 'plain', className, ...rest }: ComponentProps<'a'> & { look?: Look }) => (
  <a {...rest} className={classes(styles.button, styles[look], className)} />
);
