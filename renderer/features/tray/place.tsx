import { memo } from 'react';
import type { PlanPlace } from '../../../core/domain/engine-plan.ts';
import type { PlugKey } from '../../../core/domain/plugs.ts';
import type { PlugLook } from '../../../shared/formats/first-look.ts';
import { usePlug, usePlugVerdict } from '../../state/hooks.ts';
import { useText } from '../../text/index.ts';
import { formatBelief } from '../../text/numbers.ts';
import { DrawnTip } from '../../ui/drawn-tip/index.ts';
import { ToneShape, toneOf, type Tone } from '../../ui/judgement.tsx';
import { PlugPhotoMark } from '../photos/index.ts';
import styles from './tray.module.css';
import { enteredFacets, FACETS_IN_ALL, isPlugRead } from './questions.ts';

type Props = {
  readonly at: PlanPlace;
  readonly plugKey: PlugKey;
  readonly scale: number;
  readonly selected: boolean;
  /** Width of the words below the drawing, where there is room for them. */
  readonly caption: number | undefined;
  readonly onSelect: (key: PlugKey) => void;
};

const EMPTY = {};
/** The drawing's share of its place. */
const DRAWN = 0.94;

const placeId = (key: PlugKey): string => `place-${key.replace(' ', '-')}`;
/** Takes the focus to the plug in the tray, where a control that had it is gone. */
export const focusPlace = (key: PlugKey): void => document.getElementById(placeId(key))?.focus();

/** One plug in the tray: its drawing, whose it is, how much is entered, and the verdict. */
export const Place = memo(({ at, plugKey, scale, selected, caption, onSelect }: Props) => {
  const { tray } = useText();
  const plug = usePlug(plugKey);
  const decided = usePlugVerdict(plugKey);
  const judged = isPlugRead(plug) ? decided : undefined;
  const entered = enteredFacets(plug?.tip);
  const state = plug === undefined ? tray.tray.notRead : tray.tray.entered(entered, FACETS_IN_ALL);
  const said = judged === undefined ? [] : [tray.tray.verdict(tray.verdictName(judged.verdict), judged.verdict === 'undetermined' ? undefined : formatBelief(judged.belief))];
  return (
    <div role="option" id={placeId(plugKey)} aria-selected={selected} tabIndex={selected ? 0 : -1} className={styles.place}
      aria-label={[tray.placeName(at), state, ...said].join(', ')} data-absent={plug === undefined ? '' : undefined}
      style={{ left: Math.round((at.x - 0.5) * scale), top: Math.round((at.y - 0.5) * scale), width: scale, height: scale }}
      onClick={() => onSelect(plugKey)} onFocus={() => { if (!selected) onSelect(plugKey); }}>
      {plug === undefined ? <span className={styles.absent}>{tray.tray.notRead}</span> : (
        <>
          <DrawnTip tip={plug.tip ?? EMPTY} view="end" size={Math.round(scale * DRAWN)} seed={plugKey} title="" />
          <EnteredRing share={entered / FACETS_IN_ALL} />
          <PlugPhotoMark plug={plugKey} className={styles.photo} />
        </>
      )}
      {at.position !== 'only' && <span className={styles.position}>{tray.positionShort[at.position]}</span>}
      {judged !== undefined && (caption === undefined ? <Badge tone={toneOf(judged.verdict)} /> : <Caption judged={judged} width={caption} />)}
    </div>
  );
});

const Badge = ({ tone }: { tone: Tone }) => <span className={styles.badge} data-tone={tone}><ToneShape tone={tone} /></span>;

function Caption({ judged: { verdict, belief }, width }: { judged: Pick<PlugLook, 'verdict' | 'belief'>; width: number }) {
  const { tray } = useText();
  return (
    <span className={styles.caption} style={{ width }} aria-hidden="true">
      <span className={styles.verdict}><ToneShape tone={toneOf(verdict)} />{tray.verdictName(verdict)}</span>
      {verdict !== 'undetermined' && <BeliefBar share={belief} />}
    </span>
  );
}

const RING = 48.5;

/** How much of the tip is entered: a ring that closes, from the top and with the clock. */
function EnteredRing({ share }: { share: number }) {
  const angle = 2 * Math.PI * Math.min(share, 0.9999);
  const end = `${(RING * Math.sin(angle)).toFixed(2)} ${(-RING * Math.cos(angle)).toFixed(2)}`;
  return (
    <svg className={styles.ring} viewBox="-50 -50 100 100" aria-hidden="true">
      {share > 0 && <path d={`M0 ${-RING}A${RING} ${RING} 0 ${share > 0.5 ? 1 : 0} 1 ${end}`} />}
    </svg>
  );
}

/** How far the verdict is believed. */
const BeliefBar = ({ share }: { share: number }) => (
  <svg className={styles.belief} viewBox="0 0 100 4" preserveAspectRatio="none" aria-hidden="true">
    <rect className={styles.track} width="100" height="4" />
    <rect className={styles.fill} width={100 * share} height="4" />
  </svg>
);
