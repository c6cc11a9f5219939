/**
 * Where a document names the lines of its sizing sheet: formulas of lines, figures, repeats, shapings, edges and
 * comparisons. One list of those places serves both renaming a line through the whole document and telling who
 * would miss it.
 */
import type { Node } from 'prosemirror-model';
import type { EditorState, Transaction } from 'prosemirror-state';
import type { LineRule } from '../../core/document/attributes.ts';
import type { Edge, Line, Meeting, PieceStart } from '../../core/document/pattern.ts';
import { project } from '../../core/document/project.ts';
import {
  compileExpression,
  foldName,
  formulasOf,
  namesLine,
  renamedIn,
  type Vocabulary,
  vocabularyOf,
} from '../../core/grading/index.ts';
import { begin } from './edits.ts';
import { placeOf } from './places.ts';

/** Changes the texts that may name lines: an expression, or a line's bare name. */
interface Change {
  readonly expression: (text: string) => string;
  readonly name: (text: string) => string;
}

function edgeWith(edge: Edge, { expression }: Change): Edge {
  return edge.amount === null ? edge : { ...edge, amount: expression(edge.amount) };
}

function ruleWith(rule: LineRule, { expression }: Change): LineRule {
  const fields = formulasOf({ ...rule, id: '', name: '', printed: null, note: null } as Line);
  const changed = Object.fromEntries(fields.map(({ field, text }) => [field, expression(text)]));
  return { ...rule, ...changed } as LineRule;
}

/** The attributes of a node that may name lines, changed; null for a node that names none. */
function attributesWith(node: Node, change: Change): Readonly<Record<string, unknown>> | null {
  const { attrs } = node;
  switch (node.type.name) {
    case 'line':
      return {
        rule: ruleWith(attrs.rule, change),
        note: attrs.note === null ? null : change.name(attrs.note),
      };
    case 'figure':
      return { expression: change.expression(attrs.expression) };
    case 'shaping':
      return { line: change.name(attrs.line) };
    case 'repeat':
      return {
        until:
          attrs.until.kind === 'times'
            ? { ...attrs.until, times: change.expression(attrs.until.times) }
            : { ...attrs.until, rows: change.expression(attrs.until.rows) },
      };
    case 'piece': {
      const start: PieceStart = attrs.start;
      return {
        start:
          start.kind === 'edges'
            ? { ...start, edges: start.edges.map((edge) => edgeWith(edge, change)) }
            : start,
        meets: attrs.meets.map((meeting: Meeting) => ({
          mine: edgeWith(meeting.mine, change),
          other: edgeWith(meeting.other, change),
        })),
      };
    }
    default:
      return null;
  }
}

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

function vocabularyIn(document: Node): Vocabulary {
  return vocabularyOf(project(document).lines.map(({ name }) => name));
}

/** Who names a line. */
export interface Use {
  readonly kind: 'line' | 'figure' | 'shaping' | 'repeat' | 'piece';
  /** Where it is: a node's id, or a name such as "notes:0"; null for a text without a name. */
  readonly node: string | null;
}

/** Every place that names the line, in the document's order. */
export function usesOfLine(document: Node, name: string): readonly Use[] {
  const vocabulary = vocabularyIn(document);
  const uses: Use[] = [];
  const names = placeNames(document);
  document.descendants((node, _, parent) => {
    let found = false;
    attributesWith(node, {
      expression: (text) => {
        found ||= namesLine(text, vocabulary, name);
        return text;
      },
      name: (text) => {
        found ||= foldName(text) === foldName(name);
        return text;
      },
    });
    if (!found) return true;
    const at = node.type.name === 'figure' ? parent : node;
    uses.push({ kind: node.type.name as Use['kind'], node: at === null ? null : (names(at) ?? null) });
    return true;
  });
  return uses.filter(
    (use, at) =>
      use.node === null ||
      uses.findIndex((other) => other.node === use.node && other.kind === use.kind) === at,
  );
}

/** Names of nodes: their ids, and "notes:0" for paragraphs of lists. */
function placeNames(document: Node): (node: Node) => string | undefined {
  const named = new Map<Node, string>();
  document.forEach((part) => {
    if (part.type.name !== 'notes' && part.type.name !== 'finishing') return;
    part.forEach((paragraph, _, at) => {
      named.set(paragraph, `${part.type.name}:${at}`);
    });
  });
  return (node) => node.attrs.id || named.get(node);
}

export type Renaming =
  | { readonly ok: true; readonly transaction: Transaction }
  /** `taken`: another line is called so; `read-otherwise`: with this name the text would mean something else. */
  | { readonly ok: false; readonly reason: 'taken' }
  | { readonly ok: false; readonly reason: 'read-otherwise'; readonly text: string };

/**
 * Gives a line another name, and changes every text of the document that names it in the same step. Texts that
 * would come to name other lines than before keep the rename from being done.
 */
export function renameLine(state: EditorState, id: string, name: string): Renaming {
  const { doc } = state;
  const transaction = begin(state);
  const place = placeOf(doc, id);
  const old: string = place?.node.attrs.name ?? '';
  if (place === null || old === name) return { ok: true, transaction };
  const { lines } = project(doc);
  const isTaken = lines.some((line) => line.id !== id && foldName(line.name) === foldName(name));
  if (isTaken && name.trim() !== '') return { ok: false, reason: 'taken' };
  transaction.setNodeAttribute(place.pos, 'name', name);
  // Formulas mean the first line of a name; a second one of the same name is named by none.
  const isFirst = lines.find((line) => foldName(line.name) === foldName(old))?.id === id;
  if (!isFirst || old.trim() === '' || name.trim() === '') return { ok: true, transaction };
  const before = vocabularyIn(doc);
  const after = vocabularyOf(lines.map((line) => (line.id === id ? name : line.name)));
  let misread: string | null = null;
  const change: Change = {
    expression: (text) => {
      const renamed = renamedIn(text, before, old, name);
      const { read, names } = compileExpression(text, before);
      const meant = names.map((each) => (each === old ? name : each));
      if (read && !same(compileExpression(renamed, after).names, meant)) misread ??= text;
      return renamed;
    },
    name: (text) => (foldName(text) === foldName(old) ? name : text),
  };
  doc.descendants((node, pos) => {
    for (const [attribute, value] of Object.entries(attributesWith(node, change) ?? {})) {
      if (!same(value, node.attrs[attribute])) transaction.setNodeAttribute(pos, attribute, value);
    }
    return true;
  });
  return misread === null
    ? { ok: true, transaction }
    : { ok: false, reason: 'read-otherwise', text: misread };
}
