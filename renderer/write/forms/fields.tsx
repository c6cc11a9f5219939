/**
 * Fields of the forms over the manuscript. What is being typed is held here until it is given: at Enter, or when
 * the field is left. What was given is held by the document alone.
 */
import { type ReactNode, useEffect, useId, useState } from 'react';
import type { FigureTrial } from '../../analysis/report.ts';
import { useDesk, useDeskView } from '../../shell/hooks.ts';
import { formWords } from '../../words/forms.ts';

export function Field({
  label,
  children,
}: {
  readonly label: string;
  readonly children: (id: string) => ReactNode;
}) {
  const id = useId();
  return (
    <div className="form-field">
      <label htmlFor={id}>{label}</label>
      {children(id)}
    </div>
  );
}

/** Holds what is typed; follows the document when that changes. */
function useTyped(value: string): [string, (typed: string) => void] {
  const [typed, setTyped] = useState(value);
  useEffect(() => setTyped(value), [value]);
  return [typed, setTyped];
}

export interface TextFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onGive: (value: string) => void;
  readonly hint?: string;
}

export function TextField({ label, value, onGive, hint }: TextFieldProps) {
  const [typed, setTyped] = useTyped(value);
  const give = () => {
    if (typed !== value) onGive(typed);
  };
  return (
    <Field label={label}>
      {(id) => (
        <input
          id={id}
          value={typed}
          placeholder={hint}
          onChange={(event) => setTyped(event.target.value)}
          onBlur={give}
          onKeyDown={(event) => {
            if (event.key === 'Enter' && !event.nativeEvent.isComposing) give();
          }}
        />
      )}
    </Field>
  );
}

export interface NumberFieldProps {
  readonly label: string;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly onGive: (value: number) => void;
}

export function NumberField({ label, value, least, most, onGive }: NumberFieldProps) {
  const [typed, setTyped] = useTyped(String(value));
  const number = Number(typed);
  const fits = typed.trim() !== '' && Number.isInteger(number) && number >= least && number <= most;
  const give = () => {
    if (fits && number !== value) onGive(number);
    else if (!fits) setTyped(String(value));
  };
  return (
    <Field label={label}>
      {(id) => (
        <input
          id={id}
          className="number"
          inputMode="numeric"
          value={typed}
          aria-invalid={!fits}
          onChange={(event) => setTyped(event.target.value)}
          onBlur={give}
          onKeyDown={(event) => {
            if (event.key === 'Enter') give();
          }}
        />
      )}
    </Field>
  );
}

export interface ChoiceProps<T extends string> {
  readonly label: string;
  readonly value: T;
  readonly options: readonly (readonly [value: T, words: string])[];
  readonly onGive: (value: T) => void;
}

export function Choice<T extends string>({ label, value, options, onGive }: ChoiceProps<T>) {
  return (
    <Field label={label}>
      {(id) => (
        <select id={id} value={value} onChange={(event) => onGive(event.target.value as T)}>
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

/** For which sizes something is; null = all. */
export function SizeChoice({
  value,
  onGive,
}: {
  readonly value: readonly string[] | null;
  readonly onGive: (value: readonly string[] | null) => void;
}) {
  const sizes = useDeskView((view) => view.pattern.sizes);
  if (sizes.length < 2) return null;
  const chosen = (id: string) => value === null || value.includes(id);
  const toggle = (id: string) => {
    const next = sizes.map((size) => size.id).filter((other) => (other === id ? !chosen(id) : chosen(other)));
    if (next.length > 0) onGive(next.length === sizes.length ? null : next);
  };
  return (
    <fieldset className="size-choice">
      <legend>{formWords.forSizes}</legend>
      {sizes.map(({ id, label }) => (
        <label key={id}>
          <input type="checkbox" checked={chosen(id)} onChange={() => toggle(id)} /> {label}
        </label>
      ))}
    </fieldset>
  );
}

/** What an expression would show: asked of the study while it is typed. */
export function useTrial(expression: string): FigureTrial | null {
  const desk = useDesk();
  const [trial, setTrial] = useState<FigureTrial | null>(null);
  useEffect(() => {
    if (expression.trim() === '') {
      setTrial(null);
      return;
    }
    let isWanted = true;
    const timer = setTimeout(() => {
      void desk.tryFigure(expression).then((told) => {
        if (isWanted) setTrial(told);
      });
    }, 80);
    return () => {
      isWanted = false;
      clearTimeout(timer);
    };
  }, [desk, expression]);
  return trial;
}

/** The values of an expression in every size, or what is wrong with it. */
export function TrialResult({ trial }: { readonly trial: FigureTrial | null }) {
  const sizes = useDeskView((view) => view.pattern.sizes);
  const reading = useDeskView((view) => view.reading);
  if (trial === null) return <p className="trial" aria-live="polite" />;
  if (trial.problems.length > 0) {
    return (
      <p className="trial problem" aria-live="polite">
        {trial.problems[0]}
      </p>
    );
  }
  return <SizeValues values={sizes.map((_, at) => trial.values[at]?.[reading.units] ?? null)} />;
}

/** One value a size, under the sizes' labels. */
export function SizeValues({ values }: { readonly values: readonly (string | number | null)[] }) {
  const sizes = useDeskView((view) => view.pattern.sizes);
  const focus = useDeskView((view) => view.reading.size);
  return (
    <dl className="size-values">
      {sizes.map(({ id, label }, at) => (
        <div key={id} data-focus={id === focus ? '' : undefined}>
          <dt>{label}</dt>
          <dd>{values[at] ?? '–'}</dd>
        </div>
      ))}
    </dl>
  );
}

/** An expression over the lines of the sizing sheet, with what it comes to. */
export function ExpressionField({ label, value, onGive }: TextFieldProps) {
  const [typed, setTyped] = useTyped(value);
  const lines = useDeskView((view) => view.pattern.lines);
  const list = useId();
  const trial = useTrial(typed);
  const give = () => {
    if (typed !== value) onGive(typed);
  };
  return (
    <>
      <Field label={label}>
        {(id) => (
          <input
            id={id}
            list={list}
            value={typed}
            onChange={(event) => setTyped(event.target.value)}
            onBlur={give}
            onKeyDown={(event) => {
              if (event.key === 'Enter') give();
            }}
          />
        )}
      </Field>
      <datalist id={list}>
        {lines.map((line) => (
          <option key={line.id} value={line.name} />
        ))}
      </datalist>
      <TrialResult trial={trial} />
    </>
  );
}
