/** Whether the window is as a media query asks, for what stands in another order then: Tab goes as it is seen. */
import { useMemo, useSyncExternalStore } from 'react';

export function useMedia(query: string): boolean {
  const list = useMemo(() => window.matchMedia(query), [query]);
  return useSyncExternalStore(
    (changed) => {
      list.addEventListener('change', changed);
      return () => list.removeEventListener('change', changed);
    },
    () => list.matches,
  );
}
