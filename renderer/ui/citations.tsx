import { Popover } from 'radix-ui';
import { Fragment } from 'react';
import { COMMON_PRACTICE, FROM_MEMORY, OWN_LINE } from '../../core/knowledge/types.ts';
import { hrefOf } from '../app/route.ts';
import { useText } from '../text/index.ts';
import { GlyphButton } from './button.tsx';
import styles from './citations.module.css';
import { CloseGlyph } from './glyphs.tsx';
import { sourceOf } from './sources.ts';

/** All that rests on a source. */
const allOn = (id: string): string => hrefOf({ page: 'knowledge', shelf: 'sources', entry: id });

function Citation({ id }: { id: string }) {
  const text = useText().findings.sources;
  const source = sourceOf(id);
  if (id === COMMON_PRACTICE) return <a className={styles.honest} href={allOn(id)}>{text.commonPractice}</a>;
  if (id === FROM_MEMORY) return <a className={styles.honest} href={allOn(id)}>{text.fromMemory}</a>;
  if (id === OWN_LINE) return <span className={styles.honest}>{text.own}</span>;
  if (source === undefined) return <span className={styles.honest}>{id}</span>;
  return (
    <Popover.Root>
      <Popover.Trigger className={styles.citation} aria-label={text.open(id)}>{id}</Popover.Trigger>
      <Popover.Portal>
        <Popover.Content className={styles.sheet} sideOffset={4} collisionPadding={12} aria-label={text.open(id)}>
          <p className={styles.title}>{source.title}</p>
          <p className={styles.read}>{text.read(source.read)} <a href={allOn(id)}>{text.all}</a></p>
          <Popover.Close asChild><GlyphButton name={text.close}><CloseGlyph /></GlyphButton></Popover.Close>
        </Popover.Content>
      </Popover.Portal>
    </Popover.Root>
  );
}

/** Where a statement comes from: short marks that open the title, or the honest answer that nobody wrote it down. */
export const Citations = ({ ids }: { ids: readonly string[] }) => (
  <span className={styles.citations}>
    {ids.map((id, i) => <Fragment key={id}>{i > 0 && ' '}<Citation id={id} /></Fragment>)}
  </span>
);
