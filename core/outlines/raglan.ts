/**
 * The outline of a raglan from the neck down: a yoke that grows at four corners, a body and sleeves worked on
 * from it. What body and sleeves share is increased first, what the body has more of after it.
 */
import type { Line, Pattern, Size } from '../document/pattern.ts';
import {
  bodyLine,
  cm,
  each,
  easeLine,
  edge,
  formulaLine,
  inches,
  rowsLine,
  shapingLine,
  stitchesLine,
  typedLine,
  Writer,
} from '../document/writer.ts';
import { gradeSheet } from '../grading/index.ts';
import { chartSizes, type OutlineOptions, outlineFrame, stitchWords } from './outline.ts';

const LABELS = ['XS', 'S', 'M', 'L', 'XL', '2X', '3X', '4X', '5X'];
/** Starting widths in inches, to be changed by the maker: underarm, front neck, top of a sleeve. Common practice, no source. */
const UNDERARMS = [1.5, 2, 2, 2.5, 3, 3.5, 4, 5, 5.5];
const NECKS = [7.5, 8, 8.5, 8.5, 9, 9, 9.5, 9.5, 9.5];
const SHOULDERS = [4.5, 4.5, 4.5, 5, 5, 5, 5, 5, 5.5];

/**
 * The lines, for a yoke whose corners grow by `step` stitches on either side at a time: one is usual; a fabric whose
 * rows are tall for their width needs more to reach the body in the depth of the yoke.
 */
function linesOf({ units }: OutlineOptions, sizes: readonly Size[], step: number): readonly Line[] {
  const metric = units === 'metric';
  const length = lengthIn(units);
  return [
    bodyLine('bust', 'bust', {}, { printed: 'To fit bust up to' }),
    bodyLine('upper arm', 'upper_arm', {}),
    bodyLine('armhole', 'armhole_depth', {}),
    // Classic: 2–4 in (Craft Yarn Council's ease levels, as reprinted).
    easeLine('ease', { all: length(2) }),
    formulaLine('finished bust', 'bust + ease', { printed: 'Finished bust', fits: 'bust' }),
    stitchesLine('body stitches', 'finished bust', 'gauge-main', 4 * step, 0),
    typedLine('underarm width', each(sizes, UNDERARMS, length)),
    stitchesLine('underarm chains', 'underarm width', 'gauge-main', 2 * step, 0, { counts: 'chains' }),
    formulaLine('front stitches', 'body stitches ÷ 2 − underarm chains'),
    formulaLine('finished upper arm', `upper arm + ${metric ? '6 cm' : '2.5 in'}`, {
      printed: 'Finished upper arm',
      fits: 'upper arm',
    }),
    stitchesLine('sleeve stitches', 'finished upper arm', 'gauge-main', 2 * step, 0),
    formulaLine('sleeve top stitches', 'sleeve stitches − underarm chains'),
    typedLine('front neck', each(sizes, NECKS, length)),
    stitchesLine('front neck stitches', 'front neck', 'gauge-main', 2 * step, 0),
    typedLine('shoulder', each(sizes, SHOULDERS, length)),
    stitchesLine('shoulder stitches', 'shoulder', 'gauge-main', 2 * step, 0),
    formulaLine('neck stitches', '2 × front neck stitches + 2 × shoulder stitches'),
    formulaLine('body increases', `(front stitches − front neck stitches) ÷ ${2 * step}`),
    formulaLine('shared increases', `(sleeve top stitches − shoulder stitches) ÷ ${2 * step}`),
    formulaLine('own increases', 'body increases − shared increases'),
    formulaLine('yoke depth', `armhole + ${metric ? '3.5 cm' : '1.5 in'}`, { printed: 'Yoke depth' }),
    rowsLine('yoke rounds', 'yoke depth', 'gauge-main', 1, 0),
    formulaLine('own rounds', '(yoke rounds − 1) × own increases ÷ body increases, rounded down to 1'),
    formulaLine('shared rounds', 'yoke rounds − 1 − own rounds'),
    formulaLine('stitches after shared', `neck stitches + ${8 * step} × shared increases`),
    formulaLine('yoke stitches', `stitches after shared + ${4 * step} × own increases`),
    shapingLine('raglan', 'neck stitches', 'stitches after shared', 'shared rounds', 2 * step, 4),
    shapingLine('body shaping', 'stitches after shared', 'yoke stitches', 'own rounds', step, 4),
    typedLine('side length', { all: length(14) }, { printed: 'Underarm to hem' }),
    rowsLine('body rounds', 'side length', 'gauge-main', 1, 0),
    typedLine('sleeve length', { all: length(5) }, { printed: 'Underarm to cuff' }),
    rowsLine('sleeve rounds', 'sleeve length', 'gauge-main', 1, 0),
    formulaLine('cuff width', `upper arm + ${metric ? '3 cm' : '1.25 in'}`, { printed: 'Cuff edge' }),
    stitchesLine('cuff stitches', 'cuff width', 'gauge-main', 2, 0),
    shapingLine('sleeve shaping', 'sleeve stitches', 'cuff stitches', 'sleeve rounds − 2', 1, 2),
  ];
}

const lengthIn = (units: OutlineOptions['units']) => (value: number) =>
  units === 'metric' ? cm(Math.round(value * 2.54 * 2) / 2) : inches(value);

/** A raglan tee in nine sizes of the women's chart. */
export function raglanPattern(options: OutlineOptions): Pattern {
  const { st, slip, begin, join, together, skip } = stitchWords(options.gauge.stitch, options.terms);
  const sizes = chartSizes('woman', LABELS);
  const frame = outlineFrame(options, 'tee', true);
  const isRight = (step: number) =>
    gradeSheet(sizes, linesOf(options, sizes, step), frame.gauges, frame.tolerance).lines.every((line) =>
      line.sizes.every((size) => size.facts.length === 0),
    );
  const step = [1, 2, 3].find(isRight) ?? 1;
  const lines = linesOf(options, sizes, step);
  /** Stitches on one side of a corner. */
  const side = step === 1 ? st : `${step} ${st}`;

  const even = `${begin} *${st} in each ${st} to next ch-1 sp, ch 1, ${skip} ch-1 sp; rep from * 3 more times, ${st} in each ${st} to end; ${join}`;
  const yoke = new Writer('yoke');
  yoke.foundation(`Ch {neck stitches}, join with ${slip} in first ch to form a ring.`);
  yoke.round(
    `${begin} ${st} in each of next {front neck stitches ÷ 2} ch, ch 1, ${st} in each of next {shoulder stitches} ch, ch 1, ${st} in each of next {front neck stitches} ch, ch 1, ${st} in each of next {shoulder stitches} ch, ch 1, ${st} in each of last {front neck stitches ÷ 2} ch; ${join} ({neck stitches} ${st}, 4 ch-1 sps)`,
  );
  yoke.shaping(
    'raglan',
    `${begin} *${st} in each ${st} to next ch-1 sp, (${side}, ch 1, ${side}) in ch-1 sp; rep from * 3 more times, ${st} in each ${st} to end; ${join}`,
    even,
  );
  yoke.shaping(
    'body shaping',
    `${begin} *${st} in each ${st} to next ch-1 sp, (${side}, ch 1) in ch-1 sp, ${st} in each ${st} to next ch-1 sp, (ch 1, ${side}) in ch-1 sp; rep from * once more, ${st} in each ${st} to end; ${join}`,
    even,
  );
  const body = new Writer('body');
  body.round(
    `${begin} ${st} in each of next {front stitches ÷ 2} sts, ch {underarm chains}, ${skip} next ch-1 sp, ${skip} next {sleeve top stitches} sts, ${skip} next ch-1 sp, ${st} in each of next {front stitches} sts, ch {underarm chains}, ${skip} next ch-1 sp, ${skip} next {sleeve top stitches} sts, ${skip} next ch-1 sp, ${st} in each of last {front stitches ÷ 2} sts; ${join} ({2 × front stitches} ${st})`,
    { title: 'Dividing' },
  );
  body.round(`${begin} ${st} in each ${st} and in each ch to end; ${join} ({body stitches} ${st})`);
  const bodyEven = body.round(`${begin} ${st} in each st around; ${join} ({body stitches} ${st})`);
  body.untilTotal(bodyEven, bodyEven, 'body rounds');
  body.prose('Fasten off.');
  const sleeve = new Writer('sleeve');
  sleeve.round(
    `Join yarn with ${slip} in first st (of the sleeve), ${begin.replace(/^C/, 'c')} ${st} in each of next {sleeve top stitches} sts, ${st} in each of next {underarm chains} ch (along the underarm); ${join} ({sleeve stitches} ${st})`,
  );
  sleeve.round(`${begin} ${st} in each st around; ${join} ({sleeve stitches} ${st})`);
  sleeve.shaping(
    'sleeve shaping',
    `${begin} ${together} over next 2 sts, ${st} in each st to last {underarm chains + 2} sts, ${together} over next 2 sts, ${st} in each st to end; ${join}`,
    `${begin} ${st} in each st around; ${join}`,
  );
  sleeve.prose('Fasten off.');
  return {
    ...frame,
    sizes,
    sample: 'size-m',
    lines,
    pieces: [
      yoke.piece('Yoke', { kind: 'chain' }, 'RS'),
      body.piece('Body', { kind: 'edges', edges: [edge('yoke', 'top')], round: true }, 'RS'),
      sleeve.piece('Sleeves', { kind: 'edges', edges: [edge('body', 'opening')], round: true }, 'RS', {
        make: 2,
      }),
    ],
  };
}
