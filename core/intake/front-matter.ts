/**
 * Everything of an old pattern but its rows: what the sections before and behind them say, in the forms of a pattern.
 * A line that fits no form becomes a note or a part of the description, and is told where that was not meant.
 */
import type { About, Gauge, Hook, Line, Notion, Size, Yarn } from '../document/pattern.ts';
import { levels } from '../trade/levels.ts';
import type { Terms } from '../trade/stitches.ts';
import type { DoubtShown } from './doubt.ts';
import { gaugeIn } from './gauges.ts';
import { hooksIn } from './hooks.ts';
import { COLOUR_LINE, itemsOf, type Kind, kindOf, listedBySize, notionIn, yarnsIn } from './materials.ts';
import { numbersIn } from './numbers.ts';
import { paragraphsOf } from './paragraphs.ts';
import type { PartName, Section } from './sections.ts';
import { intakeWords } from './sentences.ts';
import { areaIn, isLabels, labelsFirst, rangesIn, sameLabels, severalIn, sizesListed } from './size-lines.ts';
import { lineOf, type Measured, measuredIn, sizesFrom } from './sizes.ts';
import {
  abbreviationsIn,
  apartByName,
  type DefinedStitch,
  paragraphsByPair,
  specialsIn,
} from './word-lists.ts';
import { addYarns, bracketed, withAmounts } from './yarn-lists.ts';

export interface FrontMatter {
  readonly title: string;
  readonly about: Partial<Pick<About, 'designer' | 'description' | 'copyright' | 'contact' | 'care' | 'fit'>>;
  readonly level: About['level'] | null;
  readonly units: 'metric' | 'imperial';
  readonly sizes: readonly Size[];
  readonly lines: readonly Line[];
  readonly gauges: readonly Gauge[];
  readonly yarns: readonly Yarn[];
  readonly hooks: readonly Hook[];
  readonly notions: readonly Notion[];
  readonly abbreviations: Readonly<Record<string, string>>;
  readonly specials: readonly DefinedStitch[];
  readonly notes: readonly string[];
  readonly finishing: readonly string[];
  readonly doubts: readonly DoubtShown[];
}

export interface FrontOptions {
  readonly terms: Terms;
  readonly freshId: () => string;
  /** How many numbers the lists of the rows have. */
  readonly lists: number;
  /** What stands at the head of every page, which is the title; null where nothing does. */
  readonly heading: string | null;
  /** Title where the text has none. */
  readonly fallback: string;
}

/** Reads the sections that hold no rows. */
export function frontMatter(sections: readonly Section[], options: FrontOptions): FrontMatter {
  return new Front(sections, options).read();
}

const KIND_OF_PART: Partial<Record<PartName, Kind>> = { yarn: 'yarn', hook: 'hook', notions: 'notion' };

/** "small (large)", "Baby (Child, Adult)" at the end of what the pattern is called. */
const SIZES_IN_TITLE =
  /\b((?:extra |x-?)?small|newborn|baby|toddler|child)\s*\(((?:(?:extra |x-?)?(?:small|medium|large)|baby|toddler|child(?:ren)?|teen|adult)(?:,\s*(?:(?:extra |x-?)?(?:medium|large)|toddler|child(?:ren)?|teen|adult))*)\)/iu;

/** Longest line that is taken for a title. */
const LONGEST_TITLE = 120;

class Front {
  readonly #sections: readonly Section[];
  readonly #options: FrontOptions;
  readonly #notes: string[] = [];
  /** What the sizes say of how it is worn: "Recommended ease: 5–10 cm". */
  readonly #worn: string[] = [];
  /** Yarn and hooks among the sizes: "worsted cotton, 100 g, 4 mm hook" with no head of its own. */
  readonly #stray: string[] = [];
  readonly #doubts: DoubtShown[] = [];
  /** A level on a line of its own under the title: "Intermediate". */
  #levelAlone = '';

  constructor(sections: readonly Section[], options: FrontOptions) {
    this.#sections = sections;
    this.#options = options;
  }

  read(): FrontMatter {
    const { title, description, isGuessed } = this.#opening();
    const { sizes, lines } = this.#sizing(`${title} ${description.join(' ')}`);
    const materials = this.#materials(sizes);
    const gauges = this.#gauges(materials.hooks);
    const words = this.#words();
    const notes = this.#numberedNotes();
    const level = this.#level();
    this.#terms();
    if (title === '') this.#doubt('', intakeWords.noTitle(this.#options.fallback), '', '');
    else if (isGuessed) this.#doubt('', intakeWords.titleGuessed, 'Title', title);
    return {
      title: title === '' ? this.#options.fallback : title,
      about: {
        description: description.join(' '),
        designer: this.#joined('designer'),
        copyright: this.#joined('copyright'),
        contact: this.#joined('contact'),
        care: this.#joined('care'),
        fit: [...this.#worn, ...this.#paragraphs('fit')].join(' '),
      },
      level,
      units: this.#units(),
      sizes,
      lines,
      gauges,
      ...materials,
      ...words,
      notes: [...notes, ...this.#notes],
      finishing: this.#paragraphs('finishing'),
      doubts: this.#doubts,
    };
  }

  #doubt(node: string, why: string, where: string, words: string): void {
    this.#doubts.push({ node, why, where, words });
  }

  #of(part: PartName): readonly Section[] {
    return this.#sections.filter((section) => section.part === part);
  }

  #paragraphs(part: PartName): readonly string[] {
    return this.#of(part).flatMap(({ lines }) => paragraphsOf(lines));
  }

  #joined(part: PartName): string {
    return this.#paragraphs(part).join(' ');
  }

  /** Notes without the numbers of their list: "1. Ch 3 counts as first dc throughout." would read as a row. */
  #numberedNotes(): readonly string[] {
    const isReferredTo = this.#sections.some(({ lines }) =>
      lines.some((line) => /\bnotes?\s\d/iu.test(line)),
    );
    return this.#paragraphs('notes').map((words) =>
      isReferredTo ? words : words.replace(/^(?:\d{1,2}[.)]|[-–*])\s+/u, ''),
    );
  }

  /** The first line is the title, where it is short and no sentence; what follows describes. */
  #opening(): { title: string; description: readonly string[]; isGuessed: boolean } {
    const lines = this.#of('opening').flatMap(({ lines: own }) => [...own, '']);
    const { heading } = this.#options;
    // A newsletter's own head with its number is none of the pattern's.
    const isMasthead = (line: string) =>
      /\b(?:number|no\.?|issue|vol(?:ume)?\.?)\s*\d+(?!\d|[.:]?\s+\p{L}{3})/iu.test(line);
    const named = lines.findIndex((line) => /\p{L}/u.test(line) && !isMasthead(line));
    // "Reed Strap · Version 2" at the foot of every page is the title with more behind it.
    const repeats = named >= 0 && (heading ?? '').toLowerCase().startsWith(lines[named]!.toLowerCase());
    const at = heading === null || repeats ? named : -1;
    const first = (lines[at] ?? '').replace(/^[\s#*_=~]+|[\s#*_=~]+$/gu, '');
    const isTitle =
      at >= 0 && first.length <= LONGEST_TITLE && !/[.!?;,]$/u.test(first) && /\p{L}/u.test(first);
    // "No. 1417. PRIMROSE DOILY": the number of a leaflet, and then the name.
    const called = first.replace(/^(?:no|number|nr)\.?\s*\d+[.:]?\s+(?=\p{L}{3})/iu, '');
    const title =
      /^(?:title|name|pattern name|(?:free )?(?:crochet )?pattern)\s*:\s*(\S.*)$/iu.exec(called)?.[1] ??
      called;
    const numbered = called === first ? [] : [first.slice(0, first.length - called.length).trim()];
    const others = isTitle ? [...lines.slice(0, at), '', ...numbered, '', ...lines.slice(at + 1)] : lines;
    const isLevel = (line: string) => levels.some(({ name }) => name.toLowerCase() === line.toLowerCase());
    this.#levelAlone = others.find(isLevel) ?? '';
    const rest = paragraphsOf(others.filter((line) => !isLevel(line))).filter(
      (words) => !/^[\W_]+$/u.test(words),
    );
    return {
      title: isTitle ? title : (heading ?? ''),
      description: rest,
      isGuessed: isTitle && title.split(/\s+/u).length > 9,
    };
  }

  /** Labels first, then every measurement as a line of the sheet. */
  #sizing(about: string): { sizes: readonly Size[]; lines: readonly Line[] } {
    const labels: string[] = [];
    const measured: { readonly found: Measured; readonly words: string }[] = [];
    const loose: string[] = [];
    const heads: string[] = [];
    for (const { head, lines } of this.#of('sizes')) {
      heads.push(head);
      const isPlain =
        /^(?:\W*(?:(?:available|included|finished|to fit)\s*|[\p{L}'’]+\s)?siz(?:es?|ing)\b.{0,24}|\W*)$/iu.test(
          head,
        );
      const isToFit = /^\W*to fit\W*$/iu.test(head);
      const listed = labels.length === 0 ? sizesListed(lines.filter((line) => line !== '')) : null;
      if (listed !== null) labels.push(listed.labels);
      const all =
        listed === null
          ? paragraphsOf(lines, true)
          : [...listed.measured, ...paragraphsOf(listed.rest, true)];
      // "Circumference: 36 (44) cm. Height: 15 (18) cm.": the head is the name of the first.
      const isNamed = /^(?:chest|bust|length|width|height|circumference)$/iu.test(head);
      for (const each of all) {
        const words = isNamed && /^\d.*\.\s+\p{Lu}/u.test(each) ? `${head}: ${each}` : each;
        const own = /^(?:sizes?)\s*:\s*(\S.*)$/iu.exec(words)?.[1] ?? words;
        // "Metres: 600 (680, 760)" in a table of the sizes is an amount of yarn.
        const amount =
          /^(metres|meters|yards|yardage|balls|skeins|hanks|grams)(?: of yarn)?(?:\s*\([^()\d]*\))?\s*:\s*(\d.*?)\.?$/iu.exec(
            own,
          );
        if (amount !== null) {
          const unit = /^yard/iu.test(amount[1]!) ? 'yards' : amount[1]!.toLowerCase();
          this.#stray.push(`Yarn: ${amount[2]} ${/\p{L}$/u.test(amount[2]!) ? '' : unit}`.trim());
          continue;
        }
        if (/\bease\b/iu.test(own)) {
          // Ease is no measurement of the finished thing.
          this.#worn.push(/[.!?]$/u.test(own) ? own : `${own}.`);
          continue;
        }
        if (/\bhooks?\b|\d\s?g\b|^(?:yarns?|wool)\b.*\d.*\b(?:m|yds?|yards?|balls?|skeins?)\b/iu.test(own)) {
          this.#stray.push(own);
          continue;
        }
        const area = areaIn(own);
        if (area !== null) {
          measured.push(...area.map((found) => ({ found, words })));
          this.#doubt('', intakeWords.areaGuessed(own), 'Sizes', own);
          if (area.some(({ rest }) => /\p{L}{4}/u.test(rest.replace(/inches|approx\w*/giu, ''))))
            this.#notes.push(own);
          continue;
        }
        const several = severalIn(own);
        if (several !== null) {
          measured.push(...several.map((found) => ({ found, words })));
          continue;
        }
        const ranges = rangesIn(own);
        if (ranges !== null) {
          const whole = head === '' || isPlain ? words : `${head}: ${words}`;
          const called = (name: string) =>
            /^(?:from|up to)$/u.test(name) && head !== '' ? `${head} ${name}` : name;
          measured.push(
            ...ranges.map((found) => ({ found: { ...found, name: called(found.name) }, words: whole })),
          );
          continue;
        }
        const found = measuredIn(own);
        if (found !== null && found.rest.length < 60) {
          const name = found.name === '' ? head : found.name;
          const whole = head === '' || isPlain ? words : `${head}: ${words}`;
          measured.push({ found: { ...found, name }, words: whole });
          if (found.rest !== '') this.#notes.push(whole);
        } else if (labels.length === 0 && (isPlain || isToFit || all.length === 1) && isLabels(own))
          labels.push(own);
        else if (labels.length === 0 && labelsFirst(own) !== null) {
          labels.push(labelsFirst(own)!);
          this.#notes.push(own);
        } else if (labels[0] !== undefined && sameLabels(own, labels[0])) {
          // The sizes once more, over a table of them.
        } else loose.push(head === '' || isPlain ? words : `${head}: ${words}`);
      }
    }
    const sizes = this.#sizesOf(
      labels[0] ?? null,
      measured.map(({ found }) => found),
      `${about} ${heads.join(' ')}`,
    );
    const lines: Line[] = [];
    const taken = new Set<string>();
    for (const { found, words } of measured) {
      const made = lineOf(found, sizes, this.#options.freshId(), taken);
      if (made.line === null && !this.#notes.includes(words)) this.#notes.push(words);
      if (made.line !== null) {
        lines.push(made.line);
        taken.add(made.line.name.toLowerCase());
      }
      if (made.doubt !== null) this.#doubt(made.line?.id ?? '', made.doubt, 'Sizes', words);
    }
    this.#notes.push(...loose);
    return { sizes, lines };
  }

  #sizesOf(label: string | null, measured: readonly Measured[], about: string): readonly Size[] {
    const named = label === null ? null : sizesFrom(label, `${about} ${label}`);
    if (named !== null) return named;
    if (label !== null) this.#notes.push(label);
    // "Rope Basket, small (large)": the sizes in the title.
    const titled = SIZES_IN_TITLE.exec(about);
    const inTitle = titled === null ? null : sizesFrom(`${titled[1]} (${titled[2]})`, about);
    if (inTitle !== null && inTitle.length > 1) return inTitle;
    const several = measured.find(({ list }) => list.values.length > 1);
    if (several !== undefined) {
      const { list } = several;
      const unit = list.unit === 'none' ? '' : ` ${list.unit}`;
      const words = list.values.map((value) => `${value ?? '–'}${unit}`).join(', ');
      const sizes = sizesFrom(words, about);
      if (sizes !== null) {
        this.#doubt('', intakeWords.sizesFromMeasure(several.name), 'Sizes', words);
        return sizes;
      }
    }
    const { lists } = this.#options;
    if (lists > 1) this.#doubt('', intakeWords.countedSizes(lists), 'Sizes', '');
    const labels = lists > 1 ? Array.from({ length: lists }, (_, i) => `Size ${i + 1}`) : ['One size'];
    return labels.map((own, i) => ({
      id: `size-${i + 1}`,
      label: own,
      audience: 'other',
      chart: null,
      age: null,
    }));
  }

  #materials(sizes: readonly Size[]): Pick<FrontMatter, 'yarns' | 'hooks' | 'notions'> {
    const { freshId } = this.#options;
    const yarns: Yarn[] = [];
    const hooks: Hook[] = [];
    const notions: Notion[] = [];
    const stray: Section = { part: 'materials', head: '', lines: this.#stray.flatMap((line) => [line, '']) };
    for (const { part, lines } of [...this.#sections, stray]) {
      if (part !== 'materials' && part !== 'yarn' && part !== 'hook' && part !== 'notions') continue;
      let kind = KIND_OF_PART[part] ?? null;
      for (const written of paragraphsOf(lines, true)) {
        if (/^(?:stitch )?pattern\b|\bmultiple of \d/iu.test(written)) {
          this.#notes.push(written);
          continue;
        }
        const words = bracketed(written.replace(/^\d{1,2}[.)]\s+(?=\S)/u, ''), sizes.length);
        const own =
          /^(yarns?|wools?|hooks?|crochet hooks?|notions?|other|also|you will also need|extras?)\s*:\s*(.*)$/iu.exec(
            words,
          );
        if (own !== null)
          kind =
            /^[yw]\p{L}*s?$/iu.test(own[1]!) && !/^you/iu.test(own[1]!)
              ? 'yarn'
              : /hook/iu.test(own[1]!)
                ? 'hook'
                : 'notion';
        for (const item of itemsOf(listedBySize(own?.[2] ?? words, sizes))) {
          const isColour = yarns.length > 0 && COLOUR_LINE.test(item);
          const is = isColour ? 'yarn' : kindOf(item, kind);
          if (item.length > 190) this.#notes.push(item);
          const told = isColour ? item.replace(/\s[x×]\s?(\d{1,2})$/u, ', $1 balls') : item;
          if (is === 'yarn') addYarns(yarns, yarnsIn(told, sizes, freshId, yarns.at(-1) ?? null));
          else if (is === 'notion') notions.push(notionIn(item, sizes, freshId));
          else
            for (const { hook, doubt } of hooksIn(item, freshId)) {
              hooks.push(hook);
              if (doubt !== null) this.#doubt(hook.id, doubt, 'Materials', item);
            }
        }
        if (own !== null && part === 'materials') kind = null;
      }
    }
    return { yarns: withAmounts(yarns, sizes), hooks, notions };
  }

  #gauges(hooks: readonly Hook[]): readonly Gauge[] {
    const gauges: Gauge[] = [];
    for (const words of this.#paragraphs('gauge')) {
      const found = gaugeIn(words, hooks, this.#options.freshId);
      if (found === null) {
        const isOpen =
          /\b(?:not|isn['’]t)\s+(?:\p{L}+\s)?(?:important|essential|critical|crucial|needed|required)\b/iu.test(
            words,
          );
        const head = this.#options.terms === 'us' ? 'Gauge' : 'Tension';
        this.#notes.push(isOpen && !/\b(?:gauge|tension)\b/iu.test(words) ? `${head}: ${words}` : words);
        if (gauges.length === 0 && !isOpen) this.#doubt('', intakeWords.gaugeNotRead, 'Gauge', words);
        continue;
      }
      gauges.push(found.gauge);
      if (!found.whole) this.#notes.push(words);
      if (found.gauge.rows === 0) this.#doubt(found.gauge.id, intakeWords.gaugeWithoutRows, 'Gauge', words);
    }
    return gauges;
  }

  #words(): Pick<FrontMatter, 'abbreviations' | 'specials'> {
    const { own, rest } = abbreviationsIn(
      this.#of('abbreviations').flatMap(({ lines }) => paragraphsByPair(lines)),
    );
    const table: Record<string, string> = Object.create(null);
    for (const { short, meaning } of own) {
      if (short in table) {
        if (table[short] === meaning) continue;
        this.#doubt('', intakeWords.repeatedName(short), 'Abbreviations', `${short}: ${meaning}`);
        this.#notes.push(`${short}: ${meaning}`);
      } else table[short] = meaning;
    }
    const found = specialsIn(this.#of('specials').flatMap(({ lines }) => paragraphsOf(apartByName(lines))));
    this.#notes.push(...rest, ...found.rest);
    return { abbreviations: table, specials: found.specials };
  }

  #level(): About['level'] | null {
    const words = this.#joined('level') || this.#levelAlone;
    if (words === '') return null;
    const LEVELS: readonly (readonly [RegExp, About['level']])[] = [
      [/\b(?:advanced|complex|experienced|expert|difficult)\b/iu, 4],
      [/\bintermediate\b/iu, 3],
      [/\b(?:easy|confident beginner|adventurous beginner)\b/iu, 2],
      [/\b(?:basic|beginners?|novice|first project)\b/iu, 1],
    ];
    const named = LEVELS.find(([pattern]) => pattern.test(words))?.[1] ?? null;
    const plain = levels.some(
      ({ name }) => name.toLowerCase() === words.replace(/[.\s]+$/u, '').toLowerCase(),
    );
    if (!plain) this.#notes.push(`Level: ${words}`);
    return named;
  }

  /** What says only in which terms the pattern is written is said by the pattern's own terms. */
  #terms(): void {
    for (const words of this.#paragraphs('terms'))
      if (
        !/^\W*(?:this pattern (?:is written )?(?:in|uses)\s+|written in\s+)?(?:standard\s+)?(?:U\.?S\.?A?\.?|U\.?K\.?|american|british)(?:\s+(?:crochet\s+)?(?:terms|terminology))?\W*$/iu.test(
          words,
        )
      )
        this.#notes.push(words);
  }

  /** The units of the first length that the text gives. */
  #units(): 'metric' | 'imperial' {
    for (const { part, lines } of this.#sections) {
      if (part !== 'sizes' && part !== 'gauge') continue;
      for (const line of lines) {
        const length = numbersIn(line).find(({ unit }) => unit !== 'none');
        if (length !== undefined) return length.unit === 'in' ? 'imperial' : 'metric';
      }
    }
    return 'metric';
  }
}
