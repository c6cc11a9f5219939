/**
 * The words of a .docx document as lines of text, and its pictures. The archive is checked and bounded before a
 * library sees it, and only its parts with words and its pictures are handed on; the library itself is given by who
 * runs this, so that the core stays without it. Layout of such archives: ECMA-376, Office Open XML, part 2.
 */
import { strFromU8, zipSync } from 'fflate';
import { unzip } from '../document/zip.ts';
import { plain, textOfMarkup } from './markup.ts';
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
/** What stands at the edge of pages, and remarks at their side: read here, for the library does not. */
const EDGE = /^word\/(?:header|footer)\d*\.xml$/u;
const REMARKS = 'word/comments.xml';

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

/** What a document says. */
export interface DocxWords {
  readonly text: string;
  readonly pictures: readonly DocxPicture[];
  /** Lines at the head and the foot of pages, once each. */
  readonly edges: readonly string[];
  /** Remarks at the side of the text. */
  readonly remarks: readonly string[];
}

export type DocxText = ({ readonly ok: true } & DocxWords) | { readonly ok: false; readonly message: string };

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
  return PARTS.has(name) || EDGE.test(name) || name === REMARKS ? DOCX_LIMITS.partBytes : null;
}

/** The words between the ends of elements of this name (ECMA-376, part 1, 17.3.3.31), a line for each. */
function wordsOf(xml: string, element: string): readonly string[] {
  return xml.split(new RegExp(`</(?:\\w+:)?${element}>`, 'u')).flatMap((part) => {
    const runs = part.replace(/<(?:(?:\w+:)?(?:tab|br)\b[^<>]*|\/(?:\w+:)?p)>/gu, '<t> </t>');
    const words = [...runs.matchAll(/<(?:\w+:)?t(?:\s[^<>]*)?>([^<]*)</gu)]
      .map(([, run]) => plain(run!))
      .join('');
    const line = words.replace(/\s+/gu, ' ').trim();
    return line === '' ? [] : [line];
  });
}

/** Lines of the edges of pages but their numbers. */
function edgesOf(entries: ReadonlyMap<string, Uint8Array>): readonly string[] {
  const lines = [...entries].flatMap(([name, part]) =>
    EDGE.test(name) ? wordsOf(strFromU8(part), 'p') : [],
  );
  return [...new Set(lines)].filter((line) => /\p{L}/u.test(line.replace(/\b(?:page|of)\b/giu, '')));
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
    const { entries } = archive;
    const parts = zipSync(Object.fromEntries(entries), { level: 0 });
    const { html, pictures } = await read(parts);
    const remarks = wordsOf(strFromU8(entries.get(REMARKS) ?? new Uint8Array()), 'comment');
    return { ok: true, text: textOfMarkup(html), pictures, edges: edgesOf(entries), remarks };
  } catch {
    return refused(intakeRefusals.notDocx);
  }
}
