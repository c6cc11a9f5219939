/** The head of a line: its name, its sentence, what is found about it, and what else a line has. */

import type { Line } from '../../core/document/pattern.ts';
import type { Finding } from '../../core/finding.ts';
import { setAttributes } from '../desk/edits.ts';
import { renameLine } from '../desk/line-names.ts';
import { useDraft } from '../parts/fields.tsx';
import { FindingList } from '../parts/findings.tsx';
import { useDesk, useDeskView } from '../shell/hooks.ts';
import { useReader } from '../shell/reader.ts';
import { kindOf, sizesWords } from '../words/sizes.ts';
import { Sentence } from './sentence.tsx';

export interface LineHeadProps {
  readonly row: number;
  readonly line: Line;
  readonly findings: readonly Finding[];
  readonly isFocus: boolean;
  /** The focus is in this head: its fields are reached by Tab. */
  readonly isInside: boolean;
  readonly isOpen: boolean;
  readonly onOpen: (open: boolean) => void;
  readonly onMove: (by: number) => void;
  readonly onRemove: () => void;
  readonly onTell: (words: string) => void;
}

export function LineHead(props: LineHeadProps) {
  const { row, line, findings, isFocus, isInside, isOpen, onOpen } = props;
  const tabIndex = isInside ? 0 : -1;
  const name = line.name.trim() === '' ? sizesWords.unnamedLine : line.name;
  return (
    <th
      scope="row"
      className="line-head"
      data-cell={`${row} -1`}
      data-line={line.id}
      tabIndex={isFocus ? 0 : -1}
      aria-label={`${name}, ${kindOf(line)}`}
    >
      <div className="line-title">
        <NameField {...props} tabIndex={tabIndex} />
        <button
          type="button"
          className="bare more"
          tabIndex={tabIndex}
          aria-expanded={isOpen}
          aria-label={sizesWords.more(name)}
          onClick={() => onOpen(!isOpen)}
        >
          {sizesWords.moreShort}
        </button>
      </div>
      <Sentence line={line} findings={findings} tabIndex={tabIndex} />
      {isOpen && <More {...props} tabIndex={tabIndex} />}
      <FindingList findings={findings} tabIndex={tabIndex} />
    </th>
  );
}

function NameField({ line, onTell, tabIndex }: LineHeadProps & { readonly tabIndex: number }) {
  const desk = useDesk();
  const { say, isOther } = useReader();
  const renamed = (typed: string) => renameLine(desk.view().state, line.id, typed.trim());
  const give = (typed: string): boolean => {
    const renaming = renamed(typed);
    if (renaming.ok) desk.dispatch(renaming.transaction);
    return renaming.ok;
  };
  const refuse = (typed: string) => {
    const renaming = renamed(typed);
    if (renaming.ok) return;
    const name = typed.trim();
    onTell(
      renaming.reason === 'taken'
        ? sizesWords.renameTaken(name)
        : sizesWords.renameMisread(name, renaming.text),
    );
  };
  const { props, isWrong } = useDraft(line.name, give, refuse);
  return (
    <input
      {...props}
      value={isOther ? say(line.name, 'prose') : props.value}
      readOnly={isOther}
      className="line-name"
      aria-label={sizesWords.fields.name}
      aria-invalid={isWrong || undefined}
      placeholder={sizesWords.unnamedLine}
      autoComplete="off"
      maxLength={200}
      tabIndex={tabIndex}
    />
  );
}

function More({ line, onMove, onRemove, tabIndex }: LineHeadProps & { readonly tabIndex: number }) {
  const desk = useDesk();
  const lines = useDeskView((view) => view.pattern.lines);
  const { say, isOther } = useReader();
  const set = (attributes: { readonly printed?: string | null; readonly note?: string | null }) => {
    desk.dispatch(setAttributes<'line'>(desk.view().state, line.id, attributes));
    return true;
  };
  const { props } = useDraft(line.printed ?? '', (typed) =>
    set({ printed: typed.trim() === '' ? null : typed.trim() }),
  );
  const bodies = lines.filter(({ kind, id }) => kind === 'body' && id !== line.id).map(({ name }) => name);
  const compared = line.note !== null && !bodies.includes(line.note) ? [line.note, ...bodies] : bodies;
  const button = (words: string, act: () => void) => (
    <button type="button" tabIndex={tabIndex} onClick={act}>
      {words}
    </button>
  );
  return (
    <div className="line-more">
      <label>
        <span>{sizesWords.fields.printed}</span>
        <input
          {...props}
          value={isOther ? say(line.printed ?? '', 'prose') : props.value}
          readOnly={isOther}
          placeholder={sizesWords.printedHint}
          autoComplete="off"
          maxLength={200}
          tabIndex={tabIndex}
        />
      </label>
      <label>
        <span>{sizesWords.fields.note}</span>
        <select
          value={line.note ?? ''}
          tabIndex={tabIndex}
          onChange={({ target }) => set({ note: target.value === '' ? null : target.value })}
        >
          <option value="">{sizesWords.noBody}</option>
          {compared.map((name) => (
            <option key={name} value={name}>
              {say(name, 'prose')}
            </option>
          ))}
        </select>
      </label>
      <div className="line-buttons">
        {button(sizesWords.moveUp, () => onMove(-1))}
        {button(sizesWords.moveDown, () => onMove(1))}
        {button(sizesWords.remove, onRemove)}
      </div>
    </div>
  );
}
