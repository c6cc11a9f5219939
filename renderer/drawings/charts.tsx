/**
 * The stitch charts that the pattern keeps: which rows each shows, its drawing, its key, and all of it in words. Rows are
 * chosen by edits of the document; the drawings are those that the worker made.
 */
import { useContext } from 'react';
import type { AttributesOf } from '../../core/document/attributes.ts';
import type { Block, Chart, Piece } from '../../core/document/pattern.ts';
import { oneSheet } from '../../core/drawing/chart/one-sheet.ts';
import { paintSvg } from '../../core/drawing/svg.ts';
import type { ChartReport } from '../analysis/drawings.ts';
import { made } from '../desk/edits.ts';
import { setItem } from '../materials/edits.ts';
import { ItemList, TellContext } from '../materials/list.tsx';
import { WordsField } from '../materials/words-field.tsx';
import { ChoiceField } from '../parts/fields.tsx';
import { useDesk, useDeskView, useStudio } from '../shell/hooks.ts';
import { useReader } from '../shell/reader.ts';
import { chartsWords } from '../words/charts.ts';
import { drawingsWords } from '../words/drawings.ts';
import { SceneView } from './scene-view.tsx';
import { suffixes } from './titles.ts';

/** Blocks that make rows. */
const rowsOf = (piece: Piece | undefined): readonly Block[] =>
  (piece?.blocks ?? []).filter(({ type }) => type === 'row' || type === 'repeat' || type === 'shaping');

/** How many rows a new chart of a piece shows until others are chosen. */
const BEGUN_WITH = 4;

function begun(piece: Piece): Partial<AttributesOf<'chart'>> {
  const rows = rowsOf(piece).filter((block) => block.type === 'row');
  const worked = rows.filter((block) => block.type === 'row' && block.form !== 'foundation');
  const from = (worked.length > 0 ? worked : rows).slice(0, BEGUN_WITH);
  return { piece: piece.id, first: from[0]?.id ?? '', last: from[from.length - 1]?.id ?? '' };
}

export function Charts({
  reports,
  zoom,
}: {
  readonly reports: readonly ChartReport[];
  readonly zoom: number | null;
}) {
  const charts = useDeskView((view) => view.pattern.charts);
  const pieces = useDeskView((view) => view.pattern.pieces);
  const { say } = useReader();
  const able = pieces.find((piece) => rowsOf(piece).length > 0);
  const shown = charts.map((chart) => reports.find(({ id }) => id === chart.id));
  const apart = suffixes(shown.map((report) => report?.drawing.title ?? ''));
  if (able === undefined) {
    return (
      <section aria-labelledby="drawings-charts">
        <h3 id="drawings-charts">{chartsWords.title}</h3>
        <p className="quiet">{chartsWords.noRows}</p>
      </section>
    );
  }
  return (
    <ItemList
      list="charts"
      title={chartsWords.title}
      add={chartsWords.add}
      note={chartsWords.note}
      none={chartsWords.none}
      items={charts}
      name={({ title }, index) => say(title, 'prose').trim() || chartsWords.item(index + 1)}
      node={({ id }) => id}
      make={() => made('chart', begun(able))}
    >
      {(chart, index) => (
        <>
          <ChartFields chart={chart} index={index} />
          <ChartView chart={chart} report={shown[index] ?? null} apart={apart[index] ?? ''} zoom={zoom} />
        </>
      )}
    </ItemList>
  );
}

function ChartFields({ chart, index }: { readonly chart: Chart; readonly index: number }) {
  const desk = useDesk();
  const pieces = useDeskView((view) => view.pattern.pieces);
  const sizes = useDeskView((view) => view.pattern.sizes);
  const blocks = useDeskView((view) => view.report.blocks);
  const { say } = useReader();
  const set = (attributes: Partial<AttributesOf<'chart'>>) => {
    desk.dispatch(setItem<'chart'>(desk.view().state, 'charts', index, attributes));
    return true;
  };
  const piece = pieces.find(({ id }) => id === chart.piece);
  const rows = rowsOf(piece);
  const named = rows.map(({ id }, i): [string, string] => [
    id,
    blocks.get(id)?.label ?? chartsWords.unlabelled(i + 1),
  ]);
  const options = (chosen: string): readonly (readonly [string, string])[] =>
    named.some(([id]) => id === chosen) ? named : [[chosen, chartsWords.goneRow], ...named];
  const place = (id: string): number => rows.findIndex((row) => row.id === id);
  const known = pieces.filter((one) => rowsOf(one).length > 0);
  return (
    <div className="fields">
      <WordsField
        label={chartsWords.name}
        hint={chartsWords.nameHint}
        value={chart.title}
        onGive={(title) => set({ title })}
      />
      <ChoiceField
        label={chartsWords.piece}
        value={chart.piece}
        options={[
          ...(known.some(({ id }) => id === chart.piece)
            ? []
            : [[chart.piece, chartsWords.goneRow] as const]),
          ...known.map(({ id, name }) => [id, say(name, 'prose')] as const),
        ]}
        onGive={(id) => {
          const next = pieces.find((one) => one.id === id);
          if (next !== undefined) set(begun(next));
        }}
      />
      <ChoiceField
        label={chartsWords.first}
        value={chart.first}
        options={options(chart.first)}
        // A chart does not end before it begins.
        onGive={(first) => set(place(chart.last) < place(first) ? { first, last: first } : { first })}
      />
      <ChoiceField
        label={chartsWords.last}
        value={chart.last}
        options={options(chart.last)}
        onGive={(last) => set(place(chart.first) > place(last) ? { first: last, last } : { last })}
      />
      {sizes.length > 1 && (
        <ChoiceField
          label={chartsWords.size}
          value={sizes.some(({ id }) => id === chart.size) ? chart.size : ''}
          options={[
            ['', chartsWords.sample],
            ...sizes.map(({ id, label }) => [id, chartsWords.sizeOf(label)] as const),
          ]}
          onGive={(size) => set({ size })}
        />
      )}
    </div>
  );
}

function ChartView({
  chart,
  report,
  apart,
  zoom,
}: {
  readonly chart: Chart;
  readonly report: ChartReport | null;
  /** What tells it apart from charts of the same title. */
  readonly apart: string;
  readonly zoom: number | null;
}) {
  const studio = useStudio();
  const tell = useContext(TellContext);
  const pattern = useDeskView((view) => view.pattern.about.title);
  const terms = useDeskView((view) => view.reading.terms);
  if (report === null) return <p className="quiet">{drawingsWords.working}</p>;
  const { title, problem, parts, key, notes } = report.drawing;
  if (problem !== null) return <p className="chart-problem">{problem}</p>;
  const save = async () => {
    const folder = await studio.host.chooseFolder();
    if (folder === null) return;
    const name = chartsWords.fileName(pattern, `${title}${apart}`, terms);
    const answer = await studio.host.saveDrawing(folder.handle, name, paintSvg(oneSheet(report.drawing)));
    tell(answer.ok ? drawingsWords.saved(answer.value.name) : drawingsWords.notSaved(answer.error.message));
  };
  const id = chart.id.replace(/[^a-zA-Z0-9]/g, '');
  return (
    <figure className="chart">
      {parts.map((scene, i) => (
        <SceneView
          key={scene.title}
          scene={scene}
          id={`c${id}-${i}`}
          zoom={zoom}
          label={chartsWords.scrolls(`${scene.title}${apart}`)}
        />
      ))}
      {key !== null && (
        <SceneView
          scene={key}
          id={`c${id}-key`}
          zoom={zoom}
          label={chartsWords.keyScrolls(`${title}${apart}`)}
        />
      )}
      <figcaption>
        <p className="quiet">{notes.join(' ')}</p>
        <details>
          <summary>{chartsWords.inWords}</summary>
          <p>{parts[0]?.alt}</p>
        </details>
        <button type="button" aria-label={chartsWords.saveOf(`${title}${apart}`)} onClick={() => void save()}>
          {chartsWords.save}
        </button>
      </figcaption>
    </figure>
  );
}
