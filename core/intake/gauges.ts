/**
 * Gauges from the words of an old pattern: stitches and rows over a length, the stitch they are measured in, the hook.
 * What it cannot read it gives back as not read; it keeps no words.
 */
import type { Gauge, Hook, Quantity } from '../document/pattern.ts';
import { isTradeWord } from '../trade/known-words.ts';
import { numberOf, numbersIn } from './numbers.ts';

const COUNT = String.raw`\d{1,3}(?:\.\d+)?|\d{1,3}\s?½`;
/** "to 10 cm", "= 4 in", "per inch": the length that stitches or rows are counted over. */
const OVER = String.raw`\s*(?:=|to|per|over|in|makes?|measures?)\s*(?:the\s)?(${COUNT})?\s?(cms?|mm|ins?|inch(?:es)?|["”])(?![\p{L}\d])`;
const EACH_OVER = new RegExp(
  String.raw`(${COUNT})\s*([\p{L}-]{2,24}(?:\s(?!(?:to|per|over|in|makes?|measures?)\s)[\p{L}-]{2,24}){0,3})${OVER}(?:\s*\/\s*${COUNT}\s?(?:cms?|ins?|inch(?:es)?|["”]))?\s*(?:,|;|\.|\/|&|and)?\s*(?:and\s+)?(${COUNT})\s*(rows?|rnds?|rounds?)(?:\s+(?:of|in)\s+[\p{L}-]{2,24})?${OVER}`,
  'iu',
);

/** "16 tr to 10cm, 8 rows to 10cm" as other gauges are said, and the length that its rows are counted over. */
function eachOver(words: string): { readonly words: string; readonly height: Quantity } | null {
  const found = EACH_OVER.exec(words);
  if (found === null) return null;
  const [whole, stitches, noun, width = '1', unit, rows, kind, height = '1', other] = found;
  const [across, up] = [numbersIn(`${width} ${unit}`)[0], numbersIn(`${height} ${other}`)[0]];
  if (across === undefined || up === undefined || across.unit === 'none' || up.unit === 'none') return null;
  if (up.values[0] == null) return null;
  return {
    words: words.replace(whole, `${stitches} ${noun} and ${rows} ${kind} = ${width} ${unit}`),
    height: { value: up.values[0], unit: up.unit },
  };
}

/** What short names are written out as, whichever market's they are. */
const FULL_NAMES: Readonly<Record<string, RegExp>> = {
  sc: /^single crochet$/iu,
  hdc: /^half double(?: crochet)?$/iu,
  dc: /^double crochet$/iu,
  htr: /^half treble(?: crochet)?$/iu,
  tr: /^trebles?(?: crochet)?$/iu,
};

/** A gauge in words: "16 hdc and 12 rows = 10 cm (4 in) with 5 mm hook, blocked"; null when it gives no stitches. */
export function gaugeIn(
  written: string,
  hooks: readonly Hook[],
  freshId: () => string,
): { readonly gauge: Gauge; readonly whole: boolean } | null {
  const apart = eachOver(written);
  const words = apart?.words ?? written;
  const found =
    /(\d{1,3}(?:\.\d+)?|\d{1,3}\s?½)\s*(sts?|stitches|(?!(?:cms?|mm|ins?|inch(?:es)?)\b)[\p{L}-]{2,24}(?:\s[\p{L}-]{2,24}){0,3}?)\.?\s*(?:,|and|&|x|×|by|\/|\+|to)\s*(\d{1,3}(?:\.\d+)?|\d{1,3}\s?½)\s*(?:rows?|rnds?|rounds?)/iu.exec(
      words,
    );
  const alone =
    found ??
    /(\d{1,3}(?:\.\d+)?|\d{1,3}\s?½)\s*(sts?\b|stitches|[sdh]{1,2}[ct]r?\b|htr\b|tr\b)/iu.exec(words);
  if (alone === null) return null;
  const after = words.slice(alone.index + alone[0].length);
  const spans = numbersIn(after).filter(
    ({ unit, values }) => (unit === 'cm' || unit === 'in') && values.length === 1,
  );
  const [width] = spans;
  if (width === undefined || width.values[0] === null || width.unit === 'none') return null;
  const over = { value: width.values[0]!, unit: width.unit };
  const stitches = numberOf(alone[1]!);
  const rows = found === null ? 0 : numberOf(found[3]!);
  if (stitches === null || rows === null || stitches === 0 || over.value === 0) return null;
  const noun = alone[2]!.trim();
  const named = /^(?:sts?|stitches)$/iu.test(noun)
    ? (/\b(?:in|of|over)\s+((?!(?:to|in)\b|\d)[\p{L}-]+(?:\s[\p{L}-]+){0,2}?)(?=\s*(?:$|[,.;(=]|with|using|on|to|measure))/iu.exec(
        words.replace(/\b(?:in|over)\s+\d/giu, ' '),
      )?.[1] ?? '')
    : noun.replace(/\bsts?$/iu, '').trim();
  const mm = /(\d{1,2}(?:[.,]\d{1,2})?)\s?mm\b/iu.exec(words)?.[1]?.replace(',', '.');
  const hook = mm === undefined ? hooks[0] : hooks.find((own) => own.mm === Number(mm));
  const rounds = /\b(?:rnds?|rounds?)\b/iu.test(found?.[0] ?? '');
  const gauge: Gauge = {
    id: freshId(),
    // Letters of the trade in capitals are its letters.
    pattern: (isTradeWord(named) ? named.toLowerCase() : named).slice(0, 200),
    stitches,
    rows: rows ?? 0,
    width: over,
    height: apart?.height ?? over,
    blocked: /\bblock/iu.test(words) && !/\b(?:un|not |before )block/iu.test(words),
    stretch: null,
    hook: hook?.id ?? null,
    rounds,
  };
  const other = words
    .replace(alone[0], ' ')
    .replace(
      /(?<!\p{L})(?:over|in|to|makes?|measures?|with|using|a|the|hook|square|sq|after|blocked|blocking|unblocked|approx(?:imately)?|gauge|tension|cm|mm|inch(?:es)?|ins?|equals?|each|by|x|US|size|rows?|rnds?|rounds?|and)\b|[\d.,;:()[\]/=×"”½¼¾-]+/giu,
      ' ',
    )
    .replace(named === '' ? /$^/u : named, ' ')
    .trim();
  // "hdc … in half double crochet": its name once more.
  const again = FULL_NAMES[named.toLowerCase()]?.test(other) ?? false;
  // A hook that the materials do not list stays in words, for the edit to find.
  const isKnown = mm === undefined || hook !== undefined;
  return { gauge, whole: (other === '' || again) && isKnown };
}
