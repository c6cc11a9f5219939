/**
 * The worker that reads an old pattern: the bytes of a document or plain words in, a pattern with its doubts out. It
 * may be ended at any time: it holds nothing.
 */
import mammoth from 'mammoth/mammoth.browser.js';
import type { Picture } from '../../core/document/media.ts';
import { bring } from '../../core/intake/bring.ts';
import { CollectedPictures, takePictures } from '../../core/intake/collected.ts';
import { type DocxReader, type DocxText, textOfDocx } from '../../core/intake/docx.ts';
import { fileKind } from '../../core/intake/file-kind.ts';
import { intakeRefusals } from '../../core/intake/sentences.ts';
import { importPhotograph } from '../photos/importing.ts';
import type { BringAsked, BringTold, Source } from './protocol.ts';

const readDocx: DocxReader = async (bytes) => {
  const arrayBuffer = bytes.slice().buffer as ArrayBuffer;
  const { take, pictures } = new CollectedPictures();
  const { value } = await mammoth.convertToHtml(
    { arrayBuffer },
    { convertImage: mammoth.images.imgElement(take), externalFileAccess: false },
  );
  return { html: value, pictures };
};

/** A picture of a document as a photograph of a pattern: upright, of a size for print, with nothing else in it. */
const photographOf = (bytes: Uint8Array): Promise<Picture | null> =>
  importPhotograph(new Blob([bytes.slice()]));

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

async function textOf(source: Source): Promise<DocxText> {
  const plain = (text: string): DocxText => ({ ok: true, text, pictures: [], edges: [], remarks: [] });
  if (source.kind === 'words') return plain(source.text);
  const { bytes } = source;
  const kind = fileKind(bytes);
  if (kind.kind === 'refused') return { ok: false, message: kind.message };
  // The page has the words of a PDF before it asks.
  if (kind.kind === 'pdf') return { ok: false, message: intakeRefusals.scan };
  return kind.kind === 'archive' ? textOfDocx(bytes, readDocx) : plain(decoded(bytes));
}

/** "old-pattern.docx" is called "old pattern". */
const titleFrom = (source: Source): string =>
  source.name === null
    ? ''
    : source.name
        .replace(/\.[^.]*$/u, '')
        .replace(/[-_]+/gu, ' ')
        .trim();

async function toldOf(read: DocxText, { source, terms, date }: BringAsked): Promise<BringTold> {
  if (!read.ok) return read;
  const { pictures, media } = await takePictures(read.pictures, photographOf);
  const { edges, remarks } = read;
  const told = bring(read.text, { terms, title: titleFrom(source), date, pictures, edges, remarks });
  return told.ok ? { ...told, media: [...media.values()] } : told;
}

self.onmessage = async ({ data }: MessageEvent<BringAsked>): Promise<void> => {
  const read = await textOf(data.source);
  self.postMessage(await toldOf(read, data));
};
