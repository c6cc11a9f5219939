/** Hooks from the lines of an old pattern: by millimetres, by letter, by an old number. What is in doubt is told. */
import type { Hook } from '../document/pattern.ts';
import { hooks as hookSizes } from '../trade/hooks.ts';
import { intakeWords } from './sentences.ts';
import { squeezed } from './squeezed.ts';

/** "4 mm (main), 3.5 mm (edging)": what each is for, in brackets behind it; null where one has none. */
function purposesBehind(item: string, sizes: readonly RegExpExecArray[]): readonly string[] | null {
  const purposes = sizes.map(
    ({ index, 0: words }, i) =>
      /^\s*[([](?!\d|U\.?[SK]|[A-S]\W?\d)([\p{L}][^()[\]]{2,60})[)\]]/u.exec(
        item.slice(index + words.length, sizes[i + 1]?.index),
      )?.[1] ?? null,
  );
  return purposes.every((purpose) => purpose !== null) ? (purposes as readonly string[]) : null;
}

/** The hook of a US letter: with its number the one that is so marked, else the one that charts print first. */
function hookOfLetter(letter: string, number: string | null): (typeof hookSizes)[number] | undefined {
  const lettered = hookSizes.filter(({ usLetter }) => usLetter === letter);
  const marked = lettered.find(({ usLabel }) => number !== null && usLabel === `${letter}-${number}`);
  return marked ?? lettered.find(({ usNumber }) => usNumber !== null) ?? lettered[0];
}

/** Hooks in an item, with what is doubtful. "4 mm (G-6) hook for the body", "size H hook", "4 mm and 5 mm hooks". */
export function hooksIn(
  item: string,
  freshId: () => string,
): readonly { readonly hook: Hook; readonly doubt: string | null }[] {
  // A comma before the decimals is the way of most of Europe.
  const sizes = [...item.matchAll(/(\d{1,2}(?:[.,]\d{1,2})?)\s?-?\s?mm\b/giu)];
  const letter =
    /\b(?:size\s+|US\s+)?(?:([B-S])\s?[-/]\s?(\d{1,2}(?:½|\.5)?)|(?<=size\s|US\s)([B-S])\b|([B-S])(?=\s(?:crochet\s)?hook))/u.exec(
      item.replace(/\b(?:SIZE|CROCHET|HOOKS?)\b/gu, (word) => word.toLowerCase()),
    );
  const rest = squeezed(
    item
      .replace(/(\d{1,2}(?:[.,]\d{1,2})?)\s?-?\s?mm\b/giu, ' ')
      .replace(letter?.[0] ?? /$^/u, ' ')
      .replace(
        /\b(?:US|(?<!\bor )size|crochet hooks?|hooks?|crochet)\b(?!\s+(?:size\s+)?(?:to|needed|that|or))/giu,
        ' ',
      ),
  )
    // "or size needed to obtain gauge" keeps its "or", "5 mm + 5.5 mm" no sign between.
    .replace(/^(?:a|an|one|and|or(?! size))(?:\s+|$)|\s+(?:a|an|and|or)$/giu, '')
    .replace(/^[\s+&,;:()./-]+$|\(\W*\)/gu, '')
    .trim();
  const purpose = rest.slice(0, 200);
  if (sizes.length > 0) {
    const own = sizes.length > 1 ? purposesBehind(item, sizes) : null;
    return sizes.map((found, i) => ({
      hook: {
        id: freshId(),
        mm: Number(found[1]!.replace(',', '.')),
        purpose: own === null ? (i === 0 ? purpose : '') : own[i]!,
      },
      doubt: null,
    }));
  }
  const numbered = /\b(?:no\.?|number|size)\s?(\d{1,2})(?![\d.,])/iu.exec(item)?.[1];
  const old = letter === null ? hookSizes.find(({ ukOld }) => ukOld === numbered) : undefined;
  if (numbered !== undefined && old !== undefined)
    return [
      {
        hook: { id: freshId(), mm: old.mm, purpose: item.slice(0, 200) },
        doubt: intakeWords.hookFromOldNumber(numbered, old.mm),
      },
    ];
  const named = letter === null ? null : (letter[1] ?? letter[3] ?? letter[4] ?? null);
  const known = named === null ? undefined : hookOfLetter(named, letter?.[2] ?? null);
  if (known === undefined)
    return [
      { hook: { id: freshId(), mm: 0, purpose: item.slice(0, 200) }, doubt: intakeWords.hookWithoutSize },
    ];
  return [
    {
      hook: { id: freshId(), mm: known.mm, purpose },
      doubt: intakeWords.hookFromLetter(letter![0].trim(), known.mm),
    },
  ];
}
