/** How components read the studio and the desk: by selectors, drawn again only when what they chose changed. */
import { createContext, useContext, useSyncExternalStore } from 'react';
import type { Desk, DeskView } from '../desk/desk.ts';
import { settled } from './settled.ts';
import type { Studio, StudioView } from './studio.ts';

export const StudioContext = createContext<Studio | null>(null);
export const DeskContext = createContext<Desk | null>(null);

export function useStudio(): Studio {
  const studio = useContext(StudioContext);
  if (studio === null) throw new Error('A component stands outside the studio.');
  return studio;
}

/** A part of the studio's snapshot. The selector gives an object that is there already, not a new one. */
export function useStudioView<T>(select: (view: StudioView) => T): T {
  const studio = useStudio();
  return useSyncExternalStore(studio.subscribe, () => select(studio.view()));
}

/** The desk of the pattern on screen. For components inside a place. */
export function useDesk(): Desk {
  const desk = useContext(DeskContext);
  if (desk === null) throw new Error('A component stands outside a desk.');
  return desk;
}

/** A part of the desk's snapshot. The selector gives an object that is there already, not a new one. */
export function useDeskView<T>(select: (view: DeskView) => T): T {
  const desk = useDesk();
  return useSyncExternalStore(desk.subscribe, () => select(desk.view()));
}

/**
 * The same for what stands beside the words and may follow them a frame later, so that no key waits for it. Told
 * of changes after they were painted; whatever draws it sooner gets what is so by then.
 */
export function useSettledDeskView<T>(select: (view: DeskView) => T): T {
  const desk = useDesk();
  return useSyncExternalStore(settled(desk), () => select(desk.view()));
}
