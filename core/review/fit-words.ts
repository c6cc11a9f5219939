/**
 * Words that say how the whole garment fits: "An oversized tee", "Close:" in the advice on fit, "it is fitted". What
 * is said of a part of it (a snug cuff), of a fit that the reader may choose, or to deny it, is left alone. It judges
 * no word.
 */
import type { Span } from '../finding.ts';
import { type Fit, fits } from '../trade/ease.ts';
import { looking } from './scan.ts';

export interface FitWord extends Span {
  readonly fit: Fit;
  /** It stands alone at the beginning, which says a fit only where the text is advice on it. */
  readonly alone: boolean;
}

/** Garments that are worn on the chest, and words for their whole. Common practice, no source. */
const GARMENT = `(?:vest|waistcoat|tee|t-shirt|top|tank|camisole|sweater|jumper|pullover|cardigan|jacket|coat|tunic|dress|garment|blouse|shirt|hoodie|silhouette|bodice)s?`;

/** Before the word, in its sentence: it is denied, or one fit among others. */
const OTHERWISE =
  /\b(?:not|\p{L}+n['’]t|never|neither|nor|without|instead|rather|than|less|too|if|for (?:an?|the|your)|prefer|like|want|would|could|choose|between|either)\b/iu;
/** After it: the same. */
const CHOSEN =
  /^[^.!?]*\b(?:if|choose|go (?:up|down)|size (?:up|down)|(?:larger|smaller|next) size|or an? [^.!?]*fit)\b/iu;

const escaped = (words: readonly string[]) =>
  words.map((word) => word.replace(/ /gu, String.raw`\s`)).join('|');

interface Form {
  readonly fit: Fit;
  /** The word is the first group. */
  readonly pattern: RegExp;
}

/** How a fit can be said in a sentence. */
const FORMS: readonly Form[] = fits.flatMap((fit): readonly Form[] => {
  const form = (pattern: string): Form => ({ fit, pattern: new RegExp(pattern, 'dgiu') });
  const names = escaped(fit.names);
  const adjectives = escaped(fit.adjectives);
  const named = form(String.raw`(?<![\p{L}-]|very\s)((?:${names})(?:\s|-)fit)(?![\p{L}-])`);
  return adjectives === ''
    ? [named]
    : [
        named,
        form(
          String.raw`(?<![\p{L}-]|very\s)(${adjectives})(?:,?\s(?!and|with)[\p{L}-]+){0,2}\s${GARMENT}(?![\p{L}-])`,
        ),
        form(
          String.raw`\b(?:it|(?:the|this|a|an)\s${GARMENT})\s(?:is|sits|fits)\s(?:(?:quite|rather|very)\s)?(${adjectives})(?=\s*(?:[.,;!)]|$))`,
        ),
      ];
});

const HEADS: readonly Form[] = fits.map((fit) => ({
  fit,
  pattern: new RegExp(String.raw`^\s*(${escaped([...fit.names, ...fit.adjectives])})(?=\s*[:.,;–—])`, 'diu'),
}));

/** The words of a fit in a text, in which none stands twice. */
export function fitWordsIn(text: string): readonly FitWord[] {
  const others = FORMS.flatMap(({ fit, pattern }) =>
    [...text.matchAll(pattern)].flatMap((match): readonly FitWord[] => {
      const [from, to] = match.indices![1]!;
      const before = /[^.!?]*$/u.exec(text.slice(0, from))![0];
      return OTHERWISE.test(before) || CHOSEN.test(text.slice(to)) ? [] : [{ fit, from, to, alone: false }];
    }),
  );
  return [...headOf(text), ...others].filter(
    (own, i, all) => !all.slice(0, i).some(({ from, to }) => own.from < to && from < own.to),
  );
}

function headOf(text: string): readonly FitWord[] {
  for (const { fit, pattern } of HEADS) {
    const match = pattern.exec(text);
    if (match !== null) return [{ fit, from: match.indices![1]![0], to: match.indices![1]![1], alone: true }];
  }
  return [];
}

/** Something of a fit stands in it. */
const ANY = new RegExp(escaped(fits.flatMap(({ names, adjectives }) => [...names, ...adjectives])), 'iu');

/** The words of a fit in all prose. */
export const fitWords = looking((text, kind) => (kind === 'prose' && ANY.test(text) ? fitWordsIn(text) : []));
