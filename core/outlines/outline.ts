/**
 * What every garment outline is made from: the maker's own gauge and hook, the sizes of a chart, and the words
 * of the stitch in the maker's terms. An outline is a beginning to write over, so it holds rows that work in
 * every size and no prose that pretends to be the maker's.
 */
import type { About, Gauge, Hook, Pattern, Quantity, Size } from '../document/pattern.ts';
import { NO_WORKBOOK } from '../document/workbook.ts';
import { bodyChart } from '../trade/bodies.ts';
import { type BaseStitch, type Terms, turningChain } from '../trade/stitches.ts';
import { namesOf, stitchAbbreviation } from '../trade/terms.ts';

export interface OutlineOptions {
  readonly title: string;
  readonly terms: Terms;
  readonly units: 'metric' | 'imperial';
  /** ISO date of the first version: the caller's, because nothing here knows the time. */
  readonly date: string;
  readonly gauge: OutlineGauge;
}

/** The maker's swatch. */
export interface OutlineGauge {
  /** Stitch of the fabric: t1, t2 or t3. */
  readonly stitch: Extract<BaseStitch, 't1' | 't2' | 't3'>;
  readonly stitches: number;
  readonly rows: number;
  readonly over: Quantity;
  readonly hookMm: number;
}

/** The stitch and its neighbours, as the rows say them. */
export interface StitchWords {
  readonly st: string;
  readonly slip: string;
  /** Decrease: "hdc2tog", "htr2tog". */
  readonly together: string;
  /** "Ch 1,", "Ch 2 (does not count as a st),". */
  readonly begin: string;
  /** "join with sl st in first hdc." */
  readonly join: string;
  /** Chains at the start of a row; they never count as a stitch, so that all stitches are alike. */
  readonly turning: number;
  /** "3rd ch from hook (the skipped ch do not count as a st)". */
  readonly firstPlace: string;
  readonly skip: string;
}

export function stitchWords(stitch: OutlineGauge['stitch'], terms: Terms): StitchWords {
  const st = stitchAbbreviation(stitch, terms);
  const slip = stitchAbbreviation('slip', terms);
  const { chains } = turningChain(stitch);
  return {
    st,
    slip,
    together: stitchAbbreviation(`tog2.${stitch}`, terms),
    begin: `Ch ${chains}${chains === 1 ? '' : ' (does not count as a st)'},`,
    join: `join with ${slip} in first ${st}.`,
    turning: chains,
    firstPlace:
      chains === 1
        ? '2nd ch from hook'
        : `${chains + 1}${chains === 2 ? 'rd' : 'th'} ch from hook (the skipped ch do not count as a st)`,
    skip: terms === 'us' ? 'sk' : 'miss',
  };
}

/** Sizes of a chart, smallest first. */
export function chartSizes(audience: 'woman', labels: readonly string[]): readonly Size[] {
  const chart = bodyChart(audience);
  return labels
    .filter((label) => chart?.sizes.includes(label))
    .map((label) => ({ id: `size-${label.toLowerCase()}`, label, audience, chart: label, age: null }));
}

/** The parts of a pattern that every outline fills in the same way. */
export function outlineFrame(
  { title, terms, units, date, gauge }: OutlineOptions,
  garment: string,
  inRounds: boolean,
): Pick<
  Pattern,
  | 'about'
  | 'terms'
  | 'units'
  | 'tolerance'
  | 'gauges'
  | 'hooks'
  | 'yarns'
  | 'notions'
  | 'specials'
  | 'abbreviations'
  | 'notes'
  | 'finishing'
  | 'cautions'
  | 'charts'
  | 'workbook'
> {
  const about: About = {
    title,
    designer: '',
    level: 2,
    description: '',
    construction: '',
    garment,
    cover: null,
    version: '1.0',
    date,
    copyright: '',
    contact: '',
    care: '',
    language: terms === 'us' ? 'en-US' : 'en-GB',
    fit: '',
  };
  const hooks: readonly Hook[] = [{ id: 'hook-main', mm: gauge.hookMm, purpose: '' }];
  const gauges: readonly Gauge[] = [
    {
      id: 'gauge-main',
      pattern: namesOf(gauge.stitch, terms).name,
      stitches: gauge.stitches,
      rows: gauge.rows,
      width: gauge.over,
      height: gauge.over,
      blocked: true,
      stretch: null,
      hook: 'hook-main',
      rounds: inRounds,
    },
  ];
  return {
    about,
    terms,
    units,
    tolerance: units === 'metric' ? { value: 2, unit: 'cm' } : { value: 0.75, unit: 'in' },
    gauges,
    hooks,
    yarns: [],
    notions: [],
    specials: [],
    abbreviations: {},
    notes: [],
    finishing: [],
    cautions: [],
    charts: [],
    workbook: NO_WORKBOOK,
  };
}
