/**
 * The desktop program: one instance, its scheme, its guards, its windows. Wiring only; every decision is a plain
 * function beside it or a service.
 */
import { join } from 'node:path';
import { app, BrowserWindow, ipcMain, Menu, nativeTheme, protocol, session } from 'electron';
import { dataFolder } from '../services/data-folder.ts';
import { pagesIn } from '../services/pages.ts';
import { packageFolder } from '../services/resources.ts';
import { StudioServices } from '../services/studio-services.ts';
import { mayLoad, SCHEME } from './guards.ts';
import { serveBridge } from './main-bridge.ts';
import { menuTemplate } from './menu.ts';
import { fileInWords } from './opened-file.ts';
import { answerPage } from './serve-pages.ts';
import { DesktopWindows, guardContents } from './windows.ts';

app.setName('Turnchain');
app.enableSandbox();
// Chromium asks the world for a few things of its own accord; this program asks nobody for anything.
for (const name of [
  'disable-background-networking',
  'disable-component-update',
  'disable-domain-reliability',
  'no-pings',
]) {
  app.commandLine.appendSwitch(name);
}
protocol.registerSchemesAsPrivileged([
  { scheme: SCHEME, privileges: { standard: true, secure: true, supportFetchAPI: true, corsEnabled: true } },
]);

const services = new StudioServices({
  data: dataFolder(process.platform, process.env, app.getPath('home')),
  home: app.getPath('home'),
  platform: process.platform,
});
const built = join(packageFolder(), 'dist');
const windows = new DesktopWindows({
  services,
  preload: join(built, 'desktop', 'preload.cjs'),
  dark: () => nativeTheme.shouldUseDarkColors,
  remember: (path) => app.addRecentDocument(path),
});

/** A file that the system gave before there was a window. */
let early: string | null = fileInWords(process.argv.slice(1), process.cwd());

function begin(): void {
  const pages = pagesIn(join(built, 'studio'));
  protocol.handle(SCHEME, ({ url, method }) => answerPage({ url, method }, pages, () => services.theme()));
  const { defaultSession } = session;
  defaultSession.setSpellCheckerEnabled(false);
  defaultSession.setPermissionRequestHandler((_contents, _permission, answer) => answer(false));
  defaultSession.setPermissionCheckHandler(() => false);
  defaultSession.setDevicePermissionHandler(() => false);
  defaultSession.webRequest.onBeforeRequest(({ url }, answer) => answer({ cancel: !mayLoad(url) }));
  defaultSession.on('will-download', (event) => event.preventDefault());
  serveBridge(
    {
      handle: (channel, answer) =>
        ipcMain.handle(channel, (event, ...values: unknown[]) => {
          const frame = event.senderFrame;
          return answer(
            {
              sender: frame && { address: frame.url, isMainFrame: frame.parent === null },
              window: event.sender.id,
              reply: (to, ...said) => {
                if (!event.sender.isDestroyed()) event.sender.send(to, ...said);
              },
            },
            ...values,
          );
        }),
    },
    (window) => windows.host(window),
  );
  const send = (command: string) => windows.front?.tell({ kind: 'command', command });
  const newWindow = () => void windows.create(null);
  Menu.setApplicationMenu(Menu.buildFromTemplate(menuTemplate(process.platform, send, newWindow)));
  const first = early;
  early = null;
  void windows.create(first);
}

if (!app.requestSingleInstanceLock()) app.quit();
else {
  app.on('second-instance', (_event, words, folder) => {
    void windows.show(fileInWords(words.slice(1), folder));
  });
  app.on('open-file', (event, path) => {
    event.preventDefault();
    if (app.isReady()) void windows.show(path);
    else early = path;
  });
  app.on('web-contents-created', (_event, contents) => guardContents(contents));
  app.on('activate', () => {
    if (BrowserWindow.getAllWindows().length === 0) void windows.create(null);
  });
  app.on('window-all-closed', () => {
    if (process.platform !== 'darwin') app.quit();
  });
  app.on('will-quit', () => void services.close());
  void app.whenReady().then(begin);
}
