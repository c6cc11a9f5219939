/**
 * A scene on screen: painted as SVG by the one painter and set into the page, where it takes the page's colours. In a
 * frame that scrolls when the drawing is larger, by mouse and by keyboard.
 */
import { useLayoutEffect, useRef } from 'react';
import type { Scene } from '../../core/drawing/scene.ts';
import { paintSvg } from '../../core/drawing/svg.ts';

/** A point in CSS pixels. */
const POINT = 4 / 3;

interface SceneViewProps {
  readonly scene: Scene;
  /** Begins the ids in it; one of its own for each drawing of the page. */
  readonly id: string;
  readonly zoom: number;
  /** What the frame holds, for those who come to it by keyboard. */
  readonly label: string;
}

export function SceneView({ scene, id, zoom, label }: SceneViewProps) {
  const frame = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    const text = paintSvg(scene, { id, standalone: false });
    const { documentElement } = new DOMParser().parseFromString(text, 'image/svg+xml');
    const drawing = document.importNode(documentElement, true);
    drawing.setAttribute('width', String(scene.width * POINT * zoom));
    drawing.setAttribute('height', String(scene.height * POINT * zoom));
    frame.current?.replaceChildren(drawing);
  }, [scene, id, zoom]);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reached by keyboard
    <section className="drawing" aria-label={label} tabIndex={0}>
      <div ref={frame} />
    </section>
  );
}
