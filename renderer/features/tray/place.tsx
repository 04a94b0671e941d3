import { memo } from 'react';
import type { PlanPlace } from '../../../core/domain/engine-plan.ts';
import type { PlugKey } from '../../../core/domain/plugs.ts';
import { usePlug, usePlugFindings } from '../../state/hooks.ts';
import { useText } from '../../text/index.ts';
import { formatBelief } from '../../text/numbers.ts';
import { DrawnTip } from '../../ui/drawn-tip/index.ts';
import { ToneShape, toneOf } from '../../ui/judgement.tsx';
import styles from './tray.module.css';
import { enteredFacets, FACETS_IN_ALL, isTipRead } from './questions.ts';

type Props = {
  readonly at: PlanPlace;
  readonly plugKey: PlugKey;
  readonly scale: number;
  readonly selected: boolean;
  readonly captioned: boolean;
  readonly onSelect: (key: PlugKey) => void;
};

const EMPTY = {};

/** One plug in the tray: its drawing, whose it is, how much is entered, and the verdict. */
export const Place = memo(({ at, plugKey, scale, selected, captioned, onSelect }: Props) => {
  const { tray } = useText();
  const plug = usePlug(plugKey);
  const findings = usePlugFindings(plugKey);
  const entered = enteredFacets(plug?.tip);
  const verdict = plug !== undefined && isTipRead(plug.tip) ? findings?.verdict : undefined;
  const state = plug === undefined ? tray.tray.notRead : tray.tray.entered(entered, FACETS_IN_ALL);
  const judged = verdict === undefined || findings === undefined ? [] : [tray.tray.verdict(verdict, formatBelief(findings.belief))];
  const size = Math.round(scale * 0.94);
  return (
    <div role="option" id={`place-${plugKey.replace(' ', '-')}`} aria-selected={selected} tabIndex={selected ? 0 : -1} className={styles.place}
      aria-label={[tray.placeName(at), state, ...judged].join(', ')} data-absent={plug === undefined ? '' : undefined}
      style={{ left: Math.round((at.x - 0.5) * scale), top: Math.round((at.y - 0.5) * scale), width: scale, height: scale }}
      onClick={() => onSelect(plugKey)} onFocus={() => { if (!selected) onSelect(plugKey); }}>
      {plug === undefined
        ? <span className={styles.absent}>{tray.tray.notRead}</span>
        : <DrawnTip tip={plug.tip ?? EMPTY} view="end" size={size} seed={plugKey} title="" />}
      {at.position !== 'only' && <span className={styles.position}>{tray.positionShort[at.position]}</span>}
      {plug !== undefined && <Bar className={styles.entered} share={entered / FACETS_IN_ALL} upright />}
      {verdict !== undefined && !captioned && <span className={styles.badge} data-tone={toneOf(verdict)}><ToneShape tone={toneOf(verdict)} /></span>}
      {verdict !== undefined && captioned && (
        <span className={styles.caption}>
          <span className={styles.verdict}><ToneShape tone={toneOf(verdict)} />{verdict}</span>
          <Bar className={styles.belief} share={findings?.belief ?? 0} />
        </span>
      )}
    </div>
  );
});

/** A quiet bar, filled from the left, or from the bottom. */
const Bar = ({ share, className, upright = false }: { share: number; className: string | undefined; upright?: boolean }) => (
  <svg className={className} viewBox="0 0 100 100" preserveAspectRatio="none" aria-hidden="true">
    <rect className={styles.track} width="100" height="100" />
    <rect className={styles.fill} y={upright ? 100 - 100 * share : 0} width={upright ? 100 : 100 * share} height={upright ? 100 * share : 100} />
  </svg>
);
