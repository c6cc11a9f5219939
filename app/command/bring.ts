/**
 * `turnchain bring`: makes a pattern file from an old pattern in plain text or from a word processor, and tells what
 * was understood and what needs the maker. Never replaces a file that is there.
 */
import { basename, extname } from 'node:path';
import { barePicture } from '../../core/document/bare-picture.ts';
import { compose } from '../../core/document/compose.ts';
import { type Picture, takePicture } from '../../core/document/media.ts';
import { tidyText } from '../../core/document/words.ts';
import { type Brought, bring } from '../../core/intake/bring.ts';
import { takePictures } from '../../core/intake/collected.ts';
import { DOCX_LIMITS, type DocxWords, textOfDocx } from '../../core/intake/docx.ts';
import { fileKind } from '../../core/intake/file-kind.ts';
import { takeOffers } from '../../core/intake/offers.ts';
import { intakeRefusals } from '../../core/intake/sentences.ts';
import { readDocx } from '../services/docx.ts';
import { savePattern } from '../services/files.ts';
import { FINDINGS, type Io, isThere, Refused, RIGHT, readBytes, wordsOf } from './io.ts';
import { choiceOf, lastValue, oneFile } from './options.ts';
import type { Command } from './run.ts';
import { columnsOf, cut, harmless, wrap } from './words.ts';

const ENDING = '.turnchain';

/** The text of a file: plain, or out of a document with its pictures. */
async function textAt(path: string, io: Io): Promise<DocxWords> {
  const bytes = await readBytes(path, io, DOCX_LIMITS.fileBytes);
  const kind = fileKind(bytes);
  if (kind.kind === 'refused') throw new Refused(kind.message);
  if (kind.kind === 'pdf') throw new Refused(intakeRefusals.pdf);
  if (kind.kind === 'text') return { text: wordsOf(bytes), pictures: [], edges: [], remarks: [] };
  const read = await textOfDocx(bytes, readDocx);
  if (!read.ok) throw new Refused(read.message);
  return read;
}

/** A picture as a pattern can have it; what was written into it besides stays behind. */
async function bareOf(bytes: Uint8Array): Promise<Picture | null> {
  const bare = barePicture(bytes);
  const took = bare === null ? null : takePicture(bare);
  return took?.ok ? took.picture : null;
}

const MARKET = { us: 'US', uk: 'UK' } as const;

/** The report of what was brought in, for people. */
function reportWords(
  { pattern, market, rows, doubts, offers, leftOut }: Brought,
  isFigured: boolean,
  pictures: number,
  io: Io,
): string {
  const width = columnsOf(io.stdout);
  const say = (words: string, indent = '') =>
    wrap(harmless(words), width - indent.length).map((line) => `${indent}${line}`);
  const out: string[] = [];
  out.push(`${pattern.about.title}, in ${MARKET[pattern.terms]} terms`);
  for (const { terms, why } of market.evidence.slice(0, 3))
    out.push(...say(`${MARKET[terms]}: ${why}`, '  '));
  out.push(`Sizes: ${harmless(pattern.sizes.map(({ label }) => label).join(', '))}`);
  for (const { name, make, blocks } of pattern.pieces) {
    const written = blocks.filter(({ type }) => type === 'row' || type === 'repeat').length;
    const copies = make === 1 ? '' : ` (make ${make})`;
    out.push(cut(`  ${harmless(name)}${copies}: ${written} ${written === 1 ? 'row' : 'rows'}`, width));
  }
  if (pictures > 0) out.push(pictures === 1 ? 'One picture came along.' : `${pictures} pictures came along.`);
  const needs = rows.written - rows.followed;
  out.push(
    `${rows.followed} of ${rows.written} rows are followed${needs === 0 ? '.' : `; ${needs} ${needs === 1 ? 'needs' : 'need'} you.`}`,
  );
  if (leftOut.length > 0)
    out.push(...say(`Left out as page numbers and running heads: ${leftOut.join(' · ')}`));
  if (offers.length > 0) {
    const many = offers.length === 1 ? 'One list of numbers is' : `${offers.length} lists of numbers are`;
    out.push(
      ...say(
        isFigured
          ? `${many} a line of the sheet and became ${offers.length === 1 ? 'a figure' : 'figures'}.`
          : `${many} the numbers of a line of the sheet; --figures makes figures of them.`,
      ),
    );
  }
  if (doubts.length > 0) {
    out.push('', `To look at (${doubts.length}):`);
    for (const { where, words, why } of doubts) {
      if (where !== '' || words !== '')
        out.push(...say([where, words].filter((part) => part !== '').join(': ')));
      out.push(...say(why, '    '));
    }
  }
  return `${out.join('\n')}\n`;
}

export const command: Command = {
  options: {
    out: { type: 'string' },
    terms: { type: 'string' },
    title: { type: 'string' },
    figures: { type: 'boolean' },
    json: { type: 'boolean' },
  },
  run: async (given, io) => {
    const path = oneFile(given, 'a text or .docx file with the pattern, or - for standard input');
    const out = lastValue(given, 'out');
    if (out === null || out === '')
      throw new Refused('Say where the pattern file goes: --out NAME.turnchain.', true);
    const target = extname(out) === '' ? `${out}${ENDING}` : out;
    const terms = choiceOf(given, 'terms', ['us', 'uk']);
    const read = await textAt(path, io);
    if (await isThere(target, io))
      throw new Refused(`“${basename(target)}” is there already and stays as it is. Choose another name.`);
    const named = tidyText(basename(path === '-' ? target : path, extname(path)))
      .replace(/[-_]+/g, ' ')
      .trim();
    const title = tidyText(lastValue(given, 'title') ?? '').trim();
    const { pictures, media } = await takePictures(read.pictures, bareOf);
    const { edges, remarks } = read;
    const result = bring(read.text, { terms, title: named, date: io.today, pictures, edges, remarks });
    if (!result.ok) throw new Refused(result.message);
    const { brought } = result;
    if (terms === null && !brought.market.sure) {
      const seen = brought.market.evidence
        .map(({ terms: own, why }) => `\n  ${MARKET[own]}: ${harmless(why)}`)
        .join('');
      throw new Refused(
        `The text does not say clearly whether it is in US or in UK terms, and the same letters mean different stitches. Say it: --terms us or --terms uk.${seen}`,
        true,
      );
    }
    const isFigured = given.flags.has('figures');
    const figured = isFigured ? takeOffers(brought.pattern, brought.offers) : brought.pattern;
    const pattern = title === '' ? figured : { ...figured, about: { ...figured.about, title } };
    const saved = await savePattern(target, compose(pattern), media, io.disk);
    if (!saved.ok) throw new Refused(saved.error.message);
    if (given.flags.has('json')) {
      const { market, rows, doubts, offers, leftOut } = brought;
      const pieces = pattern.pieces.map(({ name, make }) => ({ name, make }));
      const sizes = pattern.sizes.map(({ label }) => label);
      const report = {
        file: target,
        title: pattern.about.title,
        terms: pattern.terms,
        market,
        sizes,
        pieces,
      };
      io.stdout.write(
        `${JSON.stringify({ ...report, rows, doubts, offers, figures: isFigured, pictures: media.size, leftOut })}\n`,
      );
    } else io.stdout.write(`${target}\n${reportWords({ ...brought, pattern }, isFigured, media.size, io)}`);
    return brought.doubts.length > 0 ? FINDINGS : RIGHT;
  },
};
