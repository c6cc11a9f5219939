/** One schematic: its drawing, its lengths as a table, all of it in words, and the way into a file. */
import { useId } from 'react';
import { paintSvg } from '../../core/drawing/svg.ts';
import type { SchematicReport } from '../analysis/drawings.ts';
import { useStudio } from '../shell/hooks.ts';
import { drawingsWords } from '../words/drawings.ts';
import { SceneView } from './scene-view.tsx';

interface SchematicProps {
  readonly report: SchematicReport;
  /** What it is of, told apart from others of the same title. */
  readonly name: string;
  readonly zoom: number | null;
  /** What a file of it is called. */
  readonly fileName: string;
}

export function Schematic({ report, name, zoom, fileName }: SchematicProps) {
  const studio = useStudio();
  const id = useId().replace(/[^a-zA-Z0-9]/g, '');
  const { shown, sheet } = report;
  const save = async () => {
    const folder = await studio.host.chooseFolder();
    if (folder === null) return;
    const answer = await studio.host.saveDrawing(folder.handle, fileName, paintSvg(sheet.scene));
    studio.tell(
      answer.ok ? drawingsWords.saved(answer.value.name) : drawingsWords.notSaved(answer.error.message),
    );
  };
  const hasLetters = shown.lengths.some(({ letter }) => letter !== null);
  return (
    <article className="schematic" aria-labelledby={`${id}-head`}>
      <header>
        <h4 id={`${id}-head`}>{name}</h4>
        <button type="button" aria-label={drawingsWords.saveOf(name)} onClick={() => void save()}>
          {drawingsWords.save}
        </button>
      </header>
      <figure>
        <SceneView
          scene={shown.scene}
          id={`d${id}`}
          zoom={zoom}
          growsLetters
          label={drawingsWords.scrolls(name)}
        />
        <figcaption>
          <table>
            <caption className="unseen">{drawingsWords.lengths(name)}</caption>
            <thead className="unseen">
              <tr>
                {hasLetters && <th scope="col">{drawingsWords.key}</th>}
                <th scope="col">{drawingsWords.length}</th>
                <th scope="col">{drawingsWords.numbers}</th>
              </tr>
            </thead>
            <tbody>
              {shown.lengths.map(({ letter, label, words }) => (
                <tr key={label}>
                  {hasLetters && <td className="letter">{letter ?? ''}</td>}
                  <th scope="row">{label}</th>
                  <td className="numbers">{words}</td>
                </tr>
              ))}
            </tbody>
          </table>
          {shown.notes.length > 0 && <p className="quiet">{shown.notes.join(' ')}</p>}
        </figcaption>
      </figure>
    </article>
  );
}
