import { useState, type ReactNode, type RefObject } from 'react';
import type { Tip } from '../../../shared/formats/reading-sheet.v1.ts';
import { useText } from '../../text/index.ts';
import type { Question } from '../../ui/drawn-tip/index.ts';
import { Button } from '../../ui/button.tsx';
import { PlugPhotos } from '../photos/index.ts';
import { setRead } from './deeds.ts';
import { FittedFields, MeasuredFields, NoteField } from './details.tsx';
import styles from './entry.module.css';
import { EntryHead } from './entry-head.tsx';
import { focusPlace } from './place.tsx';
import { QuestionRow } from './question.tsx';
import { LATER, partOf, QUICK } from './questions.ts';
import { Section } from './section.tsx';
import type { Detail, Entry as EntryState } from './use-entry.ts';

const EMPTY: Tip = {};

type Props = {
  readonly entry: EntryState;
  /** The large drawing, where it stands beside the questions. */
  readonly picture: ReactNode;
  readonly regionRef: RefObject<HTMLElement | null>;
  readonly searchRef: RefObject<HTMLInputElement | null>;
  /** The focus shall follow the question that comes next. */
  readonly onFollow: () => void;
  readonly open: ReadonlySet<string>;
  readonly onToggle: (section: string) => void;
};

/** Everything that can be said of one plug, the quick questions first. */
export function Entry({ entry, picture, regionRef, searchRef, onFollow, open, onToggle }: Props) {
  const { tray } = useText();
  const { hand, question } = entry;
  const { plug, place } = hand;
  const tip = plug?.tip ?? EMPTY;
  const part = partOf(question);
  const summaryOf = (facets: readonly Question[]): string => tray.entry.partLeft(facets.filter((facet) => tip[facet] !== undefined).length, facets.length);
  const beside = hand.neighbours.flatMap(({ place: at, tip: other }) => {
    const value = other[question];
    return value === undefined || value === tip[question] ? [] : [{ name: tray.placeName(at), short: tray.placeShort(at), value }];
  });
  const row = (about: Question) => (
    <QuestionRow key={about} question={about} tip={tip} active={about === question} beside={beside} onAsk={() => entry.ask(about)}
      onChoose={(value) => entry.choose(about, value)}
      onUnsure={() => entry.perform({ does: 'unsure' })} onClear={() => entry.perform({ does: 'clear' })} />
  );
  return (
    <section ref={regionRef} className={styles.entry} aria-label={tray.entry.name(tray.placeName(place))}>
      <EntryHead entry={entry} searchRef={searchRef} onTake={({ question: about, value }) => { onFollow(); entry.choose(about, value, 'stay'); }} />
      {plug === undefined ? (
        <div className={styles.absent}>
          <p>{tray.entry.absent}</p>
          <Button look="main" onClick={() => { setRead(hand, true); focusPlace(hand.plugKey); }}>{tray.entry.readAfterAll}</Button>
        </div>
      ) : (
        <div className={styles.body} data-picture={picture === undefined ? undefined : ''}>
          <div className={styles.questions} data-questions="">
            <PlugPhotos plug={hand.plugKey} />
            {QUICK.map(row)}
            {LATER.map(([name, facets]) => (
              <Section key={name} title={tray.parts[name]} summary={summaryOf(facets)}
                open={part === name || open.has(name)} onToggle={() => onToggle(name)}>
                {facets.map(row)}
              </Section>
            ))}
            <DetailSections entry={entry} open={open} onToggle={onToggle} />
          </div>
          {picture}
        </div>
      )}
    </section>
  );
}

function DetailSections({ entry: { hand: { plug, plugKey } }, open, onToggle }: Pick<Props, 'entry' | 'open' | 'onToggle'>) {
  const { entry: words } = useText().tray;
  const count = (part: object | undefined): string => words.fieldsEntered(Object.keys(part ?? {}).length);
  const details: readonly (readonly [Detail, string, ReactNode])[] = [
    ['measured', count(plug?.measured), <MeasuredFields plug={plugKey} />],
    ['fitted', count(plug?.fitted), <FittedFields plug={plugKey} />],
    ['note', plug?.note ?? '', <NoteField plug={plugKey} />],
  ];
  return details.map(([name, summary, content]) => (
    <div key={name} data-detail={name}>
      <Section title={words.details[name]} summary={summary} open={open.has(name)} onToggle={() => onToggle(name)}>{content}</Section>
    </div>
  ));
}

/** Which folds are open. */
export function useOpenSections(): readonly [ReadonlySet<string>, (section: string, on?: boolean) => void] {
  const [open, setOpen] = useState<ReadonlySet<string>>(new Set());
  const toggle = (section: string, on = !open.has(section)): void =>
    setOpen((before) => new Set([...[...before].filter((name) => name !== section), ...(on ? [section] : [])]));
  return [open, toggle];
}
