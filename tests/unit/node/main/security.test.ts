import { EventEmitter } from 'node:events';
import { describe, expect, it } from 'vitest';
import { confinePages, refusePermissions } from '../../../../electron/main/security.ts';

describe('permissions', () => {
  it('are refused, whether the page asks, looks or reaches for a device', () => {
    const answers: unknown[] = [];
    refusePermissions({
      setPermissionRequestHandler: (handler) => handler?.(null as never, 'media', (decision) => answers.push(decision), {} as never),
      setPermissionCheckHandler: (handler) => answers.push(handler?.(null, 'media', '', {} as never)),
      setDevicePermissionHandler: (handler) => answers.push(handler?.({} as never)),
    });
    expect(answers).toEqual([false, false, false]);
  });
});

describe('every page', () => {
  it('stays where it was loaded: each way out is prevented', () => {
    const app = new EventEmitter();
    let opened: unknown;
    const setWindowOpenHandler = (handler: (details: object) => unknown): void => { opened = handler({ url: 'https://x.example' }); };
    const contents = Object.assign(new EventEmitter(), { setWindowOpenHandler });
    confinePages(app as never);
    app.emit('web-contents-created', {}, contents);
    for (const way of ['will-navigate', 'will-frame-navigate', 'will-redirect', 'will-attach-webview']) {
      let prevented = false;
      contents.emit(way, { preventDefault: () => { prevented = true; } });
      expect([way, prevented]).toEqual([way, true]);
    }
    expect(opened).toEqual({ action: 'deny' });
  });
});
