/** A key that changes what is entered, or the place where one enters. */
export type Deed =
  | { readonly does: 'choose'; readonly index: number; readonly then: 'question' | 'plug' }
  | { readonly does: 'question'; readonly steps: number }
  | { readonly does: 'plug'; readonly steps: number }
  | { readonly does: 'clear' | 'unsure' | 'looksNormal' | 'copyToEmpty' | 'copyToAll' | 'sameAnswer' | 'sameTip' };

/** What a key does at the plugs: a deed, or the way to a field. */
export type Command = Deed | { readonly does: 'search' | 'measurements' | 'note' };

/** The key of each value in turn: the row of digits, then the row below it. */
export const VALUE_KEYS = ['1', '2', '3', '4', '5', '6', '7', '8', '9', '0', '-', '=', 'q', 'w', 'e', 'r', 't'] as const;

export type KeyPress = Pick<KeyboardEvent, 'key' | 'code' | 'shiftKey' | 'ctrlKey' | 'altKey' | 'metaKey'>;

const COMMANDS: Readonly<Record<string, Command>> = {
  ArrowUp: { does: 'question', steps: -1 },
  ArrowDown: { does: 'question', steps: 1 },
  ArrowLeft: { does: 'plug', steps: -1 },
  ArrowRight: { does: 'plug', steps: 1 },
  Home: { does: 'question', steps: -Infinity },
  End: { does: 'question', steps: Infinity },
  '[': { does: 'plug', steps: -1 },
  ']': { does: 'plug', steps: 1 },
  Backspace: { does: 'clear' },
  Delete: { does: 'clear' },
  '/': { does: 'search' },
  u: { does: 'unsure' },
  o: { does: 'looksNormal' },
  c: { does: 'copyToEmpty' },
  s: { does: 'sameAnswer' },
  m: { does: 'measurements' },
  n: { does: 'note' },
};

const WITH_SHIFT: Readonly<Record<string, Command>> = { c: { does: 'copyToAll' }, s: { does: 'sameTip' } };

/** Digits by their place on the keyboard, so that layouts that need Shift for them work as well; the rest by what is written on the key. */
function valueKey({ key, code }: KeyPress): string {
  const digit = /^(?:Digit|Numpad)(\d)$/.exec(code)?.[1];
  if (digit !== undefined) return digit;
  if (code === 'Minus') return '-';
  if (code === 'Equal') return '=';
  return key.toLowerCase();
}

/** The command of a key, or undefined when it is none. @param values how many values the question has */
export function commandOf(press: KeyPress, values: number): Command | undefined {
  const { key, shiftKey } = press;
  const needsAltGr = key === '[' || key === ']';
  if ((press.ctrlKey || press.altKey || press.metaKey) && !needsAltGr) return undefined;
  if (key === '?') return undefined;
  if (key === '/' || needsAltGr) return COMMANDS[key];
  const index = (VALUE_KEYS as readonly string[]).indexOf(valueKey(press));
  if (index >= 0 && index < values) return { does: 'choose', index, then: shiftKey ? 'plug' : 'question' };
  if (shiftKey) return WITH_SHIFT[key.toLowerCase()];
  return Object.hasOwn(COMMANDS, key) ? COMMANDS[key] : COMMANDS[key.toLowerCase()];
}
