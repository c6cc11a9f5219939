/**
 * Works the written rows of a piece in the order of their numbers: ranges, lists of rows, rows announced for later.
 * One `PieceWork` per piece and size; the study and the plain-text report both drive it. Sentences are not made here.
 */
import type { Fact } from '../finding.ts';
import type { RowTree } from '../notation/tree.ts';
import { Course, MOST_ROWS, type RowResult, type Written } from './course.ts';
import { directive } from './directives.ts';
import { amountOf } from './env.ts';
import { sameFabric, tally } from './fabric.ts';
import { roundOpening } from './openings.ts';
import { numbersOf, variesBySize } from './row-numbers.ts';
import { checkStated } from './stated.ts';
import { alongEdge, distinct, parted } from './whole-rows.ts';
import { type Worked, workedAgain } from './worked.ts';

export class PieceWork extends Course {
  /** Whether the numbers so far are of rows or of rounds. */
  private counting: string | null = null;
  /** Number last taken by a row for other sizes. */
  private passed: number | null = null;
  /** The last entry had no label of its own. */
  private loose = false;
  private readonly onward: { from: number; step: number; written: Written; entry: number }[] = [];

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
        results[entry] = this.idle();
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
    const last = numbersOf(numbers, this.env, written.figures).at(-1);
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
    const wanted = numbersOf(numbers, this.env, written.figures);
    if (wanted.length === 0) {
      results[entry] = this.idle();
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
        results[entry] = this.idle();
      }
      return;
    }
    const first = wanted[0]!;
    this.runAhead(results, only, first);
    // Rounds after rows (a border, a brim) are counted from 1 again, and so are rows after rounds.
    const back = this.fabric?.rest != null && written.row.items.some((item) => item.type === 'attach');
    // A row along the edge begins another part of the piece.
    const side = this.rows > 0 && (alongEdge(written.row) || roundOpening(written.row));
    const own = (unlabelled || side || label.part === true) && first === 1;
    const cut = this.fabric?.fastened === true || back || own;
    // A row for other sizes took the number, and here it is given again.
    const again = this.passed === first;
    const afresh = cut || (this.counting !== null && this.counting !== label.kind && first === 1);
    this.counting = label.kind;
    // "Row 2 (2, 3):" where the numbers differ by size, one that a size leaves out is a row that it has not.
    const leavesOut = first > this.number + 1 && variesBySize(numbers);
    const { openEnded } = this;
    this.openEnded = false;
    if (
      !afresh &&
      !again &&
      !leavesOut &&
      !openEnded &&
      first !== this.number + 1 &&
      (this.number > 0 || first < 1)
    ) {
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
        worked = directive(this, item, written, only, rest, facts, own !== null) ?? worked;
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

  /** The result of a row that is not worked, or not yet. */
  private idle(): RowResult {
    return { tally: null, repeats: null, facts: [], first: null, last: null, times: 0, fabric: this.fabric };
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
}
