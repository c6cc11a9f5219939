/**
 * Answers for the studio's own scheme: the files of the built studio by their addresses, with the policy that
 * every page has, and nothing else. There is no `file:` and no disk behind an address.
 */
import { readFile } from 'node:fs/promises';
import { PAGE_HEADERS } from '../services/page-policy.ts';
import type { Page } from '../services/pages.ts';
import { isStudio } from './guards.ts';

export interface PageRequest {
  readonly url: string;
  readonly method: string;
}

/** The answer to one request. */
export async function answerPage(request: PageRequest, pages: ReadonlyMap<string, Page>): Promise<Response> {
  const no = (status: number) => new Response(null, { status, headers: PAGE_HEADERS });
  if (request.method !== 'GET' && request.method !== 'HEAD') return no(405);
  if (!isStudio(request.url)) return no(404);
  const page = pages.get(new URL(request.url).pathname);
  if (page === undefined) return no(404);
  const headers = { ...PAGE_HEADERS, 'content-type': page.type };
  return new Response(new Uint8Array(await readFile(page.path)), { headers });
}
