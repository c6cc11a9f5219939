import { describe, expect, test } from 'vitest';
import { checkTree } from '../../core/document/check.ts';
import { compose } from '../../core/document/compose.ts';
import { project } from '../../core/document/project.ts';
import { gradeSheet, lineNamed } from '../../core/grading/index.ts';
import { blankPattern } from '../../core/outlines/blank.ts';
import { review } from '../../core/review/index.ts';
import { study } from '../../core/study/index.ts';

const blank = blankPattern({ title: '', terms: 'us', units: 'metric', date: '' });

describe('the blank pattern', () => {
  test.each(['Harbour Top', ''])(
    'with the title "%s" blames nobody: what is still to be given is no mistake',
    (title) => {
      const known = study(blankPattern({ title, terms: 'us', units: 'metric', date: '2024-05-01' }));
      const findings = [...known.findings, ...review(known)];
      expect(findings.filter(({ severity }) => severity === 'error')).toEqual([]);
      expect(findings.map(({ code }) => code)).toContain('rows-not-begun');
    },
  );

  test.each([
    ['us', 'metric'],
    ['uk', 'metric'],
    ['us', 'imperial'],
    ['uk', 'imperial'],
  ] as const)('in %s terms and %s units is a document that means itself', (terms, units) => {
    const pattern = blankPattern({ title: 'Untitled', terms, units, date: '2024-05-01' });
    const checked = checkTree(compose(pattern).toJSON());
    expect(checked.ok && project(checked.document)).toEqual(pattern);
  });

  test('works out its one finished measurement in every size, with nothing to say against it', () => {
    const { sizes, lines, gauges, tolerance } = blank;
    const sheet = gradeSheet(sizes, lines, gauges, tolerance);
    expect(
      sheet.lines.flatMap(({ facts, sizes: each }) => [...facts, ...each.flatMap((size) => size.facts)]),
    ).toEqual([]);
    const busts = sizes.map((_, at) => lineNamed(sheet, 'finished bust')!.sizes[at]!.value);
    expect(busts).not.toContain(null);
    expect(busts).toHaveLength(4);
  });

  test('has sizes from the chart, smallest first, and invents nothing that only the maker knows', () => {
    const pattern = blank;
    expect(pattern.sizes.map(({ label, chart }) => [label, chart])).toEqual([
      ['S', 'S'],
      ['M', 'M'],
      ['L', 'L'],
      ['XL', 'XL'],
    ]);
    expect([pattern.gauges, pattern.hooks, pattern.yarns]).toEqual([[], [], []]);
    expect(pattern.pieces[0]!.blocks).toMatchObject([{ type: 'row', text: { text: '' } }]);
    expect(pattern.sizes.map(({ id }) => id)).toContain(pattern.sample);
  });
});
