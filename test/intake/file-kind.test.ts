/** What is no text and no .docx is told what to do with, and never brought in as if its bytes were words. */

import fc from 'fast-check';
import { zipSync } from 'fflate';
import { expect, test } from 'vitest';
import { fileKind } from '../../core/intake/file-kind.ts';
import { png } from '../document/pictures.ts';
import { docx, p } from './documents.ts';

const latin = (text: string) => Uint8Array.from(Buffer.from(text, 'latin1'));
const utf8 = (text: string) => Uint8Array.from(Buffer.from(text, 'utf8'));
const utf16 = (text: string) => Uint8Array.from(Buffer.from(`\uFEFF${text}`, 'utf16le'));

// Beginnings of files by the definitions of their formats.
test.each([
  ['a document', docx(p('Ch 24.')), 'archive'],
  ['any archive', zipSync({ a: Uint8Array.of(1) }), 'archive'],
  ['words', utf8('Row 1: Sc across, turn. (23 sc)\r\n\tRow 2: “½” – ★\f'), 'text'],
  ['words of an older program', latin('Row 1: Sc across \x96 \x93loosely\x94, 4\xBD in.'), 'text'],
  ['words in UTF-16', utf16('Row 1: Sc across.'), 'text'],
  ['nothing', new Uint8Array(), 'text'],
  ['a PDF', latin('%PDF-1.7\n%\xE2\xE3\xCF\xD3\n1 0 obj'), 'pdf'],
  ['a PDF behind a line of something else', latin('junk\n%PDF-1.4\n'), 'pdf'],
  ['words about a PDF', utf8('This pattern is a PDF.\nRow 1: Sc across.'), 'text'],
  ['rich text', latin('{\\rtf1\\ansi Ch 24.}'), 'kind that is not read. Open it in the word processor'],
  ['an old document', latin('\xD0\xCF\x11\xE0\xA1\xB1\x1A\xE1\0\0'), 'Open it in the word processor'],
  ['a web page', utf8('\n<!DOCTYPE html>\n<html><p>Ch 24.'), 'This is a web page.'],
  ['words with a sign of a page', utf8('<3 Cowl\nCh 24.'), 'text'],
  ['a PNG', png(1), 'This is a picture'],
  ['a JPEG', latin('\xFF\xD8\xFF\xE0'), 'This is a picture'],
  ['a photograph of a telephone', latin('\0\0\0\x18ftypheic'), 'This is a picture'],
  ['a program', Uint8Array.from({ length: 4000 }, (_, i) => (i * 7) % 256), 'This is no text'],
])('%s', (_, bytes, told) => {
  const kind = fileKind(bytes);
  if (kind.kind === 'refused') expect(kind.message).toContain(told);
  else expect(kind.kind).toBe(told);
});

test('any words are words', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme', maxLength: 200 }), (text) => {
      fc.pre(!/[\p{Cc}]/u.test(text) && !/%PDF-|^\s*(?:<|\{\\rtf|GIF8[79]a|....ftyp)/iu.test(text));
      expect(fileKind(utf8(text)).kind).toBe('text');
    }),
  );
});
