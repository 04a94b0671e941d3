import { useState } from 'react';
import { plugKey, type PlugKey, type PlugPlace } from '../../../core/domain/plugs.ts';
import type { PlugReading } from '../../../shared/formats/reading-sheet.v1.ts';
import { useAct, usePlaces, useSelectedKey, useSelectPlug, useSheet } from '../../state/hooks.ts';
import { plugAt } from '../../state/places.ts';
import type { ReadingAction } from '../../state/reading-action.ts';
import { useStore } from '../../state/store.ts';
import { useText } from '../../text/index.ts';
import type { Question } from '../../ui/drawn-tip/index.ts';
import type { Command } from './keys.ts';
import { isTipRead, SEQUENCE, stepped, valuesOf } from './questions.ts';

/** Folds below the questions that a key can open. */
export type Detail = 'measured' | 'fitted' | 'note';

export type Entry = {
  readonly place: PlugPlace;
  readonly plugKey: PlugKey;
  /** undefined: this plug is left out of the reading. */
  readonly plug: PlugReading | undefined;
  readonly question: Question;
  /** What was done last, for a screen reader. */
  readonly saying: string;
  readonly ask: (question: Question) => void;
  readonly select: (key: PlugKey) => void;
  readonly choose: (question: Question, value: string, then?: 'question' | 'plug' | 'stay') => void;
  readonly perform: (command: Exclude<Command, { does: 'search' | 'measurements' | 'note' }>) => void;
  readonly clearTip: () => void;
  readonly setRead: (read: boolean) => void;
};

const keyOf = ({ cylinder, position }: PlugPlace): PlugKey => plugKey(cylinder, position);

/** The plug and the question at hand, and everything that can be done to them. */
export function useEntry(): Entry {
  const words = useText().tray;
  const sheet = useSheet();
  const places = usePlaces();
  const act = useAct();
  const selectPlug = useSelectPlug();
  const selected = useSelectedKey();
  const tell = useStore((state) => state.tell);
  const [question, setQuestion] = useState<Question>('overall');
  const [saying, say] = useState('');

  const index = Math.max(0, places.findIndex((at) => keyOf(at) === selected));
  const place = places[index] ?? { cylinder: 1, position: 'only' as const };
  const plug = plugAt(sheet, selected);
  const name = words.placeName(place);
  const asked = (next: Question): string => words.questions[next];
  const told = (text: string): void => {
    say(text);
    const { version } = useStore.getState().reading ?? {};
    const undo = (): void => {
      const { reading, undo: takeBack } = useStore.getState();
      if (reading?.version === version) takeBack();
      else tell({ text: words.said.tooLateToUndo, tone: 'plain' });
    };
    tell({ text, tone: 'plain', undo });
  };

  /** A plug that nobody has looked at starts with the first question; between plugs that are read, the question stays. */
  const select = (key: PlugKey, keep = isTipRead(plugAt(sheet, key)?.tip)): void => {
    const next = places.find((at) => keyOf(at) === key);
    const first = keep ? question : (SEQUENCE[0] ?? question);
    selectPlug(key);
    setQuestion(first);
    if (next !== undefined) say(words.said.at(words.placeName(next), asked(first)));
  };
  const go = (steps: number, keep?: boolean): void => {
    const next = places[index + steps];
    if (next !== undefined) select(keyOf(next), keep);
  };
  const ask = (next: Question): void => { setQuestion(next); say(words.said.at(name, asked(next))); };

  const set = (about: Question, value: string | undefined): void => {
    const action = about === 'overall' ? { type: 'overall', plug: selected, value } : { type: 'tip', plug: selected, facet: about, value };
    act(action as ReadingAction);
    say(value === undefined ? words.said.cleared(name, words.spoken[about]) : words.said.set(name, words.spoken[about], words.valueName(value)));
  };
  const choose: Entry['choose'] = (about, value, then = 'question') => {
    set(about, value);
    if (then === 'plug') { setQuestion(about); go(1, true); } else setQuestion(then === 'question' ? stepped(about, 1) : about);
  };

  const doubt = (): void => {
    if (question === 'overall' || plug?.tip?.[question] === undefined) return say(words.said.nothingToDoubt);
    const on = !(plug.tip.unsure ?? []).includes(question);
    act({ type: 'unsure', plug: selected, facet: question, on });
    say(words.said.unsure(name, words.spoken[question], on));
  };
  const copy = (onlyEmpty: boolean): void => {
    if (!isTipRead(plug?.tip)) return say(words.said.nothingToCopy(name));
    const targets = places.filter((at) => {
      const other = plugAt(sheet, keyOf(at));
      return keyOf(at) !== selected && other !== undefined && !(onlyEmpty && isTipRead(other.tip));
    });
    if (targets.length === 0) return say(words.said.copied(name, []));
    act({ type: 'copyTip', from: selected, to: targets.map(keyOf) });
    told(words.said.copied(name, targets.map(words.placeName)));
  };

  const perform: Entry['perform'] = (command) => {
    switch (command.does) {
      case 'question': return ask(stepped(question, command.steps));
      case 'plug': return go(command.steps);
      case 'clear': return set(question, undefined);
      case 'unsure': return doubt();
      case 'looksNormal': {
        set('overall', 'looks normal');
        return question === 'overall' ? setQuestion(stepped('overall', 1)) : undefined;
      }
      case 'copyToEmpty': return copy(true);
      case 'copyToAll': return copy(false);
      case 'choose': {
        const value = valuesOf(question)[command.index];
        if (value !== undefined) choose(question, value, command.then);
      }
    }
  };

  return {
    place, plugKey: selected, plug, question, saying, ask, select, choose, perform,
    clearTip: () => { act({ type: 'clearTip', plug: selected }); told(words.said.clearedTip(name)); },
    setRead: (read) => {
      if (!read && sheet.plugs.length === 1) return say(words.said.lastPlug);
      act({ type: read ? 'plugOn' : 'plugOff', plug: selected });
      if (!read) told(words.said.leftOut(name));
    },
  };
}
