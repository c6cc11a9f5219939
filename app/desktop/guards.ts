/**
 * Where a window of the studio may go, what it may load and who may call, as plain functions: the studio's own
 * page and nothing else. What is judged is what the browser makes of an address (WHATWG URL), never its look.
 */
import { linkToOpen } from '../services/links.ts';

export const SCHEME = 'turnchain';
export const STUDIO = `${SCHEME}://studio/`;

function parsed(address: string): URL | null {
  return URL.canParse(address) ? new URL(address) : null;
}

/** Whether an address is one of the studio's own. */
export function isStudio(address: string): boolean {
  const url = parsed(address);
  if (url === null || url.protocol !== `${SCHEME}:`) return false;
  return url.hostname === 'studio' && url.port === '' && url.username === '' && url.password === '';
}

/** Whether a window may load something. Pictures and workers that the page made itself have no address outside. */
export function mayLoad(address: string): boolean {
  const url = parsed(address);
  if (url === null) return false;
  if (url.protocol === 'blob:') return isStudio(url.pathname);
  return url.protocol === 'data:' || isStudio(address);
}

/** What becomes of a wish to go somewhere or to open a window there. */
export type Going = { readonly kind: 'outside'; readonly address: string } | { readonly kind: 'refused' };

/** Everything outside goes to the maker's own browser if it may, and nowhere else. */
export function goingTo(address: string): Going {
  const link = linkToOpen(address);
  return link === null ? { kind: 'refused' } : { kind: 'outside', address: link };
}

/** Who sent a message: a frame's address, and whether it is its window's main frame. */
export interface Sender {
  readonly address: string;
  readonly isMainFrame: boolean;
}

/** Messages are taken from the main frame of a studio's window, while it shows the studio. */
export const mayCall = (sender: Sender | null): boolean =>
  sender?.isMainFrame === true && isStudio(sender.address);
