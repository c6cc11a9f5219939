/**
 * Answers for the studio's own scheme: the files of the built studio by their addresses, with the policy that
 * every page has, and nothing else. There is no `file:` and no disk behind an address.
 */
import { readFile } from 'node:fs/promises';
import type { Settings } from '../host/host.ts';
import { PAGE_HEADERS } from '../services/page-policy.ts';
import { isThemed, type Page, themedPage } from '../services/pages.ts';
import { isStudio } from './guards.ts';

export interface PageRequest {
  readonly url: string;
  readonly method: string;
}

/** The answer to one request; a page of words has the maker's theme. */
export async function answerPage(
  request: PageRequest,
  pages: ReadonlyMap<string, Page>,
  theme: () => Promise<Settings['theme']>,
): Promise<Response> {
  const no = (status: number) => new Response(null, { status, headers: PAGE_HEADERS });
  if (request.method !== 'GET' && request.method !== 'HEAD') return no(405);
  if (!isStudio(request.url)) return no(404);
  const page = pages.get(new URL(request.url).pathname);
  if (page === undefined) return no(404);
  const headers = { ...PAGE_HEADERS, 'content-type': page.type };
  if (isThemed(page)) return new Response(await themedPage(page, await theme()), { headers });
  return new Response(new Uint8Array(await readFile(page.path)), { headers });
}
