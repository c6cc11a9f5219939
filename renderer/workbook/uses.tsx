/** What a making used: weights or lengths of yarn, for all of it or piece by piece. */
import type { Making, Use } from '../../core/document/workbook.ts';
import { readMetres, readNumber } from '../materials/edits.ts';
import { ChoiceField, DraftField } from '../parts/fields.tsx';
import { useDeskView } from '../shell/hooks.ts';
import { useReader } from '../shell/reader.ts';
import { materialsWords } from '../words/materials.ts';
import { workbookWords } from '../words/workbook.ts';

const words = workbookWords.makings;

export function Uses({
  making,
  set,
}: {
  readonly making: Making;
  readonly set: (used: readonly Use[]) => boolean;
}) {
  const yarns = useDeskView((view) => view.pattern.yarns);
  const pieces = useDeskView((view) => view.pattern.pieces);
  const { say } = useReader();
  const change = (index: number, part: Partial<Use>) =>
    set(making.used.map((use, i) => (i === index ? { ...use, ...part } : use)));
  const amount = (index: number, key: 'grams' | 'metres', note?: string) => (
    <DraftField
      label={words[key]}
      className="short"
      value={making.used[index]![key] === null ? '' : String(making.used[index]![key])}
      note={note}
      fault={workbookWords.notANumber}
      numeric
      onGive={(typed) => {
        const number = key === 'metres' ? readMetres(typed) : readNumber(typed);
        return number === null ? false : change(index, { [key]: number ?? null });
      }}
    />
  );
  return (
    <fieldset className="amounts">
      <legend>{words.used}</legend>
      {making.used.map((use, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a weight has no name of its own
        <div className="fields" key={index}>
          {yarns.length > 1 && (
            <ChoiceField
              label={words.yarn}
              value={use.yarn}
              options={[
                ['', words.noSize],
                ...yarns.map(
                  ({ id, key, name }, i) =>
                    [id, materialsWords.yarn.item(key, say(name, 'prose'), i + 1)] as const,
                ),
              ]}
              onGive={(yarn) => change(index, { yarn })}
            />
          )}
          {making.kind !== 'swatch' && (
            <ChoiceField
              label={words.piece}
              value={use.piece}
              options={[
                ['', words.whole],
                ...pieces.map(({ id, name }) => [id, say(name, 'prose')] as const),
              ]}
              onGive={(piece) => change(index, { piece })}
            />
          )}
          {amount(index, 'grams')}
          {amount(index, 'metres', words.metresNote)}
          <button
            type="button"
            aria-label={words.removeUse(index + 1)}
            onClick={({ currentTarget }) => {
              currentTarget.closest('fieldset')?.querySelector<HTMLElement>(':scope > .add-item')?.focus();
              set(making.used.filter((_, i) => i !== index));
            }}
          >
            {words.remove}
          </button>
        </div>
      ))}
      <button
        type="button"
        className="add-item"
        onClick={() =>
          set([
            ...making.used,
            { yarn: yarns.length === 1 ? yarns[0]!.id : '', piece: '', grams: null, metres: null },
          ])
        }
      >
        {words.addUse}
      </button>
    </fieldset>
  );
}
