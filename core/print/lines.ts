/**
 * Breaks words into lines: measured, ragged right, no hyphenation. Chooses all breaks of a paragraph
 * together, so that terms, number lists and brackets stay whole wherever that is possible and lines come out
 * even. It places nothing on a page.
 */
import type { Hold, Words } from './content.ts';
import { faceOf, type Typefaces } from './fonts.ts';
import { cleanText, spell } from './glyphs.ts';
import type { Face, Look } from './style.ts';

/** Text of one face, size and colour on one line; `x` from the line's start. Only a line's last may end in a space. */
export interface Segment {
  readonly text: string;
  /** Which of the given spans it comes from. */
  readonly span: number;
  readonly face: Face;
  readonly size: number;
  readonly colour: string;
  readonly x: number;
  readonly width: number;
}

export interface Line {
  readonly segments: readonly Segment[];
  /** Without the space at its end. */
  readonly width: number;
}

/** Text in one look; a paragraph may change looks (a label, a body, a count). */
export interface Span {
  readonly words: Words;
  readonly look: Look;
}

/** What a break at a space costs; a line's unused part costs up to 10. */
const COST = {
  open: 0,
  /** Inside a bracket that is longer than most of a line and must be broken somewhere. */
  longBracket: 4,
  /** Inside an aside in words, "(beside the seam, at the back neck)", that is no group of stitches. */
  aside: 1,
  bracket: 120,
  /** Between a list of numbers and the word they count. */
  counted: 150,
  /** Between a row's last words and its count, when the two do not fit one line. */
  join: 400,
  /** In a number list after a bracket or comma; at other spaces that should not break. */
  list: 700,
  firm: 1000,
} as const;

/** A lone short word on a line that others follow: "Rep" above its rows and their long count. */
const STUB = 420;

/** A word with the space after it: never broken. */
interface Atom {
  pieces: { text: string; span: number; face: Face; size: number; colour: string }[];
  width: number;
  /** Width of the space at its end. */
  space: number;
  /** Cost of a break after it. */
  cost: number;
}

/** A no-break space that joins a row's count to its last words. */
export const JOIN = '\uE000';

/** Clean text of one face. */
interface Stretch {
  readonly text: string;
  readonly span: number;
  readonly face: Face;
  readonly look: Look;
  readonly hold: Hold;
}

/** Lines of `spans` in the given width (points). At least one line unless there is no text. */
export function breakLines(spans: readonly Span[], width: number, fonts: Typefaces): Line[] {
  const atoms = atomsOf(spans, width, fonts);
  if (atoms.length === 0) return [];
  const n = atoms.length;
  // before[i]: width of atoms 0 … i−1 with their spaces.
  const before = new Float64Array(n + 1);
  for (let i = 0; i < n; i++) before[i + 1] = before[i]! + atoms[i]!.width + atoms[i]!.space;
  const best = new Float64Array(n + 1).fill(Number.POSITIVE_INFINITY);
  const next = new Int32Array(n + 1);
  best[n] = 0;
  for (let i = n - 1; i >= 0; i--) {
    for (let j = i + 1; j <= n; j++) {
      const last = atoms[j - 1]!;
      const used = before[j]! - before[i]! - last.space;
      if (used > width + 0.01 && j > i + 1) break;
      const slack = Math.max(0, (width - used) / width);
      // The last line may be short, but not a stub.
      const stub = used < width * 0.12;
      const raggedness = j === n ? (stub && i > 0 ? 1.5 : 0) : 10 * slack * slack + (stub ? STUB : 0);
      const total = raggedness + (j === n ? 0 : 0.6 + last.cost) + best[j]!;
      if (total < best[i]! - 1e-9) {
        best[i] = total;
        next[i] = j;
      }
    }
  }
  const lines: Line[] = [];
  for (let i = 0; i < n; i = next[i]!) lines.push(lineOf(atoms.slice(i, next[i]!), next[i] === n, fonts));
  return lines;
}

/** Width of `spans` on a single line. */
export function naturalWidth(spans: readonly Span[], fonts: Typefaces): number {
  const atoms = atomsOf(spans, Number.POSITIVE_INFINITY, fonts);
  return atoms.reduce((sum, atom, i) => sum + atom.width + (i < atoms.length - 1 ? atom.space : 0), 0);
}

/** Width below which `spans` would have to break where they should not. */
export function firmWidth(spans: readonly Span[], fonts: Typefaces): number {
  let widest = 0;
  let run = 0;
  for (const atom of atomsOf(spans, Number.POSITIVE_INFINITY, fonts)) {
    widest = Math.max(widest, run + atom.width);
    run = atom.cost > COST.longBracket ? run + atom.width + atom.space : 0;
  }
  return widest;
}

function lineOf(atoms: readonly Atom[], isLast: boolean, fonts: Typefaces): Line {
  const segments: Segment[] = [];
  let x = 0;
  for (const atom of atoms) {
    for (const piece of atom.pieces) {
      const previous = segments.at(-1);
      if (
        previous &&
        previous.span === piece.span &&
        previous.face === piece.face &&
        previous.text.endsWith(' ')
      ) {
        const text = previous.text + piece.text;
        segments[segments.length - 1] = {
          ...previous,
          text,
          width: fonts.width(text, piece.face, piece.size),
        };
      } else {
        segments.push({ ...piece, x, width: fonts.width(piece.text, piece.face, piece.size) });
      }
      const last = segments.at(-1)!;
      x = last.x + last.width;
    }
  }
  const tail = segments.at(-1)!;
  const trimmed = tail.text.replace(/ +$/, '');
  const trimmedWidth = fonts.width(trimmed, tail.face, tail.size);
  if (isLast)
    segments.splice(-1, 1, ...(trimmed === '' ? [] : [{ ...tail, text: trimmed, width: trimmedWidth }]));
  return { segments, width: tail.x + trimmedWidth };
}

/** Clean, printable text, cut where the face changes. */
function stretchesOf(spans: readonly Span[], fonts: Typefaces): Stretch[] {
  const out: Stretch[] = [];
  for (const [span, { words, look }] of spans.entries()) {
    for (const run of words) {
      const wanted = faceOf(look, run.emphasis);
      const text = cleanText(run.text);
      if (text === '') continue;
      if (/^[\u0020-\u007E\u00A0-\u00AC\u00AE-\u00FF–—’“”]*$/.test(text)) {
        out.push({ text, span, face: wanted, look, hold: run.hold });
        continue;
      }
      let held = '';
      let heldFace = wanted;
      const flush = (): void => {
        if (held !== '') out.push({ text: held, span, face: heldFace, look, hold: run.hold });
        held = '';
      };
      for (const character of text) {
        const face = character === JOIN ? wanted : fonts.faceFor(wanted, character.codePointAt(0)!);
        const printed = face === null ? spell(character, wanted, fonts) : character;
        for (const one of printed) {
          const itsFace = one === JOIN ? heldFace : (fonts.faceFor(wanted, one.codePointAt(0)!) ?? wanted);
          if (itsFace !== heldFace) flush();
          heldFace = itsFace;
          held += one;
        }
      }
      flush();
    }
  }
  return out;
}

/** Characters beyond which words in brackets may break; "(does not count as a st)" stays whole. */
const LONG_ASIDE = 28;

const OPENING = '([{';
const CLOSING = ')]}';

function atomsOf(spans: readonly Span[], width: number, fonts: Typefaces): Atom[] {
  const stretches = stretchesOf(spans, fonts);
  const brackets = bracketsOf(stretches, width, fonts);
  const atoms: Atom[] = [];
  let pieces: Atom['pieces'] = [];
  let word = '';
  let position = 0;
  const push = (stretch: Stretch): void => {
    if (word !== '') pieces.push(pieceOf(word, stretch));
    word = '';
  };
  const close = (cost: number, space: boolean, stretch: Stretch): void => {
    if (pieces.length === 0) {
      // Spaces in a row, or at the start: one is enough, and the stricter cost wins.
      const last = atoms.at(-1);
      if (last && cost > last.cost) last.cost = cost;
      return;
    }
    if (space) {
      const tail = pieces.at(-1)!;
      if (tail.span === stretch.span && tail.face === stretch.face) tail.text += ' ';
      else pieces.push(pieceOf(' ', stretch));
    }
    atoms.push(measured(pieces, cost, fonts));
    pieces = [];
  };
  let previous = '';
  let before: Hold = 'loose';
  for (const stretch of stretches) {
    for (const character of stretch.text) {
      if (character === ' ' || character === '\u00A0' || character === JOIN) {
        push(stretch);
        // The word right after a list of numbers is what they count: "64 (70, 76) sts".
        const counted = before === 'numbers' && stretch.hold !== 'numbers' && /\d|\)/.test(previous);
        const around = Math.max(brackets[position] ?? COST.open, counted ? COST.counted : COST.open);
        close(costAt(character, previous, stretch.hold, around), true, stretch);
      } else {
        word += character;
      }
      previous = character;
      before = stretch.hold;
      position += character.length;
    }
    push(stretch);
  }
  if (pieces.length > 0) atoms.push(measured(pieces, COST.open, fonts));
  return Number.isFinite(width)
    ? atoms.flatMap((atom) => (atom.width > width ? crumble(atom, width, fonts) : [atom]))
    : atoms;
}

const pieceOf = (text: string, { span, face, look }: Stretch): Atom['pieces'][number] => ({
  text,
  span,
  face,
  size: look.size,
  colour: look.colour,
});

function costAt(character: string, previous: string, hold: Hold, bracket: number): number {
  if (character === JOIN) return COST.join;
  if (hold === 'numbers') return /[,;)\]}]/.test(previous) ? COST.list : COST.firm;
  if (character === '\u00A0' || hold === 'firm') return COST.firm;
  return bracket;
}

/** For each position in the joined text: what a break there costs because of the brackets around it. */
function bracketsOf(stretches: readonly Stretch[], width: number, fonts: Typefaces): number[] {
  const costs: number[] = [];
  const joined = stretches.map((one) => one.text).join('');
  if (!/[([{]/.test(joined)) return costs;
  const open: { at: number; x: number }[] = [];
  const isAside = (from: number, to: number): boolean =>
    to - from > LONG_ASIDE && !/[\d*]/.test(joined.slice(from, to));
  let position = 0;
  let x = 0;
  for (const stretch of stretches) {
    const scale = fonts.width('n', stretch.face, stretch.look.size);
    for (const character of stretch.text) {
      if (OPENING.includes(character)) open.push({ at: position, x });
      x += scale;
      if (CLOSING.includes(character)) {
        const start = open.pop();
        if (start) {
          const cost = isAside(start.at, position)
            ? COST.aside
            : x - start.x > width * 0.72
              ? COST.longBracket
              : COST.bracket;
          for (let i = start.at; i < position; i++) costs[i] = (costs[i] ?? 0) + cost;
        }
      }
      position += character.length;
    }
  }
  return costs;
}

function measured(pieces: Atom['pieces'], cost: number, fonts: Typefaces): Atom {
  let full = 0;
  for (const piece of pieces) full += fonts.width(piece.text, piece.face, piece.size);
  const tail = pieces.at(-1)!;
  const trimmed = tail.text.trimEnd();
  const space = fonts.width(tail.text, tail.face, tail.size) - fonts.width(trimmed, tail.face, tail.size);
  return { pieces, width: full - space, space, cost };
}

/** A word wider than the line, cut where it must be. */
function crumble(atom: Atom, width: number, fonts: Typefaces): Atom[] {
  const out: Atom[] = [];
  let pieces: Atom['pieces'] = [];
  let used = 0;
  for (const piece of atom.pieces) {
    let text = '';
    for (const character of piece.text) {
      const more = fonts.width(text + character, piece.face, piece.size);
      if (character !== ' ' && used + more > width && (text !== '' || pieces.length > 0)) {
        if (text !== '') pieces.push({ ...piece, text });
        out.push(measured(pieces, COST.open, fonts));
        pieces = [];
        text = '';
        used = 0;
      }
      text += character;
    }
    if (text !== '') {
      pieces.push({ ...piece, text });
      used += fonts.width(text, piece.face, piece.size);
    }
  }
  if (pieces.length > 0) out.push(measured(pieces, atom.cost, fonts));
  return out;
}
