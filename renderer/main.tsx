/**
 * Starts the studio in the page: finds the host and asks what the window begins with, while the studio itself is
 * being loaded. What stands here is loaded before anything else, and so is little.
 */
import { findHost } from './host/find.tsx';
import { NOT_LET_IN } from './words/folders.ts';

const root = document.getElementById('studio');
if (root === null) throw new Error('The page has no place for the studio.');

const page = import('./page.tsx');
const found = await findHost();
if (found === null) {
  root.textContent = NOT_LET_IN;
  throw new Error('The page was not let in.');
}
const { host } = found;
const start = await host.start();
const read = start.open === null ? null : host.read(start.open.handle);
document.documentElement.dataset.theme = start.settings.theme;
document.documentElement.dataset.platform = start.about.platform;

const { drawStudio } = await page;
await drawStudio(root, found, start, read);
