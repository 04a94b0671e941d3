import type { PlugKey } from '../../core/domain/plugs.ts';
import { readingSheet, type Cure, type CylinderCheck, type PlugReading, type ReadingSheet, type Tip } from '../../shared/formats/reading-sheet.v1.ts';
import { inTrayOrder, keyOf, placeOf, plugAt } from './places.ts';
import { isEmpty, pruned, toggled, withField } from './prune.ts';
import type { ReadingAction } from './reading-action.ts';

const place = (plug: PlugReading) => ({ cylinder: plug.cylinder, position: plug.position ?? ('only' as const) });

function newEntry(key: PlugKey): PlugReading | undefined {
  const at = placeOf(key);
  if (at === undefined) return undefined;
  return at.position === 'only' ? { cylinder: at.cylinder } : { cylinder: at.cylinder, position: at.position };
}

function changePlug(sheet: ReadingSheet, key: PlugKey, change: (plug: PlugReading) => PlugReading): ReadingSheet {
  const entry = plugAt(sheet, key);
  if (entry !== undefined) return { ...sheet, plugs: sheet.plugs.map((plug) => (plug === entry ? pruned(change(plug)) : plug)) };
  const fresh = newEntry(key);
  if (fresh === undefined) return sheet;
  return { ...sheet, plugs: [...sheet.plugs, pruned(change(fresh))].sort((a, b) => inTrayOrder(place(a), place(b))) };
}

const changeTip = (sheet: ReadingSheet, key: PlugKey, change: (tip: Tip) => Tip): ReadingSheet =>
  changePlug(sheet, key, (plug) => withField(plug, 'tip', tidyTip(change(plug.tip ?? {}))));

/** A doubt needs a value to doubt. */
function tidyTip(tip: Tip): Tip {
  return pruned({ ...tip, unsure: (tip.unsure ?? []).filter((facet) => tip[facet] !== undefined) });
}

type CopyTip = Extract<ReadingAction, { type: 'copyTip' }>;

/** The answers of one tip to some questions laid over another; of a question that the first leaves open, the second keeps its own. */
function overlaid(tip: Tip, over: Tip, only: NonNullable<CopyTip['only']>): Tip {
  const taken = only.filter((question) => over[question] !== undefined);
  const doubted = over.unsure?.filter((facet) => taken.includes(facet)) ?? [];
  const doubts = [...(tip.unsure ?? []).filter((facet) => !taken.includes(facet)), ...doubted];
  return { ...tip, ...Object.fromEntries(taken.map((question) => [question, over[question]])), unsure: doubts };
}

function copyTip(sheet: ReadingSheet, { from, to, only }: CopyTip): ReadingSheet {
  const tip = plugAt(sheet, from)?.tip;
  if (tip === undefined) return sheet;
  return to.filter((key) => key !== from).reduce((next, key) => changeTip(next, key, (own) => (only === undefined ? tip : overlaid(own, tip, only))), sheet);
}

function changeCheck(sheet: ReadingSheet, cylinder: number, change: (check: CylinderCheck) => CylinderCheck): ReadingSheet {
  const checks = sheet.cylinderChecks ?? [];
  const before = checks.find((check) => check.cylinder === cylinder) ?? { cylinder };
  const { cylinder: _, ...found } = change(before);
  const rest = checks.filter((check) => check.cylinder !== cylinder);
  const after = isEmpty(found) ? rest : [...rest, pruned({ cylinder, ...found })];
  return withField(sheet, 'cylinderChecks', after.sort((a, b) => a.cylinder - b.cylinder));
}

/** A symptom is tied to cylinders or to none: naming the first cylinder takes the general mark away, and the general mark takes all cylinders away. */
function changeSymptom(sheet: ReadingSheet, action: Extract<ReadingAction, { type: 'symptom' }>): ReadingSheet {
  const symptom = pruned({ what: action.what, cylinder: action.cylinder });
  const tied = (other: { readonly cylinder?: number | undefined }): boolean => other.cylinder !== undefined;
  const kept = action.on ? sheet.symptoms?.filter((other) => other.what !== action.what || tied(other) === tied(action)) : sheet.symptoms;
  const symptoms = toggled(kept, symptom, action.on, (a, b) => a.what === b.what && a.cylinder === b.cylinder);
  const symptomsAbsent = action.on ? toggled(sheet.symptomsAbsent, action.what, false) : sheet.symptomsAbsent;
  return pruned({ ...sheet, symptoms, symptomsAbsent });
}

function changeAbsent(sheet: ReadingSheet, action: Extract<ReadingAction, { type: 'symptomAbsent' }>): ReadingSheet {
  const symptoms = action.on ? sheet.symptoms?.filter((symptom) => symptom.what !== action.what) : sheet.symptoms;
  return pruned({ ...sheet, symptoms, symptomsAbsent: toggled(sheet.symptomsAbsent, action.what, action.on) });
}

const sameCure = (a: Cure, b: Cure): boolean => a.cause === b.cause && (a.cylinders ?? []).join() === (b.cylinders ?? []).join();

function changeSince(sheet: ReadingSheet, action: Extract<ReadingAction, { type: 'since' | 'cure' }>): ReadingSheet {
  if (action.type === 'since') return withField(sheet, 'since', action.since && withField(action.since, 'done', action.since.done ?? sheet.since?.done));
  if (sheet.since === undefined) return sheet;
  return withField(sheet, 'since', withField(sheet.since, 'done', toggled(sheet.since.done, action.cure, action.on, sameCure)));
}

function applyToPlug(sheet: ReadingSheet, action: ReadingAction): ReadingSheet {
  switch (action.type) {
    case 'tip': return changeTip(sheet, action.plug, (tip) => withField(tip, action.facet, action.value));
    case 'overall': return changeTip(sheet, action.plug, (tip) => withField(tip, 'overall', action.value));
    case 'unsure': return changeTip(sheet, action.plug, (tip) => ({ ...tip, unsure: toggled(tip.unsure, action.facet, action.on) }));
    case 'copyTip': return copyTip(sheet, action);
    case 'clearTip': return changePlug(sheet, action.plug, (plug) => withField(plug, 'tip', undefined));
    case 'measured': return changePlug(sheet, action.plug, (plug) => withField(plug, 'measured', withField(plug.measured ?? {}, action.field, action.value)));
    case 'fitted': return action.plugs.reduce((next, key) => changePlug(next, key, (plug) => withField(plug, 'fitted', action.fitted)), sheet);
    case 'photo': return changePlug(sheet, action.plug, (plug) => (
      withField(plug, 'photo', toggled(plug.photo, action.found, action.on, (a, b) => a.facet === b.facet))));
    case 'note': return changePlug(sheet, action.plug, (plug) => withField(plug, 'note', action.text));
    case 'plugOff': return { ...sheet, plugs: sheet.plugs.filter((plug) => keyOf(plug) !== action.plug) };
    case 'plugOn': return changePlug(sheet, action.plug, (plug) => plug);
    default: return sheet;
  }
}

function applyToEngine(sheet: ReadingSheet, action: ReadingAction): ReadingSheet {
  switch (action.type) {
    case 'condition': return withField(sheet, 'conditions', withField(sheet.conditions ?? {}, action.field, action.value));
    case 'tag': return withField(sheet, 'conditions', withField(sheet.conditions ?? {}, 'tags', toggled(sheet.conditions?.tags, action.tag, action.on)));
    case 'symptom': return changeSymptom(sheet, action);
    case 'symptomAbsent': return changeAbsent(sheet, action);
    case 'check': return changeCheck(sheet, action.cylinder, (check) => withField(check, action.field, action.value));
    case 'swap': return changeCheck(sheet, action.cylinder, (check) => ({
      ...check, swaps: toggled(check.swaps, action.swap, action.on, (a, b) => a.part === b.part && a.to === b.to),
    }));
    case 'substitution': return changeCheck(sheet, action.cylinder, (check) => ({
      ...check, substitutions: toggled(check.substitutions, action.substitution, action.on, (a, b) => a.part === b.part),
    }));
    case 'since': case 'cure': return changeSince(sheet, action);
    case 'meta': return pruned({ ...sheet, ...('title' in action && { title: action.title }), ...('date' in action && { date: action.date }) });
    default: return sheet;
  }
}

/**
 * What a reading sheet becomes by an action. Setting undefined takes a field back to 'not observed'. An action that the format does not
 * allow (a number out of range, a cylinder the engine has not, the last plug taken away), or that changes nothing, gives back the same object.
 */
export function readingReducer(sheet: ReadingSheet, action: ReadingAction): ReadingSheet {
  const next = applyToEngine(applyToPlug(sheet, action), action);
  const changed = next !== sheet && JSON.stringify(next) !== JSON.stringify(sheet);
  return changed && readingSheet.safeParse(next).success ? next : sheet;
}
