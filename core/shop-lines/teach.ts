import type { ShopCircumstance, ShopLine, ShopSays } from '../../shared/formats/shop-lines.v1.ts';
import type { CylinderFindingName, PlugFindingName } from '../knowledge/findings.ts';
import { OWN_LINE, type Appearance, type Cause, type Circumstance, type Condition, type CylinderShow, type Knowledge } from '../knowledge/types.ts';

/** All that a line can reach. Stop rules, bars, cautions and checks are not in here, so no line can touch them. */
export type Teachable = Pick<Knowledge, 'causes' | 'conditions'>;

type Said<K extends ShopSays['kind']> = Extract<ShopSays, { kind: K }>;
type Of<K extends ShopSays['kind']> = ShopLine & { readonly says: Said<K> };

const ofKind = <K extends ShopSays['kind']>(lines: readonly ShopLine[], kind: K): readonly Of<K>[] => lines.filter((line): line is Of<K> => line.says.kind === kind);

const grounds = ({ because, by }: ShopLine) => ({ because: because.trim(), source: OWN_LINE, addedBy: by.trim() });

/** The circumstance in the terms of the knowledge, where those of which one can hold at a time stand in a list. */
export function circumstanceOf(when: ShopCircumstance): Circumstance {
  const { tag, cycle, aspiration, cooling, fuel, duty, stop, use, mixture, ignition } = when;
  if (tag !== undefined) return { tag };
  if (cycle !== undefined) return { cycle };
  if (aspiration !== undefined) return { aspiration };
  if (cooling !== undefined) return { cooling };
  if (fuel !== undefined) return { fuel: [fuel] };
  if (duty !== undefined) return { duty: [duty] };
  if (stop !== undefined) return { stop: [stop] };
  if (use !== undefined) return { use: [use] };
  if (mixture !== undefined) return { mixture: [mixture] };
  return { ignition: ignition === undefined ? [] : [ignition] };
}

function taughtCause(cause: Cause, lines: readonly ShopLine[]): Cause {
  return {
    ...cause,
    makes: [...cause.makes, ...ofKind(lines, 'makes').map((line) => ({ condition: line.says.condition, strength: line.says.strength, ...grounds(line) }))],
    shows: [...cause.shows, ...ofKind(lines, 'shows').map((line) => (
      { finding: line.says.finding as CylinderFindingName, is: line.says.is, strength: line.says.strength, ...grounds(line) } as CylinderShow))],
    gives: [...cause.gives, ...ofKind(lines, 'gives').map((line) => ({ symptom: line.says.symptom, strength: line.says.strength, ...grounds(line) }))],
    moved: [...cause.moved, ...ofKind(lines, 'moved').map((line) => ({ by: circumstanceOf(line.says.when), how: line.says.how, ...grounds(line) }))],
  };
}

function taughtCondition(condition: Condition, lines: readonly ShopLine[]): Condition {
  return {
    ...condition,
    shows: [...condition.shows, ...ofKind(lines, 'shows').map((line) => (
      { finding: line.says.finding as PlugFindingName, is: line.says.is, strength: line.says.strength, ...grounds(line) } as Appearance))],
    gives: [...condition.gives, ...ofKind(lines, 'gives').map((line) => ({ symptom: line.says.symptom, strength: line.says.strength, ...grounds(line) }))],
  };
}

/** Adds each line to the cause or condition it speaks of, after the lines that are there. Lines that speak of nothing known are left out. */
export function taught({ causes, conditions }: Teachable, lines: readonly ShopLine[]): Teachable {
  const of = (id: string): readonly ShopLine[] => lines.filter(({ says }) => says.of === id);
  return {
    causes: causes.map((cause) => (of(cause.id).length === 0 ? cause : taughtCause(cause, of(cause.id)))),
    conditions: conditions.map((condition) => (of(condition.id).length === 0 ? condition : taughtCondition(condition, of(condition.id)))),
  };
}
