/**
 * The grid of the ledger: which cells are drawn, which has the focus, what keys and the pointer do there. The
 * places of its rows come from `RowPlaces`, its numbers from the report.
 */

import type { EditorView } from 'prosemirror-view';
import {
  type KeyboardEvent,
  type PointerEvent,
  useEffect,
  useId,
  useLayoutEffect,
  useMemo,
  useRef,
  useState,
  useSyncExternalStore,
} from 'react';
import type { Pattern } from '../../core/document/pattern.ts';
import type { BlockReport, FindingReport, Report } from '../analysis/report.ts';
import { useLentCommands } from '../commands/context.ts';
import { useDesk, useDeskView, useSettledDeskView, useStudio } from '../shell/hooks.ts';
import { commandWords } from '../words/dialogs.ts';
import { ledgerWords } from '../words/ledger.ts';
import { Card } from './card.tsx';
import { findingsIn } from './cell.ts';
import { columnsInView, columnsThatFit } from './columns.ts';
import { Head } from './head.tsx';
import { type CellAt, moved } from './moves.ts';
import { Row } from './row.tsx';
import type { RowPlace, RowPlaces } from './row-places.ts';
import { type LedgerRow, rowAt, rowsOf } from './rows.ts';

/** How long the pointer rests on a cell before its card opens, and how long the card stays after it left. */
const REST = 250;

/** A cell by what it is of; `row` null = the head. */
interface CellOf {
  readonly row: string | null;
  readonly size: string;
}

const NO_FINDINGS: readonly FindingReport[] = [];

/** Findings of a row: of its own words, and of the rows within a shaping. A lone list keeps its identity. */
function findingsOf(row: LedgerRow, report: Report): readonly FindingReport[] {
  const lists = row.nodes.flatMap((node) => report.byNode.get(node) ?? []);
  if (lists.length === 0) return NO_FINDINGS;
  return row.nodes.length === 1 ? report.byNode.get(row.id)! : lists;
}

function nameOf(report: BlockReport | null, pieceName: string): string {
  const piece = pieceName.trim() === '' ? ledgerWords.unnamedPiece : pieceName;
  return ledgerWords.row(report?.label ?? ledgerWords.corner, report?.side ?? null, piece);
}

/** Names of the pieces by their ids. Names that are the same give the same list. */
const namesOf = (() => {
  let [key, names]: [string, ReadonlyMap<string, string>] = ['', new Map()];
  return ({ pieces }: Pattern): ReadonlyMap<string, string> => {
    const next = JSON.stringify(pieces.map(({ id, name }) => [id, name]));
    if (next !== key) [key, names] = [next, new Map(pieces.map(({ id, name }) => [id, name]))];
    return names;
  };
})();

const cellElement = (grid: HTMLElement | null, cell: CellOf): HTMLElement | null =>
  grid?.querySelector<HTMLElement>(
    cell.row === null
      ? `.ledger-label[data-size="${cell.size}"]`
      : `[data-row="${cell.row}"] [data-size="${cell.size}"]`,
  ) ?? null;

function cellOf(target: EventTarget): CellOf | null {
  const cell = (target as Element).closest<HTMLElement>('[data-size]');
  const size = cell?.dataset.size;
  if (size === undefined) return null;
  return { row: cell?.closest<HTMLElement>('[data-row]')?.dataset.row ?? null, size };
}

const same = (a: CellOf | null, b: CellOf | null): boolean => a?.row === b?.row && a?.size === b?.size;

export interface GridProps {
  readonly places: RowPlaces;
  readonly editor: EditorView;
}

export function Grid({ places, editor }: GridProps) {
  const studio = useStudio();
  const desk = useDesk();
  // Chosen so narrowly that a key which moves nothing here draws nothing here.
  const sizes = useDeskView((view) => view.pattern.sizes);
  const pieceNames = useDeskView((view) => namesOf(view.pattern));
  const report = useSettledDeskView((view) => view.report);
  const reading = useDeskView((view) => view.reading);
  const caretRow = useDeskView(({ document, state }) => {
    const rows = rowsOf(document);
    return rows[rowAt(document, state.selection.head)]?.id ?? null;
  });
  const view = useSyncExternalStore(places.subscribe, places.view);
  const grid = useRef<HTMLTableElement>(null);
  const cardId = useId();

  const focus = sizes.findIndex(({ id }) => id === reading.size);

  /** The cell that has the focus, or had it last while it is still there. */
  const [kept, keep] = useState<CellOf | null>(null);
  const [hasFocus, setHasFocus] = useState(false);
  const [hovered, hover] = useState<CellOf | null>(null);
  const [dismissed, dismiss] = useState<CellOf | null>(null);
  const [firstColumn, setFirstColumn] = useState(0);

  // Without the focus, the tab stop follows the caret and the size in focus.
  const firstInView = view.rows.find((place) => place.top + place.height > 0)?.row.id ?? null;
  const home: CellOf = {
    row: caretRow ?? firstInView,
    size: reading.size ?? sizes[0]?.id ?? '',
  };
  const isThere = (cell: CellOf): boolean =>
    sizes.some(({ id }) => id === cell.size) &&
    (cell.row === null || view.all.some(({ id }) => id === cell.row));
  const active = hasFocus && kept !== null && isThere(kept) ? kept : home;
  const activeSize = sizes.findIndex(({ id }) => id === active.size);
  const activeRow = active.row === null ? -1 : view.all.findIndex(({ id }) => id === active.row);

  const fit = columnsThatFit(view.room, view.cell, sizes.length);
  const columns = columnsInView(
    firstColumn,
    fit,
    sizes.length,
    hasFocus ? activeSize : fit === 1 ? focus : -1,
  );
  const isFolded = columns.count === 1 && sizes.length > 1;
  const isCut = columns.count < sizes.length && !isFolded;
  useEffect(() => setFirstColumn(columns.first), [columns.first]);
  // A size that comes into focus comes into view.
  useEffect(() => {
    setFirstColumn((first) => columnsInView(first, fit, sizes.length, focus).first);
  }, [focus, fit, sizes.length]);

  useLayoutEffect(() => places.hold(activeRow), [places, activeRow]);

  /** A cell to focus once it is drawn. */
  const wanted = useRef<CellOf | null>(null);
  useLayoutEffect(() => {
    if (wanted.current === null) return;
    const element = cellElement(grid.current, wanted.current);
    if (element === null) return;
    wanted.current = null;
    element.focus({ preventScroll: true });
  });

  const focusOn = (at: CellAt): void => {
    const size = sizes[at.size];
    const row = at.row === -1 ? null : view.all[at.row];
    if (size === undefined || row === undefined) return;
    const cell: CellOf = { row: row?.id ?? null, size: size.id };
    if (isFolded) desk.read({ size: size.id });
    if (row !== null) {
      places.hold(at.row);
      places.reveal(at.row, grid.current?.querySelector('.ledger-head')?.getBoundingClientRect().bottom ?? 0);
    }
    wanted.current = cell;
    setHasFocus(true);
    keep(cell);
    dismiss(null);
  };

  const goTo = (cell: CellOf): void => {
    const row = view.all.find(({ id }) => id === cell.row);
    if (row === undefined) return;
    const size = sizes.findIndex(({ id }) => id === cell.size);
    const [finding] = findingsIn(findingsOf(row, report), size);
    desk.read({ size: cell.size });
    if (finding === undefined) studio.goTo(row.id, 0, 0);
    else studio.goTo(finding.where.node ?? row.id, finding.where.from, finding.where.to);
  };

  const onKeyDown = (event: KeyboardEvent): void => {
    const at = cellOf(event.target);
    if (at === null || event.altKey) return;
    if (event.key === 'Escape') {
      event.preventDefault();
      if (shown !== null) dismiss(shown);
      else editor.focus();
      return;
    }
    if (event.key === 'Enter' && at.row !== null) {
      event.preventDefault();
      goTo(at);
      return;
    }
    const from = { row: activeRow, size: activeSize };
    const to = moved(event.key, event.ctrlKey || event.metaKey, from, {
      rows: view.all.length,
      sizes: sizes.length,
      page: view.page,
    });
    if (to === null || event.shiftKey) return;
    event.preventDefault();
    focusOn(to);
  };

  const rest = useRef(0);
  const onPointerOver = (event: PointerEvent): void => {
    if (event.pointerType === 'touch') return;
    const cell = (event.target as Element).closest('.ledger-card') === null ? cellOf(event.target) : hovered;
    window.clearTimeout(rest.current);
    rest.current = window.setTimeout(() => {
      hover(cell?.row == null ? null : cell);
      dismiss((before) => (same(before, cell) ? before : null));
    }, REST);
  };
  const onPointerLeave = (): void => {
    window.clearTimeout(rest.current);
    rest.current = window.setTimeout(() => hover(null), REST);
  };
  useEffect(() => () => window.clearTimeout(rest.current), []);

  const offered = hovered ?? (hasFocus ? active : null);
  const shown = offered === null || offered.row === null || same(offered, dismissed) ? null : offered;
  const shownPlace = shown === null ? undefined : view.rows.find(({ row }) => row.id === shown.row);

  // A card closes by Escape wherever the focus is.
  useEffect(() => {
    if (hovered === null) return;
    const onKey = (event: globalThis.KeyboardEvent) => {
      if (event.key === 'Escape') dismiss(hovered);
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, [hovered]);

  const focusHome = useRef(() => {});
  focusHome.current = () =>
    focusOn({ row: view.all.findIndex(({ id }) => id === home.row), size: Math.max(0, focus) });
  useLentCommands(
    useMemo(
      () => ({
        'go-ledger': {
          hinders: () => (sizesAreThere(desk.view().pattern) ? null : commandWords.hindrances.noSizes),
          run: () => focusHome.current(),
        },
      }),
      [desk],
    ),
  );

  if (sizes.length === 0) return null;
  return (
    <div
      className={isFolded ? 'ledger-sheet is-folded' : 'ledger-sheet'}
      style={{ minHeight: view.length, '--columns': columns.count }}
      onPointerOver={onPointerOver}
      onPointerLeave={onPointerLeave}
    >
      {isCut && (
        <div className="ledger-shift">
          <button
            type="button"
            className="bare"
            aria-label={ledgerWords.earlierSizes}
            disabled={columns.first === 0}
            onClick={() => setFirstColumn(Math.max(0, columns.first - columns.count + 1))}
          >
            ‹
          </button>
          <span>{ledgerWords.inView(columns.first + 1, columns.first + columns.count, sizes.length)}</span>
          <button
            type="button"
            className="bare"
            aria-label={ledgerWords.laterSizes}
            disabled={columns.first + columns.count >= sizes.length}
            onClick={() => setFirstColumn(columns.first + columns.count - 1)}
          >
            ›
          </button>
        </div>
      )}
      <table
        ref={grid}
        className="ledger-grid"
        // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: a grid is a table that keys move in
        role="grid"
        aria-label={ledgerWords.name}
        aria-rowcount={view.all.length + 1}
        aria-colcount={sizes.length + 1}
        aria-readonly="true"
        onKeyDown={onKeyDown}
        onFocus={(event) => {
          const cell = cellOf(event.target);
          if (cell === null) return;
          setHasFocus(true);
          if (!same(cell, kept)) keep(cell);
        }}
        onBlur={(event) => {
          if (!event.currentTarget.contains(event.relatedTarget)) setHasFocus(false);
        }}
        onDoubleClick={(event) => {
          const cell = cellOf(event.target);
          if (cell !== null && cell.row !== null) goTo(cell);
        }}
      >
        <Head
          sizes={sizes}
          columns={columns}
          focus={focus}
          stop={activeRow === -1 ? activeSize : -1}
          onChoose={(size) => desk.read({ size })}
        />
        <tbody>
          {view.rows.map((place) => {
            const block = report.blocks.get(place.row.id) ?? null;
            return (
              <Row
                key={place.row.id}
                id={place.row.id}
                index={place.index}
                top={place.top}
                height={place.height}
                line={place.line}
                atEdge={place.atEdge}
                name={nameOf(block, pieceNames.get(place.row.piece) ?? '')}
                report={block}
                findings={findingsOf(place.row, report)}
                sizes={sizes}
                first={columns.first}
                count={columns.count}
                focus={focus}
                stop={place.index === activeRow ? activeSize : -1}
                card={place.row.id === shown?.row && same(shown, active) ? cardId : undefined}
                isCurrent={place.row.id === caretRow}
              />
            );
          })}
        </tbody>
      </table>
      {shown !== null && shownPlace !== undefined && (
        <Placed place={shownPlace} places={places}>
          <Card
            id={cardId}
            name={nameOf(
              report.blocks.get(shownPlace.row.id) ?? null,
              pieceNames.get(shownPlace.row.piece) ?? '',
            )}
            pattern={desk.view().pattern}
            report={report.blocks.get(shownPlace.row.id) ?? null}
            findings={findingsIn(
              findingsOf(shownPlace.row, report),
              sizes.findIndex(({ id }) => id === shown.size),
            )}
            size={sizes.findIndex(({ id }) => id === shown.size)}
            reading={reading}
          />
        </Placed>
      )}
    </div>
  );
}

const sizesAreThere = (pattern: Pattern): boolean => pattern.sizes.length > 0;

/** A card under the first line of its row, or above it in the lower half of the view. */
function Placed({
  place,
  places,
  children,
}: {
  readonly place: RowPlace;
  readonly places: RowPlaces;
  readonly children: React.ReactNode;
}) {
  const port = places.scroller.getBoundingClientRect();
  const middle = place.top + place.line - places.scroller.scrollTop;
  return (
    <div
      className={middle > port.height / 2 ? 'ledger-card-place is-above' : 'ledger-card-place'}
      style={{ '--top': `${place.top + place.line}px` }}
    >
      {children}
    </div>
  );
}
