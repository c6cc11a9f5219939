/**
 * The report for a human editor: what it tells of each finding, what it keeps apart, and that nothing of the
 * maker's workbook gets out with it.
 */
import { describe, expect, it } from 'vitest';
import type { Pattern } from '../../core/document/pattern.ts';
import { reportBooklet } from '../../core/print/editor-report.ts';
import { acceptanceOf } from '../../core/review/accepted.ts';
import { RULES } from '../../core/review/index.ts';
import { reportOf } from '../../core/review/report.ts';
import { study } from '../../core/study/index.ts';
import { cleanPattern, findingsOf, note, reword } from './builder.ts';
import { all, finishing } from './editing.ts';

const spoiled = all(
  reword('back-2', 'Ch 1, sc in each st across, turn. (72 (80, 90) sc)'),
  note('Mark the BOR with a thread.'),
  finishing('Sew in the sleeves.'),
)(cleanPattern());

const accepting = (code: string, why: string): Pattern => {
  const accepted = findingsOf(spoiled)
    .filter((finding) => finding.code === code)
    .map((finding) => acceptanceOf(spoiled, finding, why, '2026-11-25'));
  return { ...spoiled, workbook: { ...spoiled.workbook, accepted } };
};

describe('the report for an editor', () => {
  const report = reportOf(study(spoiled));

  it('tells each finding under its part, with its row, words, sizes and numbers', () => {
    expect(report.parts.map(({ part, piece }) => piece ?? part)).toEqual(['notes', 'Back', 'finishing']);
    const [count] = report.parts[1]!.findings;
    expect(count).toMatchObject({
      code: 'stated-count-wrong',
      severity: 'error',
      row: 'Row 2',
      words: '(72 (80, 90) sc)',
      sizes: ['L'],
    });
    expect(count!.message).toMatch(/88/);
    expect(report.open).toEqual({ error: 2, warning: 1, note: 0 });
  });

  it('lists everything that was looked for', () => {
    const codes = report.checked.map(({ code }) => code);
    expect(new Set(codes).size).toBe(codes.length);
    for (const { code } of RULES) expect(codes).toContain(code);
    expect(codes).toContain('stated-count-wrong');
  });

  it('gives the stitches of every row in every size', () => {
    const [front] = report.rows;
    // 45, 50 and 55 cm at 16 sts over 10 cm are 72, 80 and 88 sts.
    expect(front!.rows[1]).toEqual({
      label: 'Row 1',
      side: 'RS',
      stitches: [72, 80, 88],
      spaces: [0, 0, 0],
    });
  });

  it('sets apart what was accepted, with its reason and date', () => {
    const told = reportOf(study(accepting('stated-count-wrong', 'The count is told without the edge.')));
    expect(told.open.error).toBe(1);
    expect(told.accepted).toEqual([
      expect.objectContaining({
        code: 'stated-count-wrong',
        piece: 'Back',
        row: 'Row 2',
        why: 'The count is told without the edge.',
        date: '2026-11-25',
      }),
    ]);
  });

  it('is told in the other market’s terms where that is asked for', () => {
    const uk = reportOf(study(spoiled), 'uk');
    expect(uk.parts[1]!.findings[0]!.words).toBe('(72 (80, 90) dc)');
    expect(uk.patternTerms).toBe('us');
    const booklet = reportBooklet(uk);
    expect(booklet.meta.termsNote).toBe('UK terms');
    expect(booklet.meta.language).toBe('en-GB');
  });

  it('holds nothing of the workbook but the reasons', () => {
    const pattern: Pattern = {
      ...accepting('abbreviation-not-explained', 'Agreed by letter.'),
    };
    const secret: Pattern = {
      ...pattern,
      yarns: pattern.yarns.map((yarn) => ({ ...yarn, ballPrice: 4321.5 })),
      workbook: {
        ...pattern.workbook,
        pricing: {
          currency: 'XTS',
          hourly: 1234.5,
          other: [{ name: 'Ribbonbox', amount: 777 }],
          profit: 33,
          fee: 11,
        },
        makings: [
          {
            id: 'making',
            kind: 'tester',
            by: 'Testa Testerby',
            size: 'size-m',
            state: 'finished',
            used: [],
            hours: 98765,
            swatch: null,
            measured: {},
            note: 'Whisperednote',
          },
        ],
        people: [
          {
            id: 'person',
            name: 'Nobody Neverwhere',
            base: 'size-m',
            values: { height: { value: 61.23, unit: 'cm' } },
            note: 'Secretnote',
          },
        ],
      },
    };
    const known = reportOf(study(secret));
    const whole = JSON.stringify([known, reportBooklet(known)]);
    expect(whole).toContain('Agreed by letter.');
    for (const word of [
      'Testa',
      'Neverwhere',
      '4321',
      '1234.5',
      'Ribbonbox',
      '98765',
      'Whispered',
      '61.23',
      'Secretnote',
      'XTS',
    ])
      expect(whole).not.toContain(word);
  });

  it('says so where nothing was found', () => {
    const clean = reportOf(study(cleanPattern()));
    expect(clean.parts).toEqual([]);
    const [about, findings] = reportBooklet(clean).parts;
    expect(JSON.stringify(about)).toContain('Nothing was found against this pattern.');
    expect(JSON.stringify(findings)).toContain('There is none.');
  });
});
