/** The errata sheet that buyers get: a booklet of its own, in their terms, laid out as every other. Words only. */
import type { Terms } from '../../trade/stitches.ts';
import {
  type Block,
  type Booklet,
  bold,
  entries,
  type Part,
  paragraph,
  part,
  together,
  withNext,
  words,
} from '../content.ts';
import { dateIn } from '../edition/closing.ts';
import { wordingIn } from '../edition/wording.ts';
import type { Errata, Erratum, Version } from './errata.ts';

/** "version 1.1 of 18 April 2026". */
function versionWords({ version, date }: Version, terms: Terms): string {
  const day = dateIn(date, terms);
  if (version === '') return day === '' ? 'an earlier version' : `the version of ${day}`;
  return day === '' ? `version ${version}` : `version ${version} of ${day}`;
}

/** What changed, in one line. */
export function erratumHead({ kind, label, sizes }: Erratum): string {
  const what = {
    changed: label,
    added: label === '' ? 'Added' : `${label} (added)`,
    removed: label === '' ? 'Left out' : `${label} (left out)`,
    renumbered: 'Row numbers',
    renamed: 'Name of the piece',
    moved: 'Order of the pieces',
  }[kind];
  const whom = sizes === null ? '' : `${sizes.length === 1 ? 'Size' : 'Sizes'} ${sizes.join(', ')} only`;
  return [what, whom].filter((text) => text !== '').join(' · ');
}

function erratumBlocks(erratum: Erratum): readonly Block[] {
  const head = erratumHead(erratum);
  const facts: (readonly [string, string])[] = [];
  if (erratum.was !== null) facts.push(['Was', erratum.was]);
  if (erratum.read !== null) facts.push([erratum.was === null ? 'Add' : 'Read', erratum.read]);
  const said = entries('facts', facts);
  return head === '' ? [said] : [together(withNext(paragraph([bold(head)])), said)];
}

/** Which versions the sheet is about: "From version 1.0 of … to version 1.1 of …". */
export function betweenWords({ from, to }: Errata, terms: Terms): string {
  return `From ${versionWords(from, terms)} to ${versionWords(to, terms)}`;
}

/** The sheet. One without errata says so. */
export function errataSheet(errata: Errata, terms: Terms, author: string): Booklet {
  const wording = wordingIn(terms);
  const parts: { title: string; blocks: Block[] }[] = [];
  for (const erratum of errata.errata) {
    if (parts.at(-1)?.title !== erratum.part) parts.push({ title: erratum.part, blocks: [] });
    parts.at(-1)!.blocks.push(...erratumBlocks(erratum));
  }
  const none: readonly Part[] = [
    part('Corrections', [paragraph('Nothing in the instructions has changed.')]),
  ];
  const { version } = errata.to;
  const title = `${errata.title}: errata`;
  return {
    meta: {
      title,
      author,
      language: wording.language,
      subject: 'Corrections to a crochet pattern',
      keywords: ['crochet', 'pattern', 'errata', wording.termsNote],
      date: errata.to.date,
      termsNote: wording.termsNote,
      version: version === '' ? '' : `Version ${version}`,
      sizeKey: betweenWords(errata, terms),
    },
    cover: {
      subtitle: words(betweenWords(errata, terms)),
      byline: author === '' ? null : words(`by ${author}`),
      image: null,
      alt: '',
      summary: [
        words(
          'If you have the earlier version, please note these corrections. “Was” is what it says; “Read” is what it should say. Numbers are for all sizes unless sizes are named.',
        ),
      ],
      glance: [],
    },
    parts: parts.length === 0 ? none : parts.map(({ title: own, blocks }) => part(own, blocks)),
  };
}

/** What the maker is told of errata: how many there are, and whether buyers can tell the two versions apart. */
export function errataNotes({ from, to, errata }: Errata): readonly string[] {
  const n = errata.length;
  if (n === 0) return ['Nothing in the instructions has changed since that version.'];
  const count = `${n} ${n === 1 ? 'correction' : 'corrections'} since that version.`;
  return from.version !== to.version
    ? [count]
    : [
        count,
        to.version === ''
          ? 'Neither has a version number: give this one a number, so that buyers can tell them apart.'
          : `Both are called version ${to.version}: give this one a new number, so that buyers can tell them apart.`,
      ];
}
