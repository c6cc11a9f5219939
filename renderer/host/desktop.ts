/** The host of a desktop window, made of the one object that its preload put on the page. */
import type { DesktopBridge } from '../../app/host/bridge.ts';
import type { Host } from '../../app/host/host.ts';

/** The name under which it stands. */
const KEY = 'turnchain';

/** The interface over a bridge: signals become names that work is stopped by. */
export function hostOver(bridge: DesktopBridge): Host {
  let serial = 0;
  function stoppable<T>(signal: AbortSignal | undefined, run: (id: string) => Promise<T>): Promise<T> {
    serial += 1;
    const id = `work-${serial}`;
    const stop = () => bridge.stop(id);
    const running = run(id).finally(() => signal?.removeEventListener('abort', stop));
    if (signal?.aborted) stop();
    else signal?.addEventListener('abort', stop);
    return running;
  }
  return {
    ...bridge,
    print: (job, choice, signal) => stoppable(signal, (id) => bridge.print(id, job, choice)),
    export: (job, request, progress, signal) =>
      stoppable(signal, (id) => bridge.export(id, job, request, progress)),
  };
}

/** Null in a page that is not in a desktop window. */
export function desktopHost(page: object): Host | null {
  const bridge = (page as Readonly<Record<string, unknown>>)[KEY] as DesktopBridge | undefined;
  return bridge === undefined ? null : hostOver(bridge);
}
