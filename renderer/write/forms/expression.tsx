/**
 * Expressions over the lines of the sizing sheet in the forms over the manuscript: typed, and tried by the study while
 * they are. Nothing is worked out here.
 */
import { useEffect, useId, useState } from 'react';
import type { FigureTrial } from '../../analysis/report.ts';
import { Field, useDraft } from '../../parts/fields.tsx';
import { useDesk, useDeskView } from '../../shell/hooks.ts';
import { SizeValues } from './sizes.tsx';

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

/** An expression over the lines of the sizing sheet, with what it comes to. */
export function ExpressionField({
  label,
  value,
  onGive,
}: {
  readonly label: string;
  readonly value: string;
  readonly onGive: (value: string) => void;
}) {
  const lines = useDeskView((view) => view.pattern.lines);
  const list = useId();
  const { props } = useDraft(value, (typed) => {
    onGive(typed);
    return true;
  });
  const trial = useTrial(props.value);
  return (
    <>
      <Field label={label}>{(id) => <input {...props} id={id} list={list} autoComplete="off" />}</Field>
      <datalist id={list}>
        {lines.map((line) => (
          <option key={line.id} value={line.name} />
        ))}
      </datalist>
      <TrialResult trial={trial} />
    </>
  );
}
