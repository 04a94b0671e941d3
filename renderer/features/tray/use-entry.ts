import { useState } from 'react';
import type { EnginePlan } from '../../../core/domain/engine-plan.ts';
import type { PlugKey } from '../../../core/domain/plugs.ts';
import { useSelectPlug } from '../../state/hooks.ts';
import { plugAt } from '../../state/places.ts';
import type { Question } from '../../ui/drawn-tip/index.ts';
import { answer, copyTip, doubt, takeFrom } from './deeds.ts';
import type { Deed } from './keys.ts';
import { FIRST, isTipRead, stepped, valuesOf } from './questions.ts';
import { keyOfPlace, useHand, type Hand } from './use-hand.ts';

/** Folds below the questions that a key can open. */
export type Detail = 'measured' | 'fitted' | 'note';
type Then = 'question' | 'plug' | 'stay';

export type Entry = {
  readonly hand: Hand;
  readonly question: Question;
  readonly ask: (question: Question) => void;
  readonly select: (key: PlugKey) => void;
  readonly choose: (question: Question, value: string, then?: Then) => void;
  readonly perform: (deed: Deed) => void;
};

/** The question at hand, and the ways from plug to plug and from question to question. */
function useWays(hand: Hand): Pick<Entry, 'question' | 'ask' | 'select'> & { readonly go: (steps: number, question?: Question) => void } {
  const { words, sheet, places, index, say } = hand;
  const selectPlug = useSelectPlug();
  const [question, setQuestion] = useState<Question>(FIRST);

  const take = (key: PlugKey, next: Question): void => {
    const place = places.find((at) => keyOfPlace(at) === key);
    selectPlug(key);
    setQuestion(next);
    if (place !== undefined) say(words.said.at(words.placeName(place), words.questions[next]));
  };
  /** A plug that nobody has looked at starts with the first question; between plugs that are read, the question stays. */
  const select = (key: PlugKey): void => take(key, isTipRead(plugAt(sheet, key)?.tip) ? question : FIRST);
  const go = (steps: number, next?: Question): void => {
    const place = places[index + steps];
    if (place !== undefined) return next === undefined ? select(keyOfPlace(place)) : take(keyOfPlace(place), next);
    if (next !== undefined) setQuestion(next);
  };
  const ask = (next: Question): void => { setQuestion(next); say(words.said.at(hand.name, words.questions[next])); };
  return { question, ask, select, go };
}

/** The plug and the question at hand, and everything that can be done to them. */
export function useEntry(plan: EnginePlan): Entry {
  const hand = useHand(plan);
  const { question, ask, select, go } = useWays(hand);

  const choose: Entry['choose'] = (about, value, then = 'question') => {
    if (!hand.kept && then === 'plug') go(1, about);
    else if (!hand.kept) ask(then === 'question' ? stepped(about, 1) : about);
    answer(hand, about, value);
  };
  const perform: Entry['perform'] = (deed) => {
    switch (deed.does) {
      case 'question': return ask(stepped(question, deed.steps));
      case 'plug': return go(deed.steps);
      case 'clear': return answer(hand, question, undefined);
      case 'unsure': return doubt(hand, question);
      case 'looksNormal':
        if (question === 'overall' && !hand.kept) ask(stepped(question, 1));
        return answer(hand, 'overall', 'looks normal');
      case 'copyToEmpty': return copyTip(hand, 'empty');
      case 'copyToAll': return copyTip(hand, 'all');
      case 'sameAnswer': {
        const value = hand.neighbours.find(({ tip }) => tip[question] !== undefined)?.tip[question];
        return value === undefined ? hand.say(hand.words.said.nothingBeside) : choose(question, value);
      }
      case 'sameTip': {
        const [neighbour] = hand.neighbours;
        return neighbour === undefined ? hand.say(hand.words.said.nothingBeside) : takeFrom(hand, neighbour);
      }
      case 'choose': {
        const value = valuesOf(question)[deed.index];
        return value === undefined ? undefined : choose(question, value, deed.then);
      }
    }
  };
  return { hand, question, ask, select, choose, perform };
}
