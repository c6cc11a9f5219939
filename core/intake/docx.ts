/**
 * The words of a .docx document as lines of text, and its pictures. The archive is checked and bounded before a library sees it, and
 * only its parts with words and its pictures are handed on; the library itself is given by who runs this, so that the core stays
 * without it. Layout of such archives: ECMA-376, Office Open XML, part 2.
 */
import { strFromU8, zipSync } from 'fflate';
import { unzip } from '../document/zip.ts';
import { textOfMarkup } from './markup.ts';
import { intakeRefusals } from './sentences.ts';

/** Bounds of a document as a file and unpacked: far above any pattern's words, far below what would freeze. */
export const DOCX_LIMITS = {
  fileBytes: 64 * 1024 * 1024,
  /** Each part with words, unpacked. */
  partBytes: 12 * 1024 * 1024,
  /** Each picture. */
  pictureBytes: 64 * 1024 * 1024,
  /** Elements within elements. */
  depth: 200,
  elements: 400_000,
} as const;

/** Parts that hold words, or tell how lists are numbered. */
const PARTS: ReadonlySet<string> = new Set([
  '[Content_Types].xml',
  '_rels/.rels',
  'word/document.xml',
  'word/_rels/document.xml.rels',
  'word/styles.xml',
  'word/numbering.xml',
  'word/footnotes.xml',
  'word/endnotes.xml',
]);

const PICTURE = /^(?:word\/)?media\/[^/]+$/u;

/** A picture of a document as it stands in it, of whatever kind. */
export interface DocxPicture {
  /** Null where the document names a picture that it does not hold. */
  readonly bytes: Uint8Array | null;
  /** What the document says it shows; often nothing, or the name of a file. */
  readonly alt: string;
}

/** Simple, well-formed HTML; the source of a picture in it is its `pictureSource`, its number an index of `pictures`. */
export interface DocxMarkup {
  readonly html: string;
  readonly pictures: readonly DocxPicture[];
}

/** Turns the bytes of a document into markup. Rejects for a document that it cannot read. */
export type DocxReader = (bytes: Uint8Array) => Promise<DocxMarkup>;

export type DocxText =
  | { readonly ok: true; readonly text: string; readonly pictures: readonly DocxPicture[] }
  | { readonly ok: false; readonly message: string };

const refused = (message: string): DocxText => ({ ok: false, message });

/** What in the markup of a part no word processor writes; null when there is nothing. */
function strangeness(xml: string): string | null {
  if (/<!(?:DOCTYPE|ENTITY)/iu.test(xml)) return intakeRefusals.docxStrange;
  let depth = 0;
  let elements = 0;
  for (const tag of xml.matchAll(/<(\/)?[A-Za-z_][^<>]*?(\/)?>/gu)) {
    if (tag[1] !== undefined) depth -= 1;
    else {
      elements += 1;
      if (tag[2] === undefined) depth += 1;
    }
    if (depth > DOCX_LIMITS.depth || elements > DOCX_LIMITS.elements) return intakeRefusals.docxTooLarge;
  }
  return null;
}

function allowed(name: string): number | null {
  if (PICTURE.test(name)) return DOCX_LIMITS.pictureBytes;
  return PARTS.has(name) ? DOCX_LIMITS.partBytes : null;
}

/** Reads a document. Never rejects: what cannot be read is told in a sentence. */
export async function textOfDocx(bytes: Uint8Array, read: DocxReader): Promise<DocxText> {
  if (bytes.length > DOCX_LIMITS.fileBytes) return refused(intakeRefusals.docxTooLarge);
  const archive = unzip(bytes, allowed);
  if (!archive.ok)
    return refused(archive.error.code === 'too-large' ? intakeRefusals.docxTooLarge : intakeRefusals.notDocx);
  if (!archive.entries.has('word/document.xml')) return refused(intakeRefusals.notDocx);
  for (const [name, part] of archive.entries) {
    if (PICTURE.test(name)) continue;
    const strange = strangeness(strFromU8(part));
    if (strange !== null) return refused(strange);
  }
  try {
    // Stored and not packed: the library unpacks it again at once.
    const parts = zipSync(Object.fromEntries(archive.entries), { level: 0 });
    const { html, pictures } = await read(parts);
    return { ok: true, text: textOfMarkup(html), pictures };
  } catch {
    return refused(intakeRefusals.notDocx);
  }
}
