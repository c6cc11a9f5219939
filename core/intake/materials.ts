/**
 * Yarn, hooks and notions from the lines of an old pattern. Words that do not become a number of a form stay
 * in the name, the purpose or a note, so that nothing the maker wrote goes missing.
 */

import type { Notion, Size, Yarn } from '../document/pattern.ts';
import { BELOW_TWENTY } from '../notation/numerals.ts';
import { metresOfYards } from '../trade/units.ts';
import { yarnWeights } from '../trade/yarn-weights.ts';
import { numbersIn } from './numbers.ts';
import { squeezed } from './squeezed.ts';

/** One line of materials as items: what stands between semicolons, and a list of small things between commas. */
export function itemsOf(words: string): readonly string[] {
  return words
    .replace(/(\d),(\d{1,2})(?=\s?mm\b)/gu, '$1.$2')
    .split(
      /\s*;\s*(?![^([]*[)\]])|(?<=[\p{L})])(?<!\b(?:no|oz|ozs|yds?|ins?|approx|wt))\.\s+(?=[\p{Lu}\d])/iu,
    )
    .flatMap(hookApart)
    .flatMap((part) => {
      const isList =
        !HOOK.test(part) && !YARN.test(part.replace(NOT_YARNS, '')) && !/\([^)]*[,;]/u.test(part);
      return isList ? smallThings(part) : [part];
    })
    .map((part) => part.replace(/^[\s•*–-]+|[\s.;,]+$/gu, ''))
    .filter((part) => part !== '')
    .reduce<string[]>((items, part) => {
      const last = items.at(-1);
      // "DK yarn; 50 g = 120 m": measures of the yarn before them.
      if (last !== undefined && YARN.test(last) && ONLY_MEASURES.test(part))
        items[items.length - 1] = `${last}, ${part}`;
      else items.push(part);
      return items;
    }, []);
}

const ONLY_MEASURES =
  /^(?=.*\d)(?:[\d\s.,()[\]=/x×–-]|\b(?:g|grams?|m|metres|meters|yds?|yards?|per|balls?|skeins?|approx|about)\b)+$/iu;

/** "S: 300 m; M: 350 m; L: 400 m" as one list, "300 (350, 400) m", where it tells all sizes in their order. */
export function listedBySize(words: string, sizes: readonly Size[]): string {
  if (sizes.length < 2) return words;
  const escaped = sizes.map(({ label }) => label.replace(/[.*+?^${}()|[\]\\]/gu, '\\$&'));
  const UNIT = '(m|metres|meters|yds?|yards?|g|grams?|balls?|skeins?)';
  const list = new RegExp(
    escaped
      .map((label) => String.raw`(?:size\s)?${label}\s*[:=–-]\s*(\d{1,5})\s?${UNIT}?`)
      .join(String.raw`\s*[,;/]?\s*`),
    'iu',
  );
  const found = list.exec(words);
  if (found === null) return words;
  const values = sizes.map((_, i) => found[1 + 2 * i]!);
  const unit = found[2 * sizes.length] ?? found[2] ?? '';
  return words.replace(found[0], `${values[0]} (${values.slice(1).join(', ')}) ${unit}`.trim());
}

/** A yarn and the hook named after it: "400 m of DK yarn, 4.5 mm hook", "3 balls of Aran and a size H hook". */
const YARN_AND_HOOK =
  /^(.+?)(?:,\s+(?:and\s+)?|\s+and\s+)((?=[^,]*\bhooks?\b)(?:an?\s+|one\s+|(?:steel|aluminium|aluminum|wooden)\s+|(?:crochet\s+)?hooks?\b|size\s|US\s|[B-S]\b|\d)[^,]*)(?:,\s+(.+))?$/iu;

/** "3.5 mm hook, 2 safety eyes (8 mm), stuffing": a hook, and small things after it. */
const HOOK_AND_THINGS =
  /^([^,]*?\bhooks?\b[^,]*?)(?:,\s+|\s+and\s+)(.*\b(?:eyes?|stuffing|fib(?:re|er)fill|needles?|markers?|scissors|buttons?|pins?)\b.*)$/iu;

function hookApart(part: string): readonly string[] {
  const [, first, things = ''] = HOOK_AND_THINGS.exec(part) ?? [];
  if (first !== undefined && !YARN.test(first) && !HOOK.test(things)) return [first, things];
  const behind =
    /^(.*\bhooks?\b[^,]*?)\s+and\s+(an?\s[^,]*\b(?:markers?|needles?|buttons?|scissors)\b.*)$/iu.exec(part);
  if (behind !== null) return [...hookApart(behind[1]!), behind[2]!];
  const [, yarn = '', hook = '', more] = YARN_AND_HOOK.exec(part) ?? [];
  if (!YARN.test(yarn) || HOOK.test(yarn)) return [part];
  return more === undefined ? [yarn, hook] : [yarn, hook, more];
}

/** "2 safety eyes, 6 mm, stuffing and a needle": what stands between commas, a measure with its thing. */
function smallThings(part: string): readonly string[] {
  const things: string[] = [];
  for (const thing of part.split(/\s*,\s*(?![^([]*[)\]])(?:and\s+)?|\s+and\s+(?=\S+(?:\s\S+)?$)/u)) {
    const belongs = /^(?:or\b|\d[\d.½¼¾ x×–-]*\s?(?:mm|cm|in\b|inch|["”])|\d+$)/iu.test(thing);
    if (belongs && things.length > 0) things[things.length - 1] += `, ${thing}`;
    else things.push(thing);
  }
  return things;
}

const HOOK = /\bhooks?\b/iu;
const YARN =
  /\b(?:yarns?|wool|cotton|acrylic|alpaca|linen|mohair|bamboo|merino|silk|polyester|nylon|thread|worsted|aran|dk|double knitting|chunky|bulky|fingering|sport(?:weight)?|laceweight|\d{1,2}[- ]?ply|skeins?|balls?(?! of stuffing)|hanks?|main colou?r|contrast(?:ing)? colou?r)\b/iu;
const NOT_YARN =
  /\b(?:yarn|wool|darning|tapestry|sewing) needles?\b|\bneedles?\b|\bstuffing\b|\bfib(?:re|er)fill\b|\b(?:sewing|embroidery) thread\b/iu;

const SMALL_THING =
  /\b(?:markers?|scissors|buttons?|pins?|safety eyes?|beads?|ribbons?|zips?|zippers?|elastic|toggles?|snaps?)\b/iu;

const NOT_YARNS = new RegExp(NOT_YARN.source, 'giu');

export type Kind = 'hook' | 'yarn' | 'notion';

/** What an item of a list of materials is; `part` is the kind that its head says, if it says one. */
export function kindOf(item: string, part: Kind | null): Kind {
  if (HOOK.test(item) && !/\bhooks? and eyes?\b/iu.test(item)) return 'hook';
  if (NOT_YARN.test(item)) return 'notion';
  // Small things go on under the head of the yarn or the hook.
  if (part !== null && SMALL_THING.test(item) && !YARN.test(item)) return 'notion';
  if (part !== null) return part;
  return YARN.test(item) || /\b\d+\s?g\b/u.test(item) ? 'yarn' : 'notion';
}

/** Names of yarn weights in either market, the longest first. */
const WEIGHTS: readonly (readonly [string, number])[] = yarnWeights
  .flatMap(({ number, name, usual, usTypes, ukNames }) =>
    [usual.us, usual.uk, ...usTypes, ...ukNames, name].map((word) => [word.toLowerCase(), number] as const),
  )
  .filter(([word]) => !['baby', 'craft', 'rug', 'sock', 'light', 'fine', 'medium', 'lace'].includes(word))
  .sort((a, b) => b[0].length - a[0].length);

function weightIn(item: string): number | null {
  const lower = item.toLowerCase();
  const numbered =
    /(?:#|\bweight\s+|\bcategory\s+|\bcyc\s+)([0-7])\b|\(([0-7]),?\s*(?:lace|super fine|fine|light|medium|bulky|super bulky|jumbo)\)/iu.exec(
      item,
    );
  if (numbered !== null) return Number(numbered[1] ?? numbered[2]);
  const named = WEIGHTS.find(([word]) =>
    new RegExp(`(?<![\\p{L}\\d])${word.replace(/ /gu, '[ -]?')}(?![\\p{L}\\d])`, 'u').test(lower),
  );
  return named?.[1] ?? null;
}

/** "White (W) x 2" under a yarn: one of its colours, with its letter. */
export const COLOUR_LINE =
  /^\p{Lu}[\p{L}’' -]{1,24}\s\((?:[A-Z]|MC|CC\d?)\)(?:[\s,:–-]*(?:[x×]\s?)?\d{1,2}(?:\s?(?:balls?|skeins?))?)?$/u;

/** Yarns of an item: one, or one for each colour letter: "DK cotton, 1 ball in Slate (A) and 1 ball in Foam (B)". */
export function yarnsIn(
  item: string,
  sizes: readonly Size[],
  freshId: () => string,
  before: Yarn | null = null,
): readonly Yarn[] {
  // "4 balls of Cream (D)" behind the other colours is of their yarn.
  const isColour =
    COLOUR_LINE.test(item) ||
    (/\((?:[A-H]|MC|CC\d?)\)|\bcolou?r\s[A-H]\b|\b(?:of|in)\s[A-H]\s\p{Lu}/u.test(item) &&
      !/\d\s?g\b/u.test(item));
  const like = isColour ? before : null;
  const letters = [...item.matchAll(/\((?:[A-H]|MC|CC\d?)\)/gu)];
  const ends =
    letters.length > 1 ? letters.map(({ 0: letter, index }) => index + letter.length) : secondBalls(item);
  if (ends.length < 2) return [yarnIn(item, sizes, freshId, like)];
  // "2 balls each of Rust (A), Teal (B)": so many of every colour.
  const each = /\d{1,3}\s(?:balls?|skeins?|hanks?)\s+each\s+(?=of\b|in\b)/iu.exec(item);
  const yarns: Yarn[] = [];
  let from = 0;
  ends.forEach((end, i) => {
    const to = i === ends.length - 1 ? item.length : end;
    const part = item.slice(from, to).replace(/^[\s,;]+(?:and\s+)?/u, '');
    from = to;
    const own = yarnIn(part, sizes, freshId, yarns[0] ?? like);
    const isBare = each !== null && i > 0 && Object.keys(own.metres).length === 0;
    yarns.push(isBare ? { ...own, metres: yarns[0]!.metres } : own);
  });
  return yarns;
}

/** "8 balls cream, 4 balls navy": where each colour of a yarn ends; one end where there is one colour. */
function secondBalls(item: string): readonly number[] {
  const counts = [...item.matchAll(/\d{1,3}\s(?:balls?|skeins?|hanks?)\s(?:of\s|in\s)?(?=\p{L})/giu)];
  return [...counts.slice(1).map(({ index }) => index), item.length];
}

const FIBRE_NAME = String.raw`(?:[\p{L}-]+ ){0,2}(?:wool|merino|cotton|acrylic|alpaca|linen|mohair|bamboo|silk|polyester|polyamide|nylon|viscose|rayon|lyocell|cashmere|angora|hemp|ramie|flax|jute|elastane|microfib(?:re|er))`;
const FIBRE_PART = String.raw`\d{1,3}\s?% ?${FIBRE_NAME}(?: wool)?`;
/** "80% merino wool, 20 % nylon": fibres with their parts, in the maker's words. */
const FIBRE = new RegExp(
  String.raw`${FIBRE_PART}(?:(?:\s*[,/+&]\s*(?:and )?|\s+and\s+|\s+)${FIBRE_PART})*(?![\p{L}\d])`,
  'iu',
);

/** "DK weight cotton", "wool or acrylic": a fibre without its part. What is "a cotton" is a sort of yarn. */
const PLAIN_FIBRE =
  /(?<!\b(?:an?|any|not)\s)(?<![\p{L}-])((?:wool|merino|cotton|acrylic|alpaca|linen|mohair|bamboo|silk|cashmere|hemp)(?:(?:\s*[/&]\s*|[ -](?:and|or)?[ -]?)(?:wool|merino|cotton|acrylic|alpaca|linen|mohair|bamboo|silk|cashmere|hemp|blend))*)(?![\p{L}-])/iu;

/** Yarn of an item. Its words stay its name; the numbers of a ball and amounts by size are read beside. */
function yarnIn(item: string, sizes: readonly Size[], freshId: () => string, like: Yarn | null): Yarn {
  const ball =
    /(\d{2,4})\s?g(?:rams?)?\b\W{0,4}(?:[,/=]|per|is|approx\.?|ball|skein|\s)*\W{0,4}(\d{2,4})\s?(m|metres|meters|yds?|yards?)\b(?:\s?[/=]\s?\d{2,4}\s?(?:m|metres|meters|yds?|yards?)\b)?/iu.exec(
      item,
    );
  // "218 yd/200 m per 3½ oz/100 g": each in both units.
  const turned =
    /(?:\d{2,4}\s?(?:m|metres|meters|yds?|yards?)\s?[/=]\s?)?(\d{2,4})\s?(m|metres|meters|yds?|yards?)\b(?:[^\d]{1,24}?\d{1,2}(?:\.\d{1,2})?\s?[½¼¾]?\s?oz\b)?[^\d]{1,24}?(\d{2,4})\s?g(?:rams?)?\b/iu.exec(
      item,
    );
  // "50g balls of wool (170 m per ball)": told apart from one another.
  const weighed = /(\d{2,4})\s?g(?:rams?)?\s?(?:balls?|skeins?|hanks?)\b/iu.exec(item);
  const wound =
    /(\d{2,4})\s?(m|metres|meters|yds?|yards?)\b[^;()]{0,20}?(?:per|each|a|to (?:the|a))\s+(?:ball|skein|hank)\b/iu.exec(
      item,
    ) ??
    // "50g balls of wool (125m)": the length of the ball that was weighed.
    (weighed === null ? null : /[(,]\s?(\d{2,4})\s?(m|metres|meters|yds?|yards?)\)/iu.exec(item));
  const grams =
    ball !== null
      ? Number(ball[1])
      : turned !== null
        ? Number(turned[3])
        : weighed === null
          ? null
          : Number(weighed[1]);
  const [length, unit] =
    ball !== null
      ? [Number(ball[2]), ball[3]!]
      : turned !== null
        ? [Number(turned[1]), turned[2]!]
        : wound !== null
          ? [Number(wound[1]), wound[2]!]
          : [null, 'm'];
  const said = length === null ? null : /^y/iu.test(unit) ? metresOfYards(length) : length;
  const colour =
    /\b(?:[Cc]olou?r|[Ss]hade|[Yy]arn)\s([A-H])\b|\(([A-Z]|MC|CC\d?)\)|^([A-H]|MC|CC\d?)\s*[:=–-]\s|\b(?:of|in)\s([A-H])\s(?=\p{Lu})|\b(MC|CC\d?)\b/u.exec(
      item,
    );
  const ballMetres = said ?? like?.ballMetres ?? null;
  const ballGrams = grams ?? like?.ballGrams ?? null;
  const amount = metresIn(
    item.replace((ball ?? turned ?? wound)?.[0] ?? '', ' '),
    sizes,
    ballMetres,
    ballGrams,
  );
  const fibre = FIBRE.exec(item)?.[0] ?? PLAIN_FIBRE.exec(item)?.[1] ?? '';
  const key = colour?.slice(1).find((found) => found !== undefined) ?? null;
  return {
    id: freshId(),
    key,
    name: yarnName(item, [
      (ball ?? turned)?.[0] ?? wound?.[0].replace(/^[(,]|\)$/gu, '') ?? '',
      amount?.words ?? '',
      FIBRE.test(item) ? fibre : '',
      key === null ? '' : `(${key})`,
      /\b(?:of|in)\s[A-H]\s(?=\p{Lu})/u.exec(item)?.[0].slice(3) ?? '',
    ]).slice(0, 200),
    weight: weightIn(item) ?? like?.weight ?? null,
    fibre: fibre === '' ? (like?.fibre ?? '') : fibre,
    ballGrams,
    ballMetres,
    ballPrice: null,
    metres: amount?.metres ?? {},
  };
}

/** The maker's words without those that became numbers; all of them where nothing else is left. */
function yarnName(item: string, read: readonly string[]): string {
  const rest = squeezed(read.reduce((words, part) => (part === '' ? words : words.replace(part, ' ')), item));
  const name = rest.replace(/[\s,;]+(?:about|approx(?:imately)?\.?)$/iu, '');
  return /\p{L}{2}/u.test(name) ? name : item;
}

/** Metres for each size, from a list of balls or of lengths as long as the list of sizes; with its words. */
export function metresIn(
  item: string,
  sizes: readonly Size[],
  ballMetres: number | null,
  ballGrams: number | null,
): { readonly metres: Yarn['metres']; readonly words: string } | null {
  const counted =
    /^\s*(?:[x×]?\s*\d{2,4}\s?g(?:rams?)?\s+(?=balls?|skeins?|hanks?))?(balls?|skeins?|hanks?|x|m|metres|meters|yds?|yards?|g|grams?)\b(?:\s+(?:of|in|each|in total)\b)*/iu;
  const behind = /\b(balls?|skeins?|hanks?)\s*[:,-]?\s*$/iu;
  for (const list of numbersIn(item)) {
    const before = behind.exec(item.slice(0, list.from));
    const word = counted.exec(item.slice(list.to)) ?? (list.values.length > 1 ? before : null);
    // For one square of many it is not what the whole takes.
    const isForOne =
      word !== null && /^\s*(?:[Pp]er|for each|for every|a)\s/u.test(item.slice(list.to + word[0].length));
    // One number alone is for every size, where it counts balls or lengths.
    const isGrams = /^g/iu.test(word?.[1] ?? '');
    const many = list.values.length;
    if (word === null || isForOne || (many !== sizes.length && (many > 1 || isGrams))) continue;
    if (isGrams && (ballMetres === null || ballGrams === null)) continue;
    const isYards = /^y/iu.test(word[1] ?? '');
    const per = isGrams ? ballMetres! / ballGrams! : /^(?:b|s|h|x)/iu.test(word[1]!) ? ballMetres : 1;
    if (per === null) return null;
    const metres = sizes.flatMap(({ id }, i) => {
      const value = list.values[many === 1 ? 0 : i];
      if (value == null) return [];
      return [[id, isYards ? metresOfYards(value) : Math.round(value * per * 10) / 10] as const];
    });
    const words =
      word === before
        ? item.slice(list.from - word[0].length, list.to)
        : item.slice(list.from, list.to + word[0].length);
    return { metres: Object.fromEntries(metres), words };
  }
  return null;
}

/** "Three small buttons", "a stitch marker", "pair of safety eyes": the number in words, and what is counted. */
function countedInWords(item: string): { readonly count: number; readonly name: string } | null {
  const pair = /^(?:an?\s|one\s)?pairs?\s+of\s+(?=.*\beyes?\b)/iu.exec(item);
  if (pair !== null) return { count: 2, name: item.slice(pair[0].length) };
  const found = /^(\p{L}+)\s+(?=\p{L}|\d{1,2}\s?mm\b)/u.exec(item);
  const word = found?.[1]?.toLowerCase() ?? '';
  const count = word === 'a' || word === 'an' ? 1 : BELOW_TWENTY.indexOf(word) + 1;
  return found === null ||
    count === 0 ||
    /^(?:an?\s+)?(?:few|little|bit|pair|piece|length|small amount)\b/iu.test(item)
    ? null
    : { count, name: item.slice(found[0].length) };
}

/** "Locking stitch markers (4)", "Safety eyes: 6 mm (2 pcs)": the number in brackets behind its thing. */
function countedBehind(item: string): { readonly count: number; readonly name: string } | null {
  const found = /^(\p{L}.*?)\s*\((\d{1,3})(?:\s?(?:pcs?|pieces?))?\.?\)$/iu.exec(item);
  return found === null ? null : { count: Number(found[2]), name: found[1]! };
}

/** A notion of an item: "6 (7, 8) buttons, 20 mm", "12 mm safety eyes". */
export function notionIn(item: string, sizes: readonly Size[], freshId: () => string): Notion {
  const inWords = countedInWords(item) ?? countedBehind(item);
  const first = numbersIn(item)[0];
  const leads =
    first !== undefined &&
    first.from === 0 &&
    first.unit === 'none' &&
    /^\s+\p{L}|^\s*x\s/u.test(item.slice(first.to));
  const counts = leads ? first.values : [];
  const whole = counts.every((value) => value !== null && Number.isInteger(value));
  const amount =
    !leads || !whole
      ? inWords === null
        ? null
        : { all: inWords.count }
      : counts.length === 1
        ? { all: counts[0]! }
        : counts.length === sizes.length
          ? { each: Object.fromEntries(sizes.map(({ id }, i) => [id, counts[i]!])) }
          : null;
  const name =
    amount === null ? item : leads ? item.slice(first!.to).replace(/^\s*x?\s+/u, '') : inWords!.name;
  return {
    id: freshId(),
    name: name.slice(0, 200),
    amount,
    smallPart:
      /\b(?:buttons?|beads?|eyes?|sequins?|snaps?|press studs?|poppers?|bells?|toggles?|noses?)\b/iu.test(
        item,
      ),
    cord: /\b(?:cords?|ties?|drawstrings?|ribbons?|elastic|laces?)\b/iu.test(item),
    price: null,
  };
}
