/** The type of every listener Electron's many overloads of `on` take. */
export type Listener = (...args: never[]) => unknown;

/** Loose enough to satisfy all overloads of Electron's `on` and `once`. */
export type Events = {
  readonly on: (name: string, listener: Listener) => never;
  readonly once: (name: string, listener: Listener) => never;
  readonly emit: (name: string, ...args: unknown[]) => void;
};

/** Events as Electron's objects have them. Here `on` and `once` give nothing back, so calls cannot be chained. */
export function events(): Events {
  const listeners = new Map<string, Set<Listener>>();
  const add = (name: string, listener: Listener): never => {
    listeners.set(name, (listeners.get(name) ?? new Set()).add(listener));
    return undefined as never;
  };
  return {
    on: add,
    once: (name, listener) => {
      const only: Listener = (...args) => { listeners.get(name)?.delete(only); return listener(...args); };
      return add(name, only);
    },
    emit: (name, ...args) => {
      for (const listener of [...(listeners.get(name) ?? [])]) (listener as (...all: unknown[]) => unknown)(...args);
    },
  };
}

export type Preventable = { defaultPrevented: boolean; readonly preventDefault: () => void };

/** An event whose default can be prevented. */
export function preventable(): Preventable {
  const event: Preventable = { defaultPrevented: false, preventDefault: () => { event.defaultPrevented = true; } };
  return event;
}
