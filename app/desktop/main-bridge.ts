/**
 * The main process's end of the bridge to a window: takes its calls, if it is one that may call, and passes them
 * to the window's host. What receives is given: Electron's in the program, a plain object in a test.
 */
import type { HostEvent } from '../host/host.ts';
import { BadCall, callExport, callHost, callPrint, isShortCall } from '../services/calls.ts';
import type { StudioHost } from '../services/studio-host.ts';
import { CHANNELS } from './channels.ts';
import { mayCall, type Sender } from './guards.ts';

const { CALL, PRINT, EXPORT, STOP, EVENT, STEP } = CHANNELS;

/** A message as the main process sees it. */
export interface MainMessage {
  readonly sender: Sender | null;
  /** Names the window. */
  readonly window: number;
  reply(channel: string, ...values: unknown[]): void;
}

/** What the main process's end needs of Electron's `ipcMain`. */
export interface MainIpc {
  handle(channel: string, answer: (message: MainMessage, ...values: unknown[]) => Promise<unknown>): void;
}

/** The main process's end: `hostOf` gives the host of a window, null for one that is closed or not ours. */
export function serveBridge(ipc: MainIpc, hostOf: (window: number) => StudioHost | null): void {
  const running = new Map<string, AbortController>();
  const key = (message: MainMessage, id: unknown): string => `${message.window} ${String(id)}`;

  const serve = (
    channel: string,
    answer: (host: StudioHost, message: MainMessage, values: readonly unknown[]) => Promise<unknown>,
  ) =>
    ipc.handle(channel, async (message, ...values) => {
      const host = mayCall(message.sender) ? hostOf(message.window) : null;
      if (host === null) throw new BadCall('This page may not call the studio’s host.');
      return answer(host, message, values);
    });

  /** Carries out a call that may be stopped by its name. */
  const stoppable = async (
    message: MainMessage,
    id: unknown,
    run: (signal: AbortSignal) => Promise<unknown>,
  ): Promise<unknown> => {
    const controller = new AbortController();
    running.set(key(message, id), controller);
    try {
      return await run(controller.signal);
    } finally {
      running.delete(key(message, id));
    }
  };

  serve(CALL, async (host, _, [name, values]) => {
    if (typeof name !== 'string' || !isShortCall(name)) throw new BadCall('There is no such call.');
    return callHost(host, name, values);
  });
  serve(PRINT, (host, message, [id, values]) =>
    stoppable(message, id, (signal) => callPrint(host, values, signal)),
  );
  serve(EXPORT, (host, message, [id, values]) =>
    stoppable(message, id, (signal) =>
      callExport(host, values, (step) => message.reply(STEP, id, step), signal),
    ),
  );
  serve(STOP, async (_, message, [id]) => {
    running.get(key(message, id))?.abort();
  });
}

/** Passes what a host tells on to its window. */
export function passEvents(host: StudioHost, send: (channel: string, event: HostEvent) => void): void {
  host.listen((event) => send(EVENT, event));
}
