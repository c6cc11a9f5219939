/**
 * Steps wait for the screen and reach the worker together and in order; whatever is asked meets a worker that has them.
 */
import { describe, expect, test } from 'vitest';
import type { WorkerLike } from '../../renderer/analysis/analyst.ts';
import type { ToWorker } from '../../renderer/analysis/protocol.ts';
import { patient } from '../../renderer/analysis/start-worker.ts';

function made() {
  const got: ToWorker[] = [];
  const waiting: (() => void)[] = [];
  let ended = false;
  const worker: WorkerLike = {
    postMessage: (message) => got.push(message),
    onmessage: null,
    terminate: () => {
      ended = true;
    },
  };
  const paint = () => {
    for (const run of waiting.splice(0)) run();
  };
  return {
    worker: patient(worker, (run) => waiting.push(run)),
    inner: worker,
    got,
    paint,
    isEnded: () => ended,
  };
}

const steps = (version: number, ...of: string[]): ToWorker => ({ kind: 'steps', version, steps: of });
const asked: ToWorker = { kind: 'figure-asked', serial: 1, expression: 'bust / 2' };
const whole: ToWorker = { kind: 'document', version: 2, document: {} };

describe('a worker that keeps out of the way of a key', () => {
  test('gets the steps of one frame together, in their order, with the newest version', () => {
    const { worker, got, paint } = made();
    worker.postMessage(steps(1, 'a', 'b'));
    worker.postMessage(steps(2, 'c'));
    expect(got).toEqual([]);
    paint();
    expect(got).toEqual([steps(2, 'a', 'b', 'c')]);
    worker.postMessage(steps(3, 'd'));
    paint();
    expect(got.at(-1)).toEqual(steps(3, 'd'));
  });

  test('is asked nothing before it has the steps, and gets them once', () => {
    const { worker, got, paint } = made();
    worker.postMessage(steps(1, 'a'));
    worker.postMessage(asked);
    expect(got).toEqual([steps(1, 'a'), asked]);
    paint();
    expect(got).toHaveLength(2);
  });

  test('needs no steps with a document that has them', () => {
    const { worker, got, paint } = made();
    worker.postMessage(steps(1, 'a'));
    worker.postMessage(whole);
    paint();
    expect(got).toEqual([whole]);
  });

  test('hears nothing more once it was stopped, and is heard until then', () => {
    const { worker, inner, got, paint, isEnded } = made();
    const heard: number[] = [];
    worker.onmessage = ({ data }) => heard.push(data.kind === 'changes' ? data.version : -1);
    inner.onmessage?.({ data: { kind: 'changes', version: 7 } });
    worker.postMessage(steps(1, 'a'));
    worker.terminate();
    paint();
    expect([heard, got, isEnded()]).toEqual([[7], [], true]);
  });
});
