/**
 * The window's end of the bridge to the main process: one object of named functions, in which nothing of
 * Electron is. What sends is given: Electron's in the preload, a plain object in a test. It decides nothing.
 */
import type { DesktopBridge } from '../host/bridge.ts';
import type { ExportStep, HostEvent } from '../host/host.ts';
import { CHANNELS } from './channels.ts';

const { CALL, PRINT, EXPORT, STOP, EVENT, STEP } = CHANNELS;

/** What the window's end needs of Electron's `ipcRenderer`. */
export interface PageIpc {
  invoke(channel: string, ...values: unknown[]): Promise<unknown>;
  on(channel: string, listener: (event: unknown, ...values: unknown[]) => void): unknown;
}

/** The window's end: one object of named functions. Nothing of Electron is in it. */
export function pageBridge(ipc: PageIpc): DesktopBridge {
  const call =
    (name: string) =>
    (...values: readonly unknown[]): Promise<never> =>
      ipc.invoke(CALL, name, values) as Promise<never>;
  const listeners = new Set<(event: HostEvent) => void>();
  const steps = new Map<string, (step: ExportStep) => void>();
  ipc.on(EVENT, (_, event) => {
    for (const listener of listeners) listener(event as HostEvent);
  });
  ipc.on(STEP, (_, id, step) => steps.get(String(id))?.(step as ExportStep));
  return {
    start: call('start'),
    chooseFile: call('chooseFile'),
    chooseSave: call('chooseSave'),
    chooseFolder: call('chooseFolder'),
    read: call('read'),
    save: call('save'),
    release: call('release'),
    example: call('example'),
    versions: call('versions'),
    version: call('version'),
    keep: call('keep'),
    keepPicture: call('keepPicture'),
    forget: call('forget'),
    recovered: call('recovered'),
    recover: call('recover'),
    saveDrawing: call('saveDrawing'),
    reveal: call('reveal'),
    recent: call('recent'),
    forgetRecent: call('forgetRecent'),
    saveSettings: call('saveSettings'),
    openLink: call('openLink'),
    newWindow: call('newWindow'),
    close: call('close'),
    print: (id, job, choice) => ipc.invoke(PRINT, id, [job, choice]) as Promise<never>,
    export: async (id, job, request, progress) => {
      steps.set(id, progress);
      try {
        return (await ipc.invoke(EXPORT, id, [job, request])) as never;
      } finally {
        steps.delete(id);
      }
    },
    stop: (id) => {
      void ipc.invoke(STOP, id);
    },
    listen: (listener) => {
      listeners.add(listener);
      return () => {
        listeners.delete(listener);
      };
    },
  };
}
