/** Starts the studio in the page: finds the host, asks what the window begins with, draws. */
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { findHost } from './host/find.tsx';
import { Studio } from './shell/studio.ts';
import { Window } from './shell/window.tsx';
import { NOT_LET_IN } from './words/folders.ts';
import { manuscriptPlugins } from './write/plugins.ts';

const root = document.getElementById('studio');
if (root === null) throw new Error('The page has no place for the studio.');

const found = await findHost();
if (found === null) {
  root.textContent = NOT_LET_IN;
  throw new Error('The page was not let in.');
}
const { host, overlay } = found;
const start = await host.start();
document.documentElement.dataset.theme = start.settings.theme;
document.documentElement.dataset.platform = start.about.platform;

const today = () => {
  const now = new Date();
  const two = (n: number) => String(n).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
};
const studio = new Studio({ host, start, plugins: manuscriptPlugins, today });

createRoot(root).render(
  <StrictMode>
    <Window studio={studio} />
    {overlay}
  </StrictMode>,
);
if (start.open !== null) await studio.open(start.open);
