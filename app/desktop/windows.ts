/**
 * The desktop's windows: each with its host, its place on the screen remembered, closed only when the studio in
 * it agrees (or cannot answer any more). Wiring of Electron to the services; what a window may do stands in the
 * guards.
 */
import { BrowserWindow, dialog, screen, shell, type WebContents } from 'electron';
import { StudioHost, type WindowShell } from '../services/studio-host.ts';
import type { StudioServices } from '../services/studio-services.ts';
import { goingTo, isStudio, STUDIO } from './guards.ts';
import { passEvents } from './main-bridge.ts';
import { LEAST_SIZE, placeOn, readWindowState, USUAL_SIZE, writeWindowState } from './window-state.ts';

const PATTERNS = { name: 'Turnchain pattern', extensions: ['turnchain'] };

/** The paper's colours of the two themes, so that a window does not flash before its page is there. */
const GROUND = { light: '#f1ece1', dark: '#181613' } as const;

export interface DesktopOptions {
  readonly services: StudioServices;
  /** Path of the built preload. */
  readonly preload: string;
  readonly dark: () => boolean;
  readonly remember: (path: string) => void;
}

interface Open {
  readonly window: BrowserWindow;
  readonly host: StudioHost;
  /** The studio agreed to be closed. */
  agreed: boolean;
  /** Its page does not answer. */
  stuck: boolean;
}

export class DesktopWindows {
  readonly #options: DesktopOptions;
  readonly #open = new Map<number, Open>();
  #serial = 0;

  constructor(options: DesktopOptions) {
    this.#options = options;
  }

  /** The host of the window with these contents. */
  host(contents: number): StudioHost | null {
    return this.#open.get(contents)?.host ?? null;
  }

  get front(): StudioHost | null {
    const window = BrowserWindow.getFocusedWindow() ?? BrowserWindow.getAllWindows()[0];
    return window === undefined ? null : this.host(window.webContents.id);
  }

  /** Brings a window to the front, and asks it to open the file; makes one where there is none. */
  async show(path: string | null): Promise<void> {
    const window = BrowserWindow.getFocusedWindow() ?? BrowserWindow.getAllWindows()[0];
    if (window === undefined) return this.create(path);
    if (window.isMinimized()) window.restore();
    window.focus();
    if (path !== null) this.host(window.webContents.id)?.tellToOpen(path);
  }

  async create(path: string | null): Promise<void> {
    const { services, preload, dark } = this.#options;
    const state = await readWindowState(services.places.window, services.disk);
    const theme = await services.theme();
    const ground = theme === 'system' ? (dark() ? 'dark' : 'light') : theme;
    const place = placeOn(
      state.box,
      screen.getAllDisplays().map(({ workArea }) => workArea),
    );
    const window = new BrowserWindow({
      ...(place ?? USUAL_SIZE),
      minWidth: LEAST_SIZE.width,
      minHeight: LEAST_SIZE.height,
      show: false,
      title: 'Turnchain',
      backgroundColor: GROUND[ground],
      webPreferences: {
        preload,
        sandbox: true,
        contextIsolation: true,
        nodeIntegration: false,
        nodeIntegrationInWorker: false,
        nodeIntegrationInSubFrames: false,
        webviewTag: false,
        // The system's checker would fetch dictionaries; the studio has its own.
        spellcheck: false,
        navigateOnDragDrop: false,
        safeDialogs: true,
      },
    });
    if (state.maximised) window.maximize();
    const { id } = window.webContents;
    this.#serial += 1;
    const host = new StudioHost({
      services,
      shell: this.#shell(window),
      window: `d${this.#serial}`,
      open: path,
    });
    const open: Open = { window, host, agreed: false, stuck: false };
    this.#open.set(id, open);
    passEvents(host, (channel, event) => {
      if (!window.isDestroyed()) window.webContents.send(channel, event);
    });
    window.once('ready-to-show', () => window.show());
    window.on('unresponsive', () => {
      open.stuck = true;
    });
    window.on('responsive', () => {
      open.stuck = false;
    });
    window.on('close', (event) => this.#closing(open, event));
    window.on('closed', () => {
      this.#open.delete(id);
      void host.dispose();
    });
    await window.loadURL(`${STUDIO}index.html`);
  }

  #closing(open: Open, event: { preventDefault(): void }): void {
    const { window, host } = open;
    const { services } = this.#options;
    const box = window.getNormalBounds();
    void writeWindowState(services.places.window, { box, maximised: window.isMaximized() }, services.disk);
    // A page that is gone or does not answer has no say; its journal keeps the work.
    if (open.agreed || open.stuck || window.webContents.isCrashed()) return;
    event.preventDefault();
    host.tell({ kind: 'close-asked' });
  }

  #shell(window: BrowserWindow): WindowShell {
    return {
      kind: 'desktop',
      chooseFile: async () => {
        const { filePaths } = await dialog.showOpenDialog(window, {
          properties: ['openFile'],
          filters: [PATTERNS],
        });
        return filePaths[0] ?? null;
      },
      chooseSave: async (suggested) => {
        const { filePath, canceled } = await dialog.showSaveDialog(window, {
          defaultPath: suggested,
          filters: [PATTERNS],
          properties: ['createDirectory', 'showOverwriteConfirmation'],
        });
        return canceled || filePath === '' ? null : filePath;
      },
      chooseFolder: async () => {
        const { filePaths } = await dialog.showOpenDialog(window, {
          properties: ['openDirectory', 'createDirectory'],
        });
        return filePaths[0] ?? null;
      },
      reveal: async (path) => {
        shell.showItemInFolder(path);
        return true;
      },
      openLink: (address) =>
        shell.openExternal(address).then(
          () => true,
          () => false,
        ),
      newWindow: () => this.create(null),
      close: async (answer) => {
        const open = this.#open.get(window.webContents.id);
        if (open === undefined) return;
        open.agreed = answer === 'close';
        if (open.agreed) window.close();
      },
      remember: (path) => this.#options.remember(path),
    };
  }
}

/** A window shows the studio and goes nowhere: what may leave goes to the maker's own browser. */
export function guardContents(contents: WebContents): void {
  const outside = (address: string): void => {
    const going = goingTo(address);
    if (going.kind === 'outside') void shell.openExternal(going.address).catch(() => undefined);
  };
  contents.setWindowOpenHandler(({ url }) => {
    outside(url);
    return { action: 'deny' };
  });
  contents.on('will-frame-navigate', (event) => {
    // Loading the studio anew is its own affair.
    if (event.isMainFrame && isStudio(event.url)) return;
    event.preventDefault();
    if (event.isMainFrame) outside(event.url);
  });
  contents.on('will-redirect', (event) => event.preventDefault());
  contents.on('will-attach-webview', (event) => event.preventDefault());
}
