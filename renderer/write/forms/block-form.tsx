/** The form of a block: what it is, its title, the rows it repeats, the line it is shaped by, its sizes. */
import type { Block, Piece } from '../../../core/document/pattern.ts';
import { setAttributes, turnBlock } from '../../desk/edits.ts';
import { ChoiceField, DraftField } from '../../parts/fields.tsx';
import { useDesk, useDeskView } from '../../shell/hooks.ts';
import { formWords } from '../../words/forms.ts';
import { writeWords } from '../../words/write.ts';
import { ExpressionField } from './expression.tsx';
import { Form } from './form.tsx';
import { SizeChoice, SizeValues } from './sizes.tsx';

const words = formWords.block;
type Text = Extract<Block, { type: 'row' | 'prose' | 'heading' }>;
type Repeat = Extract<Block, { type: 'repeat' }>;
type Shaping = Extract<Block, { type: 'shaping' }>;

/** The block with this id, a row inside a shaping included, and its piece. */
function found(pieces: readonly Piece[], id: string): { piece: Piece; block: Block } | null {
  for (const piece of pieces) {
    for (const block of piece.blocks) {
      if (block.id === id) return { piece, block };
      if (block.type === 'shaping' && (block.shaped.id === id || block.even.id === id))
        return { piece, block };
    }
  }
  return null;
}

export function BlockForm({ id, onClose }: { readonly id: string; readonly onClose: () => void }) {
  const desk = useDesk();
  const pieces = useDeskView((view) => view.pattern.pieces);
  const label = useDeskView((view) => view.report.blocks.get(id)?.label ?? null);
  const at = found(pieces, id);
  if (at === null) return null;
  const { block, piece } = at;
  const kind = block.type === 'row' ? block.form : block.type;
  const name = label ?? (kind in words.kinds ? words.kinds[kind as keyof typeof words.kinds] : '');
  return (
    <Form
      title={name || (block.type === 'repeat' ? writeWords.labels.repeat : writeWords.labels.shaping)}
      onClose={onClose}
      node={block.id}
    >
      {(block.type === 'row' || block.type === 'prose' || block.type === 'heading') && (
        <TextForm block={block} />
      )}
      {block.type === 'repeat' && <RepeatForm block={block} piece={piece} />}
      {block.type === 'shaping' && <ShapingForm block={block} />}
      {block.type !== 'heading' && block.type !== 'photo' && (
        <SizeChoice
          value={block.sizes}
          onGive={(sizes) => desk.dispatch(setAttributes<'row'>(desk.view().state, block.id, { sizes }))}
        />
      )}
    </Form>
  );
}

function TextForm({ block }: { readonly block: Text }) {
  const desk = useDesk();
  const kind = block.type === 'row' ? block.form : block.type;
  const kinds = Object.entries(words.kinds) as [keyof typeof words.kinds, string][];
  return (
    <>
      <ChoiceField
        label={words.kind}
        value={kind}
        options={kinds}
        onGive={(next) => desk.dispatch(turnBlock(desk.view().state, block.id, next))}
      />
      {block.type === 'row' && (
        <DraftField
          label={words.rowTitle}
          value={block.title ?? ''}
          hint={words.rowTitleHint}
          onGive={(typed) => {
            const title = typed.trim() === '' ? null : typed.trim();
            desk.dispatch(setAttributes<'row'>(desk.view().state, block.id, { title }));
            return true;
          }}
        />
      )}
    </>
  );
}

function RepeatForm({ block, piece }: { readonly block: Repeat; readonly piece: Piece }) {
  const desk = useDesk();
  const report = useDeskView((view) => view.report);
  const above = piece.blocks.slice(0, piece.blocks.indexOf(block)).filter(({ type }) => type === 'row');
  const options: (readonly [string, string])[] = above.map(({ id }, at) => [
    id,
    report.blocks.get(id)?.label ?? String(at + 1),
  ]);
  if (block.first === '' || block.last === '') options.unshift(['', words.chooseRow]);
  const set = (attributes: Partial<Repeat>) =>
    desk.dispatch(setAttributes<'repeat'>(desk.view().state, block.id, attributes));
  const { until } = block;
  const amount = until.kind === 'times' ? until.times : until.rows;
  const untilOf = (kind: Repeat['until']['kind'], value: string): Repeat['until'] =>
    kind === 'times' ? { kind, times: value } : { kind, rows: value };
  return (
    <>
      <div className="form-line">
        <ChoiceField
          label={words.first}
          value={block.first}
          options={options}
          onGive={(first) => set({ first })}
        />
        <ChoiceField
          label={words.last}
          value={block.last}
          options={options}
          onGive={(last) => set({ last })}
        />
      </div>
      <ChoiceField
        label={words.until}
        value={until.kind}
        options={Object.entries(words.untils) as [Repeat['until']['kind'], string][]}
        onGive={(kind) => set({ until: untilOf(kind, amount) })}
      />
      <ExpressionField
        label={words.amount[until.kind]}
        value={amount}
        onGive={(value) => set({ until: untilOf(until.kind, value.trim()) })}
      />
      <p className="form-caption">{words.result}</p>
      <SizeValues values={report.blocks.get(block.id)?.rows ?? []} />
    </>
  );
}

function ShapingForm({ block }: { readonly block: Shaping }) {
  const desk = useDesk();
  const lines = useDeskView((view) => view.pattern.lines);
  const report = useDeskView((view) => view.report);
  const units = useDeskView((view) => view.reading.units);
  const shaping = lines.filter(({ kind }) => kind === 'shaping');
  const names: (readonly [string, string])[] = shaping.map(({ name }) => [name, name]);
  const chosen = shaping.find(({ name }) => name === block.line);
  if (chosen === undefined) names.unshift([block.line, block.line === '' ? words.chooseLine : block.line]);
  const cells = chosen === undefined ? [] : (report.lines.get(chosen.id)?.cells ?? []);
  return (
    <>
      {shaping.length === 0 ? (
        <p className="quiet">{words.noLines}</p>
      ) : (
        <ChoiceField
          label={words.line}
          value={block.line}
          options={names}
          onGive={(line) => desk.dispatch(setAttributes<'shaping'>(desk.view().state, block.id, { line }))}
        />
      )}
      {cells.length > 0 && <SizeValues values={cells.map(({ value }) => value?.[units] ?? null)} />}
      <p className="form-caption">{words.result}</p>
      <SizeValues values={report.blocks.get(block.id)?.rows ?? []} />
    </>
  );
}
