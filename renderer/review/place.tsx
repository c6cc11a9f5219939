/** The place "Review": what stands between the pattern and sale, by its parts, each with the way there and its fix. */
import { useMemo, useState } from 'react';
import type { Finding } from '../../core/finding.ts';
import { type FindingGroup, groupsOf } from '../../core/review/parts.ts';
import { DoubtsLeft, FigureOffers } from '../bring/follow-up.tsx';
import { useDeskView } from '../shell/hooks.ts';
import { reviewWords } from '../words/review.ts';
import { PLACE_WORDS } from '../words/shell.ts';
import { EditorReport } from './editor-report.tsx';
import { keysOf } from './groups.ts';
import { AcceptedList, Item } from './item.tsx';

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
        <p className="review-summary" id="review-summary" role="status" tabIndex={-1}>
          {report.version < 0
            ? reviewWords.working
            : reviewWords.summary(errors, warnings, notes, report.accepted.length)}
          {report.version >= 0 && !isCurrent && <small className="quiet"> {reviewWords.working}</small>}
        </p>
        <p className="quiet">{reviewWords.limits}</p>
        <EditorReport />
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
      <DoubtsLeft />
      {groups.map((group) => (
        <Group key={group.key} group={group} />
      ))}
      <AcceptedList accepted={report.accepted} />
      <FigureOffers />
    </div>
  );
}

function Group({ group }: { readonly group: FindingGroup }) {
  const title =
    group.part === 'piece' ? group.piece || reviewWords.unnamedPiece : reviewWords.parts[group.part];
  const id = `review-${group.key}`;
  const keys = keysOf(group.findings);
  return (
    <section aria-labelledby={id} className="review-group">
      <h3 id={id}>
        {title} <small className="quiet">{reviewWords.counts(...counted(group.findings))}</small>
      </h3>
      <ul>
        {group.findings.map((finding, index) => (
          <Item key={keys[index]} finding={finding} group={group} />
        ))}
      </ul>
    </section>
  );
}
