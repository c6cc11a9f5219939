/** Tells the desk what stands in a field and is not the document's yet, so that the journal keeps it, too. */
import { useContext, useEffect, useLayoutEffect, useRef } from 'react';
import { DeskContext } from './hooks.ts';

/**
 * `typed`: what stands in the field; null when it is what the document has. `give` gives it as leaving the field
 * would, but tells nobody: it is tried on a document that nobody sees.
 */
export function useHalfTyped(typed: string | null, give: (typed: string) => void): void {
  const desk = useContext(DeskContext);
  const field = useRef({});
  const latest = useRef(give);
  useLayoutEffect(() => {
    latest.current = give;
  });
  useEffect(() => {
    desk?.hold(field.current, typed === null ? null : () => latest.current(typed));
  }, [desk, typed]);
  useEffect(() => {
    const held = field.current;
    return () => desk?.hold(held, null);
  }, [desk]);
}
