/**
 * A formula inside a line's sentence: shown with the words underlined that a finding is about, typed with the
 * names of lines offered and with what it would come to told by the worker. It works nothing out.
 */
import { type ReactNode, useEffect, useId, useLayoutEffect, useMemo, useRef, useState } from 'react';
import type { LineRule } from '../../core/document/attributes.ts';
import type { Finding } from '../../core/finding.ts';
import type { LineTrial } from '../analysis/report.ts';
import { isForWindow } from '../parts/fields.tsx';
import { useHalfTyped } from '../shell/half-typed.ts';
import { useDesk, useDeskView } from '../shell/hooks.ts';
import { useReader } from '../shell/reader.ts';
import { sizesWords } from '../words/sizes.ts';
import { completionsAt } from './completion.ts';

export interface FormulaProps {
  readonly line: string;
  readonly label: string;
  readonly value: string;
  /** Findings whose places count in this formula. */
  readonly findings: readonly Finding[];
  /** The rule with this text in the formula's place. */
  readonly ruleWith: (text: string) => LineRule;
  readonly tabIndex: number;
  readonly onGive: (text: string) => void;
}

/** The text with its findings' words marked. */
function marked(text: string, findings: readonly Finding[], say: (text: string) => string): ReactNode {
  const spans = findings
    .map(({ where, severity }) => ({ from: where.from, to: Math.min(where.to, text.length), severity }))
    .filter(({ from, to }) => to > from)
    .sort((a, b) => a.from - b.from);
  const parts: ReactNode[] = [];
  let at = 0;
  for (const { from, to, severity } of spans) {
    if (from < at) continue;
    parts.push(
      say(text.slice(at, from)),
      <mark key={from} className={severity}>
        {say(text.slice(from, to))}
      </mark>,
    );
    at = to;
  }
  return [...parts, say(text.slice(at))];
}

export function FormulaSlot(props: FormulaProps) {
  const { label, value, findings, tabIndex, onGive } = props;
  const [isTyping, setTyping] = useState(false);
  const button = useRef<HTMLButtonElement>(null);
  const isBack = useRef(false);
  const { say, isOther } = useReader();
  useEffect(() => {
    if (!isTyping && isBack.current) button.current?.focus();
    isBack.current = false;
  }, [isTyping]);
  if (isTyping) {
    return (
      <FormulaEditor
        {...props}
        onEnd={(text, back) => {
          isBack.current = back;
          setTyping(false);
          if (text !== null && text.trim() !== value) onGive(text.trim());
        }}
      />
    );
  }
  return (
    <button
      ref={button}
      type="button"
      className={`slot formula ${value.trim() === '' ? 'empty' : ''}`}
      aria-label={`${label}: ${value.trim() === '' ? sizesWords.emptyFormula : say(value, 'prose')}`}
      tabIndex={tabIndex}
      disabled={isOther}
      onClick={() => setTyping(true)}
    >
      {value.trim() === '' ? sizesWords.emptyFormula : marked(value, findings, (text) => say(text, 'prose'))}
    </button>
  );
}

function FormulaEditor({
  line,
  label,
  value,
  ruleWith,
  onGive,
  onEnd,
}: FormulaProps & { readonly onEnd: (text: string | null, back: boolean) => void }) {
  const lines = useDeskView((view) => view.pattern.lines);
  const [text, setText] = useState(value);
  const [caret, setCaret] = useState(value.length);
  const [active, setActive] = useState(-1);
  const [isOpen, setOpen] = useState(value === '');
  const input = useRef<HTMLInputElement>(null);
  const isDone = useRef(false);
  const id = useId();
  const names = useMemo(
    () => lines.flatMap((other) => (other.id === line || other.name.trim() === '' ? [] : [other.name])),
    [lines, line],
  );
  const { from, options } = useMemo(() => completionsAt(text, caret, names), [text, caret, names]);
  const shown = isOpen ? options : [];
  const trial = useLineTrial(line, ruleWith, text, value);
  useHalfTyped(text.trim() === value ? null : text.trim(), onGive);
  useEffect(() => {
    input.current?.focus();
    input.current?.select();
  }, []);
  // With the new text, not a frame later: what is typed meanwhile must not have the caret taken from it.
  const caretAfter = useRef<number | null>(null);
  useLayoutEffect(() => {
    if (caretAfter.current !== null) input.current?.setSelectionRange(caretAfter.current, caretAfter.current);
    caretAfter.current = null;
  });
  const end = (given: string | null, back: boolean) => {
    if (isDone.current) return;
    isDone.current = true;
    onEnd(given, back);
  };
  const take = (name: string) => {
    const next = text.slice(0, from) + name + text.slice(caret);
    setText(next);
    setCaret(from + name.length);
    setActive(-1);
    setOpen(false);
    caretAfter.current = from + name.length;
  };
  const option = (at: number) => `${id}-${at}`;
  return (
    <span className="formula-editor">
      <input
        ref={input}
        className="slot"
        role="combobox"
        aria-label={label}
        aria-expanded={shown.length > 0}
        aria-controls={`${id}-list`}
        aria-autocomplete="list"
        aria-activedescendant={active >= 0 && active < shown.length ? option(active) : undefined}
        aria-describedby={`${id}-told`}
        autoComplete="off"
        value={text}
        onChange={({ target }) => {
          setText(target.value);
          setCaret(target.selectionStart ?? target.value.length);
          setActive(-1);
          setOpen(true);
        }}
        onSelect={({ currentTarget }) => setCaret(currentTarget.selectionStart ?? 0)}
        onBlur={() => end(text, false)}
        onKeyDown={(event) => {
          if (event.nativeEvent.isComposing) return;
          if (!isForWindow(event, text !== value)) event.stopPropagation();
          if (event.key === 'ArrowDown' || event.key === 'ArrowUp') {
            setOpen(true);
            const by = event.key === 'ArrowDown' ? 1 : -1;
            setActive((now) => Math.max(-1, Math.min(options.length - 1, now + by)));
          } else if (event.key === 'Tab' && shown[active] !== undefined) {
            take(shown[active]);
          } else if (event.key === 'Enter') {
            if (shown[active] !== undefined) take(shown[active]);
            else end(text, true);
          } else if (event.key === 'Escape') {
            if (shown.length > 0 && text !== value) setOpen(false);
            else end(null, true);
          } else return;
          event.preventDefault();
        }}
      />
      <span id={`${id}-list`} role="listbox" aria-label={sizesWords.formulaLines} className="line-completion">
        {shown.map((name, at) => (
          <span
            key={name}
            id={option(at)}
            role="option"
            tabIndex={-1}
            aria-selected={at === active}
            onMouseDown={(event) => {
              event.preventDefault();
              take(name);
            }}
          >
            {name}
          </span>
        ))}
      </span>
      <span id={`${id}-told`} className="formula-told" aria-live="polite">
        <Trial trial={trial} />
        <span className="quiet">{sizesWords.formulaHint}</span>
      </span>
    </span>
  );
}

/** What the line would come to with the formula that is being typed. */
function useLineTrial(
  line: string,
  ruleWith: (text: string) => LineRule,
  text: string,
  value: string,
): LineTrial | null {
  const desk = useDesk();
  const [trial, setTrial] = useState<LineTrial | null>(null);
  const rule = useRef(ruleWith);
  rule.current = ruleWith;
  useEffect(() => {
    if (text.trim() === '' || text === value) {
      setTrial(null);
      return;
    }
    let isWanted = true;
    const timer = setTimeout(() => {
      void desk.tryLine(line, rule.current(text)).then((told) => {
        if (isWanted) setTrial(told);
      });
    }, 100);
    return () => {
      isWanted = false;
      clearTimeout(timer);
    };
  }, [desk, line, text, value]);
  return trial;
}

function Trial({ trial }: { readonly trial: LineTrial | null }) {
  const labels = useDeskView((view) => view.report.sizes);
  const { say, units } = useReader();
  if (trial === null) return null;
  const [problem] = trial.problems;
  const values = trial.cells.map(({ value }) => value?.[units] ?? '–');
  return (
    <>
      {problem !== undefined && <span className={`trial ${problem.severity}`}>{say(problem.message)}</span>}
      {values.some((value) => value !== '–') && (
        <span className="trial">
          {sizesWords.trial}: {values.map((value, at) => `${labels[at]?.label ?? ''} ${value}`).join(' · ')}
        </span>
      )}
    </>
  );
}
