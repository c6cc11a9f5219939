/** The place "Sizes": the sizing sheet with what it is made by. */
import { useEffect, useState } from 'react';
import type { LineRule } from '../../core/document/attributes.ts';
import { parseQuantity } from '../../core/trade/units.ts';
import { useCommands } from '../commands/context.ts';
import { setPart } from '../desk/edits.ts';
import { ChoiceField, DraftField } from '../parts/fields.tsx';
import { useDesk, useDeskView } from '../shell/hooks.ts';
import { PLACE_WORDS } from '../words/shell.ts';
import { sizesWords } from '../words/sizes.ts';
import { personName } from '../workbook/people.tsx';
import { addLine } from './edits.ts';
import { AskedForm } from './forms.tsx';
import { type Asked, SizingGrid } from './grid.tsx';
import { quantityText } from './quantities.ts';

type Kind = LineRule['kind'];

export function SizesPlace() {
  const sizes = useDeskView((view) => view.pattern.sizes);
  const lines = useDeskView((view) => view.pattern.lines);
  const [asked, setAsked] = useState<Asked | null>(null);
  const [told, setTold] = useState('');
  const [line, setLine] = useState<string | null>(null);
  const [added, setAdded] = useState<string | null>(null);
  const desk = useDesk();
  const person = useDeskView((view) => view.reading.person);
  useEffect(() => {
    if (person === null) return;
    desk.watch({ person });
    return () => desk.watch({});
  }, [desk, person]);
  return (
    <div className="sizes">
      <h2 className="unseen">{PLACE_WORDS.sizes}</h2>
      <Tools line={line} onAsk={setAsked} onAdd={setAdded} />
      {sizes.length === 0 && <p className="sizes-empty">{sizesWords.noSizes}</p>}
      {lines.length === 0 && <p className="sizes-empty">{sizesWords.noLines}</p>}
      {(sizes.length > 0 || lines.length > 0) && (
        <div className="sizing-scroll">
          <SizingGrid onAsk={setAsked} onTell={setTold} onLine={setLine} added={added} />
        </div>
      )}
      <footer className="sizes-foot">
        <p role="status">{told}</p>
        <p className="quiet">{sizesWords.keys}</p>
      </footer>
      <AskedForm asked={asked} onAsk={setAsked} />
    </div>
  );
}

function Tools({
  line,
  onAsk,
  onAdd,
}: {
  readonly line: string | null;
  readonly onAsk: (asked: Asked) => void;
  readonly onAdd: (line: string) => void;
}) {
  const desk = useDesk();
  const commands = useCommands();
  const pattern = useDeskView((view) => view.pattern);
  const person = useDeskView((view) => view.reading.person);
  const [kind, setKind] = useState<Kind>('typed');
  const set = (attributes: Parameters<typeof setPart<'sizing'>>[2]) =>
    desk.dispatch(setPart<'sizing'>(desk.view().state, ['sizing'], attributes));
  const add = () => {
    const before = new Set(pattern.lines.map(({ id }) => id));
    desk.dispatch(addLine(desk.view().state, kind, sizesWords.newNames[kind], line));
    const added = desk.view().pattern.lines.find(({ id }) => !before.has(id));
    if (added !== undefined) onAdd(added.id);
  };
  return (
    <div className="sizes-tools">
      <div className="tool-group">
        <button type="button" onClick={() => onAsk({ kind: 'add-sizes' })}>
          {sizesWords.addSizes}
        </button>
      </div>
      <div className="tool-group">
        <ChoiceField
          label={sizesWords.addLine}
          value={kind}
          options={(Object.keys(sizesWords.kinds) as Kind[]).map((each) => [each, sizesWords.kinds[each]])}
          onGive={(value) => setKind(value as Kind)}
        />
        <button type="button" onClick={add}>
          {sizesWords.add}
        </button>
      </div>
      <div className="tool-group">
        <button type="button" onClick={() => commands.run('fill-right')}>
          {sizesWords.fillRight}
        </button>
        <button type="button" onClick={() => commands.run('fill-down')}>
          {sizesWords.fillDown}
        </button>
      </div>
      <div className="tool-group">
        <ChoiceField
          label={sizesWords.sample}
          value={pattern.sample ?? ''}
          options={[
            ['', sizesWords.noSample],
            ...pattern.sizes.map(({ id, label }) => [id, label || sizesWords.unnamedSize] as const),
          ]}
          onGive={(value) => set({ sample: value === '' ? null : value })}
        />
        <DraftField
          label={sizesWords.tolerance}
          value={quantityText(pattern.tolerance)}
          className="short"
          fault={sizesWords.notAnAmount('')}
          onGive={(typed) => {
            const tolerance = parseQuantity(typed);
            if (
              tolerance === null ||
              tolerance.unit === 'none' ||
              tolerance.unit === '%' ||
              tolerance.value < 0
            )
              return false;
            set({ tolerance });
            return true;
          }}
        />
      </div>
      {pattern.workbook.people.length > 0 && (
        <div className="tool-group">
          <ChoiceField
            label={sizesWords.person}
            value={person ?? ''}
            options={[
              ['', sizesWords.nobody],
              ...pattern.workbook.people.map((each) => [each.id, personName(each)] as const),
            ]}
            onGive={(value) => desk.read({ person: value === '' ? null : value })}
          />
        </div>
      )}
    </div>
  );
}
