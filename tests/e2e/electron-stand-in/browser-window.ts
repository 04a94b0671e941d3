import type { BrowserWindowConstructorOptions, BrowserWindow as ElectronBrowserWindow, WebContents } from 'electron';
import type { Dialog, Page, Route } from 'playwright-core';
import { emitOnApp, state, windowGone } from './app.ts';
import { meant, shown } from './addresses.ts';
import { events, preventable, type Events } from './events.ts';
import { invoked } from './ipc-main.ts';
import { BINDING, HEARD, preloadScript, WINDOW_OPEN_PATH } from './preload-world.ts';
import { answerRoute } from './protocol.ts';
import { grantWhatIsNotRefused } from './session.ts';

type OpenHandler = Parameters<WebContents['setWindowOpenHandler']>[0];

function webContentsStandIn(toPage: (channel: string) => void) {
  const { on, once, emit } = events();
  let openHandler: OpenHandler = () => ({ action: 'allow' });
  return {
    emit,
    decideOpen: (url: string) => openHandler({ url } as never).action,
    contents: { on, once, send: toPage, setWindowOpenHandler: (handler: OpenHandler) => { openHandler = handler; } } satisfies Partial<WebContents>,
  };
}

/** One page of Chromium. What the page does of itself is first put to the listeners of the program, as Electron does. */
export class BrowserWindow {
  readonly on: Events['on'];
  readonly once: Events['once'];
  readonly webContents: Partial<WebContents>;
  readonly #emit: Events['emit'];
  readonly #web = webContentsStandIn((channel) => void this.#tell(channel));
  readonly #page: Promise<Page>;
  #bounds: Electron.Rectangle;
  #loading = '';
  #maximised = false;

  constructor(options: BrowserWindowConstructorOptions = {}) {
    const { on, once, emit } = events();
    this.on = on;
    this.once = once;
    this.#emit = emit;
    this.#bounds = { x: options.x ?? 0, y: options.y ?? 0, width: options.width ?? 800, height: options.height ?? 600 };
    this.webContents = this.#web.contents;
    state.windows.add(this);
    emitOnApp('web-contents-created', {}, this.webContents);
    this.#page = this.#open(options);
  }

  async #open(options: BrowserWindowConstructorOptions): Promise<Page> {
    const context = state.context;
    if (context === null) throw new Error('a window before the app is ready');
    await grantWhatIsNotRefused(context);
    const page = context.pages().find((each) => each.url() === 'about:blank') ?? (await context.newPage());
    await page.exposeBinding(BINDING, ({ frame }, { channel, args }: { channel: string; args: unknown[] }) => invoked(frame, channel, args));
    await page.addInitScript({ content: preloadScript(options.webPreferences ?? {}) });
    await page.route('**/*', (route) => this.#answer(route, page));
    page.on('popup', (popup) => { void popup.close(); });
    page.on('crash', () => this.#web.emit('render-process-gone', {}, { reason: 'crashed', exitCode: 1 }));
    page.on('dialog', (dialog) => { if (dialog.type() === 'beforeunload') void this.#askToLeave(dialog); });
    page.once('close', () => { this.#emit('close', preventable()); windowGone(this); });
    return page;
  }

  /** The page wants to stay open; as in Electron it does, unless the program prevents that. */
  async #askToLeave(question: Dialog): Promise<void> {
    const event = preventable();
    this.#web.emit('will-prevent-unload', event);
    if (event.defaultPrevented) return question.accept();
    state.quitting = false;
    return question.dismiss();
  }

  async #answer(route: Route, page: Page): Promise<void> {
    const request = route.request();
    const url = new URL(request.url());
    if (url.pathname === WINDOW_OPEN_PATH) return route.fulfill({ body: this.#web.decideOpen(url.searchParams.get('url') ?? '') });
    if (request.isNavigationRequest() && request.url() !== this.#loading && this.#refusesNavigation(meant(request.url()), request.frame() === page.mainFrame())) return route.abort('aborted');
    this.#loading = '';
    return answerRoute(route);
  }

  #refusesNavigation(url: string, isMainFrame: boolean): boolean {
    const event = Object.assign(preventable(), { url, isMainFrame });
    if (isMainFrame) this.#web.emit('will-navigate', event, url);
    this.#web.emit('will-frame-navigate', event);
    return event.defaultPrevented;
  }

  async loadURL(address: string): Promise<void> {
    const page = await this.#page;
    this.#loading = shown(address);
    await page.goto(this.#loading);
    this.#emit('ready-to-show');
  }

  /** A message to the preload that carries nothing. As in Electron it is lost on a page that is not there yet. */
  async #tell(channel: string): Promise<void> {
    const page = await this.#page;
    await page.evaluate(`window.${HEARD}?.(${JSON.stringify(channel)})`).catch(() => undefined);
  }

  reload(): void { void this.#page.then((page) => { this.#loading = page.url(); return page.goto(page.url()); }); }
  close(): void { void this.#page.then((page) => page.close({ runBeforeUnload: true })); }
  show(): void {}
  focus(): void { process.send?.({ focused: true }); void this.#page.then((page) => page.bringToFront()); }
  restore(): void {}
  maximize(): void { this.#maximised = true; }
  isMinimized(): boolean { return false; }
  isDestroyed(): boolean { return !state.windows.has(this); }
  isMaximized(): boolean { return this.#maximised; }
  getNormalBounds(): Electron.Rectangle { return this.#bounds; }
}
BrowserWindow satisfies new (options?: BrowserWindowConstructorOptions) => Partial<Omit<ElectronBrowserWindow, 'webContents'>> & { readonly webContents: Partial<WebContents> };
