/** Draws the studio into the page, and opens what the window begins with. Loaded while the host is being asked. */
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import type { Answer, OpenedFile, Start } from '../app/host/host.ts';
import type { FoundHost } from './host/find.tsx';
import { loadLaterPartsAtRest } from './shell/later.ts';
import { Studio } from './shell/studio.ts';
import { giveTyped } from './shell/typed.ts';
import { Window } from './shell/window.tsx';
import { manuscriptPlugins } from './write/plugins.ts';

const today = () => {
  const now = new Date();
  const two = (n: number) => String(n).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
};

/** `read`: what the host says of the file that the window begins with, asked for already; null for none. */
export async function drawStudio(
  root: HTMLElement,
  { host, overlay }: FoundHost,
  start: Start,
  read: Promise<Answer<OpenedFile>> | null,
): Promise<void> {
  const studio = new Studio({ host, start, plugins: manuscriptPlugins, today, giveTyped });
  createRoot(root).render(
    <StrictMode>
      <Window studio={studio} />
      {overlay}
    </StrictMode>,
  );
  if (start.open !== null && read !== null) await studio.open(start.open, read);
  loadLaterPartsAtRest();
}
