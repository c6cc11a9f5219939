/** Every place begins at its top, and is come back to where it was left. It knows nothing of what a place shows. */
import { useLayoutEffect } from 'react';
import type { Desk } from '../desk/desk.ts';
import { useDesk } from './hooks.ts';
import type { Place } from './studio.ts';

/** How far down each place of a pattern was when another came to the front. */
const leftAt = new WeakMap<Desk, Map<Place, number>>();

/** Stands before what a place shows, so that whatever goes to something in it does so after this. */
export function ScrollBack({ place }: { readonly place: Place }) {
  const desk = useDesk();
  useLayoutEffect(() => {
    const main = document.querySelector('main');
    if (main === null) return;
    const left = leftAt.get(desk) ?? new Map<Place, number>();
    leftAt.set(desk, left);
    main.scrollTop = left.get(place) ?? 0;
    return () => {
      left.set(place, main.scrollTop);
    };
  }, [desk, place]);
  return null;
}
