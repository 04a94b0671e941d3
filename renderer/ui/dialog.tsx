import { Dialog as Primitive } from 'radix-ui';
import { useRef, type ReactNode } from 'react';
import { useText } from '../text/index.ts';
import { GlyphButton } from './button.tsx';
import styles from './dialog.module.css';
import { CloseGlyph } from './glyphs.tsx';

type Props = {
  readonly title: string;
  readonly open: boolean;
  readonly onOpenChange: (open: boolean) => void;
  readonly about?: string;
  readonly children: ReactNode;
};

/**
 * A question or a sheet of its own over the bench, which gives the focus back where it took it from. The veil is ours: the primitive's own
 * would write a style element, which the page's security policy forbids.
 */
export function Dialog({ title, open, onOpenChange, about, children }: Props) {
  const text = useText();
  const before = useRef<Element | null>(null);
  const goBack = (event: Event): void => {
    event.preventDefault();
    if (before.current instanceof HTMLElement) before.current.focus({ preventScroll: true });
  };
  return (
    <Primitive.Root open={open} onOpenChange={onOpenChange}>
      <Primitive.Portal>
        <div className={styles.veil} />
        <Primitive.Content className={styles.dialog} onOpenAutoFocus={() => { before.current = document.activeElement; }} onCloseAutoFocus={goBack}
          {...(about === undefined && { 'aria-describedby': undefined })}>
          <header className={styles.head}>
            <Primitive.Title className={styles.title}>{title}</Primitive.Title>
            <Primitive.Close asChild><GlyphButton name={text.shell.close}><CloseGlyph /></GlyphButton></Primitive.Close>
          </header>
          {about !== undefined && <Primitive.Description className={styles.about}>{about}</Primitive.Description>}
          {children}
        </Primitive.Content>
      </Primitive.Portal>
    </Primitive.Root>
  );
}
