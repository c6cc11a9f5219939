/**
 * The outline of the pattern, left of all places: its parts, where the caret is, what each piece has against it.
 * A part is gone to by a click or by Enter; pieces are put in order by dragging, by keys and by buttons.
 */

import { type KeyboardEvent, type PointerEvent, useMemo, useRef, useState } from 'react';
import { flushSync } from 'react-dom';
import { useLentCommands } from '../commands/context.ts';
import { useDesk, useDeskView, useSettledDeskView, useStudio } from '../shell/hooks.ts';
import { commandWords } from '../words/dialogs.ts';
import { outlineWords } from '../words/outline.ts';
import { insertPiece } from '../write/commands/insert.ts';
import { pieceOf } from '../write/commands/where.ts';
import { type Drag, followDrag, indexAfter } from './drag.ts';
import { findingsOf, firstText, type OutlinePart, outlineOf, partAtPosition } from './parts.ts';
import { movePiece } from './pieces.ts';

export function Outline() {
  const studio = useStudio();
  const desk = useDesk();
  const pattern = useSettledDeskView((view) => view.pattern);
  const byNode = useSettledDeskView((view) => view.report.byNode);
  const selection = useSettledDeskView((view) => view.state.selection);
  /** Nothing is written while the pattern is read in the other terms. */
  const mayWrite = useDeskView((view) => view.reading.terms === view.pattern.terms);
  const tree = useRef<HTMLDivElement>(null);
  const [drag, setDrag] = useState<Drag | null>(null);
  /** The part that the tree's keys stand on; null = where the caret is. */
  const [chosen, choose] = useState<string | null>(null);

  /** Whether the list is open in a narrow window; in a wide one it always is. */
  const [isOpen, setOpen] = useState(false);

  const parts = useMemo(() => outlineOf(pattern), [pattern]);
  const current = partAtPosition(parts, selection.$head.doc, selection.head);
  const stopAt = parts.findIndex(({ node }) => node === chosen);
  const stop = Math.max(0, stopAt === -1 ? current : stopAt);
  const pieces = parts.filter(({ piece }) => piece !== null);
  const active = parts[stop];

  const elementOf = (node: string) =>
    [...(tree.current?.querySelectorAll<HTMLElement>('[role="treeitem"]') ?? [])].find(
      (item) => item.dataset.node === node,
    );
  const stand = (index: number): void => {
    const part = parts[Math.min(parts.length - 1, Math.max(0, index))];
    if (part === undefined) return;
    choose(part.node);
    elementOf(part.node)?.focus();
  };
  const goTo = (part: OutlinePart): void => {
    choose(part.node);
    setOpen(false);
    studio.goTo(firstText(desk.view().document, part.node), 0, 0);
  };
  const move = (from: number, to: number): void => {
    const name = pieces[from]?.name ?? '';
    const transaction = movePiece(desk.view().state, from, to);
    if (transaction === null) {
      studio.tell(
        from === to
          ? outlineWords.notMoved(name)
          : to < 0
            ? outlineWords.first(name)
            : outlineWords.last(name),
      );
      return;
    }
    desk.dispatch(transaction);
    studio.tell(outlineWords.moved(name, to + 1, pieces.length));
  };
  const add = (): void => {
    desk.run(insertPiece);
    const made = pieceOf(desk.view().state);
    studio.say(outlineWords.added);
    if (made !== null) studio.goTo(made.node.attrs.id, 0, 0);
  };

  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.ctrlKey || event.metaKey || event.shiftKey || active === undefined) return;
    const act = event.altKey ? movingKey(event.key) : goingKey(event.key);
    if (act === null) return;
    event.preventDefault();
    act();
  };
  const movingKey = (key: string): (() => void) | null => {
    const piece = active?.piece ?? null;
    if (piece === null) return null;
    if (key === 'ArrowUp') return () => move(piece, piece - 1);
    return key === 'ArrowDown' ? () => move(piece, piece + 1) : null;
  };
  const goingKey = (key: string): (() => void) | null => {
    switch (key) {
      case 'ArrowUp':
        return () => stand(stop - 1);
      case 'ArrowDown':
        return () => stand(stop + 1);
      case 'Home':
        return () => stand(0);
      case 'End':
        return () => stand(parts.length - 1);
      case 'ArrowLeft': // from a heading to its piece; the tree is always open
        return active?.level === 2 ? () => stand(parts.findLastIndex(isPieceBefore(stop))) : null;
      case 'Enter':
      case ' ':
        return active === undefined ? null : () => goTo(active);
      default:
        return null;
    }
  };

  useLentCommands(
    useMemo(
      () => ({
        'go-outline': {
          hinders: () => (tree.current === null ? commandWords.hindrances.noOutline : null),
          run: () => {
            flushSync(() => setOpen(true));
            tree.current?.querySelector<HTMLElement>('[tabindex="0"]')?.focus();
          },
        },
      }),
      [],
    ),
  );

  const dropAt = drag === null || indexAfter(drag) === drag.from ? null : drag.before;
  const lastOfPieces = parts.findLastIndex(({ piece, level }) => piece !== null || level === 2);
  const press = (event: PointerEvent, piece: number): void => {
    // A finger scrolls the list unless it takes the piece by its handle.
    const byHandle = (event.target as Element).closest('.outline-handle') !== null;
    if (event.button !== 0 || (event.pointerType === 'touch' && !byHandle)) return;
    followDrag(event.nativeEvent, piece, {
      boxes: () => boxesOfPieces(tree.current),
      scroller: tree.current?.parentElement ?? null,
      onMove: setDrag,
      onDrop: (done) => {
        setDrag(null);
        move(done.from, indexAfter(done));
      },
    });
  };
  return (
    <div className={isOpen ? 'outline-sheet is-open' : 'outline-sheet'}>
      <button
        type="button"
        className="bare outline-toggle"
        aria-expanded={isOpen}
        onClick={() => setOpen(!isOpen)}
      >
        {outlineWords.toggle(parts[current]?.name ?? null)}
      </button>
      <div
        role="tree"
        aria-label={outlineWords.name}
        ref={tree}
        tabIndex={-1}
        onKeyDown={onKeyDown}
        onFocus={(event) => {
          const { node } = event.target.dataset;
          if (node !== undefined) choose(node);
        }}
      >
        {parts.map((part, index) => (
          <Part
            key={part.node}
            part={part}
            isCurrent={index === current}
            isStop={index === stop}
            drop={
              part.piece !== null && dropAt === part.piece
                ? 'before'
                : index === lastOfPieces && dropAt === pieces.length
                  ? 'after'
                  : null
            }
            isDragged={part.piece !== null && drag?.from === part.piece}
            findings={findingsOf(part, byNode)}
            onGo={() => goTo(part)}
            onPress={press}
          />
        ))}
      </div>
      <div className="outline-deeds">
        {active?.piece != null && pieces.length > 1 && (
          <fieldset aria-label={outlineWords.moving(active.name)}>
            <button
              type="button"
              disabled={active.piece === 0}
              onClick={() => move(active.piece!, active.piece! - 1)}
            >
              {outlineWords.earlier}
            </button>
            <button
              type="button"
              disabled={active.piece === pieces.length - 1}
              onClick={() => move(active.piece!, active.piece! + 1)}
            >
              {outlineWords.later}
            </button>
          </fieldset>
        )}
        {mayWrite && (
          <button type="button" onClick={add}>
            {outlineWords.add}
          </button>
        )}
      </div>
    </div>
  );
}

const isPieceBefore =
  (index: number) =>
  (part: OutlinePart, at: number): boolean =>
    at < index && part.level === 1;

/** The box of each piece with its headings, in order. */
function boxesOfPieces(tree: Element | null): readonly { readonly top: number; readonly bottom: number }[] {
  const boxes: { top: number; bottom: number }[] = [];
  for (const item of tree?.children ?? []) {
    const { top, bottom } = item.getBoundingClientRect();
    if (item.hasAttribute('data-piece')) boxes.push({ top, bottom });
    else if (item.getAttribute('aria-level') === '2') boxes.at(-1)!.bottom = bottom;
  }
  return boxes;
}

interface PartProps {
  readonly part: OutlinePart;
  /** The caret is in it. */
  readonly isCurrent: boolean;
  /** It has the tab stop. */
  readonly isStop: boolean;
  readonly drop: 'before' | 'after' | null;
  readonly isDragged: boolean;
  readonly findings: { readonly errors: number; readonly warnings: number };
  readonly onGo: () => void;
  readonly onPress: (event: PointerEvent, piece: number) => void;
}

function Part({ part, isCurrent, isStop, drop, isDragged, findings, onGo, onPress }: PartProps) {
  const classes = ['outline-part'];
  if (drop !== null) classes.push(`drops-${drop}`);
  if (isDragged) classes.push('is-dragged');
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: the tree takes the keys
    <div
      role="treeitem"
      aria-level={part.level}
      aria-selected={isStop}
      aria-current={isCurrent ? 'location' : undefined}
      tabIndex={isStop ? 0 : -1}
      className={classes.join(' ')}
      data-node={part.node}
      data-piece={part.piece ?? undefined}
      onClick={onGo}
      onPointerDown={part.piece === null ? undefined : (event) => onPress(event, part.piece!)}
    >
      {part.piece !== null && <span className="outline-handle" aria-hidden="true" />}
      <span className="outline-name">{part.name}</span>
      {findings.errors > 0 && <Tally number={findings.errors} kind="errors" />}
      {findings.warnings > 0 && <Tally number={findings.warnings} kind="warnings" />}
    </div>
  );
}

/** How many findings, by number and form; the words are for those who hear them. */
function Tally({ number, kind }: { readonly number: number; readonly kind: 'errors' | 'warnings' }) {
  return (
    <span className={`outline-tally is-${kind}`} title={outlineWords[kind](number)}>
      <span aria-hidden="true">{number}</span>
      <span className="unseen">, {outlineWords[kind](number)}</span>
    </span>
  );
}
