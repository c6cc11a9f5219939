/**
 * Fields of forms that hold what is being typed until it is given: at Enter, or when the field is left. Escape
 * takes it back. What was given is held by the document alone.
 */
import { type KeyboardEvent, type ReactNode, useId, useState } from 'react';
import { useHalfTyped } from '../shell/half-typed.ts';

/** Whether a key in a field is one of the window's: undoing what is being typed is the field's own. */
export const isForWindow = ({ ctrlKey, metaKey, key }: KeyboardEvent, isDirty: boolean): boolean =>
  (ctrlKey || metaKey) && !(isDirty && key.toLowerCase() === 'z');

/**
 * What is typed in a field, following the document; and the handlers that give it or take it back. `give` only
 * changes the document, or says that it cannot; `onRefused` tells the maker so.
 */
export function useDraft(
  value: string,
  give: (typed: string) => boolean,
  onRefused?: (typed: string) => void,
) {
  const [typed, setTyped] = useState(value);
  const [isWrong, setWrong] = useState(false);
  const [shown, setShown] = useState(value);
  // In the same drawing: a field that followed a moment later would show words that are not the document's any more.
  if (shown !== value) {
    setShown(value);
    setTyped(value);
    setWrong(false);
  }
  useHalfTyped(typed === value ? null : typed, give);
  const commit = () => {
    const isGiven = typed === value || give(typed);
    setWrong(!isGiven);
    if (!isGiven) onRefused?.(typed);
  };
  const back = () => {
    setTyped(value);
    setWrong(false);
  };
  return {
    isWrong,
    isDirty: typed !== value,
    props: {
      value: typed,
      onChange: ({ target }: { readonly target: { readonly value: string } }) => setTyped(target.value),
      onBlur: commit,
      onKeyDown: (event: KeyboardEvent<HTMLElement>) => {
        if (event.nativeEvent.isComposing) return;
        // Undoing what is being typed is the field's; undoing what was given is the desk's.
        const isUndo = (event.ctrlKey || event.metaKey) && event.key.toLowerCase() === 'z';
        if (isUndo && typed !== value) event.stopPropagation();
        else if (event.key === 'Enter') commit();
        else if (event.key === 'Escape' && typed !== value) {
          event.stopPropagation();
          event.preventDefault();
          back();
        }
      },
    },
  };
}

interface Labelled {
  readonly label: string;
  /** Told under the field. */
  readonly note?: string | undefined;
  readonly className?: string | undefined;
}

/** A field under its label, with what is told about it below. */
export function Field({
  label,
  note,
  className,
  children,
}: Labelled & { readonly children: (id: string, note: string | undefined) => ReactNode }) {
  const id = useId();
  return (
    <div className={`field ${className ?? ''}`}>
      <label htmlFor={id}>{label}</label>
      {children(id, note === undefined ? undefined : `${id}-note`)}
      {note !== undefined && (
        <small id={`${id}-note`} className="quiet">
          {note}
        </small>
      )}
    </div>
  );
}

export interface DraftFieldProps extends Labelled {
  readonly value: string;
  /** Takes what was typed; false when it cannot stand there. */
  readonly onGive: (typed: string) => boolean;
  /** Told when what was typed cannot stand there. */
  readonly fault?: string;
  readonly readOnly?: boolean;
  readonly hint?: string;
  readonly numeric?: boolean;
  /** Its whole name, where the label alone would not tell it from others. */
  readonly name?: string;
}

/** A line of text, a number or an amount. */
export function DraftField({
  label,
  note,
  className,
  value,
  onGive,
  fault,
  readOnly,
  hint,
  numeric,
  name,
}: DraftFieldProps) {
  const { props, isWrong } = useDraft(value, onGive);
  return (
    <Field label={label} note={isWrong ? fault : note} className={className}>
      {(id, noteId) => (
        <input
          {...props}
          id={id}
          aria-describedby={noteId}
          aria-invalid={isWrong || undefined}
          placeholder={hint}
          readOnly={readOnly}
          aria-label={name}
          inputMode={numeric ? 'decimal' : undefined}
          autoComplete="off"
        />
      )}
    </Field>
  );
}

export interface ChoiceFieldProps<T extends string> extends Labelled {
  readonly value: T;
  readonly options: readonly (readonly [value: T, words: string])[];
  readonly onGive: (value: T) => void;
}

/** One of several, from a list. */
export function ChoiceField<T extends string>({
  label,
  note,
  className,
  value,
  options,
  onGive,
}: ChoiceFieldProps<T>) {
  return (
    <Field label={label} note={note} className={className}>
      {(id, noteId) => (
        <select
          id={id}
          aria-describedby={noteId}
          value={value}
          onChange={({ target }) => onGive(target.value as T)}
        >
          {options.map(([option, words]) => (
            <option key={option} value={option}>
              {words}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
}

export function CheckField({
  label,
  checked,
  onGive,
}: {
  readonly label: string;
  readonly checked: boolean;
  readonly onGive: (checked: boolean) => void;
}) {
  return (
    <label className="check-field">
      <input type="checkbox" checked={checked} onChange={({ target }) => onGive(target.checked)} />
      <span>{label}</span>
    </label>
  );
}
