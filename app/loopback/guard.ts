/**
 * Who may speak to the loopback host, as plain functions over a request's head: this machine, by the address
 * the server gave out, from a page that the server gave out, with the secret of this run. Each check closes one
 * way in: `Host` a name that was bent to 127.0.0.1 (DNS rebinding), `Origin` and `Sec-Fetch-Site` another site's
 * page in the same browser, the secret every other program and user of the machine.
 */
import { timingSafeEqual } from 'node:crypto';
import type { IncomingHttpHeaders } from 'node:http';
import { FRAME_TYPE } from '../host/frame.ts';

export interface GuardedRequest {
  readonly method: string;
  readonly path: string;
  readonly headers: IncomingHttpHeaders;
}

/** Why a request is refused; words for whoever looks at the network, not for a maker. */
export interface Refused {
  readonly status: number;
  readonly reason: string;
}

export const SECRET_HEADER = 'x-turnchain-secret';
export const WINDOW_HEADER = 'x-turnchain-window';

/** Where calls go; everything else is a file of the studio. */
export const CALLS_PATH = '/host/';

function same(given: string, expected: string): boolean {
  const a = Buffer.from(given);
  const b = Buffer.from(expected);
  return a.length === b.length && timingSafeEqual(a, b);
}

/** For every request: the address must be the one that the server listens on, spelled as it was given out. */
export function refusedAddress({ headers }: GuardedRequest, port: number): Refused | null {
  return headers.host === `127.0.0.1:${port}` ? null : { status: 421, reason: 'not this host' };
}

/** For files of the studio. */
export function refusedPage({ method }: GuardedRequest): Refused | null {
  return method === 'GET' || method === 'HEAD' ? null : { status: 405, reason: 'files are only read' };
}

/** For calls, whatever they carry. `secret` is null for the one call that fetches it. */
export function refusedCall(request: GuardedRequest, port: number, secret: string | null): Refused | null {
  const { method, headers } = request;
  if (method !== 'POST') return { status: 405, reason: 'calls are posted' };
  if (headers.origin !== `http://127.0.0.1:${port}`) return { status: 403, reason: 'another origin' };
  const site = headers['sec-fetch-site'];
  if (site !== undefined && site !== 'same-origin') return { status: 403, reason: 'another site' };
  if (headers['content-type'] !== FRAME_TYPE) return { status: 415, reason: 'not a frame' };
  if (secret === null) return null;
  const given = headers[SECRET_HEADER];
  if (typeof given !== 'string' || !same(given, secret)) return { status: 401, reason: 'no secret' };
  return null;
}

/** The window a call is from; null when it is not named as windows are. */
export function windowOf({ headers }: GuardedRequest): string | null {
  const given = headers[WINDOW_HEADER];
  return typeof given === 'string' && /^[A-Za-z0-9]{8,40}$/.test(given) ? given : null;
}
