/**
 * Reads the formulas of lines and the expressions of figures, in plain English: "body hip + ease",
 * "half of (finished hip − 2 cm)", "width of back stitches", "larger of 8 and row count ÷ 2, rounded to 2".
 * Yields a tree whose nodes point at the words, and facts about what could not be read. It never throws and
 * works nothing out: `reckon` does.
 */
import Fraction from 'fraction.js';
import type { Fact, FactValue, Span } from '../finding.ts';
import type { Rational } from '../trade/units.ts';
import { type Token, tokenise } from './tokens.ts';
import { isGluedHyphen, matchName, nearestName, type Vocabulary } from './vocabulary.ts';

export type Unit = 'cm' | 'mm' | 'in' | '%' | 'count' | 'none';

/** A number as it stands in a formula, with its unit. */
export interface NumberNode extends Span {
  readonly kind: 'number';
  readonly value: Rational;
  readonly unit: Unit;
}

export type FormulaNode =
  | NumberNode
  /** A line by its name, as the line is called. */
  | (Span & { readonly kind: 'line'; readonly name: string })
  /** "width of back stitches": what a fitted line really makes. */
  | (Span & { readonly kind: 'made'; readonly name: string })
  | (Span & { readonly kind: 'sum'; readonly terms: readonly { minus: boolean; node: FormulaNode }[] })
  | (Span & { readonly kind: 'product'; readonly factors: readonly { divide: boolean; node: FormulaNode }[] })
  | (Span & { readonly kind: 'negative'; readonly node: FormulaNode })
  /** "half of hip". */
  | (Span & { readonly kind: 'part'; readonly factor: Rational; readonly node: FormulaNode })
  | (Span & {
      readonly kind: 'choice';
      readonly pick: 'smaller' | 'larger';
      readonly nodes: readonly FormulaNode[];
    })
  | (Span & {
      readonly kind: 'rounded';
      readonly node: FormulaNode;
      readonly step: NumberNode;
      readonly direction: 'nearest' | 'up' | 'down';
    })
  /** What could not be read; a fact with the same span, or inside it, says why. */
  | (Span & { readonly kind: 'unread' });

/** A formula that was read. */
export interface Formula {
  readonly text: string;
  readonly tree: FormulaNode;
  readonly facts: readonly Fact[];
  /** The lines it needs, as they are called, each once, in the order met. */
  readonly names: readonly string[];
  /** Every place where it names a line: the words of the name alone. */
  readonly mentions: readonly (Span & { readonly name: string })[];
  /** Whether all of it was understood; only then can it be worked out. */
  readonly read: boolean;
}

/** Longest formula that is read, in UTF-16 units. */
export const LONGEST_FORMULA = 1000;

/** Deepest nesting of parentheses and of "half of", "smaller of". */
export const DEEPEST_FORMULA = 50;

const UNITS: ReadonlyMap<string, Unit> = new Map([
  ...['cm', 'cms', 'centimetre', 'centimetres', 'centimeter', 'centimeters'].map((w) => [w, 'cm'] as const),
  ...['mm', 'mms', 'millimetre', 'millimetres', 'millimeter', 'millimeters'].map((w) => [w, 'mm'] as const),
  ...['in', 'ins', 'inch', 'inches', '"'].map((w) => [w, 'in'] as const),
  ...['%', 'percent'].map((w) => [w, '%'] as const),
  ...['st', 'sts', 'stitch', 'stitches', 'row', 'rows', 'rnd', 'rnds', 'round', 'rounds'].map(
    (w) => [w, 'count'] as const,
  ),
]);

const PARTS: ReadonlyMap<string, Rational> = new Map([
  ['half', new Fraction(1, 2)],
  ['third', new Fraction(1, 3)],
  ['quarter', new Fraction(1, 4)],
  ['twice', new Fraction(2)],
]);

const CHOICES: ReadonlyMap<string, 'smaller' | 'larger'> = new Map([
  ['smaller', 'smaller'],
  ['smallest', 'smaller'],
  ['larger', 'larger'],
  ['largest', 'larger'],
]);

const SUM_WORDS: ReadonlyMap<string, boolean> = new Map([
  ['+', false],
  ['plus', false],
  ['-', true],
  ['minus', true],
]);

const PRODUCT_WORDS: ReadonlyMap<string, boolean> = new Map([
  ['*', false],
  ['x', false],
  ['times', false],
  ['/', true],
  ['divided', true],
]);

/** Words that end an unknown name. */
const STOPS: ReadonlySet<string> = new Set(['and', 'rounded', 'plus', 'minus', 'times', 'divided', 'x']);

/** Reads a formula over the known names. Total: any text yields a tree, with facts where it is not read. */
export function readFormula(text: string, vocabulary: Vocabulary): Formula {
  const whole: Span = { from: 0, to: text.length };
  if (text.length > LONGEST_FORMULA) {
    const fact: Fact = {
      ...whole,
      code: 'formula-too-long',
      data: { length: text.length, limit: LONGEST_FORMULA },
    };
    return { text, tree: { kind: 'unread', ...whole }, facts: [fact], names: [], mentions: [], read: false };
  }
  return new Reader(text, vocabulary).read();
}

class Reader {
  readonly #text: string;
  readonly #vocabulary: Vocabulary;
  readonly #tokens: readonly Token[];
  readonly #facts: Fact[] = [];
  readonly #mentions: (Span & { readonly name: string })[] = [];
  #at = 0;
  #depth = 0;

  constructor(text: string, vocabulary: Vocabulary) {
    this.#text = text;
    this.#vocabulary = vocabulary;
    this.#tokens = tokenise(text);
  }

  read(): Formula {
    let tree: FormulaNode;
    if (this.#tokens.length === 0) {
      tree = this.#unread('formula-empty', { from: 0, to: this.#text.length });
    } else {
      tree = this.#expression();
      if (this.#at < this.#tokens.length) tree = this.#leftover(tree);
    }
    const facts = this.#facts;
    const mentions = this.#mentions;
    const names = [...new Set(mentions.map(({ name }) => name))];
    return { text: this.#text, tree, facts, names, mentions, read: facts.length === 0 };
  }

  /** Sum, and "rounded to …" after it. */
  #expression(): FormulaNode {
    let node = this.#sum();
    for (;;) {
      const start = this.#at;
      if (this.#sign() === ',' && this.#word(1) === 'rounded') this.#at++;
      if (this.#word() !== 'rounded') {
        this.#at = start;
        return node;
      }
      node = this.#rounded(node);
    }
  }

  #rounded(node: FormulaNode): FormulaNode {
    const first = this.#take();
    const way = this.#word();
    const direction = way === 'up' || way === 'down' ? way : 'nearest';
    if (direction !== 'nearest') this.#at++;
    this.#skipWords('to', 'the', 'nearest', 'next');
    const number = this.#number();
    if (!number) {
      const last = this.#tokens[this.#at - 1] ?? first;
      return this.#unread('formula-rounding-unread', { from: first.from, to: last.to });
    }
    const span = { from: node.from, to: number.to };
    return { kind: 'rounded', node, step: number, direction, ...span };
  }

  #sum(): FormulaNode {
    const first = this.#product();
    const terms = [{ minus: false, node: first }];
    for (;;) {
      const minus = SUM_WORDS.get(this.#word() ?? this.#sign() ?? '');
      if (minus === undefined) break;
      this.#at++;
      terms.push({ minus, node: this.#product() });
    }
    if (terms.length === 1) return first;
    return { kind: 'sum', terms, from: first.from, to: terms.at(-1)!.node.to };
  }

  #product(): FormulaNode {
    const first = this.#signed();
    const factors = [{ divide: false, node: first }];
    for (;;) {
      const divide = PRODUCT_WORDS.get(this.#word() ?? this.#sign() ?? '');
      if (divide === undefined) break;
      this.#at++;
      if (divide) this.#skipWords('by');
      factors.push({ divide, node: this.#signed() });
    }
    if (factors.length === 1) return first;
    return { kind: 'product', factors, from: first.from, to: factors.at(-1)!.node.to };
  }

  #signed(): FormulaNode {
    let negative = false;
    const start = this.#tokens[this.#at];
    for (let sign = this.#sign(); sign === '-' || sign === '+'; sign = this.#sign()) {
      if (sign === '-') negative = !negative;
      this.#at++;
    }
    const node = this.#nested();
    return negative ? { kind: 'negative', node, from: start!.from, to: node.to } : node;
  }

  #nested(): FormulaNode {
    if (this.#depth >= DEEPEST_FORMULA) {
      const from = this.#tokens[this.#at]?.from ?? this.#text.length;
      this.#at = this.#tokens.length;
      const span = { from, to: this.#text.length };
      return this.#unread('formula-too-deep', span, { limit: DEEPEST_FORMULA });
    }
    this.#depth++;
    const node = this.#primary();
    this.#depth--;
    return node;
  }

  #primary(): FormulaNode {
    const token = this.#tokens[this.#at];
    if (!token) return this.#missingOperand();
    // A line may be called "width"; "width of back stitches" means what it says all the same.
    const head = token.text.toLowerCase();
    if ((head === 'width' || head === 'length') && this.#word(1) === 'of') return this.#made(0);
    const name = this.#name();
    if (name) return { kind: 'line', ...name };
    const number = this.#number();
    if (number) return number;
    if (token.kind === 'sign') return token.text === '(' ? this.#bracket() : this.#missingOperand();
    return this.#phrase() ?? this.#unknown();
  }

  #bracket(): FormulaNode {
    const open = this.#take();
    const node = this.#expression();
    const close = this.#tokens[this.#at];
    if (close?.kind === 'sign' && close.text === ')') {
      this.#at++;
      return { ...node, from: open.from, to: close.to };
    }
    if (close) return this.#leftover(node);
    if (this.#facts.length === 0) this.#fact('formula-bracket-open', { from: open.from, to: open.to });
    return { ...node, from: open.from };
  }

  /** "half of …", "width of …", "smaller of … and …". */
  #phrase(): FormulaNode | null {
    const token = this.#tokens[this.#at]!;
    const word = token.text.toLowerCase();
    const article = word === 'a' || word === 'one' || word === 'the' ? 1 : 0;
    const head = article ? (this.#word(1) ?? '') : word;
    const part = PARTS.get(head);
    if (part) {
      this.#at += article + 1;
      this.#skipWords('of', 'the');
      const node = this.#nested();
      return { kind: 'part', factor: part, node, from: token.from, to: node.to };
    }
    if ((head === 'width' || head === 'length') && this.#word(article + 1) === 'of')
      return this.#made(article);
    const pick = CHOICES.get(head);
    if (pick && this.#word(article + 1) === 'of') {
      this.#at += article + 2;
      return this.#choice(pick, token);
    }
    if (word === 'the' && this.#word(1)) {
      this.#at++;
      return this.#nested();
    }
    return null;
  }

  #made(article: number): FormulaNode {
    const first = this.#take();
    this.#at += article + 1;
    this.#skipWords('the');
    const name = this.#name();
    if (!name) return this.#tokens[this.#at]?.kind === 'word' ? this.#unknown() : this.#missingOperand();
    return { kind: 'made', name: name.name, from: first.from, to: name.to };
  }

  #choice(pick: 'smaller' | 'larger', first: Token): FormulaNode {
    const nodes = [this.#sum()];
    for (;;) {
      if (this.#word() === 'and') this.#at++;
      else if (this.#sign() === ',' && this.#word(1) !== 'rounded') {
        this.#at++;
        this.#skipWords('and');
      } else break;
      nodes.push(this.#sum());
    }
    const span = { from: first.from, to: nodes.at(-1)!.to };
    if (nodes.length < 2) return this.#unread('formula-choice-of-one', span, { pick });
    return { kind: 'choice', pick, nodes, ...span };
  }

  #name(): (Span & { readonly name: string }) | null {
    const match = matchName(this.#vocabulary, this.#tokens, this.#at);
    if (!match) return null;
    const from = this.#tokens[this.#at]!.from;
    this.#at = match.end;
    const found = { name: match.name, from, to: this.#tokens[match.end - 1]!.to };
    this.#mentions.push(found);
    return found;
  }

  #number(): NumberNode | null {
    const token = this.#tokens[this.#at];
    if (token?.kind !== 'number') return null;
    this.#at++;
    const next = this.#tokens[this.#at];
    let unit = next && next.kind !== 'number' ? UNITS.get(next.text.toLowerCase()) : undefined;
    if (unit) this.#at++;
    else if (this.#word() === 'per' && this.#word(1) === 'cent') {
      unit = '%';
      this.#at += 2;
    }
    const to = this.#tokens[this.#at - 1]!.to;
    return { kind: 'number', value: token.value, unit: unit ?? 'none', from: token.from, to };
  }

  /**
   * Words that are no known name, up to the next operator. A hyphen is taken for part of the name when some
   * known name is near the whole ("bdoy-hip"), else for a minus before a name that is known ("bdoy-ease").
   */
  #unknown(): FormulaNode {
    const start = this.#at;
    let cut: number | null = null;
    for (this.#at++; this.#at < this.#tokens.length; this.#at++) {
      const token = this.#tokens[this.#at]!;
      if (isGluedHyphen(this.#tokens, this.#at)) {
        if (matchName(this.#vocabulary, this.#tokens, this.#at + 1)) cut ??= this.#at;
      } else if (token.kind === 'sign' || STOPS.has(token.text.toLowerCase())) break;
    }
    const words = () => this.#text.slice(this.#tokens[start]!.from, this.#tokens[this.#at - 1]!.to);
    let nearest = this.#nearest(words());
    if (nearest === null && cut !== null) {
      this.#at = cut;
      nearest = this.#nearest(words());
    }
    const span = { from: this.#tokens[start]!.from, to: this.#tokens[this.#at - 1]!.to };
    return this.#unread('formula-unknown-name', span, { name: words(), nearest });
  }

  /** Looked for only a few times: a long text without one known name must stay quick. */
  #nearest(name: string): string | null {
    return this.#facts.length < 5 ? nearestName(this.#vocabulary, name) : null;
  }

  /** Something should stand here: at the end of the text, or before an operator or a closing bracket. */
  #missingOperand(): FormulaNode {
    const token = this.#tokens[this.#at];
    const before = this.#tokens[this.#at - 1];
    if (token && !')*/,'.includes(token.text)) {
      this.#at++;
      return this.#unread('formula-unread', token, { found: token.text });
    }
    const at = before ?? token ?? { from: 0, to: 0 };
    const after = before ? this.#text.slice(before.from, before.to) : null;
    return this.#unread('formula-operand-missing', { from: at.from, to: at.to }, { after });
  }

  /** What follows a whole expression without an operator. Everything to the end is left unread. */
  #leftover(node: FormulaNode): FormulaNode {
    const token = this.#tokens[this.#at]!;
    const span = { from: token.from, to: this.#text.length };
    if (token.text === ')') this.#fact('formula-bracket-close', { from: token.from, to: token.to });
    else if (token.kind === 'sign' && token.text !== '(') {
      this.#fact('formula-unread', span, { found: this.#text.slice(token.from) });
    } else {
      const before = this.#text.slice(node.from, node.to);
      this.#fact('formula-operator-missing', span, { before, after: this.#text.slice(token.from) });
    }
    this.#at = this.#tokens.length;
    return { kind: 'unread', from: node.from, to: this.#text.length };
  }

  #word(ahead = 0): string | null {
    const token = this.#tokens[this.#at + ahead];
    return token?.kind === 'word' ? token.text.toLowerCase() : null;
  }

  #sign(): string | null {
    const token = this.#tokens[this.#at];
    return token?.kind === 'sign' ? token.text : null;
  }

  #take(): Token {
    return this.#tokens[this.#at++]!;
  }

  #skipWords(...words: readonly string[]): void {
    for (let word = this.#word(); word !== null && words.includes(word); word = this.#word()) this.#at++;
  }

  #fact(code: string, span: Span, data: Readonly<Record<string, FactValue>> = {}): void {
    this.#facts.push({ code, from: span.from, to: span.to, data });
  }

  #unread(code: string, span: Span, data: Readonly<Record<string, FactValue>> = {}): FormulaNode {
    this.#fact(code, span, data);
    return { kind: 'unread', from: span.from, to: span.to };
  }
}
