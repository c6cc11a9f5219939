/**
 * Things that a pattern may write in one way or another, and should write in one way throughout: short forms or
 * whole words, capitals, hyphens, the stop before a repeat. It finds each use in a text and says which way it
 * is; which way is the pattern's is not decided here.
 */
import { FIGURE, type Pattern } from '../document/pattern.ts';
import type { Span } from '../finding.ts';
import type { BaseStitch, Terms } from '../trade/stitches.ts';
import { namesOf } from '../trade/terms.ts';
import { looking } from './scan.ts';

/** One way of writing something. */
interface Way {
  /** As a sentence shows it. */
  readonly name: string;
  /** Finds its uses; the whole match is the use. */
  readonly pattern: RegExp;
  /** The use written this way, from the same use written another way; null where that takes more than a word. */
  readonly write: ((other: string) => string | null) | null;
}

interface Choice {
  readonly id: string;
  /** Rows and definitions only, or prose too. */
  readonly everywhere: boolean;
  readonly ways: readonly Way[];
}

/** A use of one of a choice's ways. */
export interface Use extends Span {
  /** Number of the choice. */
  readonly choice: number;
  readonly way: number;
}

/** The word with the capital and the plural of the word that it stands for. */
function like(one: string, many: string): (other: string) => string {
  return (other) => {
    const word = /s$/iu.test(other) ? many : one;
    return /^\p{Lu}/u.test(other) ? word.charAt(0).toUpperCase() + word.slice(1) : word;
  };
}

const BEFORE = String.raw`(?<![\p{L}\p{N}-])`;
const AFTER = String.raw`(?![\p{L}\p{N}-])`;

/** A short form and its whole word; `behind` and `ahead` narrow where they count. */
function pair(
  short: readonly [one: string, many: string],
  long: readonly [one: string, many: string],
  { behind = '', ahead = '' }: { readonly behind?: string; readonly ahead?: string } = {},
): Choice {
  const way = ([one, many]: readonly [string, string]): Way => ({
    name: `"${one}"`,
    pattern: new RegExp(`${behind}${BEFORE}(?:${many}|${one})${AFTER}${ahead}`, 'giu'),
    write: like(one, many),
  });
  return { id: short[0], everywhere: false, ways: [way(short), way(long)] };
}

const verb = (short: string, ...long: readonly string[]): Choice => ({
  id: short,
  everywhere: false,
  ways: [short, ...long].map((word) => ({
    name: `"${word}"`,
    pattern: new RegExp(`${BEFORE}${word}${AFTER}`, 'giu'),
    write: (other) => (/^\p{Lu}/u.test(other) ? word.charAt(0).toUpperCase() + word.slice(1) : word),
  })),
});

/** A sign among others in one place. */
const sign = (
  id: string,
  names: Readonly<Record<string, string>>,
  around: (sign: string) => string,
): Choice => ({
  id,
  everywhere: false,
  ways: Object.entries(names).map(([mark, name]) => ({
    name,
    pattern: new RegExp(around(mark.replace(/[.]/u, '\\.')), 'giu'),
    // A full stop has a capital behind it, and another sign a small letter: that takes more than the sign.
    write: (other) => (mark === '.' || other === '.' ? null : mark),
  })),
});

const spelling = (us: string, uk: string): Choice => ({
  id: us,
  everywhere: true,
  ways: [us, uk].map((word) => ({
    name: `"${word}"`,
    pattern: new RegExp(`${BEFORE}${word}s?${AFTER}`, 'giu'),
    write: like(word, `${word}s`),
  })),
});

const SMALL = ['two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];
const COUNTED = String.raw`(?= (?:sts?|stitches|chs?|chains?|sc|hdc|htr|dc|tr|dtr|ss|sps?|spaces?|lps?|loops?|rows?|rnds?|rounds?|times|more times|(?:ch|sc|dc|tr|hdc|htr)-\d)(?![\p{L}]))`;

/** "Row 3", not "2 rows", "every 2nd row 3 times" or the beginning of a sentence. */
const rowsNamed = (word: string) =>
  String.raw`(?<!(?:^|[.:!?]\s|[\d)\]${FIGURE}]\s|\d(?:st|nd|rd|th)\s|every\s|last\s|next\s))\b${word}(?=\s(?:\d|${FIGURE})(?!\d*\)?\s(?:more\s)?times))`;

const CHOICES: readonly Choice[] = [
  pair(['rep', 'reps'], ['repeat', 'repeats'], {
    ahead: String.raw`(?=\s+(?:from|\*|\[|\(|rows?|rnds?|rounds?|last|across|around|to)\b|\s+\*)`,
  }),
  pair(['st', 'sts'], ['stitch', 'stitches'], {
    behind: String.raw`(?<!\b(?:sl|slip|v|post|puff|shell|fan|cluster|picot|this)[ -])`,
  }),
  pair(['sp', 'sps'], ['space', 'spaces']),
  pair(['lp', 'lps'], ['loop', 'loops'], {
    behind: String.raw`(?<!\b(?:back|front|third|magic|adjustable|slip|both|back and front)[ -])`,
  }),
  pair(['rnd', 'rnds'], ['round', 'rounds']),
  verb('sk', 'skip', 'miss'),
  verb('beg', 'beginning'),
  verb('prev', 'previous'),
  verb('rem', 'remaining'),
  verb('foll', 'following'),
  {
    id: 'row-names',
    everywhere: true,
    ways: [
      {
        name: '"Row 2" with a capital',
        pattern: new RegExp(rowsNamed('(?:Rows?|Rnds?|Rounds?)'), 'gu'),
        write: (other) => other.charAt(0).toUpperCase() + other.slice(1).toLowerCase(),
      },
      {
        name: '"row 2" with a small letter',
        pattern: new RegExp(rowsNamed('(?:rows?|rnds?|rounds?)'), 'gu'),
        write: (other) => other.toLowerCase(),
      },
      {
        name: '"ROW 2" in capitals',
        pattern: new RegExp(rowsNamed('(?:ROWS?|RNDS?|ROUNDS?)'), 'gu'),
        write: (other) => other.toUpperCase(),
      },
    ],
  },
  {
    id: 'stitch-capitals',
    everywhere: false,
    ways: [
      {
        name: 'small letters',
        pattern: /(?<=[\p{Ll}\p{N},;] )(?:sc|hdc|htr|dc|tr|dtr|ss|ch|sl st)(?![\p{L}])/gu,
        write: (other) => other.toLowerCase(),
      },
      {
        name: 'a capital',
        pattern: /(?<=[\p{Ll}\p{N},;] )(?:Sc|Hdc|Htr|Dc|Tr|Dtr|Ss|Ch|Sl st)(?![\p{L}])/gu,
        write: (other) => other.charAt(0).toUpperCase() + other.slice(1).toLowerCase(),
      },
      {
        name: 'capitals',
        pattern: /(?<=[\p{Ll}\p{N},;] )(?:SC|HDC|HTR|DC|TR|DTR|SS|CH|SL ST)(?![\p{L}])/gu,
        write: (other) => other.toUpperCase(),
      },
    ],
  },
  {
    id: 'chain-space',
    everywhere: true,
    ways: [
      {
        name: '"ch-3 sp"',
        pattern: /(?<![\p{L}\p{N}-])ch-\d+(?= (?:sps?|spaces?|lps?|loops?)(?!\p{L}))/giu,
        write: (other) => `ch-${/\d+/.exec(other)?.[0]}`,
      },
      {
        name: '"ch 3 sp"',
        pattern: /(?<![\p{L}\p{N}-])ch \d+(?= (?:sps?|spaces?|lps?|loops?)(?!\p{L}))/giu,
        write: (other) => `ch ${/\d+/.exec(other)?.[0]}`,
      },
      {
        name: '"3-ch sp"',
        pattern: /(?<![\p{L}\p{N}-])\d+-ch(?= (?:sps?|spaces?|lps?|loops?)(?!\p{L}))/giu,
        write: (other) => `${/\d+/.exec(other)?.[0]}-ch`,
      },
      {
        name: '"3 ch sp"',
        pattern: /(?<![\p{L}\p{N}-])(?<!ch )\d+ ch(?= (?:sps?|spaces?|lps?|loops?)(?!\p{L}))/giu,
        write: (other) => `${/\d+/.exec(other)?.[0]} ch`,
      },
      {
        name: '"ch3 sp"',
        pattern: /(?<![\p{L}\p{N}-])ch\d+(?= ?(?:sps?|spaces?|lps?|loops?)(?!\p{L}))/giu,
        write: (other) => `ch${/\d+/.exec(other)?.[0]}`,
      },
    ],
  },
  {
    id: 'chains',
    everywhere: false,
    ways: [
      {
        name: '"ch 3"',
        pattern: /(?<![\p{L}\p{N}-])ch \d+(?! ?(?:sps?|spaces?|lps?|loops?)(?!\p{L}))(?!\d)/giu,
        write: (other) => other.replace(/(?<=ch)(?=\d)/iu, ' '),
      },
      {
        name: '"ch3"',
        pattern: /(?<![\p{L}\p{N}-])ch\d+(?! ?(?:sps?|spaces?|lps?|loops?)(?!\p{L}))(?!\d)/giu,
        write: (other) => other.replace(/ /u, ''),
      },
    ],
  },
  {
    id: 'cross',
    everywhere: false,
    ways: ['x', '×'].map((mark) => ({
      name: `"${mark}"`,
      pattern: new RegExp(String.raw`(?<=[)\]*] ?)${mark}(?= ?(?:\d|${FIGURE}))`, 'gu'),
      write: () => mark,
    })),
  },
  {
    id: 'times',
    everywhere: false,
    ways: [
      {
        name: '"× 6"',
        pattern: new RegExp(String.raw`(?<=[)\]] ?)[x×] ?(?:\d+|${FIGURE})(?![\p{L}\p{N}])`, 'gu'),
        write: null,
      },
      {
        name: '"6 times"',
        pattern: new RegExp(String.raw`(?<=[)\]] )(?:\d+|${FIGURE}) times`, 'giu'),
        write: (other) => `${/\d+|\uFFFC/u.exec(other)?.[0] ?? ''} times`,
      },
    ],
  },
  sign(
    'before-rep',
    { ';': 'a semicolon', ',': 'a comma', '.': 'a full stop' },
    (mark) => `${mark}(?= (?:rep|repeat) from)`,
  ),
  sign(
    'before-turn',
    { ',': 'a comma', ';': 'a semicolon', '.': 'a full stop' },
    (mark) => String.raw`(?<!\b[\p{L}])${mark}(?= turn(?![\p{L}]))`,
  ),
  sign(
    'before-join',
    { ';': 'a semicolon', ',': 'a comma', '.': 'a full stop' },
    (mark) => String.raw`${mark}(?= (?:join with|sl st to join|ss to join|join\b(?=[.;]|$))(?![^.]*to form))`,
  ),
  {
    id: 'numbers',
    everywhere: false,
    ways: [
      {
        name: 'figures',
        pattern: new RegExp(String.raw`(?<![\p{L}\p{N}.,(-])(?:[2-9]|10)${COUNTED}`, 'giu'),
        write: (other) => String(SMALL.indexOf(other.toLowerCase()) + 2),
      },
      {
        name: 'words',
        pattern: new RegExp(String.raw`(?<![\p{L}-])(?:${SMALL.join('|')})${COUNTED}`, 'giu'),
        write: (other) => SMALL[Number(other) - 2] ?? other,
      },
    ],
  },
  {
    id: 'quotes',
    everywhere: true,
    ways: [
      { name: 'curly quotation marks', pattern: /[“”]/gu, write: null },
      { name: 'straight quotation marks', pattern: /(?<![\d½¼¾])"/gu, write: () => '"' },
    ],
  },
  {
    id: 'apostrophes',
    everywhere: true,
    ways: [
      { name: 'curly apostrophes', pattern: /(?<=\p{L})’(?=\p{L})/gu, write: () => '’' },
      { name: 'straight apostrophes', pattern: /(?<=\p{L})'(?=\p{L})/gu, write: () => "'" },
    ],
  },
  {
    id: 'ranges',
    everywhere: true,
    ways: [
      {
        name: 'a dash between numbers',
        pattern: /(?<=(?<![\d-])\d{1,3})–(?=\d{1,3}(?![\d-]))/gu,
        write: () => '–',
      },
      {
        name: 'a hyphen between numbers',
        pattern: /(?<=(?<![\d-])\d{1,3})-(?=\d{1,3}(?![\d-]))/gu,
        write: () => '-',
      },
    ],
  },
  spelling('color', 'colour'),
  spelling('center', 'centre'),
  spelling('gray', 'grey'),
  spelling('fiber', 'fibre'),
];

const LADDER: readonly BaseStitch[] = ['t1', 't2', 't3', 't4'];

/** Stitches in whole words or short, which depends on the terms. */
function stitchChoices(terms: Terms): readonly Choice[] {
  const spaced = (words: string) => words.replace(/\s+/gu, String.raw`\s`);
  const ladder = LADDER.map((id): Choice => {
    const { name, abbr } = namesOf(id, terms);
    // "half double crochet" ends in "double crochet": only a name that nothing longer holds counts.
    return {
      id: `stitch-${id}`,
      everywhere: false,
      ways: [
        {
          name: `"${abbr}"`,
          pattern: new RegExp(`${BEFORE}${spaced(abbr)}${AFTER}`, 'giu'),
          write: like(abbr, abbr),
        },
        {
          name: `"${name}"`,
          pattern: new RegExp(`(?<!half )(?<!double )(?<!triple )${BEFORE}${spaced(name)}s?${AFTER}`, 'giu'),
          write: like(name, name),
        },
      ],
    };
  });
  const slip = ['sl st', 'ss', 'slip stitch'].map(
    (word): Way => ({
      name: `"${word}"`,
      pattern: new RegExp(`${BEFORE}${spaced(word)}${AFTER}`, 'giu'),
      write: like(word, word),
    }),
  );
  return [...ladder, { id: 'stitch-slip', everywhere: false, ways: slip }];
}

const byTerms: Readonly<Record<Terms, readonly Choice[]>> = {
  us: [...CHOICES, ...stitchChoices('us')],
  uk: [...CHOICES, ...stitchChoices('uk')],
};

/** Every use of every choice, text by text. */
export const waysUsed = looking((text, kind, terms): readonly Use[] =>
  byTerms[terms].flatMap(({ everywhere, ways }, choice) =>
    kind === 'row' || everywhere
      ? ways.flatMap(({ pattern }, way) =>
          [...text.matchAll(pattern)].map((match) => ({
            choice,
            way,
            from: match.index,
            to: match.index + match[0].length,
          })),
        )
      : [],
  ),
);

/** No choice has as many ways. */
const MOST_WAYS = 8;

/**
 * For each choice that is made in more than one way: the way used most, of equals the one met first; null for a
 * choice that is made in one way.
 */
export function usualWays(pattern: Pattern): readonly (number | null)[] {
  const choices = byTerms[pattern.terms].length;
  const times = new Int32Array(choices * MOST_WAYS);
  const first = new Int32Array(choices).fill(-1);
  for (const { hits } of waysUsed(pattern)) {
    for (const { choice, way } of hits) {
      const at = choice * MOST_WAYS + way;
      if (first[choice] === -1) first[choice] = way;
      times[at]! += 1;
    }
  }
  return Array.from(first, (met, choice) => {
    if (met < 0) return null;
    const own = [...times.subarray(choice * MOST_WAYS, (choice + 1) * MOST_WAYS)];
    if (own.filter((n) => n > 0).length < 2) return null;
    const most = Math.max(...own);
    return own[met] === most ? met : own.indexOf(most);
  });
}

/** What a way is called in a sentence. */
export function wayName(terms: Terms, choice: number, way: number): string {
  return byTerms[terms][choice]?.ways[way]?.name ?? '';
}

/** The words written in a choice's given way; null where that takes more than putting a word for a word. */
export function writtenAs(terms: Terms, choice: number, way: number, words: string): string | null {
  return byTerms[terms][choice]?.ways[way]?.write?.(words) ?? null;
}
