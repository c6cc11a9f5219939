/** Garment outlines are worked out and worked in every size, for gauges that makers really have. */
import { describe, expect, test } from 'vitest';
import { checkTree } from '../../core/document/check.ts';
import { compose } from '../../core/document/compose.ts';
import { project } from '../../core/document/project.ts';
import { hatPattern, type OutlineOptions, panelPattern, raglanPattern } from '../../core/outlines/index.ts';
import { study } from '../../core/study/study.ts';

const OUTLINES = { panel: panelPattern, hat: hatPattern, raglan: raglanPattern } as const;

type Gauge = readonly [OutlineOptions['gauge']['stitch'], number, number, number];

/** Swatches: a DK and a worsted fabric of each stitch (invented, of usual proportions). */
const GAUGES = [
  ['t1', 18, 20, 4],
  ['t1', 16, 18, 5],
  ['t2', 16, 12, 4.5],
  ['t2', 14, 10, 5],
  ['t3', 16, 9, 4.5],
  ['t3', 13, 7.5, 5.5],
] as const satisfies readonly Gauge[];

const options = (
  [stitch, stitches, rows, hookMm]: Gauge,
  terms: 'us' | 'uk',
  units: 'metric' | 'imperial',
): OutlineOptions => ({
  title: 'Trial',
  terms,
  units,
  date: '2024-05-01',
  gauge: {
    stitch,
    stitches,
    rows,
    hookMm,
    over: units === 'metric' ? { value: 10, unit: 'cm' } : { value: 4, unit: 'in' },
  },
});

describe.each(Object.entries(OUTLINES))('the outline “%s”', (_, make) => {
  test.each(GAUGES)('in %s at %d stitches and %d rows works in every size, in both terms', (...gauge) => {
    for (const [terms, units] of [
      ['us', 'imperial'],
      ['uk', 'metric'],
    ] as const) {
      const pattern = make(options(gauge, terms, units));
      const checked = checkTree(compose(pattern).toJSON());
      expect(checked.ok && project(checked.document)).toEqual(pattern);
      const studied = study(pattern);
      const told = studied.findings.map(
        ({ code, message, sizes }) => `${code} ${sizes.join(',')} ${message}`,
      );
      expect(told).toEqual([]);
      for (const piece of studied.pieces) expect(piece.fabrics).not.toContain(null);
    }
  });
});
