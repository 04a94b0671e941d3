/** The type of every listener Electron's many overloads of `on` take. */
export type Listener = (...args: never[]) => unknown;

/** Events as Electron's objects have them, loose enough to satisfy all overloads of `on` and `once`. */
export function events() {
  const listeners = new Map<string, Set<Listener>>();
  const add = (name: string, listener: Listener): void => { listeners.set(name, (listeners.get(name) ?? new Set()).add(listener)); };
  return {
    on(name: string, listener: Listener): never {
      add(name, listener);
      return this as never;
    },
    once(name: string, listener: Listener): never {
      const only: Listener = (...args) => { listeners.get(name)?.delete(only); return listener(...args); };
      add(name, only);
      return this as never;
    },
    emit(name: string, ...args: unknown[]): void {
      for (const listener of [...(listeners.get(name) ?? [])]) (listener as (...all: unknown[]) => unknown)(...args);
    },
  };
}

/** An event whose default can be prevented. */
export const preventable = () => {
  const event = { defaultPrevented: false, preventDefault: () => { event.defaultPrevented = true; } };
  return event;
};
