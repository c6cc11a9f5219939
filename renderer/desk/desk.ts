/**
 * The desk: one open pattern and all that the window knows of it. It holds the one editor state (so that text,
 * forms and grids share one undo history), the pictures, the file it belongs to, the newest report, and how the
 * maker looks at it. Views read it as an immutable snapshot and change it by transactions. It draws nothing
 * and asks the host for nothing.
 */
import { history, redo, redoDepth, undo, undoDepth } from 'prosemirror-history';
import type { Node } from 'prosemirror-model';
import { type Command, EditorState, type Plugin, type Transaction } from 'prosemirror-state';
import type { FileRef, Stamp } from '../../app/host/host.ts';
import type { LineRule } from '../../core/document/attributes.ts';
import type { Picture, Pictures } from '../../core/document/media.ts';
import type { Pattern } from '../../core/document/pattern.ts';
import { project } from '../../core/document/project.ts';
import type { Terms } from '../../core/trade/stitches.ts';
import type { Units } from '../../core/trade/units.ts';
import { Analyst, type WorkerLike } from '../analysis/analyst.ts';
import type { DrawingChoice, DrawingsReport } from '../analysis/drawings.ts';
import type { Watched } from '../analysis/protocol.ts';
import type { FigureTrial, LineTrial, Report } from '../analysis/report.ts';
import { identity } from './identity.ts';

/** The file that the pattern is saved in. */
export interface DeskFile {
  readonly ref: FileRef;
  readonly stamp: Stamp;
  readonly readOnly: boolean;
  readonly heldElsewhere: boolean;
}

/** How the maker looks at the pattern. None of it is in the document. */
export interface Reading {
  /** Terms and units on screen: the pattern's own until the maker switches. */
  readonly terms: Terms;
  readonly units: Units;
  /** Id of the size in focus. */
  readonly size: string | null;
  /** Id of the person whose own column is shown, or null. */
  readonly person: string | null;
}

/** Everything a view may show. A new object after each change; parts that did not change are the same. */
export interface DeskView {
  readonly state: EditorState;
  readonly document: Node;
  readonly pattern: Pattern;
  readonly pictures: Pictures;
  readonly file: DeskFile | null;
  /** The document as the file has it; null when it was never saved. */
  readonly saved: Node | null;
  readonly report: Report;
  /** The report tells about this very document. */
  readonly isReportCurrent: boolean;
  readonly reading: Reading;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
}

/** Words by what they are typed for: asked for by a form, and no part of the document. */
export type Asides = ReadonlyMap<string, string>;

export interface DeskOptions {
  readonly id: string;
  readonly document: Node;
  readonly pictures: Pictures;
  readonly file: DeskFile | null;
  /** True for work that is nowhere else: a new pattern, recovered work. An example can be opened again. */
  readonly unsaved: boolean;
  /** Words that were typed for forms before the program ended. */
  readonly asides?: Asides;
  readonly worker: WorkerLike;
  /** Plugins of the manuscript. They belong to the state, so they are given when it is made. */
  readonly plugins?: readonly Plugin[];
}

export class Desk {
  /** Random name under which the journal keeps this work. */
  readonly id: string;
  #view: DeskView;
  readonly #analyst: Analyst;
  readonly #listeners = new Set<() => void>();
  /** Taken instead of this desk's own update while an editor is on screen: it draws, then calls `show`. */
  #editor: ((transaction: Transaction) => void) | null = null;
  /** Per field, how what is typed in it would be given. */
  readonly #fields = new Map<object, () => void>();
  #asides: Asides;
  #halfTyped: object = {};
  #isTrying = false;
  #asTyped: { readonly from: Node; readonly halfTyped: object; readonly document: Node } | null = null;

  constructor(options: DeskOptions) {
    this.id = options.id;
    this.#asides = options.asides ?? new Map();
    const state = EditorState.create({
      doc: options.document,
      plugins: [history({ newGroupDelay: 600 }), identity(), ...(options.plugins ?? [])],
    });
    const pattern = project(state.doc);
    this.#analyst = new Analyst(state.doc, options.worker, () => this.#reported());
    this.#view = {
      state,
      document: state.doc,
      pattern,
      pictures: options.pictures,
      file: options.file,
      saved: options.unsaved ? null : state.doc,
      report: this.#analyst.report,
      isReportCurrent: false,
      reading: {
        terms: pattern.terms,
        units: pattern.units,
        size: pattern.sample ?? pattern.sizes[0]?.id ?? null,
        person: null,
      },
      canUndo: false,
      canRedo: false,
    };
  }

  /** The snapshot. */
  readonly view = (): DeskView => this.#view;

  /** Calls `listener` after each change until the function given back is called. */
  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  /** Whether there is work that the file does not hold. */
  get isUnsaved(): boolean {
    return this.#view.saved !== this.#view.document;
  }

  /** What stands in fields and forms and is not the document's yet: another object after each key in one of them. */
  get halfTyped(): object {
    return this.#halfTyped;
  }

  get isHalfTyped(): boolean {
    return this.#fields.size > 0 || this.#asides.size > 0;
  }

  /** Says how what is typed in a field would be given to the document; null when nothing is left in it. */
  hold(field: object, give: (() => void) | null): void {
    if (give === null && !this.#fields.has(field)) return;
    if (give === null) this.#fields.delete(field);
    else this.#fields.set(field, give);
    this.#typed();
  }

  get asides(): Asides {
    return this.#asides;
  }

  /** Keeps words that a form asked for until they are put in; "" when they were, or are given up. */
  setAside(what: string, words: string): void {
    if (words === (this.#asides.get(what) ?? '')) return;
    const others = [...this.#asides].filter(([other]) => other !== what);
    this.#asides = new Map(words === '' ? others : [...others, [what, words]]);
    this.#typed();
  }

  /**
   * The document as it were if every field that is being typed in were left now. Nothing on screen changes, and
   * what a field would refuse is not in it.
   */
  asTyped(): Node {
    const before = this.#view;
    if (this.#fields.size === 0) return before.document;
    const halfTyped = this.#halfTyped;
    if (this.#asTyped?.from === before.document && this.#asTyped.halfTyped === halfTyped)
      return this.#asTyped.document;
    this.#isTrying = true;
    try {
      for (const give of this.#fields.values()) give();
      const { document } = this.#view;
      this.#asTyped = { from: before.document, halfTyped, document };
      return document;
    } finally {
      this.#isTrying = false;
      this.#view = before;
    }
  }

  /** Changes the document. The editor, when one is on screen, draws the change in the same step. */
  readonly dispatch = (transaction: Transaction): void => {
    if (this.#editor !== null && !this.#isTrying) this.#editor(transaction);
    else this.show(transaction);
  };

  /** Takes a transaction into the state. Called by the editor on screen; everyone else dispatches. */
  show(transaction: Transaction): EditorState {
    const before = this.#view.state;
    const { state, transactions } = before.applyTransaction(transaction);
    if (this.#isTrying) {
      this.#view = { ...this.#view, state, document: state.doc, pattern: project(state.doc) };
      return state;
    }
    const steps = transactions.flatMap((applied) => applied.steps);
    if (steps.length > 0) this.#analyst.edited(state.doc, steps);
    const pattern = project(state.doc);
    this.#change({
      state,
      document: state.doc,
      pattern,
      isReportCurrent: this.#analyst.isCurrent,
      reading: readingAfter(this.#view, pattern),
      canUndo: undoDepth(state) > 0,
      canRedo: redoDepth(state) > 0,
    });
    return state;
  }

  /** Runs a ProseMirror command on the state; false when it does not apply. */
  run(command: Command): boolean {
    return command(this.#view.state, this.dispatch);
  }

  undo(): boolean {
    return this.run(undo);
  }

  redo(): boolean {
    return this.run(redo);
  }

  /** Puts the manuscript's editor in charge of drawing; null when it leaves the screen. */
  attach(editor: ((transaction: Transaction) => void) | null): void {
    this.#editor = editor;
  }

  /** What an expression would show as a figure, before it is one. */
  tryFigure(expression: string): Promise<FigureTrial> {
    return this.#analyst.tryFigure(expression);
  }

  /** What a line would come to by another rule, before it has it. */
  tryLine(id: string, rule: LineRule): Promise<LineTrial> {
    return this.#analyst.tryLine(id, rule);
  }

  /** Says what is on screen, for what is reckoned only while it is looked at. */
  watch(watched: Partial<Watched>): void {
    this.#analyst.watch(watched);
  }

  /** The drawings of the pattern as it is now. */
  draw(choice: DrawingChoice): Promise<DrawingsReport> {
    return this.#analyst.draw(choice);
  }

  addPicture(picture: Picture): void {
    if (this.#view.pictures.has(picture.id)) return;
    this.#change({ pictures: new Map([...this.#view.pictures, [picture.id, picture]]) });
  }

  read(reading: Partial<Reading>): void {
    this.#change({ reading: { ...this.#view.reading, ...reading } });
  }

  /** The document `saved` is now in `file`. */
  savedAs(file: DeskFile, saved: Node): void {
    this.#change({ file, saved });
  }

  fileChanged(file: DeskFile | null): void {
    this.#change({ file });
  }

  /** The document on screen is not what a file holds any more (the file was deleted or restored). */
  notSaved(): void {
    this.#change({ saved: null });
  }

  /** Ends the study. The desk shows nothing new after this. */
  close(): void {
    this.#analyst.stop();
    this.#listeners.clear();
  }

  #typed(): void {
    this.#halfTyped = {};
    for (const listener of this.#listeners) listener();
  }

  #reported(): void {
    this.#change({ report: this.#analyst.report, isReportCurrent: this.#analyst.isCurrent });
  }

  #change(part: Partial<DeskView>): void {
    this.#view = { ...this.#view, ...part };
    for (const listener of this.#listeners) listener();
  }
}

/** Follows a pattern that changes its own terms or units, and a size in focus that is there no more. */
function readingAfter({ reading, pattern: before }: DeskView, pattern: Pattern): Reading {
  if (before === pattern) return reading;
  const terms = before.terms === pattern.terms ? reading.terms : pattern.terms;
  const units = before.units === pattern.units ? reading.units : pattern.units;
  const there = pattern.sizes.some(({ id }) => id === reading.size);
  const size = there ? reading.size : (pattern.sample ?? pattern.sizes[0]?.id ?? null);
  const person = pattern.workbook.people.some(({ id }) => id === reading.person) ? reading.person : null;
  if (
    terms === reading.terms &&
    units === reading.units &&
    size === reading.size &&
    person === reading.person
  )
    return reading;
  return { terms, units, size, person };
}
