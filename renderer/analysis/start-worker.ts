/**
 * Starts the worker that studies the pattern, and keeps it out of the way of the key that was just pressed: steps
 * are handed over together once they stand on screen, anything that is asked at once. It reads none of it.
 */
import type { WorkerLike } from './analyst.ts';
import type { ToWorker } from './protocol.ts';

type Steps = Extract<ToWorker, { kind: 'steps' }>;

/** A worker whose steps wait; `later` runs what it is given once the maker has seen what the steps did. */
export function patient(worker: WorkerLike, later: (run: () => void) => void): WorkerLike {
  let held: Steps | null = null;
  const hand = (): void => {
    if (held === null) return;
    const steps = held;
    held = null;
    worker.postMessage(steps);
  };
  return {
    postMessage(message) {
      if (message.kind !== 'steps') {
        // A whole document has the steps in it.
        if (message.kind === 'document') held = null;
        hand();
        worker.postMessage(message);
        return;
      }
      if (held === null) later(hand);
      held = held === null ? message : { ...message, steps: [...held.steps, ...message.steps] };
    },
    get onmessage() {
      return worker.onmessage;
    },
    set onmessage(hear) {
      worker.onmessage = hear;
    },
    terminate() {
      held = null;
      worker.terminate();
    },
  };
}

/** The real worker. */
export function startWorker(later: (run: () => void) => void): WorkerLike {
  const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
  return patient(worker as unknown as WorkerLike, later);
}
