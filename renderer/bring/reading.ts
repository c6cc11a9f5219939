/** Has an old pattern read by a worker of its own, which is ended when it is not wanted any more or takes too long. */
import { bringWords } from '../words/bring.ts';
import type { BringAsked, BringTold } from './protocol.ts';

/** Longer than the longest pattern takes on a slow machine. */
const PATIENCE_MS = 60_000;

/** What the words come to. Rejects with the signal's reason when it is stopped. */
export function readOldPattern(asked: BringAsked, signal: AbortSignal): Promise<BringTold> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
    const end = (): void => {
      worker.terminate();
      clearTimeout(timer);
      signal.removeEventListener('abort', stop);
    };
    const tell = (told: BringTold): void => {
      end();
      resolve(told);
    };
    const stop = (): void => {
      end();
      reject(signal.reason);
    };
    const timer = setTimeout(() => tell({ ok: false, message: bringWords.tooLong }), PATIENCE_MS);
    worker.onmessage = ({ data }: MessageEvent<BringTold>) => tell(data);
    worker.onerror = () => tell({ ok: false, message: bringWords.failed });
    signal.addEventListener('abort', stop);
    worker.postMessage(asked);
  });
}
