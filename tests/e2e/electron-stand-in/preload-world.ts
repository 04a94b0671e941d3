import { readFileSync } from 'node:fs';
import type { WebPreferences } from 'electron';
import { state } from './app.ts';

export const BINDING = '__corenose_stand_in_invoke';
/** Function of the window by which the host's messages reach the preload. */
export const HEARD = '__corenose_stand_in_heard';

/** Source of a script that runs the bundled preload before anything of the page, in the top frame only, with the world Electron gives it. */
export function preloadScript(preferences: WebPreferences): string {
  const bundle = readFileSync(preferences.preload ?? '', 'utf8');
  const process = { contextIsolated: preferences.contextIsolation !== false, sandboxed: state.sandboxed && preferences.sandbox !== false };
  return `(() => {
    const invoke = window.${BINDING};
    delete window.${BINDING};
    if (window.top !== window) return;
    const listeners = [];
    Object.defineProperty(window, '${HEARD}', { value: (channel) => { for (const [name, listener] of listeners) if (name === channel) listener({}); } });
    const passed = (api) => Object.freeze(Object.fromEntries(Object.entries(api).map(([key, value]) => [key, typeof value === 'function' ? async (...args) => value(...structuredClone(args)) : structuredClone(value)])));
    const electron = {
      contextBridge: { exposeInMainWorld: (key, api) => Object.defineProperty(window, key, { value: passed(api), enumerable: true }) },
      ipcRenderer: { invoke: (channel, ...args) => invoke({ channel, args }), on: (channel, listener) => { listeners.push([channel, listener]); } },
    };
    ((require, process) => { ${bundle}
    })((name) => { if (name !== 'electron') throw new Error('a sandboxed preload cannot load ' + name); return electron; }, Object.freeze(${JSON.stringify(process)}));
  })();
  ${windowOpenScript}`;
}

/** In Electron the main process decides in place whether \`window.open\` opens anything; here it is asked by a request that blocks. */
export const WINDOW_OPEN_PATH = '/__stand_in_window_open';
const windowOpenScript = `(() => {
    const open = window.open;
    window.open = (...args) => {
      const ask = new XMLHttpRequest();
      ask.open('GET', '${WINDOW_OPEN_PATH}?url=' + encodeURIComponent(String(args[0] ?? 'about:blank')), false);
      ask.send();
      return ask.responseText === 'deny' ? null : open.apply(window, args);
    };
  })();`;
