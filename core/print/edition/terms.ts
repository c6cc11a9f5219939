/**
 * What a reader needs to know before the first row: in which terms the pattern is written and what its stitches
 * are called in the other market, the abbreviations, made from the very words that are printed, the pattern's
 * own stitches, and its notes.
 */
import { abbreviationsIn } from '../../notation/abbreviations.ts';
import { translate } from '../../notation/translate.ts';
import { type Abbreviation, abbreviationList, type Used } from '../../trade/abbreviations.ts';
import { baseOf, LADDER, type Terms } from '../../trade/stitches.ts';
import { namesOf } from '../../trade/terms.ts';
import {
  type Block,
  bold,
  entries,
  heading,
  list,
  type Part,
  paragraph,
  part,
  type Text,
  table,
} from '../content.ts';
import type { Reader } from './reader.ts';
import { textWords } from './text.ts';

/** The part on terms. `texts` are all the words printed elsewhere, one text for each row, paragraph or cell. */
export function termsPart(reader: Reader, specials: readonly Block[], texts: readonly string[]): Part {
  const { used, lines } = abbreviationsOf(reader, texts);
  const ids = used.map((one) => (typeof one === 'string' ? one : one.id));
  return part('Terms and abbreviations', [
    paragraph([bold(reader.wording.writtenIn)]),
    ...comparison([...ids, ...namedIn(texts, reader.terms)], texts, reader),
    ...(lines.length === 0
      ? []
      : [
          heading(2, 'Abbreviations'),
          entries(
            'terms',
            lines.map((line) => [line.abbr, line.meaning] as const),
          ),
        ]),
    ...(specials.length === 0 ? [] : [heading(2, 'Special stitches'), ...specials]),
  ]);
}

/** The abbreviations that the printed words use, and the lines that explain them. */
export function abbreviationsOf(
  reader: Reader,
  texts: readonly string[],
): { readonly used: readonly Used[]; readonly lines: readonly Abbreviation[] } {
  const own = ownMeanings(reader);
  const used = abbreviationsIn(texts, reader.terms, Object.keys(own));
  return { used, lines: abbreviationList(used, reader.terms, own) };
}

/** What the pattern itself explains: its abbreviations, and its special stitches by their short names. */
function ownMeanings(reader: Reader): Readonly<Record<string, string>> {
  const { pattern, terms } = reader;
  const own: Record<string, string> = {};
  for (const [abbr, meaning] of Object.entries(pattern.abbreviations)) {
    own[reader.say(abbr.trim(), null, 'row')] = reader.say(meaning.trim(), null);
  }
  for (const special of pattern.specials) {
    const abbr =
      (terms === 'us' ? special.abbrUs : special.abbrUk).trim() ||
      special.abbrUs.trim() ||
      special.abbrUk.trim();
    const name =
      (terms === 'us' ? special.nameUs : special.nameUk).trim() ||
      special.nameUs.trim() ||
      special.nameUk.trim();
    if (abbr !== '' && abbr.toLowerCase() !== name.toLowerCase())
      own[abbr] = `${name} (see Special stitches)`;
  }
  delete own[''];
  return own;
}

/** Ladder stitches that texts name in full ("half double crochet"), by their ids. */
function namedIn(texts: readonly string[], terms: Terms): readonly string[] {
  const all = texts.join('\n').toLowerCase();
  const names = LADDER.map((id) => ({ id, name: namesOf(id, terms).name })).sort(
    (a, b) => b.name.length - a.name.length,
  );
  const found: string[] = [];
  let rest = all;
  for (const { id, name } of names) {
    if (!rest.includes(name)) continue;
    found.push(id);
    rest = rest.replaceAll(name, ' ');
  }
  return found;
}

/** Words besides stitches that a row may hold and that the other market says otherwise. */
const WORDS: readonly (readonly [us: string, uk: string, used: RegExp])[] = [
  ['skip (sk)', 'miss', /\b(?:sk|skip(?:s|ped|ping)?|miss(?:es|ed|ing)?)\b/iu],
  ['yarn over (yo)', 'yarn over hook (yoh)', /\b(?:yo|yoh|yrh|yarn over|yarn round hook)\b/iu],
  ['gauge', 'tension', /\b(?:gauge|tension)\b/iu],
];

/** The stitches and words used whose names differ, side by side. */
function comparison(ids: readonly string[], texts: readonly string[], reader: Reader): readonly Block[] {
  const { terms, wording } = reader;
  const other: Terms = terms === 'us' ? 'uk' : 'us';
  const bases = new Set(ids.flatMap((id) => baseOf(id) ?? []));
  const named = (id: string, market: Terms): string => {
    const { name, abbr } = namesOf(id, market);
    return name === abbr ? name : `${name} (${abbr})`;
  };
  const stitches = LADDER.filter(
    (id) => bases.has(id) && namesOf(id, terms).name !== namesOf(id, other).name,
  ).map((id): readonly [string, string] => [named(id, terms), named(id, other)]);
  const words = WORDS.filter(([, , used]) => texts.some((text) => used.test(text))).map(
    ([us, uk]): readonly [string, string] => (terms === 'us' ? [us, uk] : [uk, us]),
  );
  const rows = [...stitches, ...words];
  if (stitches.length === 0) return [];
  return [
    table({
      caption: wording.termsTable,
      corner: wording.termsNote,
      heads: [`${wording.otherMarket} terms`],
      rows: rows.map(([here, there]): readonly [Text, Text] => [here, there]),
      align: 'words',
    }),
  ];
}

/** The special stitches, each with its name, its short name and how it is made. */
export function specialBlocks(reader: Reader): readonly Block[] {
  const { pattern, terms } = reader;
  const items = pattern.specials.flatMap((special) => {
    const pick = (us: string, uk: string) => (terms === 'us' ? us : uk).trim() || us.trim() || uk.trim();
    const name = pick(special.nameUs, special.nameUk);
    const abbr = pick(special.abbrUs, special.abbrUk);
    const words = textWords(special.text, reader, { node: special.id, kind: 'row' });
    if (name === '' && abbr === '') return [];
    const label =
      name === ''
        ? abbr
        : abbr === '' || abbr.toLowerCase() === name.toLowerCase()
          ? name
          : `${name} (${abbr})`;
    return [[label, words] as const];
  });
  return items.length === 0 ? [] : [entries('terms', items)];
}

/** The notes as a list; null when there are none. */
export function notesPart(reader: Reader): Part | null {
  const items = reader.pattern.notes
    .map((note) => textWords(note, reader, { node: null, kind: 'prose' }))
    .filter((words) => words.length > 0);
  return items.length === 0 ? null : part('Notes', [list('bulleted', items)]);
}

/** A text of ours that is written in British English, in the reader's. */
export function inReadersEnglish(text: string, reader: Reader): string {
  return reader.terms === 'uk' ? text : translate(text, 'uk', 'us', { kind: 'prose' }).text;
}
