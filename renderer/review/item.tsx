/** One finding of the review: what it says, why it matters, the way there, its fix, and how to let it stand. */
import { type FormEvent, useId, useState } from 'react';
import type { Finding } from '../../core/finding.ts';
import { ACCEPTANCE_STALE, type AcceptedFinding, keyOfFinding } from '../../core/review/accepted.ts';
import type { FindingGroup } from '../../core/review/parts.ts';
import { fixOf } from '../desk/fixes.ts';
import { inTerms } from '../desk/terms.ts';
import { useDesk, useDeskView, useStudio } from '../shell/hooks.ts';
import { reviewWords } from '../words/review.ts';
import { accept, clearStale, confirmBroughtIn, takeBack } from './acceptances.ts';
import { keysOf, placeFor } from './groups.ts';
import { reasonOf } from './reasons.ts';

/** Where the focus goes when the item that held it is gone. */
const SUMMARY = 'review-summary';
const toSummary = () => document.getElementById(SUMMARY)?.focus();

function useSaying() {
  const pattern = useDeskView((view) => view.pattern);
  const terms = useDeskView((view) => view.reading.terms);
  return (text: string) => inTerms(text, pattern, terms, 'mixed');
}

/** How grave, and for which sizes. */
function Kind({ finding }: { readonly finding: Finding }) {
  const pattern = useDeskView((view) => view.pattern);
  const labels = finding.sizes.map((size) => pattern.sizes[size]?.label ?? '').filter(Boolean);
  const isEvery = labels.length === pattern.sizes.length;
  return (
    <p className="review-kind">
      {reviewWords.severity[finding.severity]}
      {labels.length > 0 && (
        <span className="quiet">
          {isEvery && labels.length > 1 ? reviewWords.allSizes : reviewWords.sizes(labels.join(', '))}
        </span>
      )}
    </p>
  );
}

export function Item({ finding, group }: { readonly finding: Finding; readonly group: FindingGroup }) {
  const studio = useStudio();
  const desk = useDesk();
  const say = useSaying();
  const [about] = useState(() => keyOfFinding(desk.view().pattern, finding));
  // A reason that was begun before the maker went elsewhere is gone on with.
  const [accepting, setAccepting] = useState<'asked' | 'begun' | null>(
    desk.asides.has(about) ? 'begun' : null,
  );
  const giveUp = () => {
    desk.setAside(about, '');
    setAccepting(null);
  };
  const message = say(finding.message);
  const reason = reasonOf(finding.code);
  const { node, from, to } = finding.where;
  const fix = () => {
    const { state, isReportCurrent } = desk.view();
    const transaction = fixOf(state, finding, isReportCurrent);
    if (transaction === null) studio.tell(reviewWords.notFixed);
    else {
      desk.dispatch(transaction);
      studio.tell(reviewWords.fixed);
      toSummary();
    }
  };
  const place = placeFor(group.part, finding);
  // What concerns the whole pattern is in no one place of the manuscript.
  const leads = node !== null || place !== 'write';
  const go = () => {
    if (node === null) studio.go(place);
    else studio.goTo(node, from, to, place);
  };
  const letStand = (why: string) => {
    const { state, pattern } = desk.view();
    desk.setAside(about, '');
    desk.dispatch(accept(state, pattern, finding, why, studio.today()));
    studio.tell(reviewWords.accepted);
    toSummary();
  };
  const confirm = () => {
    if (node === null) return;
    desk.dispatch(confirmBroughtIn(desk.view().state, node));
    studio.tell(reviewWords.confirmed);
    toSummary();
  };
  const clear = () => {
    const { state, report } = desk.view();
    desk.dispatch(
      clearStale(
        state,
        report.accepted.map(({ acceptance }) => acceptance),
      ),
    );
    studio.tell(reviewWords.cleared);
    toSummary();
  };
  const isStale = finding.code === ACCEPTANCE_STALE.code;
  const isDoubt = finding.code === 'brought-in-unsure';
  return (
    <li className={`review-item ${finding.severity}`}>
      <Kind finding={finding} />
      <p>{message}</p>
      {finding.detail !== null && <p className="review-detail">{say(finding.detail)}</p>}
      {reason !== null && (
        <details>
          <summary>{reviewWords.why}</summary>
          <p>{say(reason)}</p>
        </details>
      )}
      {accepting !== null ? (
        <AcceptForm
          finding={finding}
          about={about}
          isAsked={accepting === 'asked'}
          onAccept={letStand}
          onCancel={giveUp}
        />
      ) : (
        <div className="review-buttons">
          {leads && (
            <button type="button" aria-label={reviewWords.goTo(message)} onClick={go}>
              {reviewWords.go}
            </button>
          )}
          {finding.fix !== null && (
            <button type="button" onClick={fix}>
              {say(finding.fix.label)}
            </button>
          )}
          {isStale && (
            <button type="button" onClick={clear}>
              {reviewWords.clear}
            </button>
          )}
          {isDoubt && (
            <button type="button" aria-label={reviewWords.confirmThis(message)} onClick={confirm}>
              {reviewWords.confirm}
            </button>
          )}
          {!isStale && !isDoubt && (
            <button
              type="button"
              aria-label={reviewWords.acceptThis(message)}
              onClick={() => setAccepting('asked')}
            >
              {reviewWords.accept}
            </button>
          )}
        </div>
      )}
    </li>
  );
}

interface AcceptFormProps {
  readonly finding: Finding;
  /** What the reason is kept under while it is being typed. */
  readonly about: string;
  /** The maker has just asked for it. */
  readonly isAsked: boolean;
  readonly onAccept: (reason: string) => void;
  readonly onCancel: () => void;
}

/** Asks why a finding may stand. A finding without a reason is not let stand: an editor could not judge it. */
function AcceptForm({ finding, about, isAsked, onAccept, onCancel }: AcceptFormProps) {
  const desk = useDesk();
  const [why, setWhy] = useState(desk.asides.get(about) ?? '');
  const id = useId();
  const isEmpty = why.trim() === '';
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (!isEmpty) onAccept(why.trim());
  };
  return (
    <form
      className="review-accept"
      onSubmit={submit}
      onKeyDown={(event) => {
        if (event.key === 'Escape') onCancel();
      }}
    >
      {finding.severity === 'error' && <p className="review-detail">{reviewWords.acceptError}</p>}
      <label className="field" htmlFor={id}>
        <span>{reviewWords.acceptWhy}</span>
        <input
          id={id}
          data-own-undo
          value={why}
          maxLength={2000}
          // biome-ignore lint/a11y/noAutofocus: the form was asked for by the button that it stands in place of
          autoFocus={isAsked}
          onChange={({ target: { value } }) => {
            setWhy(value);
            desk.setAside(about, value);
          }}
        />
      </label>
      <div className="review-buttons">
        <button type="submit" disabled={isEmpty}>
          {reviewWords.acceptNow}
        </button>
        <button type="button" onClick={onCancel}>
          {reviewWords.cancel}
        </button>
      </div>
    </form>
  );
}

/** What the maker let stand, with the reason and the day. */
export function AcceptedList({ accepted }: { readonly accepted: readonly AcceptedFinding[] }) {
  const studio = useStudio();
  const desk = useDesk();
  const say = useSaying();
  if (accepted.length === 0) return null;
  const back = ({ acceptance }: AcceptedFinding) => {
    desk.dispatch(takeBack(desk.view().state, acceptance));
    studio.tell(reviewWords.takenBack);
    toSummary();
  };
  const keys = keysOf(accepted.map(({ finding }) => finding));
  return (
    <section aria-labelledby="review-accepted" className="review-group">
      <h3 id="review-accepted">
        {reviewWords.acceptedTitle}{' '}
        <small className="quiet">{reviewWords.acceptedCount(accepted.length)}</small>
      </h3>
      <ul>
        {accepted.map((one, index) => (
          <li key={keys[index]} className="review-item note">
            <Kind finding={one.finding} />
            <p>{say(one.finding.message)}</p>
            <p className="review-detail">
              {reviewWords.acceptedBecause(one.acceptance.reason, one.acceptance.date)}
            </p>
            <div className="review-buttons">
              <button
                type="button"
                aria-label={reviewWords.takeBackThis(say(one.finding.message))}
                onClick={() => back(one)}
              >
                {reviewWords.takeBack}
              </button>
            </div>
          </li>
        ))}
      </ul>
    </section>
  );
}
