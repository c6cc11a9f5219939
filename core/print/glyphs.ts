/**
 * What can be printed: cleans text of characters that must not reach the pen, spells a character the fonts
 * lack by a plain equivalent where there is one, and reports every such character before printing. It never
 * lets the "missing glyph" box through.
 */
import type { Fact } from '../finding.ts';
import type { Booklet } from './content.ts';
import { allRuns } from './content.ts';
import { faceOf, type Typefaces } from './fonts.ts';
import type { Face, Style } from './style.ts';

/**
 * Characters that take no room and must not be drawn: controls, the soft hyphen (in these fonts it shares its
 * glyph with the hyphen, and one soft hyphen would turn every hyphen in copied text into one), zero-width
 * marks, direction marks, variation selectors, lone halves of pairs.
 */
const SILENT =
  /\p{Cc}|\p{Cf}|\p{Cs}|\u034F|[\u115F\u1160]|\u17B4|\u17B5|[\u180B-\u180D]|\u3164|[\uFE00-\uFE0F]|\uFFA0|\uFFFC/gu;

/** Plain spellings for characters that fonts often lack; anything else is tried by Unicode compatibility. */
const SPELLING: Readonly<Record<string, string>> = {
  '\u2010': '-',
  '\u2012': '–',
  '\u2015': '—',
  '\u2022': '*',
  '\u2032': "'",
  '\u2033': '"',
  '\u2044': '/',
  '\u2212': '–',
  '\u2215': '/',
  '\u2217': '*',
  '\u2190': '<-',
  '\u2192': '->',
  '\u21D2': '=>',
  '\u2248': 'about ',
  '\u2264': 'at most ',
  '\u2265': 'at least ',
  '\u2260': 'not ',
  '\u2713': 'yes',
  '\u2714': 'yes',
  '\u2715': '×',
  '\u2716': '×',
  '\u2717': '×',
  // Stars that mark a repeat, as the reader takes them; one left out would leave "rep from" pointing at nothing.
  '\u204E': '*',
  '\u22C6': '*',
  '\u2605': '*',
  '\u2606': '**',
  '\u2726': '*',
  '\u2727': '**',
  '\u2731': '*',
  '\u2732': '*',
  '\u2736': '*',
  '\u273B': '*',
  '\u273D': '*',
  '\u2B50': '*',
  '\uFF0A': '*',
  '\u2661': '♥',
  '\u25C7': '◆',
  '\u26A0': '!',
  '\u25A1': '[ ]',
  '\u25FB': '[ ]',
  '\u2610': '[ ]',
};

/**
 * Text as the layout may use it: composed, tabs and breaks as spaces, every kind of white space as U+0020 or
 * U+00A0, the no-break hyphen as a hyphen (nothing here breaks after a hyphen), silent characters gone.
 */
export function cleanText(text: string): string {
  if (/^[\u0020-\u007E]*$/.test(text)) return text;
  return text
    .normalize('NFC')
    .replace(/[\t\n\v\f\r\u0085\u1680\u2000-\u200A\u2028\u2029\u205F\u3000]/g, ' ')
    .replace(/\u202F/g, '\u00A0')
    .replace(/\u2011/g, '-')
    .replace(/\u00B5/g, '\u03BC')
    .replace(SILENT, '');
}

/** A plain spelling of `character` that `face` can print, or an empty string. */
export function spell(character: string, face: Face, fonts: Typefaces): string {
  const printable = (text: string): boolean =>
    text !== '' && [...text].every((one) => fonts.faceFor(face, one.codePointAt(0)!) !== null);
  const plain = SPELLING[character];
  if (plain !== undefined && printable(plain)) return plain;
  const compatible = cleanText(character.normalize('NFKC')).replaceAll('\u2044', '/');
  if (compatible !== character && printable(compatible)) return compatible;
  const bare = character.normalize('NFD').replace(/\p{M}/gu, '');
  return bare !== character && printable(bare) ? bare : '';
}

/**
 * Every character of a booklet that its fonts lack: one fact `character-not-printable` for each place, with
 * the character, its code point ("U+2764"), the words it stands in, and what is printed instead ("" when it
 * is left out). The span is the character's place in those words, in UTF-16 units.
 */
export function findUnprintable(booklet: Booklet, style: Style, fonts: Typefaces): Fact[] {
  const facts: Fact[] = [];
  for (const run of allRuns(booklet)) {
    if (/^[\u0020-\u007E]*$/.test(run.text)) continue;
    const face = faceOf(style.looks.body, run.emphasis);
    let at = 0;
    for (const character of run.text) {
      const clean = cleanText(character);
      if (clean !== '' && clean.trim() !== '' && fonts.faceFor(face, clean.codePointAt(0)!) === null) {
        // A mark may still compose with the letter before it; only what stays apart is missing.
        const composed = /\p{M}/u.test(character) && at > 0 && composes(run.text, at, character);
        if (!composed) {
          facts.push({
            code: 'character-not-printable',
            from: at,
            to: at + character.length,
            data: {
              character,
              codePoint: `U+${character.codePointAt(0)!.toString(16).toUpperCase().padStart(4, '0')}`,
              words: run.text,
              instead: spell(clean, face, fonts),
            },
          });
        }
      }
      at += character.length;
    }
  }
  return facts;
}

function composes(text: string, at: number, mark: string): boolean {
  const before = [...text.slice(0, at)].at(-1) ?? '';
  return [...(before + mark).normalize('NFC')].length === 1;
}
