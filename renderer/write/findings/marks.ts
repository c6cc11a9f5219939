/**
 * Findings in the manuscript: marks at their exact words, mapped through every edit and replaced when a report of
 * the very document comes and typing rests. Only texts whose findings say something else are marked anew. Late
 * reports are let go, and while an input method composes nothing is marked.
 */

import type { Node } from 'prosemirror-model';
import { Plugin, PluginKey, type Transaction } from 'prosemirror-state';
import { Decoration, DecorationSet, type EditorView } from 'prosemirror-view';
import { FIGURE } from '../../../core/document/pattern.ts';
import type { Finding } from '../../../core/finding.ts';
import type { Report } from '../../analysis/report.ts';
import { UNWRITTEN } from '../../analysis/unwritten.ts';
import type { Desk } from '../../desk/desk.ts';
import { ELSEWHERE, placeOf } from '../../desk/places.ts';
import { hearCaret } from '../caret.ts';

/** A finding where it stands now. */
export interface Marked {
  readonly finding: Finding;
  readonly from: number;
  readonly to: number;
  /** The words it is about, as they were when it was told. */
  readonly words: string;
}

interface Spec {
  readonly finding: Finding;
  readonly words: string;
}

interface Marks {
  readonly set: DecorationSet;
  /** Findings that are marked, by node. */
  readonly placed: ReadonlyMap<string, readonly Finding[]>;
  /** The report whose findings they are. */
  readonly report: Report | null;
  /** The finding whose panel is open. */
  readonly open: Finding | null;
}

type Told = { readonly report: Report } | { readonly open: Finding | null };

const key = new PluginKey<Marks>('findings');

/** Where the words of a text stand: a piece's finding is about its title. */
function textOf(document: Node, name: string): { readonly node: Node; readonly pos: number } | null {
  const place = placeOf(document, name);
  if (place === null || place.node.type.name !== 'piece') return place;
  return { node: place.node.child(0), pos: place.pos + 1 };
}

/** The words of a range, a figure as one object character. */
export const wordsAt = (document: Node, from: number, to: number): string =>
  document.textBetween(from, to, '\n', FIGURE);

function decorate(document: Node, name: string, findings: readonly Finding[]): readonly Decoration[] {
  const place = textOf(document, name);
  if (place === null) return [];
  const { node, pos } = place;
  // What is not drawn in the manuscript has its findings in its own place.
  const at = document.resolve(pos);
  if (ELSEWHERE.has((at.depth === 0 ? node : at.node(1)).type.name)) return [];
  return findings.map((finding) => {
    const attributes = { class: `finding ${finding.severity}` };
    const start = pos + 1;
    const end = start + node.content.size;
    const [from, to] = [Math.min(start + finding.where.from, end), Math.min(start + finding.where.to, end)];
    const isWhole = !node.isTextblock || from >= to;
    const words = isWhole ? '' : wordsAt(document, from, to);
    const spec: Spec = { finding, words };
    return isWhole
      ? Decoration.node(pos, pos + node.nodeSize, { class: wholeClass(finding) }, spec)
      : Decoration.inline(from, to, { nodeName: 'mark', ...attributes }, spec);
  });
}

/** What is not written yet has its prompt, which says so without a mark. */
const wholeClass = ({ code, severity }: Finding): string =>
  `finding-whole ${severity}${UNWRITTEN.has(code) ? ' unwritten' : ''}`;

function takeReport(marks: Marks, report: Report, document: Node): Marks {
  const placed = new Map<string, readonly Finding[]>();
  const gone: Decoration[] = [];
  const fresh: Decoration[] = [];
  const old = (name: string): void => {
    const place = textOf(document, name);
    if (place === null) return;
    const { pos, node } = place;
    const isOf = (spec: Spec) => spec.finding?.where.node === name;
    gone.push(...marks.set.find(pos, pos + node.nodeSize, isOf as (spec: unknown) => boolean));
  };
  for (const [name, findings] of report.byNode) {
    if (name === null) continue;
    placed.set(name, findings);
    if (marks.placed.get(name) === findings) continue;
    old(name);
    fresh.push(...decorate(document, name, findings));
  }
  for (const name of marks.placed.keys()) if (!report.byNode.has(name)) old(name);
  const set = marks.set.remove(gone).add(document, fresh);
  const isThere = marks.open !== null && report.findings.some((finding) => finding === marks.open);
  return { set, placed, report, open: isThere ? marks.open : null };
}

function mapped(marks: Marks, transaction: Transaction): Marks {
  const lost = new Set<string>();
  const set = marks.set.map(transaction.mapping, transaction.doc, {
    onRemove: (spec: Spec) => lost.add(spec.finding.where.node ?? ''),
  });
  if (lost.size === 0) return { ...marks, set, open: null };
  // What lost a mark is marked anew by the next report, also when that says the same. It stays known as marked:
  // other marks of it may still stand, and go when the report says nothing of it.
  const placed = new Map([...marks.placed].map(([name, all]) => [name, lost.has(name) ? [] : all] as const));
  return { ...marks, set, placed, open: null };
}

/** The marks' plugin. The desk is that of the state it is put into. */
export function findingMarks(desk: () => Desk | null): Plugin {
  return new Plugin<Marks>({
    key,
    state: {
      init: () => ({ set: DecorationSet.empty, placed: new Map(), report: null, open: null }),
      apply(transaction, before, _, state) {
        const told = transaction.getMeta(key) as Told | undefined;
        let marks = transaction.docChanged ? mapped(before, transaction) : before;
        if (told !== undefined) {
          marks =
            'report' in told ? takeReport(marks, told.report, state.doc) : { ...marks, open: told.open };
        } else if (transaction.selectionSet && !transaction.docChanged) {
          const here = markedIn(marks.set, state.selection.from, state.selection.to);
          const open = here.find(({ finding }) => !UNWRITTEN.has(finding.code))?.finding ?? null;
          if (open !== marks.open) marks = { ...marks, open };
        }
        return marks;
      },
    },
    props: { decorations: (state) => key.getState(state)?.set },
    view: (editor) => new ReportTaker(editor, desk()),
  });
}

/**
 * How long typing rests before words are marked, in milliseconds. A word in the midst of being written is seldom
 * right, and each mark at the caret makes the browser draw the words and the caret anew.
 */
const REST = 200;

/** Hands each current report to the state. */
class ReportTaker {
  readonly #editor: EditorView;
  readonly #desk: Desk | null;
  readonly #stop: (() => void) | undefined;
  /** When the last letter was typed, and what waits for it to rest. */
  #typedAt = Number.NEGATIVE_INFINITY;
  #rest = 0;

  constructor(editor: EditorView, desk: Desk | null) {
    this.#editor = editor;
    this.#desk = desk;
    this.#stop = desk?.subscribe(() => this.#take());
    editor.dom.addEventListener('beforeinput', this.#typed);
    editor.dom.addEventListener('compositionend', this.#later);
    // The editor is not in charge yet while its plugins are made.
    queueMicrotask(() => this.#take());
  }

  destroy(): void {
    this.#stop?.();
    window.clearTimeout(this.#rest);
    this.#editor.dom.removeEventListener('beforeinput', this.#typed);
    this.#editor.dom.removeEventListener('compositionend', this.#later);
  }

  readonly #typed = ({ timeStamp }: Event): void => {
    this.#typedAt = timeStamp;
  };

  /** The editor takes the composed words in shortly after the event. */
  readonly #later = (): void => {
    setTimeout(() => this.#take(), 60);
  };

  #take(): void {
    if (!this.#isToBeTaken()) return;
    const wait = this.#typedAt + REST - performance.now();
    if (wait > 0) {
      window.clearTimeout(this.#rest);
      this.#rest = window.setTimeout(() => this.#take(), wait);
      return;
    }
    if (this.#editor.state !== this.#desk?.view().state) {
      // The editor is in the middle of a change: after it, so that nothing is made of a state that is going.
      queueMicrotask(() => this.#take());
      return;
    }
    hearCaret(this.#editor);
    const view = this.#desk.view();
    if (this.#isToBeTaken()) this.#editor.dispatch(takeFindings(view.state.tr, view.report));
  }

  /** Whether there is a report of the very document that is not marked yet, and nothing is being composed. */
  #isToBeTaken(): boolean {
    const view = this.#desk?.view();
    if (view === undefined || this.#editor.isDestroyed || this.#editor.composing) return false;
    return view.isReportCurrent && key.getState(view.state)?.report !== view.report;
  }
}

function markedIn(set: DecorationSet, from: number, to: number): readonly Marked[] {
  const weight = { error: 0, warning: 1, note: 2 } as const;
  return set
    .find(from, to, (spec) => spec.finding !== undefined)
    .map(({ from: start, to: end, spec }) => ({ ...(spec as Spec), from: start, to: end }))
    .sort(
      (a, b) => a.to - a.from - (b.to - b.from) || weight[a.finding.severity] - weight[b.finding.severity],
    );
}

type HasMarks = Parameters<typeof key.getState>[0];

/** The findings marked in a range, the narrowest first. */
export const findingsIn = (state: HasMarks, from: number, to: number): readonly Marked[] =>
  markedIn(key.getState(state)?.set ?? DecorationSet.empty, from, to);

/** Every finding marked in the manuscript, in order. */
export const allMarked = (state: HasMarks): readonly Marked[] =>
  (key.getState(state)?.set ?? DecorationSet.empty)
    .find()
    .filter(({ spec }) => spec.finding !== undefined)
    .map(({ from, to, spec }) => ({ ...(spec as Spec), from, to }))
    .sort((a, b) => a.from - b.from || a.to - b.to);

/** The finding whose panel is open, where it stands now. */
export function openFinding(state: HasMarks): Marked | null {
  const marks = key.getState(state);
  if (marks?.open == null) return null;
  const found = marks.set.find(undefined, undefined, (spec) => spec.finding === marks.open)[0];
  return found === undefined ? null : { ...(found.spec as Spec), from: found.from, to: found.to };
}

/** Identity of what is open, for views that only want to know whether it changed. */
export const openFindingOf = (state: HasMarks): Finding | null => key.getState(state)?.open ?? null;

/** Takes a report of the very document that the transaction leads to. */
export const takeFindings = (transaction: Transaction, report: Report): Transaction =>
  transaction.setMeta(key, { report } satisfies Told);

/** Opens the panel of a finding, or closes it. */
export const showFinding = (transaction: Transaction, finding: Finding | null): Transaction =>
  transaction.setMeta(key, { open: finding } satisfies Told);
