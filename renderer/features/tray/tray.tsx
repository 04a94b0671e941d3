import { useCallback, useEffect, useRef, type KeyboardEvent, type ReactNode } from 'react';
import type { EnginePlan, PlanPlace } from '../../../core/domain/engine-plan.ts';
import { plugKey, type PlugKey } from '../../../core/domain/plugs.ts';
import type { PlugLook } from '../../../shared/formats/first-look.ts';
import type { Verdict } from '../../../shared/vocabulary/verdicts.ts';
import { useDecided, useSheet } from '../../state/hooks.ts';
import { keyOf } from '../../state/places.ts';
import { useText } from '../../text/index.ts';
import { ToneShape, toneOf } from '../../ui/judgement.tsx';
import { PlanCaption, PlanDrawing } from '../../ui/plan-drawing.tsx';
import { useLasting } from '../../ui/use-lasting.ts';
import { captionWidth, type StationLayout } from './layout.ts';
import { cylinderLabels } from './labels.ts';
import { nearest, type Direction } from './nearest.ts';
import { Place } from './place.tsx';
import { isPlugRead } from './questions.ts';
import styles from './tray.module.css';

type Props = {
  readonly plan: EnginePlan;
  readonly layout: StationLayout;
  readonly selected: PlugKey;
  readonly onSelect: (key: PlugKey) => void;
  readonly onEnter: () => void;
  /** What lies below the engine where it leaves room. */
  readonly children?: ReactNode;
};

const DIRECTIONS: Readonly<Record<string, Direction>> = { ArrowLeft: 'left', ArrowRight: 'right', ArrowUp: 'up', ArrowDown: 'down' };
/** Verdicts that a change made old are shown so when the new ones keep one waiting. */
const OLDER_AFTER_MS = 400;
const keyAt = ({ cylinder, position }: PlanPlace): PlugKey => plugKey(cylinder, position);

/** The plugs as they lie in the engine. */
export function Tray({ plan, layout: { scale, shape }, selected, onSelect, onEnter, children }: Props) {
  const { tray } = useText();
  const list = useRef<HTMLDivElement>(null);
  const caption = captionWidth(plan, scale);
  const latest = useRef(onSelect);
  useEffect(() => { latest.current = onSelect; });
  const select = useCallback((key: PlugKey) => latest.current(key), []);
  const isOlder = useDecided()?.isOlder === true;
  const shownOlder = useLasting(isOlder, OLDER_AFTER_MS);
  const here = plan.places.find((place) => keyAt(place) === selected);

  useEffect(() => {
    const { current } = list;
    if (current?.contains(document.activeElement) === true) current.querySelector<HTMLElement>('[aria-selected="true"]')?.focus({ preventScroll: true });
  }, [selected]);

  const onKeyDown = (event: KeyboardEvent): void => {
    const direction = DIRECTIONS[event.key];
    if (event.ctrlKey || event.altKey || event.metaKey) return;
    const next = direction !== undefined && here !== undefined ? nearest(here, plan.places, direction) : undefined;
    if (next !== undefined) onSelect(keyAt(next));
    else if (event.key === 'Enter' || event.key === ' ') onEnter();
    else return;
    event.preventDefault();
  };

  return (
    <section className={styles.tray} data-shape={shape} data-older={shownOlder ? '' : undefined} data-filled={children === undefined ? undefined : ''}>
      <div className={styles.middle}>
        <div className={styles.plan} style={{ width: plan.width * scale, height: plan.height * scale }}>
          <div className={styles.outline} aria-hidden="true"><PlanDrawing plan={{ ...plan, places: [] }} label="" /></div>
          {cylinderLabels(plan).map(({ cylinder, x, y }) => (
            <span key={cylinder} aria-hidden="true" className={styles.number} style={{ left: x * scale, top: y * scale }}>{cylinder}</span>
          ))}
          <div ref={list} role="listbox" aria-label={tray.tray.name} aria-busy={isOlder} className={styles.places} onKeyDown={onKeyDown}>
            {plan.places.map((place) => {
              const key = keyAt(place);
              return <Place key={key} at={place} plugKey={key} scale={scale} selected={key === selected} caption={caption} onSelect={select} />;
            })}
          </div>
        </div>
      </div>
      {children}
      <footer className={styles.foot}>
        <PlanCaption plan={plan} />
        {caption === undefined && <Groups />}
      </footer>
    </section>
  );
}

/** What stands out first: the verdict that fewest plugs have. */
function byVerdict(plugs: readonly PlugLook[]): readonly (readonly [Verdict, readonly PlugLook[]])[] {
  const verdicts = [...new Set(plugs.map((plug) => plug.verdict))];
  return verdicts.map((verdict) => [verdict, plugs.filter((plug) => plug.verdict === verdict)] as const).sort((a, b) => a[1].length - b[1].length);
}

/** Verdicts in words with their cylinders, where the places are too small for words. */
function Groups() {
  const { tray } = useText();
  const decided = useDecided();
  const read = new Set(useSheet().plugs.filter(isPlugRead).map(keyOf));
  const groups = byVerdict((decided?.look.plugs ?? []).filter((plug) => read.has(keyOf(plug))));
  if (groups.length === 0) return null;
  const nameOf = ({ cylinder, position }: PlugLook): string => `${cylinder}${tray.positionShort[position]}`;
  return (
    <ul className={styles.groups} aria-label={tray.tray.groups}>
      {groups.map(([verdict, plugs]) => (
        <li key={verdict} className={styles.group}>
          <ToneShape tone={toneOf(verdict)} /><b>{tray.verdictName(verdict)}</b> {plugs.length > 6 ? tray.tray.verdictsOf(plugs.length) : plugs.map(nameOf).join(', ')}
        </li>
      ))}
    </ul>
  );
}
