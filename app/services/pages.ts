/**
 * The files of the studio that may be served: those that were in its folder at the start, each under its own
 * address. An address is looked up, never made into a path.
 */
import { readdirSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { extname, join, relative, sep } from 'node:path';
import type { Settings } from '../host/host.ts';

export interface Page {
  readonly path: string;
  readonly type: string;
}

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.jpg': 'image/jpeg',
  '.ico': 'image/x-icon',
  '.woff2': 'font/woff2',
  '.ttf': 'font/ttf',
  '.wasm': 'application/wasm',
  '.txt': 'text/plain; charset=utf-8',
  '.aff': 'text/plain; charset=utf-8',
  '.dic': 'text/plain; charset=utf-8',
  '.bcmap': 'application/octet-stream',
  '.pfb': 'application/octet-stream',
};

function filesUnder(folder: string): readonly string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    return entry.isDirectory() ? filesUnder(path) : entry.isFile() ? [path] : [];
  });
}

/** Pages by address; files of unknown kinds (source maps) are not among them. */
export function pagesIn(folder: string): ReadonlyMap<string, Page> {
  const pages = new Map<string, Page>();
  for (const path of filesUnder(folder)) {
    const type = TYPES[extname(path).toLowerCase()];
    if (type === undefined) continue;
    const address = `/${relative(folder, path).split(sep).map(encodeURIComponent).join('/')}`;
    pages.set(address, { path, type });
    if (address === '/index.html') pages.set('/', { path, type });
  }
  return pages;
}

/** The theme that a page is built with, where the maker's own is put. */
const BUILT_THEME = 'data-theme="system"';

/** Whether a page has the theme in its words. */
export const isThemed = ({ type }: Page): boolean => type.startsWith('text/html');

/** The words of a themed page with the maker's theme, so that it is drawn in it before any script has run. */
export async function themedPage({ path }: Page, theme: Settings['theme']): Promise<string> {
  return (await readFile(path, 'utf8')).replace(BUILT_THEME, `data-theme="${theme}"`);
}
