/**
 * The worker that reads an old pattern: the bytes of a document or plain words in, a pattern with its doubts out. It
 * may be ended at any time: it holds nothing.
 */
import mammoth from 'mammoth/mammoth.browser.js';
import { bring } from '../../core/intake/bring.ts';
import { type DocxReader, textOfDocx } from '../../core/intake/docx.ts';
import type { BringAsked, BringTold, Source } from './protocol.ts';

const readDocx: DocxReader = async (bytes) => {
  const arrayBuffer = bytes.slice().buffer as ArrayBuffer;
  const { value } = await mammoth.convertToHtml(
    { arrayBuffer },
    {
      convertImage: mammoth.images.imgElement(() => Promise.resolve({ src: '' })),
      externalFileAccess: false,
    },
  );
  return value;
};

/** Plain words: UTF-8, UTF-16 with its mark, else Windows-1252, in which older word processors write. */
function decoded(bytes: Uint8Array): string {
  const mark =
    bytes[0] === 0xff && bytes[1] === 0xfe
      ? 'utf-16le'
      : bytes[0] === 0xfe && bytes[1] === 0xff
        ? 'utf-16be'
        : null;
  if (mark !== null) return new TextDecoder(mark).decode(bytes);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}

async function textOf(source: Source): Promise<{ ok: true; text: string } | { ok: false; message: string }> {
  if (source.kind === 'words') return { ok: true, text: source.text };
  const { bytes } = source;
  // "PK", 3, 4: an archive (ZIP application note, 4.3.7).
  const isArchive = bytes[0] === 0x50 && bytes[1] === 0x4b && bytes[2] === 3 && bytes[3] === 4;
  return isArchive ? textOfDocx(bytes, readDocx) : { ok: true, text: decoded(bytes) };
}

/** "old-pattern.docx" is called "old pattern". */
const titleFrom = (source: Source): string =>
  source.kind === 'words'
    ? ''
    : source.name
        .replace(/\.[^.]*$/u, '')
        .replace(/[-_]+/gu, ' ')
        .trim();

self.onmessage = async ({ data }: MessageEvent<BringAsked>): Promise<void> => {
  const { source, terms, date } = data;
  const read = await textOf(source);
  const told: BringTold = read.ok ? bring(read.text, { terms, title: titleFrom(source), date }) : read;
  self.postMessage(told);
};
