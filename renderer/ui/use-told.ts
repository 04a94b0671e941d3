import { useStore } from '../state/store.ts';
import { useText, type Text } from '../text/index.ts';
import { inUnits } from './in-units.ts';

/** What the knowledge and the inference say, in the person's language and units. */
export function useTold(): Text['told'] {
  const { told } = useText();
  const units = useStore((state) => state.settings.units);
  return {
    cause: (id, english) => inUnits(told.cause(id, english), units),
    check: (id, english) => inUnits(told.check(id, english), units),
    sentence: (english) => inUnits(told.sentence(english), units),
  };
}
