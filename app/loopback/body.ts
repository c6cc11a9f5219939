/**
 * A call's body, taken whole and at most so long; what is longer is not waited for.
 */
import type { IncomingMessage } from 'node:http';
import { FILE_LIMITS } from '../../core/document/limits.ts';

const KiB = 1024;
const MiB = 1024 * KiB;
/** A document's tree is larger as it is sent than as it is packed. */
const DOCUMENT = FILE_LIMITS.patternBytes + MiB;
const LIMITS: Readonly<Record<string, number>> = {
  save: FILE_LIMITS.fileBytes + 64 * KiB,
  keepPicture: FILE_LIMITS.pictureBytes + 64 * KiB,
  keep: DOCUMENT,
  print: DOCUMENT,
  // With pictures of pages for a shop.
  export: DOCUMENT + 64 * MiB,
};
const USUAL = 64 * KiB;

/** Bytes that the body of a call may have. */
export const bodyLimit = (call: string): number => (Object.hasOwn(LIMITS, call) ? LIMITS[call]! : USUAL);

/** The body's bytes; null when there are more than `limit`. Rejects when the page goes away. */
export async function readBody(request: IncomingMessage, limit: number): Promise<Uint8Array | null> {
  const told = Number(request.headers['content-length'] ?? 0);
  if (told > limit) return null;
  const parts: Uint8Array[] = [];
  let length = 0;
  for await (const part of request) {
    const bytes = part as Uint8Array;
    length += bytes.length;
    if (length > limit) return null;
    parts.push(bytes);
  }
  return Buffer.concat(parts, length);
}
