/**
 * Between a desk and the bytes of a pattern file, in the page: what is opened is checked here, what is saved is
 * made here. Bytes in, bytes out; the host has the disk.
 */
import type { Node } from 'prosemirror-model';
import { readContainer, writeContainer } from '../../core/document/container.ts';
import { type Pictures, shownPictures } from '../../core/document/media.ts';

export type Unpacked =
  | { readonly ok: true; readonly document: Node; readonly pictures: Pictures }
  | { readonly ok: false; readonly message: string };

/** The pattern in a file's bytes, or a sentence why there is none. */
export function unpack(bytes: Uint8Array): Unpacked {
  const read = readContainer(bytes);
  return read.ok
    ? { ok: true, document: read.document, pictures: read.media }
    : { ok: false, message: read.error.message };
}

/** The file's bytes, with the pictures that the document shows and no others. */
export function pack(document: Node, pictures: Pictures): Uint8Array {
  const shown = shownPictures(document);
  return writeContainer(document, new Map([...pictures].filter(([id]) => shown.has(id))));
}

/** A title as a file's name: without the characters that some disk refuses. */
export function fileName(title: string): string {
  const name = title
    .replace(/[\\/:*?"<>|\p{Cc}]+/gu, ' ')
    .replace(/\s+/g, ' ')
    .trim()
    .replace(/^\.+|\.+$/g, '')
    .slice(0, 60);
  return name === '' ? 'pattern' : name;
}
