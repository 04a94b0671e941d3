import type { Session } from 'electron';
import type { BrowserContext } from 'playwright-core';

/** Permissions that Chromium's automation can grant, by its name and by Electron's. */
const PERMISSIONS = { notifications: 'notifications', geolocation: 'geolocation', camera: 'media', microphone: 'media', 'clipboard-read': 'clipboard-read', midi: 'midi' } as const;

type RequestHandler = NonNullable<Parameters<Session['setPermissionRequestHandler']>[0]>;
type CheckHandler = NonNullable<Parameters<Session['setPermissionCheckHandler']>[0]>;
let onRequest: RequestHandler | null = null;
let onCheck: CheckHandler | null = null;

const defaultSession = {
  setPermissionRequestHandler: (handler: RequestHandler | null) => { onRequest = handler; },
  setPermissionCheckHandler: (handler: CheckHandler | null) => { onCheck = handler; },
  setDevicePermissionHandler: () => undefined,
} satisfies Partial<Session>;

export const session = { defaultSession };

/** Electron grants whatever no handler refuses. So does this. */
export async function grantWhatIsNotRefused(context: BrowserContext): Promise<void> {
  const granted = Object.entries(PERMISSIONS).filter(([, name]) => {
    let allowed = onRequest === null;
    onRequest?.(null as never, name, (decision) => { allowed = decision; }, {} as never);
    return allowed && (onCheck === null || onCheck(null, name, '', {} as never));
  });
  await context.clearPermissions();
  if (granted.length > 0) await context.grantPermissions(granted.map(([name]) => name));
}
