/**
 * The course of a piece in one size: the fabric as it stands, what has been worked so far and by which number it can
 * be referred to, and the working of one row, or of a group again and again. The order of the rows is not its concern.
 */
import type { Fact, Span } from '../finding.ts';
import type { RowTree } from '../notation/tree.ts';
import type { EarlierRow, Env, Figures } from './env.ts';
import { type Fabric, type Opening, sameFabric, type Tally, tally } from './fabric.ts';
import { overOpening } from './openings.ts';
import { workRow } from './row.ts';
import { rowsWithin } from './turns.ts';
import { partsNamed, rowsNamed, unnamed, usesEdge } from './whole-rows.ts';
import { isWrong, type Worked, workedAgain } from './worked.ts';

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

/** A row that has been worked, and its number; null when it has none. */
export interface Done {
  readonly written: Written;
  readonly number: number | null;
}

/** The rows of a piece that others may refer to ("work as for Back"). */
export interface PieceRecord {
  readonly name: string;
  readonly rows: readonly Done[];
  /** What it came to. */
  readonly fabric: Fabric | null;
  readonly openings: readonly Opening[];
}

/** For a piece whose rows stand by themselves: "work as for Back" finds no other there. */
export const APART: ReadonlyMap<string, PieceRecord> = new Map();

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

export class Course {
  fabric: Fabric | null;
  /** Number of the last numbered row. */
  number = 0;
  /** Rows worked, numbered or not, the foundation apart. */
  rows = 0;
  foundation = 0;
  /** The rows before were worked to a length, so that nobody knows what number the next has. */
  openEnded = false;
  private unworkedChain = false;
  readonly openings: Opening[] = [];
  /** What was settled so far, in order. */
  readonly settlings: Settling[] = [];
  /** Rows that later ones may refer to. */
  readonly history: Done[] = [];
  /** The same with what only begins the piece: what another piece works that is made as this one. */
  private readonly made: Done[] = [];
  readonly byNumber = new Map<number, Written>();
  private readonly fabrics = new Map<number, Fabric>();
  /** Rows announced by their number ("Rows 4, 6 and 8") and not yet worked. */
  readonly ahead = new Map<number, { written: Written; entry: number }>();
  /** What a row's own count settled about its turning chain, for when it is worked again. */
  private readonly settled = new Map<RowTree, boolean>();

  constructor(
    start: Fabric | null,
    readonly env: Env,
    readonly worker: RowWorker = workRow,
    readonly others: ReadonlyMap<string, PieceRecord> = new Map(),
    readonly watcher: RowWatcher | null = null,
  ) {
    this.fabric = start;
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
    return { name, rows: this.made, fabric: this.fabric, openings: this.openings };
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

  /**
   * The parts that the row joins, each as it was left. One of several made alike ("Legs (make 2)") is like the others,
   * and one that no piece is called by is the work at hand.
   */
  private parts(row: RowTree): Env['parts'] {
    const named = partsNamed(row);
    if (named.length === 0 || this.fabric === null) return null;
    const found = new Map<string, Fabric>();
    for (const name of named) found.set(name, this.partCalled(name) ?? this.fabric);
    return found;
  }

  private partCalled(name: string): Fabric | null {
    const [which, kind] = name.split(' ') as [string, string];
    const nth: Record<string, string> = { first: '1', second: '2', third: '3' };
    const names = [name, `${kind} ${nth[which] ?? which}`, kind];
    for (const wanted of names) {
      for (const [key, record] of this.others) {
        const called = key.replace(/\s*[([].*$/u, '').trim();
        if (called === wanted || called === `${wanted}s`) return record.fabric;
      }
    }
    return null;
  }

  /** The openings that a row may go round: the piece's own, or, where it has not begun, those of the piece before it. */
  private openingsNow(): readonly Opening[] {
    if (this.openings.length > 0 || this.fabric !== null) return this.openings;
    return [...this.others.values()].findLast(({ openings }) => openings.length > 0)?.openings ?? [];
  }

  /** Works one row once. `span` moves its facts, for a row worked again at other words. */
  once(written: Written, only: readonly number[] | null, numbered: boolean, span: Span | null): Worked {
    const rows = rowsWithin(written.row);
    if (rows.length === 1) return this.single(written, only, numbered, span);
    // It turns on its way: the rows it is worked in go by its one number, which is that of the last.
    const { figures, again } = written;
    const facts: Fact[] = [];
    let worked: Worked | null = null;
    for (const row of rows) {
      const own: Written = again ? { row, figures, again } : { row, figures };
      worked = this.single(own, only, numbered && row === rows.at(-1), span);
      facts.push(...worked.facts);
    }
    if (numbered) this.byNumber.set(this.number, written);
    return { ...worked!, facts };
  }

  private single(
    written: Written,
    only: readonly number[] | null,
    numbered: boolean,
    span: Span | null,
  ): Worked {
    const earlier = this.earlier(written.row, numbered);
    const parts = this.parts(written.row);
    const lean =
      usesEdge(written.row) || earlier !== null || parts !== null
        ? { ...this.envNow(only), earlier, parts }
        : only === null
          ? this.env
          : { ...this.env, only, of: this.env };
    const opening = overOpening(written.row, this.openingsNow());
    let own = opening?.row ?? written.row;
    const below = opening?.below ?? this.fabric;
    let worked = this.worker(own, below, lean, written.figures);
    if (span !== null && isWrong(worked)) {
      // Its names are those of its first working; over other stitches it goes on stitch by stitch.
      const plain = unnamed(own);
      const other = this.worker(plain, below, lean, written.figures);
      const note: Fact = { code: 'names-not-followed', from: span.from, to: span.to, data: {} };
      if (!isWrong(other)) {
        worked = { ...other, facts: [...other.facts, note] };
        own = plain;
      }
    }
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
  repeated(written: Written): Written {
    if (written.again) return written;
    const row = workedAgain(written.row, this.settled.get(written.row) ?? null);
    return { row, figures: written.figures, again: true };
  }

  /** Counts rows that are known to leave the fabric as it is, without working them. */
  jump(group: readonly Written[], passes: number, numbered: boolean): void {
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
    this.made.push(done);
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
}
