/**
 * What kind of file an old pattern comes in, by how its bytes begin: words, a document to be unpacked, or something that
 * cannot be brought in and why. It reads no words.
 */
import { strFromU8 } from 'fflate';
import { intakeRefusals } from './sentences.ts';

export type FileKind =
  | { readonly kind: 'text' | 'archive' | 'pdf' }
  | { readonly kind: 'refused'; readonly message: string };

const refused = (message: string): FileKind => ({ kind: 'refused', message });

/** Whether a file begins with one of these, as latin-1 characters. */
const begins =
  (...starts: readonly string[]) =>
  (begin: string): boolean =>
    starts.some((start) => begin.startsWith(start));

/** Kinds by the beginnings that their formats define. */
const KINDS: readonly (readonly [(begin: string) => boolean, FileKind])[] = [
  // ZIP application note, 4.3.7
  [begins('PK\u0003\u0004'), { kind: 'archive' }],
  // ISO 32000-2, 7.5.2; readers take it anywhere in the first 1024 bytes.
  [(begin) => /%PDF-\d/u.test(begin.slice(0, 1024)), { kind: 'pdf' }],
  // Rich Text Format 1.9.1; compound files, [MS-CFB] 2.2
  [
    begins('{\\rtf', '\u00d0\u00cf\u0011\u00e0\u00a1\u00b1\u001a\u00e1'),
    refused(intakeRefusals.otherDocument),
  ],
  [
    (begin) => /^(?:\u00ef\u00bb\u00bf)?\s*<(?:!doctype\s+html|html)\b/iu.test(begin),
    refused(intakeRefusals.webPage),
  ],
  // PNG, JPEG, GIF, TIFF
  [
    begins('\u0089PNG', '\u00ff\u00d8\u00ff', 'GIF87a', 'GIF89a', 'II*\u0000', 'MM\u0000*'),
    refused(intakeRefusals.picture),
  ],
  // WebP; photographs of telephones (ISO/IEC 14496-12, 4.3)
  [(begin) => /^(?:RIFF[\s\S]{4}WEBP|[\s\S]{4}ftyp)/u.test(begin), refused(intakeRefusals.picture)],
];

/** How many of the first bytes tell whether a file is of words. */
const LOOKED_AT = 65_536;
/** Of a hundred characters of a text, at most this many are no characters of texts. */
const MOST_STRANGE = 1;

/** The kind of a file. */
export function fileKind(bytes: Uint8Array): FileKind {
  const begin = strFromU8(bytes.subarray(0, 1100), true);
  const known = KINDS.find(([isOf]) => isOf(begin));
  if (known !== undefined) return known[1];
  // UTF-16 with its mark has zeroes in every word.
  if (begin.startsWith('\u00ff\u00fe') || begin.startsWith('\u00fe\u00ff')) return { kind: 'text' };
  const looked = bytes.subarray(0, LOOKED_AT);
  const strange = looked.reduce(
    (sum, byte) => (byte < 9 || (byte > 13 && byte < 26) || byte === 127 ? sum + 1 : sum),
    0,
  );
  return strange * 100 > looked.length * MOST_STRANGE ? refused(intakeRefusals.noText) : { kind: 'text' };
}
