/** A swatch told in words is begun on a chain that its rows do not work on, or has another count than they make. */
import { listed, number, quote, quoted, text } from '../../findings/phrases.ts';
import type { PieceStudy, Study } from '../../study/index.ts';
import { madeOn } from '../multiples.ts';
import { found, type Rule } from '../rule.ts';
import { looking } from '../scan.ts';

interface Told {
  readonly from: number;
  readonly to: number;
  readonly chains: number;
  /** "26 sts"; null where no count is told. */
  readonly stitches: number | null;
  /** "8 V-sts": shells and the like. */
  readonly units: number | null;
  /** What those are called there. */
  readonly noun: string;
}

/** "ch 27 and work 20 rows of the pattern (26 sts, 8 V-sts)": a chain, and in its sentence the count that it makes. */
const SWATCH =
  /\b(?:ch|chain)\s(\d{1,3})(?![\d\p{L}-])(?:[^.()]{0,80}?\((\d{1,3})\s(?:sts?|stitches)(?:,\s(\d{1,3})\s(\p{L}[\p{L}-]*))?\))?/giu;
/** What the sentence is about. */
const IS_SWATCH = /\b(?:swatch|gauge|tension|trial piece|test piece)\b/iu;

const told = looking((prose, kind): readonly Told[] =>
  kind === 'row' || !IS_SWATCH.test(prose)
    ? []
    : [...prose.matchAll(SWATCH)].flatMap((match): readonly Told[] => {
        const before = /[^.!?]*$/u.exec(prose.slice(0, match.index))![0];
        const after = /^[^.!?]*/u.exec(prose.slice(match.index))![0];
        // A swatch of a stitch of its own says so, and is not of the pattern's rows.
        const isOwn = !/\b(?:pattern|rows? \d|as for|main stitch)\b/iu.test(after);
        if (!IS_SWATCH.test(before + after) || isOwn) return [];
        return [
          {
            from: match.index,
            to: match.index + match[0].length,
            chains: Number(match[1]),
            stitches: match[2] === undefined ? null : Number(match[2]),
            units: match[3] === undefined ? null : Number(match[3]),
            noun: match[4] ?? 'sts',
          },
        ];
      }),
);

/** Chains near to `n` on which a piece's rows work, one below and one above where there are. */
function near(study: Study, piece: PieceStudy, n: number): readonly number[] {
  const works = (m: number) => m > 1 && madeOn(study, piece, m) != null;
  const steps = Array.from({ length: 24 }, (_, i) => i + 1);
  const below = steps.find((step) => works(n - step));
  const above = steps.find((step) => works(n + step));
  return [...(below === undefined ? [] : [n - below]), ...(above === undefined ? [] : [n + above])];
}

export const swatchInWordsOff: Rule = {
  code: 'swatch-in-words-off',
  severity: 'warning',
  title: 'A swatch is told with numbers that its rows do not make',
  reason:
    'The swatch is the first thing that a maker works. If it does not come out, or is counted otherwise, the gauge cannot be measured.',
  message: (facts, voice) => {
    const { data } = facts[0]!.fact;
    const words = quote(voice.words || text(data, 'words'));
    const piece = quoted(data, 'piece');
    if (text(data, 'how') === 'chain') {
      const would = text(data, 'near');
      return `${words} is no chain that the rows of ${piece} come out on${would === '' ? '' : `; ${would} would do`}`;
    }
    return `${words} is not what comes of it: on ${number(data, 'chains')} chains the rows of ${piece} make ${text(data, 'made')} ${text(data, 'noun')}; put the number right`;
  },
  example: null,
  late: true,
  sample: {
    words: 'ch 28',
    piece: 'Panels',
    how: 'chain',
    near: 'ch 27 or ch 30',
    chains: 28,
    made: '',
    noun: '',
  },
  check: (study) =>
    told(study.pattern).flatMap(({ text: { node, text: words }, hits }) =>
      hits.flatMap(({ from, to, chains, stitches, units, noun }) => {
        const tried = study.pieces.flatMap((piece) => {
          const made = madeOn(study, piece, chains);
          return made === undefined ? [] : [{ piece, made }];
        });
        const [first] = tried;
        if (first === undefined) return [];
        const tell = (data: Readonly<Record<string, string | number>>) => [
          found(
            swatchInWordsOff,
            study,
            { node, text: words, from, to },
            { words: words.slice(from, to), piece: first.piece.piece.name, chains, ...data },
          ),
        ];
        const working = tried.flatMap(({ made }) => (made === null ? [] : [made]));
        if (working.length === 0)
          return tell({
            how: 'chain',
            near: listed(
              near(study, first.piece, chains).map((n) => `ch ${n}`),
              'or',
            ),
            made: '',
            noun: '',
          });
        const rows = working.flatMap((made) => made.rows);
        const counts = new Set(rows.flatMap((row) => [row.stitches, row.stitches + row.chains]));
        if (stitches !== null && !counts.has(stitches)) {
          const own = [...new Set(rows.slice(1).map((row) => row.stitches))].slice(0, 3);
          return tell({ how: 'stitches', near: '', made: listed(own.map(String), 'or'), noun: 'sts' });
        }
        const sorts = rows.flatMap((row) => [...row.units.values()]);
        if (units !== null && sorts.length > 0 && !sorts.includes(units) && !counts.has(units))
          return tell({ how: 'units', near: '', made: listed([...new Set(sorts)].map(String), 'or'), noun });
        return [];
      }),
    ),
};
