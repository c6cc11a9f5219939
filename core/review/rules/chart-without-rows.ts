/** A chart is of a piece or of rows that are not there. */
import { quoted } from '../../findings/phrases.ts';
import { found, type Rule } from '../rule.ts';

export const chartWithoutRows: Rule = {
  code: 'chart-without-rows',
  severity: 'error',
  title: 'A chart is of rows that are not there',
  reason: 'A chart is drawn from its rows. Without them there is nothing to draw.',
  message: (facts) =>
    `the chart ${quoted(facts[0]!.fact.data, 'chart')} is of rows that are not there any more, or stand the wrong way round; choose its first and last row anew, or take the chart out`,
  example: null,
  sample: { chart: 'One repeat of the mesh' },
  check: (study) =>
    study.pattern.charts.flatMap(({ id, piece, first, last, title }) => {
      const blocks = study.pattern.pieces.find((each) => each.id === piece)?.blocks ?? [];
      const at = (row: string) => blocks.findIndex((block) => block.id === row);
      return at(first) >= 0 && at(last) >= at(first)
        ? []
        : [found(chartWithoutRows, study, { node: id }, { chart: title })];
    }),
};
