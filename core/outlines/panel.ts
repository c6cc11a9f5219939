/**
 * The outline of a garment in two panels: a straight back and front of one stitch, with side and shoulder seams
 * left open at armhole and neck. The maker shapes it from there.
 */
import type { Line, Pattern } from '../document/pattern.ts';
import {
  bodyLine,
  cm,
  easeLine,
  edge,
  formulaLine,
  inches,
  rowsLine,
  stitchesLine,
  typedLine,
  Writer,
} from '../document/writer.ts';
import { chartSizes, type OutlineOptions, outlineFrame, stitchWords } from './outline.ts';

const LABELS = ['XS', 'S', 'M', 'L', 'XL', '2X', '3X', '4X', '5X'];

/** A two-panel top in nine sizes of the women's chart. */
export function panelPattern(options: OutlineOptions): Pattern {
  const { st, begin, turning, firstPlace } = stitchWords(options.gauge.stitch, options.terms);
  const metric = options.units === 'metric';
  const sizes = chartSizes('woman', LABELS);
  const lines: readonly Line[] = [
    bodyLine('bust', 'bust', {}, { printed: 'To fit bust up to' }),
    bodyLine('armhole', 'armhole_depth', {}),
    // Loose, as a straight panel is worn: 4–6 in (Craft Yarn Council's ease levels, as reprinted).
    easeLine('ease', { all: metric ? cm(12) : inches(5) }),
    formulaLine('finished bust', 'bust + ease', { printed: 'Finished bust', fits: 'bust' }),
    stitchesLine('panel stitches', 'finished bust ÷ 2', 'gauge-main', 2, 0),
    typedLine('length to underarm', { all: metric ? cm(33) : inches(13) }),
    formulaLine('length', `length to underarm + armhole + ${metric ? '2 cm' : '1 in'}`, {
      printed: 'Length',
    }),
    rowsLine('panel rows', 'length', 'gauge-main', 2, 0),
  ];
  const panel = (id: string) => {
    const work = new Writer(id);
    work.row(
      `Ch {panel stitches + ${turning}}. ${st[0]!.toUpperCase()}${st.slice(1)} in ${firstPlace} and in each ch across, turn. ({panel stitches} ${st})`,
    );
    const even = work.row(`${begin} ${st} in each st across, turn. ({panel stitches} ${st})`);
    work.untilTotal(even, even, 'panel rows');
    work.prose('Fasten off.');
    return work;
  };
  const side = (piece: string) => edge(piece, 'row-ends');
  return {
    ...outlineFrame(options, 'top', false),
    sizes,
    sample: 'size-m',
    lines,
    pieces: [
      panel('back').piece('Back', { kind: 'chain' }, 'RS'),
      panel('front').piece('Front', { kind: 'chain' }, 'RS', {
        meets: [{ mine: side('front'), other: side('back') }],
      }),
    ],
  };
}
