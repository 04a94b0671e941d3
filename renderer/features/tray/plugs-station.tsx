import { useEffect, useMemo, useRef, type KeyboardEvent } from 'react';
import { enginePlan } from '../../../core/domain/engine-plan.ts';
import type { Tip } from '../../../shared/formats/reading-sheet.v1.ts';
import { useSheet } from '../../state/hooks.ts';
import { useText } from '../../text/index.ts';
import { Said } from '../../ui/said.tsx';
import { isTyping } from '../../ui/use-keys.ts';
import { useRoute } from '../../app/use-route.ts';
import { askedBy, type Asked } from './address.ts';
import { Entry, useOpenSections } from './entry.tsx';
import { commandOf } from './keys.ts';
import { KeyHints } from './key-hints.tsx';
import { stationLayout } from './layout.ts';
import styles from './plugs-station.module.css';
import { Picture } from './picture.tsx';
import { questionId } from './question.tsx';
import { valuesOf } from './questions.ts';
import { Tray } from './tray.tsx';
import { useEntry, type Detail } from './use-entry.ts';
import { useFollow } from './use-follow.ts';
import { useRoom } from '../../ui/use-room.ts';

const SUPPOSED = { width: 1280, height: 660 };
const EMPTY: Tip = {};
const FIELDS = 'input, textarea';

/** Goes once to what the address names. */
function useAddress(go: (asked: Asked) => void): void {
  const route = useRoute();
  const field = route.page === 'reading' ? route.field : undefined;
  const latest = useRef(go);
  useEffect(() => { latest.current = go; });
  useEffect(() => { if (field !== undefined) latest.current(askedBy(field)); }, [field]);
}

/** The plugs: the tray, and beside it what is said of the one taken from it. Single keys work while the focus is in here and not in a text field. */
export function PlugsStation() {
  const { engine } = useSheet();
  const { tray } = useText();
  const plan = useMemo(() => enginePlan(engine), [engine]);
  const [station, room] = useRoom<HTMLDivElement>(SUPPOSED);
  const layout = stationLayout(plan, room);
  const entry = useEntry(plan);
  const { plug, plugKey, saying } = entry.hand;
  const [open, toggle] = useOpenSections();
  const region = useRef<HTMLElement>(null);
  const search = useRef<HTMLInputElement>(null);
  const { watch, follow } = useFollow(region, entry.question, plugKey);

  const toQuestions = (): void => document.getElementById(questionId(entry.question))?.focus();
  const toDetail = (detail: Detail): void => {
    toggle(detail, true);
    setTimeout(() => region.current?.querySelector<HTMLElement>(`[data-detail="${detail}"]`)?.querySelector<HTMLElement>(FIELDS)?.focus());
  };
  useAddress((asked) => {
    if (asked.plug !== undefined) entry.select(asked.plug);
    if (asked.question !== undefined) { follow(); entry.ask(asked.question); }
    if (asked.detail !== undefined) toDetail(asked.detail);
  });
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.defaultPrevented) return;
    if (event.key === 'Escape') return isTyping(event.target) ? toQuestions() : undefined;
    if (isTyping(event.target)) return;
    const command = commandOf(event.nativeEvent, valuesOf(entry.question).length);
    if (command === undefined) return;
    event.preventDefault();
    switch (command.does) {
      case 'search': return search.current?.focus();
      case 'measurements': return toDetail('measured');
      case 'note': return toDetail('note');
      default: return plug === undefined && command.does !== 'plug' ? undefined : entry.perform(command);
    }
  };

  const picture = <Picture tip={plug?.tip ?? EMPTY} seed={plugKey} />;
  const columns = layout.shape === 'side' ? { gridTemplateColumns: `${layout.tray.width}px minmax(0, 1fr)` } : undefined;
  return (
    <div ref={station} className={styles.station} data-start="" tabIndex={-1} data-shape={layout.shape} style={columns} onKeyDown={onKeyDown} {...watch}>
      <Tray plan={plan} layout={layout} selected={plugKey} onSelect={entry.select} onEnter={toQuestions}>
        {layout.picture === 'tray' ? <div>{plug !== undefined && picture}</div> : undefined}
      </Tray>
      <Entry entry={entry} picture={layout.picture === 'entry' ? picture : undefined} regionRef={region} searchRef={search}
        onFollow={follow} open={open} onToggle={toggle} />
      <KeyHints keys={tray.keys} />
      <Said><span role="status" aria-live="polite">{saying}</span></Said>
    </div>
  );
}
