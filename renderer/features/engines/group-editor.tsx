import { useState } from 'react';
import type { EnginePlan } from '../../../core/domain/engine-plan.ts';
import { useText } from '../../text/index.ts';
import { Button, GlyphButton } from '../../ui/button.tsx';
import { AddGlyph, CloseGlyph } from '../../ui/glyphs.tsx';
import { PlanDrawing } from '../../ui/plan-drawing.tsx';
import styles from './group-editor.module.css';
import { letterOf, movedInto, withoutEmpty, type Group } from './groups.ts';

/** Something that can belong to a group: a cylinder, or one plug of it. */
export type Spot = { readonly key: string; readonly label: string; readonly name: string; readonly x: number; readonly y: number };

type Props = {
  readonly plan: EnginePlan;
  readonly spots: readonly Spot[];
  readonly groups: readonly Group[];
  readonly onChange: (groups: readonly Group[]) => void;
  /** Groups with a name of their own, such as magnetos. */
  readonly nameOfNew?: (n: number) => string;
  readonly nameLabel?: string;
};

const PX_PER_UNIT = 50;

/** Joins the members of a group by a line, as a pipe or a lead would. */
function Lines({ groups, spots }: { groups: readonly Group[]; spots: readonly Spot[] }) {
  return groups.map((group, i) => {
    const points = spots.filter((spot) => group.members.includes(spot.key)).map(({ x, y }) => `${x},${y}`).join(' ');
    return <polyline key={i} className={styles.line} data-pattern={i % 4} points={points} />;
  });
}

/** Empty groups live only here: the format knows none, so they are shown until they get a member. */
function useShownGroups({ groups, onChange }: Pick<Props, 'groups' | 'onChange'>) {
  const [shown, setShown] = useState(groups);
  const [active, setActive] = useState(0);
  const current = JSON.stringify(withoutEmpty(shown)) === JSON.stringify(groups) ? shown : groups;
  const change = (next: readonly Group[]): void => {
    setShown(next);
    onChange(withoutEmpty(next));
  };
  return { current, change, active: Math.min(active, current.length - 1), setActive };
}

/** Groups made by choosing one and then clicking its cylinders in the drawn engine. */
export function GroupEditor({ plan, spots, groups, onChange, nameOfNew, nameLabel }: Props) {
  const words = useText().engines.edit.groups;
  const { current, change, active, setActive } = useShownGroups({ groups, onChange });
  const add = (members: readonly string[]): void => {
    setActive(current.length);
    change([...current, { members, ...(nameOfNew && { name: nameOfNew(current.length + 1) }) }]);
  };
  const press = (key: string): void => (current.length === 0 ? add([key]) : change(movedInto(current, active, key)));
  const titleOf = (i: number): string => current[i]?.name ?? words.group(i + 1);
  return (
    <div className={styles.editor}>
      <div className={styles.board} style={{ width: plan.width * PX_PER_UNIT, aspectRatio: `${plan.width} / ${plan.height}` }}>
        <PlanDrawing plan={plan} label={words.how} holes={false}><Lines groups={current} spots={spots} /></PlanDrawing>
        {spots.map((spot) => {
          const group = current.findIndex(({ members }) => members.includes(spot.key));
          return (
            <button key={spot.key} type="button" className={styles.spot} data-active={group === active && group >= 0 ? '' : undefined} aria-pressed={group === active && group >= 0}
              aria-label={words.inGroup(spot.name, group < 0 ? undefined : titleOf(group))} onClick={() => press(spot.key)}
              style={{ left: `${(spot.x / plan.width) * 100}%`, top: `${(spot.y / plan.height) * 100}%` }}>
              {spot.label}{group >= 0 && <span className={styles.letter}>{letterOf(group)}</span>}
            </button>
          );
        })}
      </div>
      <div className={styles.list}>
        <p className={styles.how}>{words.how}</p>
        <ul className={styles.groups}>
          {current.map((group, i) => (
            <li key={i} className={styles.group} data-active={i === active ? '' : undefined}>
              <button type="button" className={styles.choose} aria-pressed={i === active} onClick={() => setActive(i)}>
                <span className={styles.letter}>{letterOf(i)}</span>
                {words.members(spots.filter((spot) => group.members.includes(spot.key)).map((spot) => spot.label).join(', '))}
              </button>
              {group.name !== undefined && (
                <input className={styles.name} aria-label={nameLabel} value={group.name} maxLength={60}
                  onChange={(event) => change(current.map((other, j) => (j === i ? { ...other, name: event.target.value } : other)))} />
              )}
              <GlyphButton name={words.remove(i + 1)} onClick={() => change(current.filter((_, j) => j !== i))}><CloseGlyph /></GlyphButton>
            </li>
          ))}
        </ul>
        <Button onClick={() => add([])}><AddGlyph />{words.add}</Button>
      </div>
    </div>
  );
}
