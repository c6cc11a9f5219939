/**
 * A list of materials as forms, one under the other: added, taken out, put in order by buttons and keys, with what
 * is found beside each. Which fields an item has is the caller's.
 */
import type { Node } from 'prosemirror-model';
import { createContext, type ReactNode, useContext, useEffect, useId, useLayoutEffect, useRef } from 'react';
import { insertItem, moveItem, removeItem } from '../desk/edits.ts';
import type { ListName } from '../desk/places.ts';
import { FindingList, useFindings } from '../parts/findings.tsx';
import { useDesk, useStudio, useStudioView } from '../shell/hooks.ts';
import { materialsWords } from '../words/materials.ts';

/** Tells in words what an edit did. */
export const TellContext = createContext<(words: string) => void>(() => undefined);

export interface ItemListProps<T> {
  readonly list: ListName;
  readonly title: string;
  /** What the button says that adds an item. */
  readonly add: string;
  /** A heading of the third rank where the list is a part of another. */
  readonly isPart?: boolean;
  readonly note?: string;
  readonly none: string;
  readonly items: readonly T[];
  readonly name: (item: T, index: number) => string;
  /** Name under which findings tell of the item. */
  readonly node: (item: T) => string;
  readonly make: () => Node;
  readonly children: (item: T, index: number) => ReactNode;
}

export function ItemList<T>(props: ItemListProps<T>) {
  const { list, title, add, isPart, note, none, items, name, node, make, children } = props;
  const desk = useDesk();
  const tell = useContext(TellContext);
  const heading = useId();
  const section = useRef<HTMLElement>(null);
  /** Index of the item that gets the focus once it is drawn. */
  const wanted = useRef<number | null>(null);
  useLayoutEffect(() => {
    if (wanted.current === null) return;
    const item = section.current?.querySelectorAll<HTMLElement>(':scope > ul > li')[wanted.current];
    if (item === undefined) return;
    wanted.current = null;
    const first = item.querySelector<HTMLElement>('input, select');
    (first ?? item).focus();
    // As when Tab leads there: letters that follow take the place of what it begins with.
    if (first instanceof HTMLInputElement) first.select();
  });
  const move = (index: number, by: number) => {
    const to = index + by;
    if (to < 0 || to >= items.length) return;
    desk.dispatch(moveItem(desk.view().state, list, index, to));
    tell(materialsWords.moved(name(items[index]!, index), to + 1, items.length));
  };
  const remove = (index: number) => {
    tell(materialsWords.removed(name(items[index]!, index)));
    wanted.current = items.length > 1 ? Math.min(index, items.length - 2) : null;
    desk.dispatch(removeItem(desk.view().state, list, index));
    // An item may have a list of its own, which goes with it.
    if (items.length === 1) section.current?.querySelector<HTMLElement>(':scope > .add-item')?.focus();
  };
  return (
    <section ref={section} className="materials-list" aria-labelledby={heading}>
      {isPart ? <h4 id={heading}>{title}</h4> : <h3 id={heading}>{title}</h3>}
      {note !== undefined && <p className="quiet">{note}</p>}
      {items.length === 0 && <p className="quiet">{none}</p>}
      <ul>
        {items.map((item, index) => (
          <Item
            // Abbreviations have no name but their letters, which are typed here.
            key={node(item).includes(':') ? index : node(item)}
            node={node(item)}
            name={name(item, index)}
            isFirst={index === 0}
            isLast={index === items.length - 1}
            onMove={(by) => move(index, by)}
            onRemove={() => remove(index)}
          >
            {children(item, index)}
          </Item>
        ))}
      </ul>
      <button
        type="button"
        className="add-item"
        onClick={() => {
          wanted.current = items.length;
          desk.dispatch(insertItem(desk.view().state, list, make()));
        }}
      >
        {add}
      </button>
    </section>
  );
}

function Item({
  node,
  name,
  isFirst,
  isLast,
  onMove,
  onRemove,
  children,
}: {
  readonly node: string;
  readonly name: string;
  readonly isFirst: boolean;
  readonly isLast: boolean;
  readonly onMove: (by: number) => void;
  readonly onRemove: () => void;
  readonly children: ReactNode;
}) {
  const findings = useFindings(node);
  const item = useRef<HTMLLIElement>(null);
  useTargetOf(node, item);
  const button = (words: string, act: () => void, isOff = false) => (
    <button type="button" aria-label={materialsWords.itemButton(words, name)} disabled={isOff} onClick={act}>
      {words}
    </button>
  );
  return (
    <li
      ref={item}
      tabIndex={-1}
      className="material"
      onKeyDown={(event) => {
        if (!event.altKey || (event.key !== 'ArrowUp' && event.key !== 'ArrowDown')) return;
        onMove(event.key === 'ArrowUp' ? -1 : 1);
        event.preventDefault();
      }}
    >
      <fieldset>
        <legend>{name}</legend>
        {children}
      </fieldset>
      <FindingList findings={findings} />
      <div className="material-buttons">
        {!(isFirst && isLast) && (
          <>
            {button(materialsWords.moveUp, () => onMove(-1), isFirst)}
            {button(materialsWords.moveDown, () => onMove(1), isLast)}
          </>
        )}
        {button(materialsWords.remove, onRemove)}
      </div>
    </li>
  );
}

/** Brings the element into view and focus when the studio is sent to this node. */
export function useTargetOf(node: string, element: React.RefObject<HTMLElement | null>): void {
  const studio = useStudio();
  const target = useStudioView((view) => view.target);
  useEffect(() => {
    if (target === null || target.node !== node) return;
    element.current?.scrollIntoView({ block: 'center' });
    element.current?.focus();
    studio.reached(target.serial);
  }, [studio, target, node, element]);
}
