/** A line's sentence on screen, each of its fields editable where it stands. */
import type { LineRule } from '../../core/document/attributes.ts';
import type { Line } from '../../core/document/pattern.ts';
import type { Finding } from '../../core/finding.ts';
import { useDraft } from '../parts/fields.tsx';
import { useDesk, useDeskView } from '../shell/hooks.ts';
import { useReader } from '../shell/reader.ts';
import { fieldName, sizesWords } from '../words/sizes.ts';
import { setRule, spreadValues } from './edits.ts';
import { FormulaSlot } from './formula.tsx';
import { type FieldName, fieldOf, formulaFieldOf, partsOf, ruleOf, ruleWith } from './rule-fields.ts';

export function Sentence({
  line,
  findings,
  tabIndex,
}: {
  readonly line: Line;
  readonly findings: readonly Finding[];
  readonly tabIndex: number;
}) {
  return (
    <p className="sentence">
      {partsOf(line.kind).map((part, at) =>
        'words' in part ? (
          // biome-ignore lint/suspicious/noArrayIndexKey: the parts of a sentence never change their order
          <span key={at}>{part.words}</span>
        ) : (
          <Slot key={part.field} line={line} field={part.field} findings={findings} tabIndex={tabIndex} />
        ),
      )}
    </p>
  );
}

function Slot({
  line,
  field,
  findings,
  tabIndex,
}: {
  readonly line: Line;
  readonly field: FieldName;
  readonly findings: readonly Finding[];
  readonly tabIndex: number;
}) {
  const desk = useDesk();
  const pattern = useDeskView((view) => view.pattern);
  const { terms, say } = useReader();
  const rule = ruleOf(line);
  const label = sizesWords.field(say(line.name, 'prose') || sizesWords.unnamedLine, fieldName(field, terms));
  const now = fieldOf(rule, field, pattern, terms, (text) => say(text, 'prose'));
  const give = (typed: string): boolean => {
    const next: LineRule | null =
      field === 'spread'
        ? spreadValues(pattern, line, typed as 'all' | 'each')
        : ruleWith(rule, field, typed);
    if (next === null) return field === 'spread';
    desk.dispatch(setRule(desk.view().state, line.id, next));
    return true;
  };
  switch (now.kind) {
    case 'formula':
      return (
        <FormulaSlot
          line={line.id}
          label={label}
          value={now.value}
          findings={formulaFieldOf(rule) === field ? findings : []}
          ruleWith={(text) => ({ ...rule, [field]: text }) as LineRule}
          tabIndex={tabIndex}
          onGive={give}
        />
      );
    case 'choice':
      return (
        <select
          className="slot"
          aria-label={label}
          tabIndex={tabIndex}
          value={now.value}
          onChange={({ target }) => give(target.value)}
        >
          {now.options.map(([option, words]) => (
            <option key={option} value={option}>
              {words}
            </option>
          ))}
        </select>
      );
    case 'number':
      return <TypedSlot label={label} value={String(now.value)} tabIndex={tabIndex} onGive={give} numeric />;
    case 'quantity':
      return (
        <TypedSlot
          label={label}
          value={now.value}
          hint={sizesWords.patternTolerance}
          tabIndex={tabIndex}
          onGive={give}
        />
      );
  }
}

function TypedSlot({
  label,
  value,
  hint,
  numeric,
  tabIndex,
  onGive,
}: {
  readonly label: string;
  readonly value: string;
  readonly hint?: string;
  readonly numeric?: boolean;
  readonly tabIndex: number;
  readonly onGive: (typed: string) => boolean;
}) {
  const { props, isWrong } = useDraft(value, onGive);
  return (
    <input
      {...props}
      className="slot"
      aria-label={label}
      aria-invalid={isWrong || undefined}
      placeholder={hint}
      inputMode={numeric ? 'numeric' : undefined}
      autoComplete="off"
      tabIndex={tabIndex}
    />
  );
}
