import type { App, Session, WebContents } from 'electron';

/** Refuses every permission a page can ask for: the camera, notifications, devices, all of them. */
export function refusePermissions(session: Pick<Session, 'setPermissionRequestHandler' | 'setPermissionCheckHandler' | 'setDevicePermissionHandler'>): void {
  session.setPermissionRequestHandler((_contents, _permission, decide) => decide(false));
  session.setPermissionCheckHandler(() => false);
  session.setDevicePermissionHandler(() => false);
}

/** Keeps every page where it was loaded: no navigation, no redirect, no second window, no embedded guest. */
export function confinePages(app: Pick<App, 'on'>): void {
  app.on('web-contents-created', (_event, contents) => confine(contents));
}

function confine(contents: WebContents): void {
  contents.on('will-navigate', (event) => event.preventDefault());
  contents.on('will-frame-navigate', (event) => event.preventDefault());
  contents.on('will-redirect', (event) => event.preventDefault());
  contents.on('will-attach-webview', (event) => event.preventDefault());
  contents.setWindowOpenHandler(() => ({ action: 'deny' }));
}
