/** The line at the foot that tells what just happened, seen and heard; it goes after a while. */
import { useEffect } from 'react';
import { useStudio, useStudioView } from './hooks.ts';

/** How long it stands: its longest sentence is read in less. In milliseconds. */
const STANDS = 8_000;

export function NoticeLine() {
  const studio = useStudio();
  const notice = useStudioView((view) => view.notice);
  useEffect(() => {
    if (notice === null) return;
    const timer = setTimeout(() => studio.tell(null), STANDS);
    return () => clearTimeout(timer);
  }, [studio, notice]);
  return (
    <p className={notice?.isSeen ? 'notice' : 'unseen'} role="status">
      {notice?.words}
    </p>
  );
}
