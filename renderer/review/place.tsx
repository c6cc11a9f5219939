/** The place "Review": what stands between the pattern and sale, by its parts, each with the way there and its fix. */
import { useMemo, useState } from 'react';
import type { Finding } from '../../core/finding.ts';
import { type FindingGroup, groupsOf } from '../../core/review/parts.ts';
import { fixOf } from '../desk/fixes.ts';
import { inTerms } from '../desk/terms.ts';
import { useDesk, useDeskView, useStudio } from '../shell/hooks.ts';
import { reviewWords } from '../words/review.ts';
import { PLACE_WORDS } from '../words/shell.ts';
import { placeFor } from './groups.ts';
import { reasonOf } from './reasons.ts';

type Shown = 'all' | 'errors' | number;

const counted = (findings: readonly Finding[]) => {
  const of = (severity: Finding['severity']) =>
    findings.filter((finding) => finding.severity === severity).length;
  return [of('error'), of('warning'), of('note')] as const;
};

export function ReviewPlace() {
  const pattern = useDeskView((view) => view.pattern);
  const report = useDeskView((view) => view.report);
  const isCurrent = useDeskView((view) => view.isReportCurrent);
  const [shown, setShown] = useState<Shown>('all');
  const findings = useMemo(
    () =>
      report.findings.filter(
        ({ severity, sizes }) =>
          shown === 'all' ||
          (shown === 'errors' ? severity === 'error' : sizes.length === 0 || sizes.includes(shown)),
      ),
    [report, shown],
  );
  const groups = useMemo(() => groupsOf(pattern, findings), [pattern, findings]);
  const [errors, warnings, notes] = counted(report.findings);
  return (
    <div className="review">
      <header>
        <h2 className="unseen">{PLACE_WORDS.review}</h2>
        <p className="review-summary" role="status">
          {report.version < 0 ? reviewWords.working : reviewWords.summary(errors, warnings, notes)}
          {report.version >= 0 && !isCurrent && <small className="quiet"> {reviewWords.working}</small>}
        </p>
        <p className="quiet">{reviewWords.limits}</p>
        {report.findings.length > 0 && (
          <label className="field review-shown">
            <span>{reviewWords.show}</span>
            <select
              value={String(shown)}
              onChange={({ target: { value } }) =>
                setShown(value === 'all' || value === 'errors' ? value : Number(value))
              }
            >
              <option value="all">{reviewWords.shown.all}</option>
              <option value="errors">{reviewWords.shown.errors}</option>
              {pattern.sizes.map(({ id, label }, index) => (
                <option key={id} value={index}>
                  {reviewWords.shown.size(label)}
                </option>
              ))}
            </select>
          </label>
        )}
      </header>
      {groups.map((group) => (
        <Group key={group.key} group={group} />
      ))}
    </div>
  );
}

function Group({ group }: { readonly group: FindingGroup }) {
  const title =
    group.part === 'piece' ? group.piece || reviewWords.unnamedPiece : reviewWords.parts[group.part];
  const id = `review-${group.key}`;
  return (
    <section aria-labelledby={id} className="review-group">
      <h3 id={id}>
        {title} <small className="quiet">{reviewWords.counts(...counted(group.findings))}</small>
      </h3>
      <ul>
        {group.findings.map((finding, index) => (
          <Item
            // biome-ignore lint/suspicious/noArrayIndexKey: two findings of one code may be alike in every other way
            key={`${finding.code} ${finding.where.node} ${finding.where.from} ${index}`}
            finding={finding}
            group={group}
          />
        ))}
      </ul>
    </section>
  );
}

function Item({ finding, group }: { readonly finding: Finding; readonly group: FindingGroup }) {
  const studio = useStudio();
  const desk = useDesk();
  const pattern = useDeskView((view) => view.pattern);
  const terms = useDeskView((view) => view.reading.terms);
  const say = (text: string) => inTerms(text, pattern, terms, 'mixed');
  const labels = finding.sizes.map((size) => pattern.sizes[size]?.label ?? '').filter(Boolean);
  const isEvery = labels.length === pattern.sizes.length;
  const message = say(finding.message);
  const reason = reasonOf(finding.code);
  const fix = () => {
    const { state, isReportCurrent } = desk.view();
    const transaction = fixOf(state, finding, isReportCurrent);
    if (transaction === null) studio.tell(reviewWords.notFixed);
    else {
      desk.dispatch(transaction);
      studio.tell(reviewWords.fixed);
    }
  };
  const place = placeFor(group.part, finding);
  // What concerns the whole pattern is in no one place of the manuscript.
  const leads = finding.where.node !== null || place !== 'write';
  const go = () => {
    const { node, from, to } = finding.where;
    if (node === null) studio.go(place);
    else studio.goTo(node, from, to, place);
  };
  return (
    <li className={`review-item ${finding.severity}`}>
      <p className="review-kind">
        {reviewWords.severity[finding.severity]}
        {labels.length > 0 && (
          <span className="quiet">
            {isEvery && labels.length > 1 ? reviewWords.allSizes : reviewWords.sizes(labels.join(', '))}
          </span>
        )}
      </p>
      <p>{message}</p>
      {finding.detail !== null && <p className="review-detail">{say(finding.detail)}</p>}
      {reason !== null && (
        <details>
          <summary>{reviewWords.why}</summary>
          <p>{say(reason)}</p>
        </details>
      )}
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
      </div>
    </li>
  );
}
