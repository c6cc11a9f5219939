/**
 * The sizing sheet as a grid: its keys, its range, typing into cells, the clipboard. What a cell shows comes from
 * the report; what changes the document are transactions. It works nothing out.
 */
import {
  type KeyboardEvent,
  type MouseEvent,
  useEffect,
  useLayoutEffect,
  useMemo,
  useRef,
  useState,
} from 'react';
import type { Finding } from '../../core/finding.ts';
import { useLentCommands } from '../commands/context.ts';
import { isMac } from '../commands/keys.ts';
import { moveItem } from '../desk/edits.ts';
import { useDesk, useDeskView, useStudio, useStudioView } from '../shell/hooks.ts';
import { useReader } from '../shell/reader.ts';
import { sizesWords } from '../words/sizes.ts';
import { GridCell } from './cell.tsx';
import { filled, type Pasting, pasted, setCells } from './edits.ts';
import { LineHead } from './line-head.tsx';
import { PersonCell, PersonHead } from './person-column.tsx';
import { isTypedIn, ownQuantity, quantityText, readCell } from './quantities.ts';
import { at, type CellAt, isInRange, moved, rangeOf, type Selection, within } from './selection.ts';
import { SizeHead } from './size-head.tsx';
import { readTable, writeTable } from './tsv.ts';

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

function cellFrom(target: EventTarget): CellAt | null {
  const cell = (target as Element).closest<HTMLElement>('[data-cell]')?.dataset.cell;
  if (cell === undefined) return null;
  const [row, column] = cell.split(' ').map(Number);
  return { row: row!, column: column! };
}

const isControl = (target: EventTarget): boolean =>
  /^(?:INPUT|SELECT|BUTTON|TEXTAREA)$/.test((target as Element).tagName) &&
  !(target as HTMLElement).dataset.cell;

export function SizingGrid({ onAsk, onTell, onLine, added }: GridProps) {
  const studio = useStudio();
  const desk = useDesk();
  const pattern = useDeskView((view) => view.pattern);
  const report = useDeskView((view) => view.report);
  const reader = useReader();
  const target = useStudioView((view) => view.target);
  const grid = useRef<HTMLTableElement>(null);
  const [chosen, setChosen] = useState<Selection>(() => at(0, 0));
  const [editing, setEditing] = useState<Editing | null>(null);
  const [inside, setInside] = useState<number | null>(null);
  const [open, setOpen] = useState<string | null>(null);
  /** Cell, or the first field of a line's head, that gets the focus once it is drawn. */
  const pending = useRef<{ readonly cell: CellAt; readonly field: boolean } | null>(null);
  const isDragging = useRef(false);
  const { lines, sizes } = pattern;
  const extent = { rows: lines.length, columns: sizes.length };
  const selection = within(chosen, extent);
  const { focus } = selection;
  const personShown = useDeskView((view) => view.reading.person);
  const person = pattern.workbook.people.find(({ id }) => id === personShown) ?? null;
  /** Index in the report, whose sizes may still be those of a moment ago. */
  const reported = useMemo(
    () => sizes.map(({ id }) => report.sizes.findIndex((size) => size.id === id)),
    [sizes, report.sizes],
  );

  const element = ({ row, column }: CellAt) =>
    grid.current?.querySelector<HTMLElement>(`[data-cell="${row} ${column}"]`) ?? null;
  const focusOn = (cell: CellAt) => element(cell)?.focus();
  const go = (next: Selection) => {
    setChosen(next);
    focusOn(next.focus);
  };
  const focusSoon = (cell: CellAt, field = false) => {
    setChosen(at(cell.row, cell.column));
    pending.current = { cell, field };
  };
  useLayoutEffect(() => {
    if (pending.current === null) return;
    const { cell, field } = pending.current;
    const found = element(cell);
    if (found === null) return;
    pending.current = null;
    found.scrollIntoView({ block: 'nearest', inline: 'nearest' });
    const first = field ? found.querySelector<HTMLInputElement>('input') : null;
    (first ?? found).focus();
    first?.select();
  });

  const lineAtFocus = lines[focus.row]?.id ?? null;
  useEffect(() => onLine(lineAtFocus), [onLine, lineAtFocus]);

  useEffect(() => {
    if (target === null) return;
    const row = lines.findIndex(({ id }) => id === target.node);
    const column = sizes.findIndex(({ id }) => id === target.node);
    const cell = row >= 0 ? { row, column: -1 } : column >= 0 ? { row: -1, column } : null;
    if (cell === null) return;
    pending.current = { cell, field: false };
    setChosen(at(cell.row, cell.column));
    studio.reached(target.serial);
  }, [studio, target, lines, sizes]);

  /** A line that was just added is named next. */
  const named = useRef<string | null>(null);
  useEffect(() => {
    const row = added === null || added === named.current ? -1 : lines.findIndex(({ id }) => id === added);
    if (row < 0) return;
    named.current = added;
    setChosen(at(row, -1));
    pending.current = { cell: { row, column: -1 }, field: true };
    setInside(row);
  }, [added, lines]);

  const begin = (cell: CellAt, text: string | null) => {
    const [line, size] = [lines[cell.row], sizes[cell.column]];
    if (line === undefined || size === undefined) return;
    if (!isTypedIn(line)) {
      onTell(sizesWords.workedOut);
      return;
    }
    const own = ownQuantity(line, size.id);
    setEditing({ ...cell, text: text ?? (own === null ? '' : quantityText(own)) });
  };

  /** Takes what was typed; false when it is no amount. */
  const commit = (cell: CellAt, text: string): boolean => {
    const [line, size] = [lines[cell.row], sizes[cell.column]];
    if (line === undefined || size === undefined) return true;
    const own = ownQuantity(line, size.id);
    if (text === (own === null ? '' : quantityText(own))) return true;
    const value = text.trim() === '' ? null : readCell(text, line, size.id, reader.units);
    if (value === null && text.trim() !== '') {
      onTell(sizesWords.notAnAmount(text));
      return false;
    }
    desk.dispatch(setCells(desk.view().state, [{ line: line.id, size: size.id, value }]));
    return true;
  };

  const cellsIn = () => {
    const { top, bottom, left, right } = rangeOf(selection);
    return lines
      .slice(Math.max(0, top), bottom + 1)
      .map((line, r) =>
        sizes
          .slice(Math.max(0, left), right + 1)
          .map((size, c) => ({ line, size, row: top + r, column: left + c })),
      );
  };

  const clear = () => {
    const changes = cellsIn()
      .flat()
      .filter(({ line, size }) => isTypedIn(line) && ownQuantity(line, size.id) !== null)
      .map(({ line, size }) => ({ line: line.id, size: size.id, value: null }));
    if (changes.length > 0) desk.dispatch(setCells(desk.view().state, changes));
    onTell(changes.length > 0 ? sizesWords.cleared(changes.length) : sizesWords.workedOut);
  };

  const fill = (way: 'right' | 'down') => {
    const { view } = desk;
    const changes = filled(pattern, rangeOf(selection), way);
    if (changes.length > 0) desk.dispatch(setCells(view().state, changes));
    const done = way === 'right' ? sizesWords.filledRight : sizesWords.filledDown;
    onTell(changes.length > 0 ? done : sizesWords.nothingToFill);
  };

  const moveLine = (row: number, by: number) => {
    const to = row + by;
    const line = lines[row];
    if (line === undefined || to < 0 || to >= lines.length) return;
    const column = focus.row === row ? focus.column : -1;
    desk.dispatch(moveItem(desk.view().state, 'lines', row, to));
    focusSoon({ row: to, column });
    onTell(sizesWords.moved(line.name, to + 1, lines.length));
  };

  const moveSize = (column: number, by: number) => {
    const to = column + by;
    const size = sizes[column];
    if (size === undefined || to < 0 || to >= sizes.length) return;
    desk.dispatch(moveItem(desk.view().state, 'sizes', column, to));
    focusSoon({ row: focus.row, column: to });
    onTell(sizesWords.moved(size.label, to + 1, sizes.length));
  };

  /** The newest of what listeners outside React's tree use. */
  const now = useRef({
    copy: (_: ClipboardEvent, __: boolean) => {},
    paste: (_: ClipboardEvent) => {},
    fill,
  });
  now.current = {
    fill,
    copy: (event, isCut) => {
      if (focus.row < 0 || focus.column < 0) return;
      event.clipboardData?.setData(
        'text/plain',
        writeTable(
          cellsIn().map((cells) =>
            cells.map(({ line, size, column }) => {
              const own = ownQuantity(line, size.id);
              if (own !== null) return quantityText(own);
              const cell = report.lines.get(line.id)?.cells[reported[column] ?? -1];
              return reader.say(cell?.value?.[reader.units] ?? '', 'row');
            }),
          ),
        ),
      );
      event.preventDefault();
      if (isCut) clear();
    },
    paste: (event) => {
      if (focus.row < 0 || focus.column < 0) return;
      event.preventDefault();
      const table = readTable(event.clipboardData?.getData('text/plain') ?? '');
      const range = rangeOf(selection);
      const done = pasted(pattern, table, range, reader.units);
      if (done.changes.length > 0) desk.dispatch(setCells(desk.view().state, done.changes));
      onTell(pastingWords(done));
      const right = Math.min(sizes.length - 1, range.left + Math.max(...table.map((row) => row.length)) - 1);
      const bottom = Math.min(lines.length - 1, range.top + table.length - 1);
      if (table.length > 1 || table[0]!.length > 1)
        setChosen({ anchor: { row: bottom, column: right }, focus: { row: range.top, column: range.left } });
      focusOn({ row: range.top, column: range.left });
    },
  };
  useEffect(() => {
    const onCell = () => {
      const active = document.activeElement;
      return active instanceof HTMLElement && active.matches('td') && grid.current?.contains(active);
    };
    const onCopy = (event: ClipboardEvent) => onCell() && now.current.copy(event, false);
    const onCut = (event: ClipboardEvent) => onCell() && now.current.copy(event, true);
    const onPaste = (event: ClipboardEvent) => onCell() && now.current.paste(event);
    document.addEventListener('copy', onCopy);
    document.addEventListener('cut', onCut);
    document.addEventListener('paste', onPaste);
    return () => {
      document.removeEventListener('copy', onCopy);
      document.removeEventListener('cut', onCut);
      document.removeEventListener('paste', onPaste);
    };
  }, []);

  useLentCommands(
    useMemo(
      () => ({
        // The keys are taken everywhere in this place: the browser would load the page anew, or keep a bookmark.
        'fill-right': { ready: () => true, run: () => isInFront() && now.current.fill('right') },
        'fill-down': { ready: () => true, run: () => isInFront() && now.current.fill('down') },
      }),
      [],
    ),
  );

  const onKeyDown = (event: KeyboardEvent<HTMLTableElement>) => {
    if (event.nativeEvent.isComposing || event.defaultPrevented) return;
    const cell = cellFrom(event.target);
    if (cell === null) return;
    const { key, altKey, shiftKey } = event;
    const mod = isMac() ? event.metaKey : event.ctrlKey;
    const by = key === 'ArrowUp' || key === 'ArrowLeft' ? -1 : 1;
    if (altKey && (key === 'ArrowUp' || key === 'ArrowDown') && cell.row >= 0) {
      moveLine(cell.row, by);
      event.preventDefault();
      return;
    }
    if (isControl(event.target)) {
      if (key === 'Escape') {
        focusOn(cell);
        event.preventDefault();
      }
      return;
    }
    if (altKey && (key === 'ArrowLeft' || key === 'ArrowRight') && cell.row < 0 && cell.column >= 0)
      moveSize(cell.column, by);
    else if (key === 'a' && mod && cell.row >= 0 && cell.column >= 0)
      setChosen({
        anchor: { row: extent.rows - 1, column: extent.columns - 1 },
        focus: { row: 0, column: 0 },
      });
    else if (key === 'Enter' || key === 'F2') {
      if (cell.row < 0) {
        if (cell.column < 0 || key === 'Enter') return; // a size's head is a button
        onAsk({ kind: 'size', id: sizes[cell.column]!.id });
      } else if (cell.column < 0) enterHead(cell.row);
      else begin(cell, null);
    } else if (key === 'Delete' || key === 'Backspace') {
      if (cell.row >= 0 && cell.column >= 0) clear();
      else if (cell.row >= 0) onAsk({ kind: 'remove-line', id: lines[cell.row]!.id });
      else if (cell.column >= 0) onAsk({ kind: 'remove-size', id: sizes[cell.column]!.id });
    } else if (key === 'Escape') setChosen(at(focus.row, focus.column));
    else if (
      key.length === 1 &&
      !mod &&
      !altKey &&
      !event.metaKey &&
      key !== ' ' &&
      cell.row >= 0 &&
      cell.column >= 0
    )
      begin(cell, key);
    else {
      const next =
        altKey || (event.metaKey !== mod && !isMac())
          ? null
          : moved(selection, key, { extend: shiftKey, far: mod }, extent);
      if (next === null) return;
      go(next);
    }
    event.preventDefault();
  };

  const enterHead = (row: number) => {
    setInside(row);
    element({ row, column: -1 })?.querySelector<HTMLElement>('input, select, button')?.focus();
  };

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

  const isSame = (a: CellAt, b: CellAt) => a.row === b.row && a.column === b.column;
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
      onKeyDown={onKeyDown}
      onMouseDown={onMouseDown}
      onMouseOver={onMouseOver}
      onDoubleClick={(event) => {
        const cell = cellFrom(event.target);
        if (cell !== null && cell.row >= 0 && cell.column >= 0 && !isControl(event.target)) begin(cell, null);
      }}
      onFocus={(event) => {
        const cell = cellFrom(event.target);
        if (cell === null) return;
        setInside(cell.row >= 0 && cell.column < 0 ? cell.row : null);
        setChosen((before) => (isSame(before.focus, cell) ? before : at(cell.row, cell.column)));
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
                onMove={(by) => moveLine(row, by)}
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
                        onCommit={(text) => commit({ row, column }, text)}
                        onEnd={(next) => {
                          setEditing(null);
                          if (next === null) return;
                          const to = moved(at(row, column), next, { extend: true, far: false }, extent);
                          focusSoon(to === null ? { row, column } : to.focus);
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

const GRAVITY = { error: 0, warning: 1, note: 2 } as const;

/** The gravest finding that names this size. */
function gravest(findings: readonly Finding[], size: number): Finding | null {
  let found: Finding | null = null;
  for (const finding of findings) {
    if (!finding.sizes.includes(size)) continue;
    if (found === null || GRAVITY[finding.severity] < GRAVITY[found.severity]) found = finding;
  }
  return found;
}

function pastingWords({ changes, unread, workedOut, outside }: Pasting): string {
  return [
    sizesWords.pasted(changes.length),
    unread.length > 0 ? sizesWords.unread(unread) : '',
    workedOut > 0 ? sizesWords.skipped(workedOut) : '',
    outside > 0 ? sizesWords.outside(outside) : '',
  ]
    .filter(Boolean)
    .join(' ');
}

/** The field in a cell. `onEnd` gets the key that leads on from it, "" to stay, null when the focus went elsewhere. */
function CellEditor({
  label,
  text,
  onCommit,
  onEnd,
}: {
  readonly label: string;
  readonly text: string;
  readonly onCommit: (text: string) => boolean;
  readonly onEnd: (next: string | null) => void;
}) {
  const [typed, setTyped] = useState(text);
  const [isWrong, setWrong] = useState(false);
  const isDone = useRef(false);
  const input = useRef<HTMLInputElement>(null);
  useEffect(() => {
    input.current?.focus();
    input.current?.setSelectionRange(text.length, text.length);
  }, [text]);
  const end = (next: string | null) => {
    isDone.current = true;
    onEnd(next);
  };
  return (
    <input
      ref={input}
      className="cell-field"
      aria-label={label}
      aria-invalid={isWrong || undefined}
      autoComplete="off"
      value={typed}
      onChange={({ target }) => {
        setTyped(target.value);
        setWrong(false);
      }}
      onMouseDown={(event) => event.stopPropagation()}
      onBlur={() => {
        if (isDone.current) return;
        onCommit(typed);
        end(null);
      }}
      onKeyDown={(event) => {
        event.stopPropagation();
        if (event.nativeEvent.isComposing) return;
        const { key, shiftKey } = event;
        if (key === 'Escape') end('');
        else if (key === 'Enter' || key === 'Tab') {
          const next =
            key === 'Enter' ? (shiftKey ? 'ArrowUp' : 'ArrowDown') : shiftKey ? 'ArrowLeft' : 'ArrowRight';
          if (onCommit(typed)) end(next);
          else setWrong(true);
        } else return;
        event.preventDefault();
      }}
    />
  );
}
