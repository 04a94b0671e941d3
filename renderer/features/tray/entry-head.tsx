import type { ComponentProps, RefObject } from 'react';
import { useText } from '../../text/index.ts';
import { Button, GlyphButton } from '../../ui/button.tsx';
import { BackGlyph } from '../../ui/glyphs.tsx';
import { clearTip, setRead } from './deeds.ts';
import styles from './entry-head.module.css';
import { FindValue } from './find-value.tsx';
import { focusPlace } from './place.tsx';
import { isTipRead } from './questions.ts';
import { SameAs } from './same-as.tsx';
import type { Match } from './search.ts';
import type { Entry } from './use-entry.ts';

/** A button with the sign of its key. */
const Deed = ({ sign, children, ...rest }: ComponentProps<typeof Button> & { sign: string }) => (
  <Button {...rest} className={styles.deed}>{children}<kbd aria-hidden="true">{sign}</kbd></Button>
);

/** Which plug is at hand, the way to the next, and what can be done with all of its tip at once. */
export function EntryHead({ entry, searchRef, onTake }: { entry: Entry; searchRef: RefObject<HTMLInputElement | null>; onTake: (match: Match) => void }) {
  const { tray } = useText();
  const { entry: words } = tray;
  const { hand, perform } = entry;
  const { plug, place } = hand;
  const read = isTipRead(plug?.tip);
  const leave = (): void => { searchRef.current?.closest('section')?.querySelector<HTMLElement>('[aria-expanded="true"][id^="ask-"]')?.focus(); };
  return (
    <header className={styles.head}>
      <div className={styles.row}>
        <GlyphButton name={words.previous} aria-keyshortcuts="[" onClick={() => perform({ does: 'plug', steps: -1 })}><BackGlyph /></GlyphButton>
        <h2 className={styles.name}>{tray.placeName(place)}</h2>
        <GlyphButton name={words.next} aria-keyshortcuts="]" className={styles.next} onClick={() => perform({ does: 'plug', steps: 1 })}>
          <BackGlyph />
        </GlyphButton>
        {plug !== undefined && (
          <>
            <Button look="quiet" className={styles.deed} onClick={() => { setRead(hand, false); focusPlace(hand.plugKey); }}>{words.notRead}</Button>
            <div className={styles.find}><FindValue inputRef={searchRef} onTake={onTake} onLeave={leave} /></div>
          </>
        )}
      </div>
      {plug !== undefined && (
        <div className={styles.row}>
          <Deed sign="O" aria-pressed={plug.tip?.overall === 'looks normal'} onClick={() => perform({ does: 'looksNormal' })}>{words.looksNormal}</Deed>
          <SameAs hand={hand} />
          <Deed sign="C" disabled={!read} onClick={() => perform({ does: 'copyToEmpty' })}>{words.copyToEmpty}</Deed>
          <Deed sign="⇧C" disabled={!read} onClick={() => perform({ does: 'copyToAll' })}>{words.copyToAll}</Deed>
          <span className={styles.gap} />
          <Button look="quiet" className={styles.deed} disabled={!read} onClick={() => clearTip(hand)}>{words.clearTip}</Button>
        </div>
      )}
    </header>
  );
}
