/**
 * Tells of the desk's changes once the page has painted them: one telling for all changes of a frame. For views
 * whose drawing must not stand between a key and its letter. It holds no data of the desk.
 */
import type { Desk } from '../desk/desk.ts';
import { afterPaint } from './after-paint.ts';

type Subscribe = (listener: () => void) => () => void;

const ofDesks = new WeakMap<Desk, Subscribe>();

/** Subscribes to a desk's changes after they were painted. The same function for the same desk. */
export function settled(desk: Desk): Subscribe {
  const known = ofDesks.get(desk);
  if (known !== undefined) return known;
  const listeners = new Set<() => void>();
  let isWaiting = false;
  const tell = (): void => {
    isWaiting = false;
    for (const listener of listeners) listener();
  };
  desk.subscribe(() => {
    if (isWaiting) return;
    isWaiting = true;
    afterPaint(tell);
  });
  const subscribe: Subscribe = (listener) => {
    listeners.add(listener);
    return () => listeners.delete(listener);
  };
  ofDesks.set(desk, subscribe);
  return subscribe;
}
