/** The printing thread: takes one task after another from whoever started it. It holds nothing between them. */
import { parentPort } from 'node:worker_threads';
import type { ExportStep } from '../host/host.ts';
import { carryOut, type PrintTask, type TaskOutcome } from './printing-work.ts';

/** To the thread. */
export type ToWorker =
  | { readonly kind: 'task'; readonly id: number; readonly task: PrintTask }
  | { readonly kind: 'stop'; readonly id: number };

/** From the thread. `fault`: the program is wrong, and so the thread is not to be used again. */
export type FromWorker =
  | { readonly kind: 'step'; readonly id: number; readonly step: ExportStep }
  | { readonly kind: 'done'; readonly id: number; readonly outcome: TaskOutcome }
  | { readonly kind: 'fault'; readonly id: number; readonly fault: string };

const port = parentPort;
if (port !== null) {
  const running = new Map<number, AbortController>();
  const send = (message: FromWorker) => port.postMessage(message);
  port.on('message', (message: ToWorker) => {
    const { id } = message;
    if (message.kind === 'stop') {
      running.get(id)?.abort();
      return;
    }
    const controller = new AbortController();
    running.set(id, controller);
    carryOut(message.task, (step) => send({ kind: 'step', id, step }), controller.signal)
      .then(
        (outcome) => send({ kind: 'done', id, outcome }),
        (fault: unknown) => send({ kind: 'fault', id, fault: String(fault) }),
      )
      .finally(() => running.delete(id));
  });
}
