/** What stands after the pieces: finishing, cautions, care, and who made the pattern. It adds no rule of law. */
import { deferral, type Caution as TradeCaution } from '../../trade/cautions.ts';
import type { Terms } from '../../trade/stitches.ts';
import { type Block, caution, heading, list, type Part, paragraph, part, together } from '../content.ts';
import type { Reader } from './reader.ts';
import { inReadersEnglish } from './terms.ts';
import { hold, plainWords, textWords } from './text.ts';

/** Finishing as numbered steps; null when there are none. */
export function finishingPart(reader: Reader): Part | null {
  const items = reader.pattern.finishing
    .map((step) => textWords(step, reader, { node: null, kind: 'prose' }))
    .filter((words) => words.length > 0);
  if (items.length === 0) return null;
  return part('Finishing', items.length === 1 ? [paragraph(items[0]!)] : [list('numbered', items)]);
}

/** A caution of the trade with its title and rules, or a plain text. */
export type GivenCaution = string | TradeCaution;

/**
 * The cautions that are given, then the maker's own, each once. What every caution of the trade ends with is
 * said once, after all of them. Null when there are none.
 */
export function cautionsPart(reader: Reader, given: readonly GivenCaution[]): Part | null {
  const trade = given.filter((one) => typeof one !== 'string');
  const own = reader.pattern.cautions;
  const plain = [
    ...given
      .filter((one) => typeof one === 'string' && !own.includes(one))
      .map((text) => ours(text as string)),
    ...own.map((text) => hold(reader.say(text.trim(), null))),
  ].filter((text) => text !== '');
  const blocks: Block[] = trade.map((one) =>
    caution(ours(one.title), [
      ours(one.text),
      ...(one.rules.length === 0
        ? []
        : [`Rules to look up: ${one.rules.map((rule) => rule.name).join('; ')}.`]),
    ]),
  );
  if (plain.length > 0) blocks.push(caution('Please note', [...new Set(plain)]));
  // It speaks to whoever sells the item; the caution for the maker's own hands needs no laboratory.
  // It never stands on a page without the last of the cautions that it is said of.
  if (trade.some((one) => one.when.long !== true))
    blocks.push(together(blocks.pop()!, paragraph(ours(deferral))));
  // They are read at one glance where a page can hold them.
  return blocks.length === 0 ? null : part('Cautions', [together(...blocks)]);

  function ours(text: string): string {
    return hold(inReadersEnglish(text.trim(), reader)).replace(/(?<=\p{L})'(?=\p{L})/gu, '’');
  }
}

const MONTHS = 'January February March April May June July August September October November December'.split(
  ' ',
);

/** "April 18, 2026" in the US, "18 April 2026" in the UK; a date that is none stays as it was written. */
export const dateWords = (date: string, reader: Reader): string => dateIn(date, reader.terms);

/** The same for a market. */
export function dateIn(date: string, terms: Terms): string {
  const match = /^(\d{4})-(\d{2})-(\d{2})/.exec(date.trim());
  const month = match === null ? undefined : MONTHS[Number(match[2]) - 1];
  if (match === null || month === undefined) return date.trim();
  const day = Number(match[3]);
  return terms === 'us' ? `${month}\u00A0${day}, ${match[1]}` : `${day}\u00A0${month}\u00A0${match[1]}`;
}

/** "Version 1.0, April 18, 2026": what tells one printing from another; empty where the pattern has neither. */
export function versionWords(
  about: { readonly version: string; readonly date: string },
  terms: Terms,
): string {
  const version = about.version.trim();
  return [version === '' ? '' : `Version ${version}`, dateIn(about.date, terms)]
    .filter((words) => words !== '')
    .join(', ');
}

/** Care, copyright, contact, version and date; null when the pattern says nothing of them. */
export function aboutPart(reader: Reader): Part | null {
  const { about } = reader.pattern;
  const care = about.care.trim() === '' ? [] : [plainWords(about.care, reader)];
  const version = versionWords(about, reader.terms);
  const small = [about.copyright, about.contact]
    .map((text) => reader.say(text.trim(), null))
    .concat(version === '' ? [] : [`${version}. ${reader.wording.termsNote}.`])
    .filter((text) => text !== '');
  if (care.length === 0 && small.length === 0) return null;
  return part(care.length === 0 ? 'About this pattern' : 'Care and copyright', [
    ...(care.length === 0 ? [] : [heading(2, 'Care'), paragraph(care[0]!)]),
    ...(small.length === 0
      ? []
      : [together(heading(2, 'About this pattern'), ...small.map((text) => paragraph(text, 'small')))]),
  ]);
}
