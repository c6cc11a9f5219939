/**
 * A scene on screen: painted as SVG by the one painter and set into the page, where it takes the page's colours. In a
 * frame that scrolls when the drawing is larger, by mouse and by keyboard.
 */
import { useLayoutEffect, useRef } from 'react';
import type { Scene } from '../../core/drawing/scene.ts';
import { paintSvg } from '../../core/drawing/svg.ts';

/** A point in CSS pixels. */
const POINT = 4 / 3;

/** Letters of a drawing that had to shrink are drawn this much larger at most, so that they can still be read. */
const MOST_LARGER = 1.6;

interface SceneViewProps {
  readonly scene: Scene;
  /** Begins the ids in it; one of its own for each drawing of the page. */
  readonly id: string;
  /** Times its size on paper; null makes it smaller where the window has less room than that. */
  readonly zoom: number | null;
  /** Whether there is room about its letters to draw them larger. */
  readonly growsLetters?: boolean;
  /** What the frame holds, for those who come to it by keyboard. */
  readonly label: string;
}

export function SceneView({ scene, id, zoom, label, growsLetters = false }: SceneViewProps) {
  const frame = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    const text = paintSvg(scene, { id, standalone: false });
    const { documentElement } = new DOMParser().parseFromString(text, 'image/svg+xml');
    const drawing = document.importNode(documentElement, true);
    drawing.setAttribute('width', String(scene.width * POINT * (zoom ?? 1)));
    drawing.setAttribute('height', String(scene.height * POINT * (zoom ?? 1)));
    drawing.style.setProperty('--width-to-height', String(scene.width / scene.height));
    frame.current?.replaceChildren(drawing);
    if (zoom !== null || !growsLetters) return;
    const letters = [...drawing.querySelectorAll('text')].map(
      (text) => [text, Number(text.getAttribute('font-size'))] as const,
    );
    const watch = new ResizeObserver(() => {
      const shrunk = drawing.getBoundingClientRect().width / (scene.width * POINT);
      const larger = Math.min(MOST_LARGER, Math.max(1, 1 / shrunk));
      for (const [text, size] of letters) text.setAttribute('font-size', String(size * larger));
    });
    watch.observe(drawing);
    return () => watch.disconnect();
  }, [scene, id, zoom, growsLetters]);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reached by keyboard
    <section className={zoom === null ? 'drawing fits' : 'drawing'} aria-label={label} tabIndex={0}>
      <div ref={frame} />
    </section>
  );
}
