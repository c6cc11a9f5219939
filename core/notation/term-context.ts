/**
 * Whether a word that could be a term is one, by the words around it: "3 trebles in next sp" against "a
 * treble clef". It judges; it replaces nothing. Rules are common practice, no source.
 */
import { numberWord } from './numbers.ts';
import { gapAfter, type TermText, type TermToken } from './term-tokens.ts';

/** `term`: convert; `word`: an ordinary word, leave it; `doubt`: leave it and say so. */
export type Verdict = 'term' | 'word' | 'doubt';

const set = (words: string): ReadonlySet<string> => new Set(words.split(' '));

/** After these a stitch has been named and the sentence goes on. */
const GOES_ON = set(
  'in into on over across around round to at from as next each and then turn along evenly between together with through under below worked made together all every until ending end per than is are was counts count stands st sts stitch stitches',
);

/** Before these stands a stitch, if the sentence goes on after it. */
const LEADS_IN = set(
  'each next every first last same previous following prev foll last work make join standing one a',
);

/** A ladder word before these describes the thing, it does not name a stitch. */
const THINGS = set(
  'strand strands row rows round rounds yarn yarns thread thickness size sizes color colors colour colours loop loops knot knots point points pointed border knitting knit time times check layer layers length width fold breasted needle needles hook hooks ply sided ended motif motifs skein skeins ball balls bed buttonhole buttonholes rib ribbing edge edges side sides cuff cuffs page pages piece pieces chain chains decrease decreases increase increases dec decs inc incs crochet clef clefs voice voices part parts recorder line lines staff stave note notes space spaces bind cast breast size ended back lock locked wrap number digit digits colored coloured sheet spaced weight bar bars',
);

/** Verbs' objects: "double the yarn", "double it". */
const OBJECTS = set(
  'the this that these those it its your up check checked checking as over down back a an twice or nor',
);

/** Things one skips (or misses) in a row. */
const STITCH_THINGS = set(
  'st sts stitch stitches ch chs chain chains sp sps space spaces lp lps loop loops sc hdc dc tr htr dtr trtr ss single double half treble triple crochet picot picots shell shells cluster clusters bobble bobbles popcorn popcorns fan fans group groups v post posts corner marker puff puffs',
);

/** What a reader skips in a text. */
const READING = set(
  'section sections part parts step steps page pages note notes chart charts paragraph paragraphs swatch swatching chapter size sizes instruction instructions ahead this that blocking tutorial video paragraph line lines row rows round rounds',
);

const AROUND_YARN = set(
  'even evenly steady yarn thread tight tighter loose looser firm slack relaxed under surface correct',
);

const isNumber = (token: TermToken | undefined): boolean =>
  token !== undefined && (token.kind === 'number' || numberWord(token.word) !== null);

/** Whether after the token the sentence goes on as it does after a stitch: a sign, an end, a place word. */
function goesOn(source: TermText, last: number): boolean {
  const gap = gapAfter(source, last);
  if (/[,;.:)\]}*=\n!?/]/.test(gap)) return true;
  const next = source.tokens[last + 1];
  return next === undefined || GOES_ON.has(next.word);
}

const LADDER_WORDS = set('single half double treble triple quadruple quintuple and or');

/** "Single, half double and double crochet": the list shares its last word. */
function sharesCrochet(source: TermText, at: number): boolean {
  for (let index = at; index < at + 8; index++) {
    const next = source.tokens[index + 1];
    if (!next || !/^[ \t\u00a0]*[,/&-]?[ \t\u00a0\n]*$/.test(gapAfter(source, index))) return false;
    if (/^crochets?$/.test(next.word)) return index > at;
    if (!LADDER_WORDS.has(next.word)) return false;
  }
  return false;
}

/** "A double decrease": how many stitches it takes away, in either terms. */
export function shapesTwice(source: TermText, at: number, last: number): boolean {
  return (
    /^(?:single|double|triple)$/.test(source.tokens[at]!.word) &&
    /^(?:dec|inc)/.test(source.tokens[last + 1]?.word ?? '')
  );
}

/** A word alone that names a stitch in some texts: "double", "trebles", "single". */
export function judgeBare(source: TermText, at: number, row: boolean): Verdict {
  const token = source.tokens[at]!;
  const before = source.tokens[at - 1];
  const next = source.tokens[at + 1];
  const many = token.word.endsWith('s');
  const treble = token.word.startsWith('treble');
  const touches = next !== undefined && /^[ \t\u00a0\n-]*$/.test(gapAfter(source, at));
  if (sharesCrochet(source, at)) return 'term';
  // A text of this word alone is the name of a stitch: what a gauge was counted in, what an abbreviation means.
  if (source.tokens.length === 1 && (treble || /^doubles?$/.test(token.word))) return 'term';
  if (touches && THINGS.has(next.word) && next.word !== 'stitch') return 'word';
  if (touches && OBJECTS.has(next.word) && !goesOn(source, at)) return 'word';
  const lead = before !== undefined && /^[ \t\u00a0-]*$/.test(gapAfter(source, at - 1));
  const counted = lead && isNumber(before);
  if (goesOn(source, at)) {
    if (token.word === 'single' && next && /^st/.test(next.word)) return 'word';
    if (counted) return 'term';
    if (lead && LEADS_IN.has(before.word) && !/^(?:single|triple)/.test(token.word)) return 'term';
    if (lead && treble && (before.word === 'of' || before.word === 'in' || before.word === 'the'))
      return 'term';
  }
  if (treble && (many || row)) return 'term';
  return /^(?:single|triple)$/.test(token.word) ? 'word' : 'doubt';
}

/** "Single crochet" and its like before a tool or a thing made: "a single crochet hook". */
export function judgeName(source: TermText, last: number, phrase: string): Verdict {
  const next = source.tokens[last + 1];
  if (!next || !/^[ \t\u00a0]+$/.test(gapAfter(source, last))) return 'term';
  if (!phrase.endsWith('crochet')) return 'term';
  if (/^(?:hooks?|needles?)$/.test(next.word)) return 'word';
  if (
    phrase === 'single crochet' &&
    /^(?:patterns?|projects?|pieces?|squares?|items?|books?)$/.test(next.word)
  ) {
    return 'doubt';
  }
  return 'term';
}

/** A short abbreviation in capitals in prose: "DC" may be a place. */
export function judgeCapitals(source: TermText, at: number): Verdict {
  const before = source.tokens[at - 1];
  const next = source.tokens[at + 1];
  if (before?.word === 'washington' && /^,? ?$/.test(gapAfter(source, at - 1))) return 'word';
  if (isNumber(before) && gapAfter(source, at - 1).trim() === '') return 'term';
  if (isNumber(next) && gapAfter(source, at).trim() === '') return 'term';
  if (
    next &&
    gapAfter(source, at).trim() === '' &&
    (GOES_ON.has(next.word) || STITCH_THINGS.has(next.word))
  ) {
    return 'term';
  }
  if (
    before &&
    gapAfter(source, at - 1).trim() === '' &&
    (LEADS_IN.has(before.word) || before.word === 'as')
  ) {
    return 'term';
  }
  return 'doubt';
}

const LACKING = set('a the any your one each every that this no some which another');

/** "Skip" and "miss" in their forms. */
export function judgeSkip(source: TermText, at: number, row: boolean): Verdict {
  const token = source.tokens[at]!;
  if (row || token.word === 'sk') return 'term';
  // "Find the missing stitch": one that is not there, not one passed over.
  if (token.word === 'missing' && LACKING.has(source.tokens[at - 1]?.word ?? '')) return 'word';
  const sentence: TermToken[] = [];
  for (let index = at; index < at + 5 && index + 1 < source.tokens.length; index++) {
    if (/[.;:!?\n]/.test(gapAfter(source, index))) break;
    sentence.push(source.tokens[index + 1]!);
  }
  if (sentence.some((next) => STITCH_THINGS.has(next.word))) return 'term';
  if (sentence[0] && isNumber(sentence[0]) && sentence.length === 1) return 'term';
  const before = source.tokens[at - 1]?.word;
  if (/^(?:skipped|missed)$/.test(token.word) && isNumber(source.tokens[at - 1])) return 'term';
  if (sentence[0]?.word === 'out') return 'word';
  if (token.word === 'missing' && /^(?:is|are|was|were|be|if|nothing|anything|what)$/.test(before ?? ''))
    return 'word';
  if (token.text.startsWith('Miss') && sentence[0] && /^\p{Lu}/u.test(sentence[0].text)) return 'word';
  return sentence.some((next) => READING.has(next.word)) ? 'word' : 'doubt';
}

/** "Gauge" and "tension": the measure of a fabric, or the tool, the verb, the pull on the yarn. */
export function judgeGauge(source: TermText, at: number): Verdict {
  const token = source.tokens[at]!;
  const before = source.tokens[at - 1];
  const next = source.tokens[at + 1];
  const touches = next !== undefined && /^[ \t\u00a0]+$/.test(gapAfter(source, at));
  const lead = before !== undefined && /^[ \t\u00a0]+$/.test(gapAfter(source, at - 1)) ? before.word : '';
  if (token.word.startsWith('gauge')) {
    if (lead === 'hook' || lead === 'needle') return 'word';
    if (touches && (next.word === 'how' || next.word === 'whether' || next.word === 'if')) return 'word';
    return lead === 'to' && touches && OBJECTS.has(next.word) ? 'doubt' : 'term';
  }
  if (lead !== 'correct' && AROUND_YARN.has(lead)) return 'word';
  if (touches && /^(?:rod|wire|disc)$/.test(next.word)) return 'word';
  return touches && /^(?:on|of|in)$/.test(next.word) && /^(?:the|more|less|some)$/.test(lead)
    ? 'doubt'
    : 'term';
}

/** "Yarn over" before its object is the old plain sentence: "wrap the yarn over the hook". */
export function judgeYarnOver(source: TermText, last: number): Verdict {
  const next = source.tokens[last + 1];
  if (
    next &&
    /^(?:the|your|hook|a|an|it|needle|finger)$/.test(next.word) &&
    gapAfter(source, last).trim() === ''
  ) {
    return 'word';
  }
  return 'term';
}

/** "Work even" before "rows" or "-numbered" speaks of even numbers. */
export function judgeEven(source: TermText, last: number): Verdict {
  const next = source.tokens[last + 1];
  if (!next) return 'term';
  const gap = gapAfter(source, last);
  if (
    gap === '-' ||
    (gap.trim() === '' && /^(?:number|numbered|rows|rounds|rnds|though|if)$/.test(next.word))
  ) {
    return 'word';
  }
  return 'term';
}

/** Yarn weights that are common words too: "a bulky seam", "aran cables", "worsted-spun". */
export function judgeWeight(source: TermText, at: number, last: number): Verdict {
  const next = source.tokens[last + 1];
  const gap = gapAfter(source, last);
  const lead = source.tokens[at - 1]?.word ?? '';
  const word = source.tokens[at]!.word;
  if (
    next &&
    /^(?:spun|sweater|sweaters|jumper|jumpers|isle|isles|island|islands|cable|cables)$/.test(next.word)
  ) {
    return 'word';
  }
  if (lead === 'light' || lead === 'heavy') return 'doubt';
  if (
    next &&
    /^(?:[ \t\u00a0]+|-)$/.test(gap) &&
    /^(?:weight|weights|yarn|yarns|wool|cotton|acrylic|weighted)$/.test(next.word)
  ) {
    return 'term';
  }
  if (word === 'super' || word === 'worsted' || word === 'fingering' || word === '4') return 'term';
  return 'doubt';
}

/** "Gray" with a capital inside a sentence may be a yarn's own shade. */
export function judgeSpelling(source: TermText, at: number): Verdict {
  const token = source.tokens[at]!;
  if (!/^gr[ae]ys?$/.test(token.word) || !/^\p{Lu}/u.test(token.text)) return 'term';
  if (token.text === token.text.toUpperCase()) return 'term';
  if (at === 0) return 'term';
  const gap = gapAfter(source, at - 1);
  return /[.!?\n]/.test(gap) ? 'term' : 'doubt';
}
