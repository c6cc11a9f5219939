/**
 * What may wait until the letter of a key stands on screen. It knows nothing of who waits.
 */

/** A page that is not on screen makes no frames: then so many milliseconds are waited. */
const UNSEEN = 100;

/** Runs once the next frame has been painted; also where there is none. */
export function afterPaint(run: () => void): void {
  let done = false;
  const once = (): void => {
    if (done) return;
    done = true;
    clearTimeout(unseen);
    run();
  };
  const unseen = setTimeout(once, UNSEEN);
  // A task that is begun in a frame comes after the frame was painted.
  requestAnimationFrame(() => setTimeout(once));
}
