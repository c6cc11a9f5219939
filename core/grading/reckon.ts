/**
 * Works a read formula out for one size: exact amounts in, one exact amount out, and a fact at the words
 * concerned where amounts do not go together. Where the values of lines come from is the caller's business.
 */
import type { Fact, FactValue, Span } from '../finding.ts';
import { type Rational, toCm, toNumber } from '../trade/units.ts';
import type { Formula, FormulaNode, NumberNode } from './formula.ts';
import {
  type Amount,
  add,
  amountData,
  bounded,
  compare,
  divide,
  type Misfit,
  multiply,
  round,
} from './value.ts';

/** What a line offers to a formula. */
export interface Offer {
  /** Null when the line has no value (its own facts say why) or none that is a number. */
  readonly amount: Amount | null;
  /** The kind of line, when it holds a schedule or a spread instead of a number. */
  readonly wordy: string | null;
  /** The length that a fitted line really makes; null for any other line. */
  readonly made: Amount | null;
  readonly isFitted: boolean;
}

export interface Reckoning {
  readonly amount: Amount | null;
  readonly facts: readonly Fact[];
  /** Lines without a value that this waits for, by name. */
  readonly waitsFor: readonly string[];
}

/** The value of a read formula; `offers` answers for each of its names. Null with a reason in every other case. */
export function reckon(formula: Formula, offers: (name: string) => Offer | null): Reckoning {
  if (!formula.read) return { amount: null, facts: [], waitsFor: [] };
  const sum = new Sum(offers);
  const amount = sum.of(formula.tree);
  return { amount, facts: sum.facts, waitsFor: [...sum.waitsFor] };
}

/** A number of a formula as an amount. */
export function amountOfNumber(node: {
  readonly value: Rational;
  readonly unit: NumberNode['unit'];
}): Amount {
  switch (node.unit) {
    case '%':
      return { dimension: 'percent', value: node.value.div(100) };
    case 'count':
      return { dimension: 'count', value: node.value };
    case 'none':
      return { dimension: 'ratio', value: node.value };
    default:
      return { dimension: 'length', value: toCm(node.value, node.unit) };
  }
}

class Sum {
  readonly facts: Fact[] = [];
  readonly waitsFor = new Set<string>();
  readonly #offers: (name: string) => Offer | null;

  constructor(offers: (name: string) => Offer | null) {
    this.#offers = offers;
  }

  of(node: FormulaNode): Amount | null {
    switch (node.kind) {
      case 'number':
        return this.#checked(bounded('ratio', node.value), node) && amountOfNumber(node);
      case 'line':
        return this.#line(node);
      case 'made':
        return this.#made(node);
      case 'negative': {
        const amount = this.of(node.node);
        return amount && { ...amount, value: amount.value.neg() };
      }
      case 'part': {
        const amount = this.of(node.node);
        return amount && this.#checked(bounded(amount.dimension, amount.value.mul(node.factor)), node);
      }
      case 'sum':
        return this.#sum(node);
      case 'product':
        return this.#product(node);
      case 'choice':
        return this.#choice(node);
      case 'rounded':
        return this.#rounded(node);
      case 'unread':
        return null;
    }
  }

  #line(node: FormulaNode & { kind: 'line' }): Amount | null {
    const offer = this.#offers(node.name);
    if (offer?.wordy) return this.#fact('formula-no-number', node, { name: node.name, kind: offer.wordy });
    if (!offer?.amount) this.waitsFor.add(node.name);
    return offer?.amount ?? null;
  }

  #made(node: FormulaNode & { kind: 'made' }): Amount | null {
    const offer = this.#offers(node.name);
    if (offer && !offer.isFitted) return this.#fact('formula-not-fitted', node, { name: node.name });
    if (!offer?.made) this.waitsFor.add(node.name);
    return offer?.made ?? null;
  }

  #sum(node: FormulaNode & { kind: 'sum' }): Amount | null {
    const amounts = node.terms.map((term) => this.of(term.node));
    let total = amounts[0] ?? null;
    let last = node.terms[0]!.node;
    for (let index = 1; index < amounts.length; index++) {
      const term = node.terms[index]!;
      const amount = amounts[index]!;
      if (!total || !amount) {
        total = null;
        continue;
      }
      const result = add(total, amount, term.minus);
      total =
        result === 'formula-mixed'
          ? this.#mixed({ total, first: node.terms[0]!.node, before: last }, amount, term.node, node)
          : this.#checked(result, { from: node.from, to: term.node.to });
      last = term.node;
    }
    return total;
  }

  /** Says it as a missing unit when the plain side is a bare number, else as two things that do not add. */
  #mixed(
    left: { total: Amount; first: FormulaNode; before: FormulaNode },
    right: Amount,
    rightNode: FormulaNode,
    node: Span,
  ): null {
    const bareRight = left.total.dimension === 'length' && isBare(rightNode);
    const bareLeft = right.dimension === 'length' && left.first === left.before && isBare(left.first);
    const bare = bareRight ? rightNode : bareLeft ? left.first : null;
    if (bare) return this.#missingUnit(bare, bareRight ? left.total : right);
    return this.#fact(
      'formula-mixed',
      { from: node.from, to: rightNode.to },
      { first: left.total.dimension, second: right.dimension },
    );
  }

  #missingUnit(node: FormulaNode, beside: Amount): null {
    const data = { number: bareNumber(node) ?? 0, ...amountData('beside', beside) };
    return this.#fact('formula-missing-unit', node, data);
  }

  #product(node: FormulaNode & { kind: 'product' }): Amount | null {
    const amounts = node.factors.map((factor) => this.of(factor.node));
    let total = amounts[0] ?? null;
    for (let index = 1; index < amounts.length; index++) {
      const factor = node.factors[index]!;
      const amount = amounts[index]!;
      if (!total || !amount) {
        total = null;
        continue;
      }
      const result = factor.divide ? divide(total, amount) : multiply(total, amount);
      const span =
        result === 'formula-divided-by-zero' ? factor.node : { from: node.from, to: factor.node.to };
      total = this.#checked(result, span);
    }
    return total;
  }

  #choice(node: FormulaNode & { kind: 'choice' }): Amount | null {
    const amounts = node.nodes.map((each) => this.of(each));
    let best = amounts[0] ?? null;
    for (let index = 1; index < amounts.length; index++) {
      const amount = amounts[index]!;
      if (!best || !amount) {
        best = null;
        continue;
      }
      const order = compare(amount, best);
      if (typeof order === 'string') {
        const bare = [node.nodes[index]!, node.nodes[index - 1]!].find(isBare);
        const length = [best, amount].find((each) => each.dimension === 'length');
        if (bare && length) return this.#missingUnit(bare, length);
        return this.#fact(order, node, { first: best.dimension, second: amount.dimension });
      }
      if (node.pick === 'smaller' ? order < 0 : order > 0) best = amount;
    }
    // A zero without a unit chosen among lengths is a length.
    const length = amounts.some((amount) => amount?.dimension === 'length');
    return best && length ? { dimension: 'length', value: best.value } : best;
  }

  #rounded(node: FormulaNode & { kind: 'rounded' }): Amount | null {
    const amount = this.of(node.node);
    if (!amount) return null;
    const result = round(amount, amountOfNumber(node.step), node.direction);
    if (result === 'formula-mixed' && amount.dimension === 'length' && isBare(node.step)) {
      return this.#missingUnit(node.step, amount);
    }
    const second = amountOfNumber(node.step).dimension;
    return result === 'formula-mixed'
      ? this.#fact(result, node, { first: amount.dimension, second })
      : this.#checked(result, result === 'formula-divided-by-zero' ? node.step : node);
  }

  #checked(result: Amount | Misfit, span: Span): Amount | null {
    return typeof result === 'string' ? this.#fact(result, span, {}) : result;
  }

  #fact(code: string, span: Span, data: Readonly<Record<string, FactValue>>): null {
    this.facts.push({ code, from: span.from, to: span.to, data });
    return null;
  }
}

/** The number of a node that is a plain number without a unit; null for anything else. */
function bareNumber(node: FormulaNode): number | null {
  if (node.kind === 'number') return node.unit === 'none' ? toNumber(node.value) : null;
  const inner = node.kind === 'negative' ? bareNumber(node.node) : null;
  return inner === null ? null : -inner;
}

const isBare = (node: FormulaNode) => bareNumber(node) !== null;
