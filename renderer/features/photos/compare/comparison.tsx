import { useState } from 'react';
import { compared } from '../../../../core/photo/compared.ts';
import type { PhotoRecord } from '../../../../shared/channels-photo.ts';
import { useText } from '../../../text/index.ts';
import { Choice } from '../../../ui/choice.tsx';
import { SelectField } from '../../../ui/select-field.tsx';
import { Slider } from '../../../ui/slider.tsx';
import { Tag } from '../../../ui/tag.tsx';
import { partsOf } from '../parts/parts.ts';
import { AS_IT_IS } from '../viewer/placement.ts';
import { WhiteFilters, whiteFilter } from '../light/common-white.tsx';
import styles from './compare.module.css';
import { Differences } from './differences.tsx';
import { MODES, Panes, type Mode } from './panes.tsx';
import { registration } from './registration.ts';

type Props = {
  /** All photos of the plug, the newest first. */
  readonly choice: readonly PhotoRecord[];
  readonly before: PhotoRecord;
  readonly after: PhotoRecord;
  readonly nameOf: (photo: PhotoRecord) => string;
  readonly onPair: (before: PhotoRecord, after: PhotoRecord) => void;
};

const MOST_NUDGE = 45;

/** Two photos of one plug beside or on each other, and in numbers. */
export function Comparison({ choice, before, after, nameOf, onPair }: Props) {
  const { compare: words } = useText().photos;
  const [mode, setMode] = useState<Mode>('side by side');
  const [common, setCommon] = useState(true);
  const [nudge, setNudge] = useState(0);
  const found = registration(partsOf(before), partsOf(after), (nudge * Math.PI) / 180);
  const fallback = { ...AS_IT_IS, scale: before.width / after.width };
  const known = whiteFilter(before) !== undefined && whiteFilter(after) !== undefined;
  const byId = (id: string | undefined): PhotoRecord | undefined => choice.find((photo) => photo.id === id);
  const namedById = (id: string): string => { const photo = byId(id); return photo === undefined ? id : nameOf(photo); };
  const field = (label: string, value: PhotoRecord, onPhoto: (photo: PhotoRecord) => void) => (
    <SelectField label={label} options={choice.map(({ id }) => id)} value={value.id} none={words.pick} nameOf={namedById}
      onChange={(id) => { const photo = byId(id); if (photo !== undefined) onPhoto(photo); }} />
  );
  return (
    <section className={styles.comparison} aria-label={words.title}>
      <WhiteFilters photos={[before, after]} />
      <div className={styles.controls}>
        {field(words.earlier, before, (photo) => onPair(photo, after))}
        {field(words.later, after, (photo) => onPair(before, photo))}
        <Choice label={words.mode} always options={MODES} value={mode} nameOf={(each) => words.modes[each]} onChange={(next) => setMode(next ?? mode)} />
        <Tag on={common && known} disabled={!known} onChange={setCommon}>{words.commonWhite}</Tag>
      </div>
      <div className={styles.stage}>
        <Panes key={`${before.id} ${mode === 'side by side'}`} before={before} after={after} mode={mode} onto={found ?? fallback} names={[nameOf(before), nameOf(after)]}
          filterOf={(photo) => (common && known ? whiteFilter(photo) : undefined)} />
        {found === undefined ? <p className={styles.soft}>{words.notRegistered}</p> : (
          <Slider label={words.nudge} remark={words.nudgeHelp} shown={words.degrees(nudge)} value={nudge} least={-MOST_NUDGE} most={MOST_NUDGE} step={1}
            onChange={setNudge} />
        )}
      </div>
      <Differences compared={compared(before, after)} />
    </section>
  );
}
