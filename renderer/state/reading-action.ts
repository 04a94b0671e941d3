import type { PlugKey } from '../../core/domain/plugs.ts';
import type { FittedPlug } from '../../shared/formats/engine.ts';
import type { Conditions, Cure, CylinderCheck, Measured, PlugReading, Since } from '../../shared/formats/reading-sheet.v1.ts';
import type { ConditionTag, SymptomTag } from '../../shared/vocabulary/conditions.ts';
import type { FacetName, FacetValue, Overall } from '../../shared/vocabulary/tip.ts';

/** For each field of T, an action that sets it or, with undefined, takes it back to 'not observed'. */
type FieldOf<T, Fixed> = { [F in keyof T]-?: Fixed & { readonly field: F; readonly value: Exclude<T[F], undefined> | undefined } }[keyof T];
type FacetAction = { [F in FacetName]: { readonly type: 'tip'; readonly plug: PlugKey; readonly facet: F; readonly value: FacetValue<F> | undefined } }[FacetName];

export type Swap = NonNullable<CylinderCheck['swaps']>[number];
export type PhotoFinding = NonNullable<PlugReading['photo']>[number];
export type Substitution = NonNullable<CylinderCheck['substitutions']>[number];

/** Everything a person can do to a reading. */
export type ReadingAction =
  | FacetAction
  | { readonly type: 'overall'; readonly plug: PlugKey; readonly value: Overall | undefined }
  | { readonly type: 'unsure'; readonly plug: PlugKey; readonly facet: FacetName; readonly on: boolean }
  /** `only`: these answers and no others; the rest of the other tip stays. */
  | { readonly type: 'copyTip'; readonly from: PlugKey; readonly to: readonly PlugKey[]; readonly only?: readonly (FacetName | 'overall')[] }
  | { readonly type: 'clearTip'; readonly plug: PlugKey }
  | FieldOf<Measured, { readonly type: 'measured'; readonly plug: PlugKey }>
  | { readonly type: 'fitted'; readonly plugs: readonly PlugKey[]; readonly fitted: FittedPlug | undefined }
  /** What a photo shows of one facet counts beside what was seen, or no longer. */
  | { readonly type: 'photo'; readonly plug: PlugKey; readonly found: PhotoFinding; readonly on: boolean }
  | { readonly type: 'note'; readonly plug: PlugKey; readonly text: string }
  | { readonly type: 'plugOff'; readonly plug: PlugKey }
  | { readonly type: 'plugOn'; readonly plug: PlugKey }
  | FieldOf<Omit<Conditions, 'tags'>, { readonly type: 'condition' }>
  | { readonly type: 'tag'; readonly tag: ConditionTag; readonly on: boolean }
  | { readonly type: 'symptom'; readonly what: SymptomTag; readonly cylinder?: number | undefined; readonly on: boolean }
  | { readonly type: 'symptomAbsent'; readonly what: SymptomTag; readonly on: boolean }
  | FieldOf<Omit<CylinderCheck, 'cylinder' | 'swaps' | 'substitutions'>, { readonly type: 'check'; readonly cylinder: number }>
  | { readonly type: 'swap'; readonly cylinder: number; readonly swap: Swap; readonly on: boolean }
  | { readonly type: 'substitution'; readonly cylinder: number; readonly substitution: Substitution; readonly on: boolean }
  /** What the reading is compared with. What was put right stays noted when it is compared with another reading. */
  | { readonly type: 'since'; readonly since: Since | undefined }
  | { readonly type: 'cure'; readonly cure: Cure; readonly on: boolean }
  | { readonly type: 'meta'; readonly title?: string; readonly date?: string };

/** Typing into one text is one step to undo: actions with the same target that follow each other are joined. */
export function joinTarget(action: ReadingAction): string | null {
  switch (action.type) {
    case 'note': return `note ${action.plug}`;
    case 'meta': return 'meta';
    case 'condition': return action.field === 'text' ? 'condition text' : null;
    default: return null;
  }
}
