/** Asks what a new pattern begins with. For a garment outline the maker's own gauge is needed, and nothing else. */
import { type FormEvent, useId, useState } from 'react';
import type { Pattern } from '../../core/document/pattern.ts';
import {
  blankPattern,
  hatPattern,
  type OutlineOptions,
  panelPattern,
  raglanPattern,
} from '../../core/outlines/index.ts';
import type { Terms } from '../../core/trade/stitches.ts';
import { namesOf } from '../../core/trade/terms.ts';
import type { Units } from '../../core/trade/units.ts';
import { Modal } from '../parts/modal.tsx';
import { useStudio, useStudioView } from '../shell/hooks.ts';
import { newWords } from '../words/dialogs.ts';
import { shellWords } from '../words/shell.ts';

type Kind = keyof typeof newWords.kinds;
type Stitch = OutlineOptions['gauge']['stitch'];

const OUTLINES: Readonly<Record<Exclude<Kind, 'blank'>, (options: OutlineOptions) => Pattern>> = {
  panel: panelPattern,
  hat: hatPattern,
  raglan: raglanPattern,
};
const STITCHES: readonly Stitch[] = ['t1', 't2', 't3'];

/** A number that the maker typed, with a comma or a point; null when it is none above zero. */
function positive(text: string): number | null {
  const value = Number(text.trim().replace(',', '.'));
  return Number.isFinite(value) && value > 0 && value <= 1000 ? value : null;
}

export function NewPattern() {
  const studio = useStudio();
  const settings = useStudioView((view) => view.settings);
  const [kind, setKind] = useState<Kind>('blank');
  const [title, setTitle] = useState('');
  const [terms, setTerms] = useState<Terms>(settings.terms);
  const [units, setUnits] = useState<Units>(settings.units);
  const [stitch, setStitch] = useState<Stitch>('t2');
  const [stitches, setStitches] = useState('');
  const [rows, setRows] = useState('');
  const [hook, setHook] = useState('');
  const [isMissing, setMissing] = useState(false);
  const form = useId();
  const close = () => studio.show(null);
  const begin = (event: FormEvent) => {
    event.preventDefault();
    const common = {
      title: title.trim(),
      terms,
      units,
      date: studio.today(),
    };
    let pattern: Pattern;
    if (kind === 'blank') pattern = blankPattern(common);
    else {
      const [stitchesOver, rowsOver, hookMm] = [positive(stitches), positive(rows), positive(hook)];
      if (stitchesOver === null || rowsOver === null || hookMm === null) {
        setMissing(true);
        const first = stitchesOver === null ? 'stitches' : rowsOver === null ? 'rows' : 'hook';
        const field = (event.currentTarget as HTMLFormElement).elements.namedItem(first);
        if (field instanceof HTMLElement) field.focus();
        return;
      }
      const over =
        units === 'metric' ? ({ value: 10, unit: 'cm' } as const) : ({ value: 4, unit: 'in' } as const);
      pattern = OUTLINES[kind]({
        ...common,
        gauge: { stitch, stitches: stitchesOver, rows: rowsOver, over, hookMm },
      });
    }
    // Until it is begun the form stays with what was chosen in it: the maker may stay with the pattern on the desk.
    void studio.begin(pattern).then((begun) => {
      if (begun) void studio.saveSettings({ terms, units });
    });
  };
  return (
    <Modal
      title={newWords.title}
      onClose={close}
      className="new-pattern"
      buttons={
        <>
          <button type="button" onClick={close}>
            {shellWords.cancel}
          </button>
          <button type="submit" form={form} className="chief">
            {newWords.create}
          </button>
        </>
      }
    >
      <form id={form} onSubmit={begin}>
        <label className="field">
          <span>{newWords.name}</span>
          <input value={title} maxLength={200} onChange={(event) => setTitle(event.target.value)} />
        </label>
        <fieldset className="choices">
          <legend>{newWords.kind}</legend>
          {(Object.keys(newWords.kinds) as Kind[]).map((other) => (
            <label key={other} className="choice">
              <input type="radio" name="kind" checked={kind === other} onChange={() => setKind(other)} />
              <span>
                {newWords.kinds[other][0]}
                <small className="quiet">{newWords.kinds[other][1]}</small>
              </span>
            </label>
          ))}
        </fieldset>
        <div className="fields">
          <label className="field">
            <span>{newWords.terms}</span>
            <select value={terms} onChange={(event) => setTerms(event.target.value as Terms)}>
              <option value="us">{shellWords.terms('us')}</option>
              <option value="uk">{shellWords.terms('uk')}</option>
            </select>
          </label>
          <label className="field">
            <span>{newWords.units}</span>
            <select value={units} onChange={(event) => setUnits(event.target.value as Units)}>
              <option value="metric">{newWords.metric}</option>
              <option value="imperial">{newWords.imperial}</option>
            </select>
          </label>
        </div>
        {kind !== 'blank' && (
          <fieldset className="choices">
            <legend>{newWords.gauge(terms === 'uk')}</legend>
            <p className="quiet">{newWords.gaugeNote(units === 'metric' ? '10 cm' : '4 in')}</p>
            <div className="fields">
              <label className="field">
                <span>{newWords.stitch}</span>
                <select value={stitch} onChange={(event) => setStitch(event.target.value as Stitch)}>
                  {STITCHES.map((id) => (
                    <option key={id} value={id}>
                      {namesOf(id, terms).name}
                    </option>
                  ))}
                </select>
              </label>
              <label className="field short">
                <span>{newWords.stitches}</span>
                <input
                  name="stitches"
                  inputMode="decimal"
                  aria-invalid={(isMissing && positive(stitches) === null) || undefined}
                  value={stitches}
                  onChange={(event) => setStitches(event.target.value)}
                />
              </label>
              <label className="field short">
                <span>{newWords.rows}</span>
                <input
                  name="rows"
                  inputMode="decimal"
                  aria-invalid={(isMissing && positive(rows) === null) || undefined}
                  value={rows}
                  onChange={(event) => setRows(event.target.value)}
                />
              </label>
              <label className="field short">
                <span>{newWords.hook}</span>
                <input
                  name="hook"
                  inputMode="decimal"
                  aria-invalid={(isMissing && positive(hook) === null) || undefined}
                  value={hook}
                  onChange={(event) => setHook(event.target.value)}
                />
              </label>
            </div>
            {isMissing && (
              <p className="form-fault" role="alert">
                {newWords.missing}
              </p>
            )}
          </fieldset>
        )}
      </form>
    </Modal>
  );
}
