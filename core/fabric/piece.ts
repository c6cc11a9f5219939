/**
 * Works the written rows of a piece in the order of their numbers: ranges, lists of rows, "rep Rows 2 and 3",
 * even rows, shaping told in words. Keeps the history that later rows refer to. One `PieceWork` per piece and
 * size; the study and the plain-text report both drive it. Sentences are not made here.
 */
import type { Fact, Span } from '../finding.ts';
import type {
  AsPiece,
  Even,
  Item,
  RowNumbers,
  RowsAgain,
  RowsRef,
  RowTree,
  Shaping,
} from '../notation/tree.ts';
import { amountOf, type EarlierRow, type Env, type Figures } from './env.ts';
import { type Fabric, type Opening, plainFabric, sameFabric, type Tally, tally } from './fabric.ts';
import { isWrong, type Worked, workedAgain, workRow } from './row.ts';
import { checkStated } from './stated.ts';

/** Rows of a piece beyond which it is not worked further. */
export const MOST_ROWS = 20_000;

/** How a row is worked; the study passes one that remembers. */
export type RowWorker = (row: RowTree, below: Fabric | null, env: Env, figures: Figures) => Worked;

/** A written row with what its figures are worth in this size. */
export interface Written {
  readonly row: RowTree;
  readonly figures: Figures;
  /** The row worked here is not the first working of its words: the counts stated in it are not for it. */
  readonly again?: true;
}

/** What a written row came to, after its last working. */
export interface RowResult {
  readonly tally: Tally | null;
  readonly repeats: number | null;
  readonly facts: readonly Fact[];
  /** Numbers of the first and last row that it made; null when it made none that is numbered. */
  readonly first: number | null;
  readonly last: number | null;
  /** Rows worked. */
  readonly times: number;
  readonly fabric: Fabric | null;
}

/** A row as it was really worked, for who wants every row of a piece and not only what its words came to. */
export interface SeenRow {
  readonly row: RowTree;
  readonly figures: Figures;
  readonly env: Env;
  readonly below: Fabric | null;
  readonly worked: Worked;
  readonly number: number | null;
}

/** Told of each row when a piece is worked. Rows that make nothing are not told. */
export interface RowWatcher {
  readonly row: (seen: SeenRow) => void;
  /** The last `rows` rows are made `times` more, each leaving what it found. */
  readonly again: (rows: number, times: number) => void;
  /** Rows that the text gives no words for: only what they leave is known. */
  readonly told: (rows: number, before: Fabric, after: Fabric) => void;
}

interface Done {
  readonly written: Written;
  readonly number: number | null;
}

/** The rows of a piece that others may refer to ("work as for Back"). */
export interface PieceRecord {
  readonly name: string;
  readonly rows: readonly Done[];
}

import {
  alongEdge,
  distinct,
  mainBase,
  parted,
  plainRow,
  rowsNamed,
  unnamed,
  usesEdge,
} from './whole-rows.ts';

/** Where the work of a piece stands between two written rows, but for the rows that later ones may refer to. */
export interface Standing {
  readonly fabric: Fabric | null;
  readonly number: number;
  readonly rows: number;
  readonly foundation: number;
  /** A foundation chain has been made and not been worked into. */
  readonly unworkedChain: boolean;
  /** How many openings and settlings there are by now. */
  readonly openings: number;
  readonly settlings: number;
}

/** What a row's own count settled about its turning chain. */
export type Settling = readonly [row: RowTree, counts: boolean];

/** Is the row numbered otherwise in one size than in another? */
function variesBySize(numbers: RowNumbers): boolean {
  const first = numbers.kind === 'one' ? numbers.number : numbers.kind === 'range' ? numbers.first : null;
  return first?.kind === 'sizes' && new Set(first.values).size > 1;
}

export class PieceWork {
  fabric: Fabric | null;
  /** Number of the last numbered row. */
  number = 0;
  /** Rows worked, numbered or not, the foundation apart. */
  rows = 0;
  foundation = 0;
  private unworkedChain = false;
  /** Whether the numbers so far are of rows or of rounds. */
  private counting: string | null = null;
  /** Number last taken by a row for other sizes. */
  private passed: number | null = null;
  /** The last entry had no label of its own. */
  private loose = false;
  readonly openings: Opening[] = [];
  /** What was settled so far, in order. */
  readonly settlings: Settling[] = [];
  /** Rows that later ones may refer to. */
  private readonly history: Done[] = [];
  /** The same with what only begins the piece: what another piece works that is made as this one. */
  private readonly course: Done[] = [];
  private readonly byNumber = new Map<number, Written>();
  private readonly fabrics = new Map<number, Fabric>();
  private readonly ahead = new Map<number, { written: Written; entry: number }>();
  private readonly onward: { from: number; step: number; written: Written; entry: number }[] = [];
  private readonly env: Env;
  /** What a row's own count settled about its turning chain, for when it is worked again. */
  private readonly settled = new Map<RowTree, boolean>();

  constructor(
    start: Fabric | null,
    env: Env,
    private readonly worker: RowWorker = workRow,
    private readonly others: ReadonlyMap<string, PieceRecord> = new Map(),
    private readonly watcher: RowWatcher | null = null,
  ) {
    this.fabric = start;
    this.env = env;
  }

  standing(): Standing {
    const { fabric, number, rows, foundation, unworkedChain } = this;
    const [openings, settlings] = [this.openings.length, this.settlings.length];
    return { fabric, number, rows, foundation, unworkedChain, openings, settlings };
  }

  /**
   * Goes on from where an earlier working of the same rows stood, which made these openings and settlings. Rows
   * that refer to earlier ones will not find them, so a piece with such rows is worked whole.
   */
  resume(from: Standing, openings: readonly Opening[], settlings: readonly Settling[]): void {
    this.fabric = from.fabric;
    this.number = from.number;
    this.rows = from.rows;
    this.foundation = from.foundation;
    this.unworkedChain = from.unworkedChain;
    for (let i = 0; i < from.openings; i++) this.openings.push(openings[i]!);
    for (let i = 0; i < from.settlings; i++) this.settle(...settlings[i]!);
  }

  private settle(row: RowTree, counts: boolean): void {
    if (this.settled.get(row) === counts) return;
    this.settled.set(row, counts);
    this.settlings.push([row, counts]);
  }

  tallyOf(fabric: Fabric): Tally {
    return tally(fabric);
  }

  record(name: string): PieceRecord {
    return { name, rows: this.course };
  }

  /** The env of the row to come: what the piece so far adds. */
  private envNow(only: readonly number[] | null): Env {
    return { ...this.env, rowEnds: this.rows, foundation: this.foundation, only, of: this.env };
  }

  /** The rows before the row below that this one says it works into. */
  private earlier(row: RowTree, numbered: boolean): Env['earlier'] {
    const here = this.number + (numbered ? 1 : 0);
    const found = new Map<number, EarlierRow>();
    for (const n of rowsNamed(row)) {
      const fabric = this.fabrics.get(n);
      if (fabric === undefined || n >= this.number) continue;
      found.set(n, { fabric, turned: fabric.form === 'flat' && (here - n) % 2 === 1 });
    }
    return found.size > 0 ? found : null;
  }

  /** Works one row once. `span` moves its facts, for a row worked again at other words. */
  private once(
    written: Written,
    only: readonly number[] | null,
    numbered: boolean,
    span: Span | null,
  ): Worked {
    const earlier = this.earlier(written.row, numbered);
    const lean =
      usesEdge(written.row) || earlier !== null
        ? { ...this.envNow(only), earlier }
        : only === null
          ? this.env
          : { ...this.env, only, of: this.env };
    let own = written.row;
    let worked = this.worker(own, this.fabric, lean, written.figures);
    if (span !== null && isWrong(worked)) {
      // Its names are those of its first working; over other stitches it goes on stitch by stitch.
      const other = this.worker(unnamed(written.row), this.fabric, lean, written.figures);
      const note: Fact = { code: 'names-not-followed', from: span.from, to: span.to, data: {} };
      if (!isWrong(other)) {
        worked = { ...other, facts: [...other.facts, note] };
        own = unnamed(written.row);
      }
    }
    const below = this.fabric;
    this.fabric = worked.fabric;
    if (worked.foundation > 0) {
      this.foundation = worked.foundation;
      this.unworkedChain = true;
    }
    if (!worked.idle) {
      // Foundation stitches have the chains of their feet for an edge.
      const feet = this.rows === 0 && [...worked.tally.byKind.keys()].every((id) => id.startsWith('fnd.'));
      if (feet && this.foundation === 0) this.foundation = worked.tally.stitches;
      this.rows += 1;
      if (this.unworkedChain) {
        // Chains that only turn are no part of the edge that can be worked along later.
        this.foundation = Math.min(this.foundation, worked.tally.stitches + worked.tally.chains);
        this.unworkedChain = false;
      }
    }
    const counted =
      numbered && !(worked.idle && worked.foundation > 0 && written.row.label?.numbers === null);
    if (counted) {
      this.number += 1;
      this.byNumber.set(this.number, written);
      this.fabrics.set(this.number, worked.fabric);
    }
    this.env.trace?.worked(worked.trace, counted ? this.number : null);
    if (!worked.idle || worked.foundation > 0) {
      const number = counted ? this.number : null;
      this.watcher?.row({ row: own, figures: written.figures, env: lean, below, worked, number });
    }
    this.did(written, numbered, !worked.idle || numbered);
    for (const opening of worked.openings) this.openings.push(opening);
    if (worked.settled !== null) this.settle(written.row, worked.settled);
    if (span === null || worked.facts.length === 0) return worked;
    const row = numbered ? this.number : null;
    return {
      ...worked,
      facts: worked.facts.map((fact) => ({
        ...fact,
        from: span.from,
        to: span.to,
        data: { ...fact.data, row },
      })),
    };
  }

  /** The row for another working: the counts stated in it belong to the first. */
  private repeated(written: Written): Written {
    if (written.again) return written;
    const row = workedAgain(written.row, this.settled.get(written.row) ?? null);
    return { row, figures: written.figures, again: true };
  }

  private result(
    facts: readonly Fact[],
    worked: Worked | null,
    first: number | null,
    rowsBefore: number,
  ): RowResult {
    return {
      tally:
        worked !== null && worked.fabric === this.fabric
          ? worked.tally
          : this.fabric === null
            ? null
            : tally(this.fabric),
      repeats: worked?.repeats ?? null,
      facts,
      first,
      last: first === null ? null : this.number,
      times: this.rows - rowsBefore,
      fabric: this.fabric,
    };
  }

  /**
   * Works the written rows in order. Answers one result per entry; a row left for later by its number ("Rows
   * 4, 6 and 8") has the result of its last working.
   */
  workAll(
    entries: readonly Written[],
    only: (row: RowTree) => readonly number[] | null | 'none',
  ): readonly RowResult[] {
    const results: (RowResult | null)[] = entries.map(() => null);
    entries.forEach((written, entry) => {
      const sizes = only(written.row);
      if (sizes === 'none') {
        this.passBy(written);
        results[entry] = {
          tally: null,
          repeats: null,
          facts: [],
          first: null,
          last: null,
          times: 0,
          fabric: this.fabric,
        };
        return;
      }
      this.workEntry(written, entry, sizes, results);
    });
    return results.map(
      (result) =>
        result ?? { tally: null, repeats: null, facts: [], first: null, last: null, times: 0, fabric: null },
    );
  }

  /** A row for other sizes still takes its number, so that the rows after it are numbered alike in all. */
  private passBy(written: Written): void {
    const numbers = written.row.label?.numbers ?? null;
    if (numbers === null || numbers.kind === 'onward' || numbers.kind === 'list') return;
    const last = this.numbersOf(numbers, written.figures).at(-1);
    if (last === undefined || last <= this.number) return;
    this.number = last;
    this.passed = last;
  }

  /** Works one written row that stands for itself: no label of its own, no other sizes. */
  workOne(written: Written): RowResult {
    const { label } = written.row;
    const numbered =
      label !== null && (label.kind === 'next' || label.kind === 'row' || label.kind === 'round');
    return this.workHere(written, null, numbered ? 1 : null, this.rows);
  }

  private workEntry(
    written: Written,
    entry: number,
    only: readonly number[] | null,
    results: (RowResult | null)[],
  ): void {
    const label = written.row.label;
    const numbers = label?.numbers ?? null;
    const rowsBefore = this.rows;
    const unlabelled = this.loose;
    this.loose = label === null && this.history.length > 0;
    if (numbers === null || label === null) {
      const numbered =
        label !== null && (label.kind === 'next' || label.kind === 'row' || label.kind === 'round');
      const several = label?.rows === undefined ? 1 : (amountOf(label.rows, this.env, written.figures) ?? 1);
      const wantedRows = Math.max(1, Math.min(several, MOST_ROWS));
      results[entry] = this.workHere(written, only, numbered ? wantedRows : null, rowsBefore);
      return;
    }
    const facts: Fact[] = [];
    const wanted = this.numbersOf(numbers, written.figures);
    if (wanted.length === 0) {
      results[entry] = {
        tally: null,
        repeats: null,
        facts,
        first: null,
        last: null,
        times: 0,
        fabric: this.fabric,
      };
      return;
    }
    if (numbers.kind === 'onward') {
      this.onward.push({ from: wanted[0]!, step: numbers.step, written, entry });
    }
    if (numbers.kind === 'list') {
      for (const n of wanted) this.ahead.set(n, { written, entry });
      const reached = this.runAhead(results, only);
      if (!reached && results[entry] === null && wanted[0]! > this.number + 1) {
        // Its rows come later, between others still to be read; nothing to work yet.
        results[entry] = {
          tally: null,
          repeats: null,
          facts: [],
          first: null,
          last: null,
          times: 0,
          fabric: this.fabric,
        };
      }
      return;
    }
    const first = wanted[0]!;
    this.runAhead(results, only, first);
    // Rounds after rows (a border, a brim) are counted from 1 again, and so are rows after rounds.
    const back = this.fabric?.rest != null && written.row.items.some((item) => item.type === 'attach');
    // A row along the edge begins another part of the piece.
    const side = this.rows > 0 && alongEdge(written.row);
    const own = (unlabelled || side || label.part === true) && first === 1;
    const cut = this.fabric?.fastened === true || back || own;
    // A row for other sizes took the number, and here it is given again.
    const again = this.passed === first;
    const afresh = cut || (this.counting !== null && this.counting !== label.kind && first === 1);
    this.counting = label.kind;
    // "Row 2 (2, 3):" where the numbers differ by size, one that a size leaves out is a row that it has not.
    const leavesOut = first > this.number + 1 && variesBySize(numbers);
    if (!afresh && !again && !leavesOut && first !== this.number + 1 && (this.number > 0 || first < 1)) {
      if (this.history.length > 0) {
        facts.push({
          code: 'row-number-out-of-order',
          from: numbers.from,
          to: numbers.to,
          data: { number: first, expected: this.number + 1 },
        });
      }
    }
    this.number = first - 1;
    const result = this.workHere(written, only, wanted.length, rowsBefore);
    results[entry] = { ...result, facts: [...facts, ...result.facts] };
    this.runAhead(results, only);
  }

  /** Works rows that earlier entries announced, as long as they are next; up to `before` exclusive. */
  private runAhead(
    results: (RowResult | null)[],
    only: readonly number[] | null,
    before = Number.POSITIVE_INFINITY,
  ): boolean {
    let ran = false;
    while (this.number + 1 < before && this.rows < MOST_ROWS) {
      const next = this.number + 1;
      const listed = this.ahead.get(next);
      const steady = this.onward.findLast((o) => next >= o.from && (next - o.from) % o.step === 0);
      const found = listed ?? steady;
      if (found === undefined) break;
      if (listed === undefined && before === Number.POSITIVE_INFINITY && next !== steady!.from) break;
      this.ahead.delete(next);
      const rowsBefore = this.rows;
      // Counts stated for several rows together are those of the last of them.
      const more =
        listed !== undefined && [...this.ahead.values()].some((other) => other.entry === listed.entry);
      const now = more ? { ...found.written, row: workedAgain(found.written.row, null) } : found.written;
      const result = this.workHere(now, only, 1, rowsBefore);
      const earlier = results[found.entry];
      results[found.entry] = {
        ...result,
        facts: distinct([...(earlier?.facts ?? []), ...result.facts]),
        first: earlier?.first ?? result.first,
        times: (earlier?.times ?? 0) + result.times,
      };
      ran = true;
    }
    return ran;
  }

  /** Works an entry now: `span` rows by its number, or null when it has none. */
  private workHere(
    written: Written,
    only: readonly number[] | null,
    rowsWanted: number | null,
    rowsBefore: number,
  ): RowResult {
    const first = rowsWanted === null ? null : this.number + 1;
    const { own, whole } = parted(written.row);
    if (whole.length > 0) {
      const facts: Fact[] = [];
      let worked: Worked | null = null;
      if (own !== null) {
        worked = this.once({ ...written, row: own }, only, rowsWanted !== null, null);
        facts.push(...worked.facts);
      }
      whole.forEach((item, i) => {
        const last = i === whole.length - 1;
        const rest =
          rowsWanted !== null && rowsWanted > 1 && last ? rowsWanted - (this.rows - rowsBefore) : null;
        worked = this.directive(item, written, only, rest, facts, own !== null) ?? worked;
      });
      facts.push(...this.statedFacts(written, only));
      // A row told only by its number counts as that number even when it could not be worked.
      if (rowsWanted !== null && this.rows === rowsBefore) this.number += rowsWanted;
      return this.result(distinct(facts), worked, first, rowsBefore);
    }
    const times = rowsWanted ?? 1;
    const facts: Fact[] = [];
    let worked: Worked | null = null;
    for (let k = 0; k < times; k++) {
      if (this.rows >= MOST_ROWS) {
        facts.push({
          code: 'too-many-rows',
          from: written.row.from,
          to: written.row.to,
          data: { limit: MOST_ROWS },
        });
        break;
      }
      const before = this.fabric;
      // Counts stated for a range of rows are those of its last row.
      const now = times > 1 ? { ...written, row: workedAgain(written.row, null) } : written;
      worked = this.once(now, only, rowsWanted !== null, null);
      if (worked.facts.length > 0) facts.push(...worked.facts);
      if (k > 0 && sameFabric(before, this.fabric) && k < times - 1) {
        this.jump([written], times - 1 - k, rowsWanted !== null);
        this.watcher?.again(worked.idle ? 0 : 1, times - 1 - k);
        break;
      }
    }
    if (times > 1) facts.push(...this.statedFacts(written, only));
    return this.result(distinct(facts), worked, first, rowsBefore);
  }

  /** The counts stated in a row against the fabric as it is now. */
  private statedFacts(written: Written, only: readonly number[] | null): readonly Fact[] {
    if (this.fabric === null) return [];
    const env = only === null ? this.env : { ...this.env, only };
    return checkStated(written.row.counts, tally(this.fabric), env, written.figures);
  }

  /** Counts rows that are known to leave the fabric as it is, without working them. */
  private jump(group: readonly Written[], passes: number, numbered: boolean): void {
    if (this.env.trace !== null) this.env.trace.passedOver += Math.max(0, passes) * group.length;
    for (let k = 0; k < passes && this.rows < MOST_ROWS; k++) {
      for (const written of group) {
        this.rows += 1;
        if (numbered) {
          this.number += 1;
          this.byNumber.set(this.number, written);
          if (this.fabric !== null) this.fabrics.set(this.number, this.fabric);
        }
        this.did(written, numbered, true);
      }
    }
  }

  private did(written: Written, numbered: boolean, works: boolean): void {
    const done: Done = { written, number: numbered ? this.number : null };
    this.course.push(done);
    if (works) this.history.push(done);
  }

  /** Works a group of rows again and again; stops working, and only counts, once it leaves what it found. */
  again(
    rows: readonly Written[],
    passes: number,
    rowsAtMost: number,
    span: Span,
    facts: Fact[],
  ): Worked | null {
    let worked: Worked | null = null;
    const end = this.rows + rowsAtMost;
    if (rows.length === 0) return null;
    const group = rows.map((written) => this.repeated(written));
    for (let k = 0; k < passes && this.rows < end; k++) {
      const before = this.fabric;
      let made = 0;
      for (const written of group) {
        if (this.rows >= end) break;
        if (this.rows >= MOST_ROWS) {
          facts.push({ code: 'too-many-rows', from: span.from, to: span.to, data: { limit: MOST_ROWS } });
          return worked;
        }
        const rowsBefore = this.rows;
        worked = this.once(written, null, true, span);
        facts.push(...worked.facts);
        if (!worked.idle) made += 1;
        // A row that works nothing still takes its turn, or the loop would not end.
        if (this.rows === rowsBefore) this.rows += 1;
      }
      if (sameFabric(before, this.fabric)) {
        const left = Math.min(passes - 1 - k, Math.max(0, Math.floor((end - this.rows) / group.length)));
        this.jump(group, left, true);
        this.watcher?.again(made, left);
        const remainder = Math.min(end - this.rows, k + left + 1 < passes ? group.length - 1 : 0);
        for (let i = 0; i < remainder; i++) worked = this.once(group[i]!, null, true, span);
        break;
      }
    }
    return worked;
  }

  private numbersOf(numbers: RowNumbers, figures: Figures): readonly number[] {
    const value = (amount: Parameters<typeof amountOf>[0]) => amountOf(amount, this.env, figures);
    switch (numbers.kind) {
      case 'one': {
        const n = value(numbers.number);
        return n === null ? [] : [n];
      }
      case 'range': {
        const from = value(numbers.first);
        const to = value(numbers.last);
        if (from === null || to === null || to < from) return [];
        const n = Math.min(to - from + 1, MOST_ROWS);
        return Array.from({ length: n }, (_, i) => from + i);
      }
      case 'list': {
        const found: number[] = [];
        for (const amount of numbers.numbers) {
          const n = value(amount);
          if (n !== null) found.push(n);
        }
        return found;
      }
      case 'onward': {
        const n = value(numbers.start);
        return n === null ? [] : [n];
      }
    }
  }

  private directive(
    item: Item,
    written: Written,
    only: readonly number[] | null,
    rest: number | null,
    facts: Fact[],
    within: boolean,
  ): Worked | null {
    switch (item.type) {
      case 'rows-again':
        return this.rowsAgain(item, written, only, rest, facts);
      case 'even':
        return this.even(item, written, only, rest, facts);
      case 'shaping':
        this.shape(item, written, only, rest, within);
        return null;
      case 'as-piece':
        return this.asPiece(item, written, only, facts);
      default:
        return null;
    }
  }

  private referred(
    ref: RowsRef,
    written: Written,
    only: readonly number[] | null,
    facts: Fact[],
  ): readonly Written[] {
    const env = { ...this.env, only };
    const value = (amount: Parameters<typeof amountOf>[0]) => amountOf(amount, env, written.figures) ?? 0;
    if (ref.kind === 'pattern') return this.history.slice(-1).map((done) => done.written);
    if (ref.kind === 'titled') {
      const called = this.history.findLast((done) => done.written.row.label?.title === ref.title);
      if (called !== undefined) return [called.written];
      facts.push({ code: 'word-not-read', from: ref.from, to: ref.to, data: { words: ref.words } });
      return [];
    }
    if (ref.kind === 'last') {
      const n = value(ref.amount);
      if (n > this.history.length) {
        facts.push({
          code: 'row-not-known',
          from: ref.from,
          to: ref.to,
          data: { number: n, rows: this.history.length, last: true },
        });
      }
      return n < 1 ? [] : this.history.slice(-n).map((done) => done.written);
    }
    const numbers: number[] = [];
    if (ref.kind === 'numbers') {
      const from = value(ref.first);
      const to = Math.min(value(ref.last), from + MOST_ROWS);
      for (let n = from; n <= to; n++) numbers.push(n);
    } else for (const amount of ref.numbers) numbers.push(value(amount));
    const found: Written[] = [];
    for (const n of numbers) {
      const known = this.byNumber.get(n) ?? this.ahead.get(n)?.written;
      if (known !== undefined) found.push(known);
      else if (facts.length < 20) {
        facts.push({
          code: 'row-not-known',
          from: ref.from,
          to: ref.to,
          data: { number: n, rows: this.number, last: false },
        });
      }
    }
    return found;
  }

  private rowsAgain(
    item: RowsAgain,
    written: Written,
    only: readonly number[] | null,
    rest: number | null,
    facts: Fact[],
  ): Worked | null {
    const group = this.referred(item.rows, written, only, facts);
    if (group.length === 0) return null;
    const env = { ...this.env, only };
    const times = item.times === null ? null : amountOf(item.times, env, written.figures);
    if (item.times !== null && times === null) return null;
    if (item.every !== undefined) {
      const every = amountOf(item.every, env, written.figures) ?? 1;
      return this.spaced(group, every, times ?? Math.floor((rest ?? every) / every), item, facts);
    }
    const left = item.left === null ? null : amountOf(item.left, env, written.figures);
    if (left !== null && times === null) return this.againUntil(group, left, rest, item, facts);
    const passes = times ?? (rest === null ? 1 : Math.ceil(rest / group.length));
    const rowsAtMost = times !== null || rest === null ? passes * group.length : rest;
    return this.again(group, passes, rowsAtMost, item, facts);
  }

  /** Works a group as the last of every so many rows, the others plain. */
  private spaced(
    group: readonly Written[],
    every: number,
    times: number,
    item: RowsAgain,
    facts: Fact[],
  ): Worked | null {
    let worked: Worked | null = null;
    for (let k = 0; k < times && this.rows < MOST_ROWS && this.fabric !== null; k++) {
      const plain = { row: plainRow(item, mainBase(this.fabric), group[0]!.row), figures: [] };
      this.again([plain], every - group.length, Math.max(0, every - group.length), item, facts);
      worked = this.again(group, 1, group.length, item, facts) ?? worked;
    }
    return worked;
  }

  /** Works a group again until so many stitches are there, or until it no longer comes nearer. */
  private againUntil(
    group: readonly Written[],
    left: number,
    rest: number | null,
    item: RowsAgain,
    facts: Fact[],
  ): Worked | null {
    let worked: Worked | null = null;
    const end = this.rows + (rest ?? MOST_ROWS);
    for (;;) {
      const before = this.fabric === null ? 0 : tally(this.fabric).stitches;
      if (before === left || this.rows >= end) return worked;
      worked = this.again(group, 1, Math.min(group.length, end - this.rows), item, facts);
      const after = this.fabric === null ? 0 : tally(this.fabric).stitches;
      const passed = before < left ? after > left : after < left;
      if (after === before || passed || Math.abs(after - left) > Math.abs(before - left)) return worked;
    }
  }

  private even(
    item: Even,
    written: Written,
    only: readonly number[] | null,
    rest: number | null,
    facts: Fact[],
  ): Worked | null {
    const env = { ...this.env, only };
    const n = item.rows === null ? (rest ?? 1) : (amountOf(item.rows, env, written.figures) ?? 0);
    const last = this.history[this.history.length - 1];
    if (last === undefined || this.fabric === null || n <= 0) return null;
    const before = tally(this.fabric);
    const trial = this.worker(last.written.row, this.fabric, this.env, last.written.figures);
    const steady =
      trial.facts.length === 0 &&
      trial.tally.stitches === before.stitches &&
      trial.tally.spaces === before.spaces;
    const named = item.stitch?.base ?? null;
    const row =
      steady && named === null
        ? last.written
        : { row: plainRow(item, named ?? mainBase(this.fabric), last.written.row), figures: [] };
    return this.again([row], n, n, item, facts);
  }

  /** Shaping told in words: only the counts are followed, as the text gives no rows to work. */
  /** `within`: the row has work of its own, so that shaping without a schedule is part of it. */
  private shape(
    item: Shaping,
    written: Written,
    only: readonly number[] | null,
    rest: number | null,
    within: boolean,
  ): void {
    if (this.fabric === null) return;
    const env = { ...this.env, only };
    const value = (amount: Parameters<typeof amountOf>[0]) => amountOf(amount, env, written.figures) ?? 0;
    const per = value(item.amount) * (item.ends === 'each' ? 2 : 1);
    const sign = item.change === 'inc' ? 1 : -1;
    let stitches = tally(this.fabric).stitches;
    let rows = 0;
    if (item.now || item.schedule.length === 0) {
      stitches += sign * per;
      if (!within) rows += 1;
    }
    const until = item.until === null ? null : value(item.until);
    const often = (every: number): number => {
      if (until !== null && per > 0) return Math.max(0, Math.ceil((sign * (until - stitches)) / per));
      return rest === null ? 1 : Math.floor((rest - rows) / every);
    };
    for (const part of item.schedule) {
      const every = Math.max(1, value(part.every));
      const times = Math.min(part.times === null ? often(every) : value(part.times), MOST_ROWS);
      stitches += sign * per * times;
      rows += every * times;
    }
    const form = this.fabric.form === 'chain' ? 'flat' : this.fabric.form;
    const base = mainBase(this.fabric);
    const before = this.fabric;
    this.fabric = plainFabric(Math.max(0, Math.min(stitches, MOST_ROWS)), base, form);
    if (rest !== null && rows < rest) rows = rest;
    const even = { row: plainRow(item, base, written.row), figures: [] };
    this.jump([even], Math.min(rows, MOST_ROWS), true);
    this.watcher?.told(Math.min(rows, MOST_ROWS), before, this.fabric);
  }

  private asPiece(
    item: AsPiece,
    written: Written,
    only: readonly number[] | null,
    facts: Fact[],
  ): Worked | null {
    const other = this.others.get(item.piece.toLowerCase());
    if (other === undefined) {
      facts.push({ code: 'piece-not-known', from: item.from, to: item.to, data: { name: item.piece } });
      return null;
    }
    let rows = other.rows;
    if (item.upTo === 'mark') {
      const at = rows.findIndex((done) => done.written.row.items.some((inner) => inner.type === 'mark'));
      if (at >= 0) rows = rows.slice(0, at + 1);
    } else if (item.upTo !== null) {
      const env = { ...this.env, only };
      const upTo =
        item.upTo.kind === 'numbers' ? (amountOf(item.upTo.last, env, written.figures) ?? 0) : null;
      if (upTo !== null) {
        const at = rows.findIndex((done) => done.number === upTo);
        if (at >= 0) rows = rows.slice(0, at + 1);
        else
          facts.push({
            code: 'row-not-known',
            from: item.from,
            to: item.to,
            data: { number: upTo, rows: rows.length, last: false },
          });
      }
    }
    let worked: Worked | null = null;
    for (const done of rows) {
      if (this.rows >= MOST_ROWS) break;
      worked = this.once(this.repeated(done.written), null, done.number !== null, item);
      facts.push(...worked.facts);
    }
    return worked;
  }
}
