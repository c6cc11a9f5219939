/**
 * The sizing sheet as a grid of cells between heads: put together here from its focus, its keys, its deeds and its
 * clipboard. What a cell shows comes from the report. It works nothing out.
 */
import { type MouseEvent, useEffect, useMemo, useRef, useState } from 'react';
import type { Finding } from '../../core/finding.ts';
import { useLentCommands } from '../commands/context.ts';
import { useDeskView } from '../shell/hooks.ts';
import { useReader } from '../shell/reader.ts';
import { sizesWords } from '../words/sizes.ts';
import { GridCell, gravest } from './cell.tsx';
import { CellEditor } from './cell-editor.tsx';
import { useGridClipboard } from './grid-clipboard.ts';
import { useGridDeeds } from './grid-deeds.ts';
import { cellFrom, isSame, useGridFocus } from './grid-focus.ts';
import { answerKey, isControl } from './grid-keys.ts';
import { LineHead } from './line-head.tsx';
import { PersonCell, PersonHead } from './person-column.tsx';
import { isTypedIn, ownQuantity } from './quantities.ts';
import { at, type CellAt, isInRange, moved } from './selection.ts';
import { SizeHead } from './size-head.tsx';

const NONE: readonly Finding[] = [];

/** Whether no form stands over the grid: what cannot be seen is not filled. */
const isInFront = (): boolean => document.querySelector('dialog[open]') === null;

/** What is asked of the maker over the grid. */
export type Asked =
  | { readonly kind: 'size' | 'remove-size' | 'remove-line'; readonly id: string }
  | { readonly kind: 'add-sizes' };

export interface GridProps {
  readonly onAsk: (asked: Asked) => void;
  readonly onTell: (words: string) => void;
  /** The line the focus is at, for adding another below. */
  readonly onLine: (id: string | null) => void;
  /** A line that was just added, to be named next. */
  readonly added: string | null;
}

interface Editing extends CellAt {
  readonly text: string;
}

export function SizingGrid({ onAsk, onTell, onLine, added }: GridProps) {
  const pattern = useDeskView((view) => view.pattern);
  const report = useDeskView((view) => view.report);
  const personShown = useDeskView((view) => view.reading.person);
  const reader = useReader();
  const grid = useRef<HTMLTableElement>(null);
  const [editing, setEditing] = useState<Editing | null>(null);
  const [open, setOpen] = useState<string | null>(null);
  const isDragging = useRef(false);
  const { lines, sizes } = pattern;
  const person = pattern.workbook.people.find(({ id }) => id === personShown) ?? null;
  /** Index in the report, whose sizes may still be those of a moment ago. */
  const reported = useMemo(
    () => sizes.map(({ id }) => report.sizes.findIndex((size) => size.id === id)),
    [sizes, report.sizes],
  );
  const place = useGridFocus(grid, lines, sizes, added);
  const { extent, selection, focus, inside, go, goSoon } = place;
  const deeds = useGridDeeds(place, reported, onTell);
  useGridClipboard(grid, focus.row >= 0 && focus.column >= 0, deeds);

  /** Until somebody was in the grid, none of its lines was chosen. */
  const [isEntered, setEntered] = useState(false);
  const lineAtFocus = (isEntered ? lines[focus.row]?.id : undefined) ?? null;
  useEffect(() => onLine(lineAtFocus), [onLine, lineAtFocus]);

  const begin = (cell: CellAt, typed: string | null) => {
    const text = deeds.textOf(cell);
    if (text !== null) setEditing({ ...cell, text: typed ?? text });
  };

  const fill = useRef(deeds.fill);
  fill.current = deeds.fill;
  useLentCommands(
    useMemo(
      () => ({
        // The keys are taken everywhere in this place: the browser would load the page anew, or keep a bookmark.
        'fill-right': { hinders: () => null, run: () => isInFront() && fill.current('right') },
        'fill-down': { hinders: () => null, run: () => isInFront() && fill.current('down') },
      }),
      [],
    ),
  );

  const onMouseDown = (event: MouseEvent<HTMLTableElement>) => {
    const cell = cellFrom(event.target);
    if (cell === null || event.button !== 0 || isControl(event.target)) return;
    if (cell.row < 0 || cell.column < 0) return;
    event.preventDefault();
    if (event.shiftKey && focus.row >= 0 && focus.column >= 0) go({ anchor: selection.anchor, focus: cell });
    else {
      isDragging.current = true;
      go(at(cell.row, cell.column));
    }
  };
  const onMouseOver = (event: MouseEvent<HTMLTableElement>) => {
    if (event.buttons !== 1) isDragging.current = false;
    const cell = isDragging.current ? cellFrom(event.target) : null;
    if (cell !== null && cell.row >= 0 && cell.column >= 0) go({ anchor: selection.anchor, focus: cell });
  };

  return (
    <table
      ref={grid}
      // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: a grid is a table that keys move in
      role="grid"
      aria-label={sizesWords.grid}
      aria-multiselectable="true"
      tabIndex={-1}
      className="sizing-grid"
      style={{ '--sizes': sizes.length + (person === null ? 0 : 1) }}
      onKeyDown={(event) =>
        answerKey(event, {
          at: place,
          deeds,
          begin,
          askSize: (column) => onAsk({ kind: 'size', id: sizes[column]!.id }),
          askRemoveSize: (column) => onAsk({ kind: 'remove-size', id: sizes[column]!.id }),
          askRemoveLine: (row) => onAsk({ kind: 'remove-line', id: lines[row]!.id }),
        })
      }
      onMouseDown={onMouseDown}
      onMouseOver={onMouseOver}
      onDoubleClick={(event) => {
        const cell = cellFrom(event.target);
        if (cell !== null && cell.row >= 0 && cell.column >= 0 && !isControl(event.target)) begin(cell, null);
      }}
      onFocus={(event) => {
        const cell = cellFrom(event.target);
        if (cell === null) return;
        setEntered(true);
        place.came(cell);
      }}
    >
      <thead>
        <tr className="sizing-row heads">
          <th
            scope="col"
            className="line-head corner"
            data-cell="-1 -1"
            tabIndex={isSame(focus, { row: -1, column: -1 }) ? 0 : -1}
          >
            {sizesWords.corner}
          </th>
          {sizes.map((size, column) => (
            <SizeHead
              key={size.id}
              size={size}
              column={column}
              isSample={size.id === pattern.sample}
              isFocus={isSame(focus, { row: -1, column })}
              onOpen={() => onAsk({ kind: 'size', id: size.id })}
            />
          ))}
          {person !== null && <PersonHead person={person} />}
        </tr>
      </thead>
      <tbody>
        {lines.map((line, row) => {
          const findings = report.byNode.get(line.id) ?? NONE;
          const cells = report.lines.get(line.id)?.cells;
          return (
            <tr key={line.id} className="sizing-row">
              <LineHead
                row={row}
                line={line}
                findings={findings}
                isFocus={isSame(focus, { row, column: -1 })}
                isInside={inside === row}
                isOpen={open === line.id}
                onOpen={(isOpen) => setOpen(isOpen ? line.id : null)}
                onMove={(by) => deeds.moveLine(row, by)}
                onRemove={() => onAsk({ kind: 'remove-line', id: line.id })}
                onTell={onTell}
              />
              {sizes.map((size, column) => (
                <GridCell
                  key={size.id}
                  row={row}
                  column={column}
                  line={line}
                  own={ownQuantity(line, size.id)}
                  isTypedIn={isTypedIn(line)}
                  report={cells?.[reported[column] ?? -1]}
                  finding={gravest(findings, reported[column] ?? -1)}
                  isFocus={isSame(focus, { row, column })}
                  isChosen={isInRange(selection, row, column)}
                  reader={reader}
                  editor={
                    editing !== null && isSame(editing, { row, column }) ? (
                      <CellEditor
                        label={sizesWords.cellName(line.name, size.label)}
                        text={editing.text}
                        onCommit={(text) => deeds.give({ row, column }, text)}
                        onRefused={deeds.refuse}
                        onEnd={(next) => {
                          setEditing(null);
                          if (next === null) return;
                          const to = moved(at(row, column), next, { extend: true, far: false }, extent);
                          goSoon(to === null ? { row, column } : to.focus);
                        }}
                      />
                    ) : null
                  }
                />
              ))}
              {person !== null && <PersonCell line={line.id} person={person} reader={reader} />}
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
