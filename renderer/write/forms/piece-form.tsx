/** The form of a piece: how often it is made, what it starts from, its first side, which edges it must meet. */
import type { Edge, Meeting, Piece, PieceStart } from '../../../core/document/pattern.ts';
import { setAttributes, startPiece } from '../../desk/edits.ts';
import { ChoiceField, DraftField } from '../../parts/fields.tsx';
import { useDesk, useDeskView } from '../../shell/hooks.ts';
import { blockWords } from '../../words/blocks.ts';
import { formWords } from '../../words/forms.ts';
import { ExpressionField } from './expression.tsx';
import { Form } from './form.tsx';
import { SizeValues } from './sizes.tsx';

const words = formWords.piece;

/** More than anyone makes of a piece, or leaves waiting in it. */
const MOST = 1000;
const NEW_EDGE: Edge = { piece: '', kind: 'top', amount: null, which: 1 };
const EDGES = Object.entries(words.edges) as [Edge['kind'], string][];

export function PieceForm({ id, onClose }: { readonly id: string; readonly onClose: () => void }) {
  const desk = useDesk();
  const piece = useDeskView((view) => view.pattern.pieces).find((other) => other.id === id);
  const report = useDeskView((view) => view.report.pieces).find((other) => other.id === id);
  if (piece === undefined) return null;
  const set = (attributes: Partial<Pick<Piece, 'make' | 'firstSide' | 'meets'>>) =>
    desk.dispatch(setAttributes<'piece'>(desk.view().state, id, attributes));
  const begin = (next: PieceStart) => desk.dispatch(startPiece(desk.view().state, id, next));
  const { start } = piece;
  return (
    <Form title={words.title(piece.name)} onClose={onClose} node={id} remove={words.removePiece}>
      <div className="form-line">
        <CountField label={words.make} value={piece.make} onGive={(make) => set({ make })} />
        <ChoiceField
          label={words.firstSide}
          value={piece.firstSide ?? 'none'}
          options={Object.entries(words.sides) as ['RS' | 'WS' | 'none', string][]}
          onGive={(side) => set({ firstSide: side === 'none' ? null : side })}
        />
      </div>
      <ChoiceField
        label={words.start}
        value={start.kind}
        options={Object.entries(words.starts) as [Piece['start']['kind'], string][]}
        onGive={(kind) => begin(kind === 'chain' ? { kind } : { kind, edges: [NEW_EDGE], round: false })}
      />
      {start.kind === 'edges' && (
        <>
          <label>
            <input
              type="checkbox"
              checked={start.round}
              onChange={(event) => begin({ ...start, round: event.target.checked })}
            />{' '}
            {words.round}
          </label>
          {start.edges.map((edge, at) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: an edge has no name but its place
            <fieldset key={at}>
              <legend>{words.edge(at + 1)}</legend>
              <EdgeFields
                edge={edge}
                own={null}
                onGive={(next) => begin({ ...start, edges: start.edges.with(at, next) })}
              />
              <button type="button" onClick={() => begin({ ...start, edges: start.edges.toSpliced(at, 1) })}>
                {words.removeEdge(at + 1)}
              </button>
            </fieldset>
          ))}
          <button type="button" onClick={() => begin({ ...start, edges: [...start.edges, NEW_EDGE] })}>
            {words.addEdge}
          </button>
          <p className="form-caption">{words.startCount}</p>
          <SizeValues values={report?.starts ?? []} />
        </>
      )}
      <h3>{words.meets}</h3>
      {piece.meets.map((meeting, at) => (
        <MeetingFields
          // biome-ignore lint/suspicious/noArrayIndexKey: a seam has no name but its place
          key={at}
          number={at + 1}
          piece={piece}
          meeting={meeting}
          counts={report?.meets[at] ?? null}
          onGive={(next) => set({ meets: piece.meets.with(at, next) })}
          onRemove={() => set({ meets: piece.meets.toSpliced(at, 1) })}
        />
      ))}
      <button
        type="button"
        onClick={() =>
          set({
            meets: [
              ...piece.meets,
              {
                mine: { ...NEW_EDGE, piece: id, kind: 'row-ends' },
                other: { ...NEW_EDGE, kind: 'row-ends' },
              },
            ],
          })
        }
      >
        {words.addMeeting}
      </button>
    </Form>
  );
}

/** A whole number from 1 on. */
function CountField({
  label,
  value,
  onGive,
}: {
  readonly label: string;
  readonly value: number;
  readonly onGive: (value: number) => void;
}) {
  return (
    <DraftField
      label={label}
      className="short"
      numeric
      value={String(value)}
      fault={words.notACount(MOST)}
      onGive={(typed) => {
        const number = Number(typed);
        const fits = typed.trim() !== '' && Number.isInteger(number) && number >= 1 && number <= MOST;
        if (fits) onGive(number);
        return fits;
      }}
    />
  );
}

function MeetingFields({
  number,
  piece,
  meeting,
  counts,
  onGive,
  onRemove,
}: {
  readonly number: number;
  readonly piece: Piece;
  readonly meeting: Meeting;
  readonly counts: {
    readonly mine: readonly (number | null)[];
    readonly other: readonly (number | null)[];
  } | null;
  readonly onGive: (meeting: Meeting) => void;
  readonly onRemove: () => void;
}) {
  return (
    <fieldset>
      <legend>{words.meeting(number)}</legend>
      <EdgeFields edge={meeting.mine} own={piece.id} onGive={(mine) => onGive({ ...meeting, mine })} />
      {counts !== null && (
        <>
          <p className="form-caption">{words.mineCount}</p>
          <SizeValues values={counts.mine} />
        </>
      )}
      <p className="form-caption">{words.other}</p>
      <EdgeFields edge={meeting.other} own={null} onGive={(other) => onGive({ ...meeting, other })} />
      {counts !== null && (
        <>
          <p className="form-caption">{words.otherCount}</p>
          <SizeValues values={counts.other} />
        </>
      )}
      <button type="button" onClick={onRemove}>
        {words.removeMeeting(number)}
      </button>
    </fieldset>
  );
}

/** The fields of an edge. `own`: the piece that it always belongs to, else one is chosen. */
function EdgeFields({
  edge,
  own,
  onGive,
}: {
  readonly edge: Edge;
  readonly own: string | null;
  readonly onGive: (edge: Edge) => void;
}) {
  const pieces = useDeskView((view) => view.pattern.pieces);
  const options: (readonly [string, string])[] = pieces.map(({ id, name }) => [
    id,
    name.trim() === '' ? blockWords.unnamed : name,
  ]);
  if (!pieces.some(({ id }) => id === edge.piece)) options.unshift([edge.piece, words.choosePiece]);
  return (
    <>
      <div className="form-line">
        {own === null && (
          <ChoiceField
            label={words.ofPiece}
            value={edge.piece}
            options={options}
            onGive={(piece) => onGive({ ...edge, piece })}
          />
        )}
        <ChoiceField
          label={words.edgeKind}
          value={edge.kind}
          options={EDGES}
          onGive={(kind) => onGive({ ...edge, kind })}
        />
        {edge.kind === 'opening' && (
          <CountField label={words.which} value={edge.which} onGive={(which) => onGive({ ...edge, which })} />
        )}
      </div>
      {edge.kind !== 'seam' && (
        <ExpressionField
          label={words.amount}
          value={edge.amount ?? ''}
          onGive={(amount) => onGive({ ...edge, amount: amount.trim() === '' ? null : amount.trim() })}
        />
      )}
    </>
  );
}
