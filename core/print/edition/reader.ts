/**
 * Whom an edition is printed for: the terms and units it is read in, the sizes it shows, and the words of the
 * author as that reader meets them. It lays out nothing and works nothing.
 */
import type { Pattern, Quantity } from '../../document/pattern.ts';
import type { Fact } from '../../finding.ts';
import { translate } from '../../notation/translate.ts';
import type { Study } from '../../study/index.ts';
import type { YarnReport } from '../../study/yarn.ts';
import type { Terms } from '../../trade/stitches.ts';
import type { Units } from '../../trade/units.ts';
import { type Wording, wordingIn } from './wording.ts';

/** Something that could not be printed as it should be, at a node of the document. */
export interface EditionFact {
  /** Null when it stands in the facts about the pattern, which are no node. */
  readonly node: string | null;
  /** `from` and `to` count in the author's text. */
  readonly fact: Fact;
}

/** A person's own sheet. */
export interface MadeFor {
  readonly name: string;
  /** The person's own numbers by line, for those that are printed nowhere else. */
  readonly values: readonly { readonly line: string; readonly name: string; readonly value: Quantity }[];
}

export interface Reader {
  readonly study: Study;
  readonly pattern: Pattern;
  readonly terms: Terms;
  readonly units: Units;
  /** Indexes of the sizes shown, in the order of the lists. */
  readonly sizes: readonly number[];
  /** One of several sizes, alone. */
  readonly alone: boolean;
  /** The one person whom the sheet is made for; null for every pattern for sale. */
  readonly madeFor: MadeFor | null;
  /** Amounts of yarn that were reckoned elsewhere; null = those of the study itself. */
  readonly yarn: YarnReport | null;
  /** Headings and sentences of our own, in the reader's English. */
  readonly wording: Wording;
  /** The pattern's own names in both markets. */
  readonly own: readonly { readonly us: string; readonly uk: string }[];
  /** The author's words in the reader's terms. What may or may not be a term is left and reported. */
  readonly say: (text: string, node: string | null, kind?: 'row' | 'prose') => string;
  readonly report: (node: string | null, fact: Fact) => void;
}

/** For whom and for which sizes an edition is. */
export interface EditionChoice {
  readonly terms: Terms;
  /** Every size, or the id of the one size that the edition is for. */
  readonly sizes: 'all' | string;
  /** Which units lead; the pattern's own when left out. */
  readonly units?: Units;
}

/** The reader of an edition. A size that the pattern does not have gives all sizes; `known` says whether it has it. */
export function readerFor(
  study: Study,
  { terms, sizes, units }: EditionChoice,
  madeFor: MadeFor | null = null,
  yarn: YarnReport | null = null,
): ReturnType<typeof readerOf> & { readonly known: boolean } {
  const { pattern } = study;
  const at = pattern.sizes.findIndex((size) => size.id === sizes);
  const shown = sizes === 'all' || at < 0 ? pattern.sizes.map((_, index) => index) : [at];
  const known = sizes === 'all' || at >= 0;
  return { ...readerOf(study, terms, units ?? pattern.units, shown, madeFor, yarn), known };
}

export function readerOf(
  study: Study,
  terms: Terms,
  units: Units,
  sizes: readonly number[],
  madeFor: MadeFor | null = null,
  yarn: YarnReport | null = null,
): { reader: Reader; facts: readonly EditionFact[] } {
  const { pattern } = study;
  const facts: EditionFact[] = [];
  const seen = new Set<string>();
  const report = (node: string | null, fact: Fact): void => {
    const key = `${node} ${fact.code} ${fact.from} ${fact.to}`;
    if (seen.has(key)) return;
    seen.add(key);
    facts.push({ node, fact });
  };
  const own = [...ownNames(pattern), ...(pattern.terms === 'uk' && terms === 'us' ? [SLIP] : [])];
  const reader: Reader = {
    study,
    pattern,
    terms,
    units,
    sizes,
    alone: sizes.length === 1 && pattern.sizes.length > 1,
    madeFor,
    yarn,
    wording: wordingIn(terms),
    own,
    say: (text, node, kind = 'prose') => {
      const told = translate(text, pattern.terms, terms, { kind: kind === 'row' ? 'row' : 'mixed', own });
      for (const doubt of told.doubts) report(node, doubt);
      return told.text;
    },
    report,
  };
  return { reader, facts };
}

/** UK readers know both abbreviations of the slip stitch, US readers one (common practice). */
const SLIP = { us: 'sl st', uk: 'ss' };

/** Special stitches by name and by abbreviation; where one market has no name of its own, the other's holds. */
function ownNames(pattern: Pattern): readonly { us: string; uk: string }[] {
  return pattern.specials.flatMap((special) =>
    [
      { us: special.nameUs.trim(), uk: special.nameUk.trim() },
      { us: special.abbrUs.trim(), uk: special.abbrUk.trim() },
    ]
      .map(({ us, uk }) => ({ us: us === '' ? uk : us, uk: uk === '' ? us : uk }))
      .filter(({ us }) => us !== ''),
  );
}
