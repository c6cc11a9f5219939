/** Findings beside what they are about: the message, the numbers, the fix. */
import type { Finding } from '../../core/finding.ts';
import { fixOf } from '../desk/fixes.ts';
import { useDesk, useDeskView, useStudio } from '../shell/hooks.ts';
import { useReader } from '../shell/reader.ts';
import { reviewWords } from '../words/review.ts';

const NONE: readonly Finding[] = [];

/** The findings of one node, as the newest report has them. */
export function useFindings(node: string): readonly Finding[] {
  return useDeskView((view) => view.report.byNode.get(node) ?? NONE);
}

export function FindingList({
  findings,
  tabIndex,
}: {
  readonly findings: readonly Finding[];
  /** For buttons inside a grid. */
  readonly tabIndex?: number;
}) {
  const desk = useDesk();
  const studio = useStudio();
  const { say } = useReader();
  if (findings.length === 0) return null;
  const fix = (finding: Finding, button: HTMLElement) => {
    // The button goes with its finding: the focus goes to what the finding was about.
    button.closest<HTMLElement>('[tabindex]:not(button)')?.focus();
    const { state, isReportCurrent } = desk.view();
    const transaction = fixOf(state, finding, isReportCurrent);
    if (transaction !== null) desk.dispatch(transaction);
    studio.tell(transaction === null ? reviewWords.notFixed : reviewWords.fixed);
  };
  return (
    <ul className="item-findings">
      {findings.map((finding, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: two findings of one code may be alike in every other way
        <li key={`${finding.code} ${at}`} className={finding.severity}>
          <p>
            <strong>{reviewWords.severity[finding.severity]}.</strong> {say(finding.message)}
          </p>
          {finding.detail !== null && <p className="quiet">{say(finding.detail)}</p>}
          {finding.fix !== null && (
            <button
              type="button"
              tabIndex={tabIndex}
              onClick={({ currentTarget }) => fix(finding, currentTarget)}
            >
              {say(finding.fix.label)}
            </button>
          )}
        </li>
      ))}
    </ul>
  );
}
