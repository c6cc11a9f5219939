/**
 * Dragging a piece in the outline with mouse, pen or finger: follows the pointer, tells before which piece it
 * would drop, and ends by dropping or by Escape. It changes nothing itself.
 */

/** How far a pointer goes before a press is a drag, in CSS pixels. */
const THRESHOLD = 5;
/** How near the edge the list scrolls by itself, and by how much at a time. */
const EDGE = 28;
const SCROLL_STEP = 8;

export interface Drag {
  /** Index of the piece that is dragged. */
  readonly from: number;
  /** It would stand before the piece of this index; the number of pieces for the end. */
  readonly before: number;
}

/** Upper and lower edge on screen. */
export interface Box {
  readonly top: number;
  readonly bottom: number;
}

/** Where a piece would drop: before the first one whose middle is below the pointer. */
export function dropIndex(boxes: readonly Box[], y: number): number {
  const found = boxes.findIndex(({ top, bottom }) => y < (top + bottom) / 2);
  return found === -1 ? boxes.length : found;
}

/** The index that a piece has after it dropped; the same as before when it does not move. */
export function indexAfter({ from, before }: Drag): number {
  return before > from ? before - 1 : before;
}

export interface DragOptions {
  /** Boxes of the pieces on screen, each with its headings, in order. */
  readonly boxes: () => readonly Box[];
  readonly scroller: Element | null;
  /** Called as the pointer moves; null when the drag ends without a drop. */
  readonly onMove: (drag: Drag | null) => void;
  readonly onDrop: (drag: Drag) => void;
}

function swallow(event: Event): void {
  event.preventDefault();
  event.stopPropagation();
}

/** Begins to follow a press on piece `from`. Nothing happens until the pointer has gone a little way. */
export function followDrag(press: PointerEvent, from: number, options: DragOptions): void {
  const element = press.currentTarget as HTMLElement;
  let drag: Drag | null = null;
  const move = (event: PointerEvent): void => {
    if (event.pointerId !== press.pointerId) return;
    if (drag === null && Math.hypot(event.clientX - press.clientX, event.clientY - press.clientY) < THRESHOLD)
      return;
    if (drag === null) element.setPointerCapture(press.pointerId);
    drag = { from, before: dropIndex(options.boxes(), event.clientY) };
    const port = options.scroller?.getBoundingClientRect();
    if (port !== undefined) {
      if (event.clientY < port.top + EDGE) options.scroller!.scrollTop -= SCROLL_STEP;
      if (event.clientY > port.bottom - EDGE) options.scroller!.scrollTop += SCROLL_STEP;
    }
    options.onMove(drag);
  };
  const end = (event: PointerEvent): void => {
    if (event.pointerId !== press.pointerId) return;
    stop();
    if (drag === null) return;
    // The press that dragged is no click.
    window.addEventListener('click', swallow, { capture: true, once: true });
    setTimeout(() => window.removeEventListener('click', swallow, true), 0);
    options.onDrop(drag);
  };
  const cancel = (): void => {
    stop();
    options.onMove(null);
  };
  const onKey = (event: KeyboardEvent): void => {
    if (event.key !== 'Escape' || drag === null) return;
    event.preventDefault();
    event.stopPropagation();
    cancel();
  };
  const stop = (): void => {
    window.removeEventListener('pointermove', move);
    window.removeEventListener('pointerup', end);
    window.removeEventListener('pointercancel', cancel);
    window.removeEventListener('keydown', onKey, true);
  };
  window.addEventListener('pointermove', move);
  window.addEventListener('pointerup', end);
  window.addEventListener('pointercancel', cancel);
  window.addEventListener('keydown', onKey, true);
}
