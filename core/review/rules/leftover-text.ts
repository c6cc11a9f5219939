/** Words that hold a place for others are still there: "TBD", "xxx", "lorem ipsum", empty brackets. */
import { quote, quoted } from '../../findings/phrases.ts';
import { found, type Rule } from '../rule.ts';
import { looking } from '../scan.ts';
import { smallPrintOf } from '../texts.ts';

interface Left {
  readonly from: number;
  readonly to: number;
}

const LEFT: readonly RegExp[] = [
  /(?<![\p{L}\p{N}])(?:TBD|TBC|TBA|TODO|FIXME|TKTK)(?![\p{L}\p{N}])/gu,
  /(?<![\p{L}\p{N}])x{3,}(?![\p{L}\p{N}])/giu,
  // "XX rows": two hold the place of a number before what is counted, and are no size there.
  /(?<![\p{L}\p{N}])XX(?=\s(?:rows?|rnds?|rounds?|sts?|stitch(?:es)?|ch(?:ains?)?|times|cm|mm|in|inches|m|yds?|yards|g|grams|balls?|skeins?)\b)/gu,
  /(?<![\p{L}\p{N}])lorem(?: ipsum(?: dolor(?: sit amet)?)?)?(?![\p{L}\p{N}])/giu,
  /\?{2,}|_{3,}|#{3,}|\*{4,}/gu,
  /\(\s*\)|\[\s*\]|\{\s*\}|<\s*>/gu,
  /[[(<{](?:insert|add|enter|put|fill in|your|check|link|photo|picture|image|number|count|size|name)\b[^\])>}]{0,60}[\])>}]/giu,
  /(?<![\p{L}\p{N}])(?:insert|add) (?:text|photo|picture|image|link|numbers?|counts?) here(?![\p{L}\p{N}])/giu,
  /(?<![\p{L}\p{N}])(?:untitled(?: pattern)?|new piece|placeholder|sample text|copy of)(?![\p{L}\p{N}])/giu,
];

/** "Figures in square brackets [ ] refer to larger sizes": brackets that are spoken of hold nothing. */
const SPOKEN_OF = /\b(?:brackets?|parenthes[ei]s|braces)\b[^.;]{0,12}$/iu;

const isSpokenOf = (text: string, match: RegExpExecArray): boolean =>
  /^[([{<]\s*[)\]}>]$/u.test(match[0]) &&
  (SPOKEN_OF.test(text.slice(0, match.index)) ||
    /^\s*(?:brackets?|parenthes[ei]s|braces)\b/iu.test(text.slice(match.index + match[0].length)));

function leftIn(text: string): readonly Left[] {
  const all = LEFT.flatMap((pattern) =>
    [...text.matchAll(pattern)]
      .filter((match) => !isSpokenOf(text, match))
      .map((match) => ({ from: match.index, to: match.index + match[0].length })),
  ).sort((a, b) => a.from - b.from || b.to - a.to);
  // Sorted by where they begin: one that ends no later than another did lies within it.
  let last = -1;
  return all.filter(({ to }) => {
    const isNew = to > last;
    last = Math.max(last, to);
    return isNew;
  });
}

const left = looking(leftIn);

export const leftoverText: Rule = {
  code: 'leftover-text',
  severity: 'error',
  title: 'Words that held a place for others are still there',
  reason: 'What was to be filled in later was not, and would be printed as it stands.',
  message: (facts, voice) =>
    `${voice.words.trim() === '' ? quoted(facts[0]!.fact.data, 'words') : quote(voice.words)} was left to be filled in; write what belongs here, or take it out`,
  example: null,
  sample: { words: 'TBD' },
  check: (study) => {
    const { pattern } = study;
    const texts = left(pattern).flatMap(({ text: { node, text }, hits }) =>
      hits.map(({ from, to }) =>
        found(leftoverText, study, { node, text, from, to }, { words: text.slice(from, to) }),
      ),
    );
    const others = smallPrintOf(pattern).flatMap(({ node, text, holds }) =>
      leftIn(text).map(({ from, to }) =>
        found(leftoverText, study, holds ? { node, text, from, to } : { node }, {
          words: text.slice(from, to),
        }),
      ),
    );
    return [...texts, ...others];
  },
};
