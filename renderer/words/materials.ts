/** Words of the place "Materials". Sentences only. */
import type { Terms } from '../../core/trade/stitches.ts';

const named = (terms: Terms): string => (terms === 'us' ? 'US' : 'UK');
const many = (n: number, one: string, more: string): string => (n === 1 ? `1 ${one}` : `${n} ${more}`);

export const materialsWords = {
  moveUp: 'Move up',
  moveDown: 'Move down',
  remove: 'Remove',
  itemButton: (act: string, item: string) => `${act}: ${item}`,
  removed: (item: string) => `${item} was removed. Undo brings it back.`,
  moved: (item: string, place: number, of: number) => `${item} is now ${place} of ${of}.`,
  inOther: (terms: Terms) =>
    `Words are shown in ${named(terms)} terms here; they are changed in the pattern’s own.`,
  notANumber: 'This is not a number.',
  notALength: 'Write a length with its unit, such as 10 cm or 4 in.',

  about: {
    title: 'About the pattern',
    designer: 'Designer',
    level: 'Skill level',
    garment: 'What it is',
    garmentHint: 'vest, hat, shawl …',
    version: 'Version',
    date: 'Date of this version',
    units: 'Measured in',
    unitsNote: 'Which units come first in print. Every length keeps the unit it was typed in.',
    metric: 'centimetres',
    imperial: 'inches',
    terms: 'Written in',
    termsOf: (terms: Terms) => `${named(terms)} terms`,
    change: (terms: Terms) => `Change to ${named(terms)} terms…`,
  },
  rewrite: {
    title: (terms: Terms) => `Change the pattern to ${named(terms)} terms?`,
    text: (from: Terms, to: Terms) =>
      `The pattern is written in ${named(from)} terms. Rewriting changes every row, the prose, the headings and the words of materials to ${named(to)} terms, as one step that Undo takes back. To read or print it in ${named(to)} terms nothing needs to be rewritten.`,
    already: (to: Terms) =>
      `If the words are in ${named(to)} terms already, say so: then no word is changed.`,
    declare: (to: Terms) => `They are ${named(to)} terms already`,
    rewrite: (to: Terms) => `Rewrite in ${named(to)} terms`,
    done: (to: Terms, changed: number, doubts: number) =>
      `The pattern is in ${named(to)} terms now: ${many(changed, 'word was', 'words were')} changed.${
        doubts > 0
          ? ` ${many(doubts, 'word', 'words')} that may or may not be a term stayed as they are; Review tells which.`
          : ''
      } Undo takes it back.`,
    declared: (to: Terms) => `The pattern counts as written in ${named(to)} terms now. No word was changed.`,
  },

  gauge: {
    title: (terms: Terms) => (terms === 'uk' ? 'Tension' : 'Gauge'),
    add: (terms: Terms) => (terms === 'uk' ? 'Add a tension' : 'Add a gauge'),
    item: (pattern: string, terms: Terms) =>
      pattern.trim() === '' ? (terms === 'uk' ? 'Tension' : 'Gauge') : pattern,
    none: 'None yet. Count a swatch after blocking: stitches across a width, rows up a height.',
    pattern: 'Pattern stitch',
    patternHint: (terms: Terms) => (terms === 'uk' ? 'half treble, mesh …' : 'half double crochet, mesh …'),
    stitches: 'Stitches',
    width: 'over a width of',
    rows: 'Rows',
    rounds: 'Rounds',
    height: 'over a height of',
    blocked: 'Counted after blocking',
    inRounds: 'Worked in rounds',
    hook: 'Hook',
    noHook: 'not said',
    stretches: 'It stretches in wear',
    lies: 'What lies at',
    worn: 'is worn at',
  },
  yarn: {
    title: 'Yarn',
    add: 'Add a yarn',
    item: (key: string | null, name: string, place: number) =>
      [key === null || key.trim() === '' ? null : key, name.trim() === '' ? null : name]
        .filter(Boolean)
        .join(': ') || `Yarn ${place}`,
    none: 'None yet.',
    key: 'Letter or name in the rows',
    keyHint: 'A, MC …',
    name: 'What it is',
    nameHint: 'wool, four strands …',
    weight: 'Weight',
    noWeight: 'not said',
    fibre: 'Fibre',
    ballGrams: 'Grams in a ball',
    ballMetres: 'Metres in a ball',
    yards: 'or yards, as “170 yd”',
    metres: 'Metres for each size',
    metresFor: (yarn: string, size: string) => `Metres of ${yarn}, size ${size}`,
    balls: (n: number) => many(n, 'ball', 'balls'),
    noSizes: 'Add sizes first; each has an amount of its own.',
  },
  hook: {
    title: 'Hooks',
    add: 'Add a hook',
    none: 'None yet.',
    mm: 'Millimetres',
    purpose: 'What for',
    purposeHint: 'for the body …',
    printedAs: (label: string) => `Printed as ${label}`,
  },
  notion: {
    title: 'Notions',
    add: 'Add a notion',
    none: 'None.',
    item: (place: number) => `Notion ${place}`,
    name: 'What it is',
    nameHint: 'buttons, 15 mm across …',
    amount: 'How many',
    amounts: { none: 'not said', all: 'alike for all sizes', each: 'size by size' },
    number: 'Number',
    numberFor: (notion: string, size: string) => `Number of ${notion}, size ${size}`,
    smallPart: 'A small part: button, bead, eye, bell',
    cord: 'A cord: tie, drawstring, ribbon',
  },
  abbreviation: {
    title: 'Abbreviations',
    own: 'Your own',
    add: 'Add an abbreviation',
    ownNote: 'Those of the trade explain themselves when they are used. Add only what is yours.',
    none: 'None of your own.',
    item: (place: number) => `Abbreviation ${place}`,
    short: 'Abbreviation',
    meaning: 'What it means',
    printed: 'As they will be printed',
    printedNote: 'Made from the words of the pattern: none missing, none too many.',
    nonePrinted: 'The pattern uses no abbreviation yet.',
  },
  special: {
    title: 'Special stitches',
    add: 'Add a special stitch',
    none: 'None.',
    item: (place: number) => `Special stitch ${place}`,
    nameUs: 'Name in US terms',
    nameUk: 'Name in UK terms',
    abbrUs: 'Short in US terms',
    abbrUk: 'Short in UK terms',
    write: 'Write how it is made',
    noText: 'How it is made is not written yet.',
  },
  caution: {
    title: 'Cautions',
    note: 'These follow from the sizes, the notions and the words of the pattern, and are printed with it.',
    none: 'The pattern calls for none.',
    own: 'Your own',
    noneOwn: 'None of your own.',
    write: 'Write cautions of your own',
  },
} as const;
