import { plugAt } from '../../state/places.ts';
import type { ReadingAction } from '../../state/reading-action.ts';
import type { Question } from '../../ui/drawn-tip/index.ts';
import type { Neighbour } from './neighbours.ts';
import { isTipRead } from './questions.ts';
import { keyOfPlace, type Hand } from './use-hand.ts';

/** Answers a question of the plug at hand; undefined takes the answer back. */
export function answer({ words, plugKey, name, act, kept, say }: Hand, question: Question, value: string | undefined): void {
  const action = question === 'overall' ? { type: 'overall', plug: plugKey, value } : { type: 'tip', plug: plugKey, facet: question, value };
  act(action as ReadingAction);
  if (kept) return;
  const spoken = words.spoken[question];
  say(value === undefined ? words.said.cleared(name, spoken) : words.said.set(name, spoken, words.valueName(value)));
}

/** Doubts an answer, or trusts it again. */
export function doubt({ words, plugKey, plug, name, act, kept, say }: Hand, question: Question): void {
  if (question === 'overall' || plug?.tip?.[question] === undefined) return say(words.said.nothingToDoubt);
  const on = !(plug.tip.unsure ?? []).includes(question);
  act({ type: 'unsure', plug: plugKey, facet: question, on });
  if (!kept) say(words.said.unsure(name, words.spoken[question], on));
}

/** Copies the tip at hand to the plugs that have nothing yet, or to all that are in the reading. */
export function copyTip({ words, sheet, places, plugKey, plug, name, act, kept, say, tell }: Hand, whom: 'empty' | 'all'): void {
  if (!isTipRead(plug?.tip)) return say(words.said.nothingToCopy(name));
  const targets = places.filter((at) => {
    const other = plugAt(sheet, keyOfPlace(at));
    return keyOfPlace(at) !== plugKey && other !== undefined && !(whom === 'empty' && isTipRead(other.tip));
  });
  if (targets.length === 0) return say(words.said.copied(name, []));
  act({ type: 'copyTip', from: plugKey, to: targets.map(keyOfPlace) });
  if (!kept) tell(words.said.copied(name, targets.map(words.placeName)));
}

/** Takes the tip of a neighbour over, or the answers to some questions only; what is known here besides those stays. */
export function takeFrom({ words, plugKey, name, act, kept, tell }: Hand, { place }: Neighbour, only?: readonly Question[]): void {
  act({ type: 'copyTip', from: keyOfPlace(place), to: [plugKey], ...(only !== undefined && { only }) });
  if (!kept) tell(words.said.taken(name, words.placeName(place)));
}

export function clearTip({ words, plugKey, name, act, kept, tell }: Hand): void {
  act({ type: 'clearTip', plug: plugKey });
  if (!kept) tell(words.said.clearedTip(name));
}

/** Takes the plug into the reading, or leaves it out with all that was said of it. */
export function setRead({ words, sheet, plugKey, name, act, kept, say, tell }: Hand, read: boolean): void {
  if (!read && sheet.plugs.length === 1) return say(words.said.lastPlug);
  act({ type: read ? 'plugOn' : 'plugOff', plug: plugKey });
  if (!read && !kept) tell(words.said.leftOut(name));
}
