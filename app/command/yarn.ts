/** `turnchain yarn`: the yarn and the hours of every size, with what they rest on. Reckons nothing itself. */

import type { Pattern } from '../../core/document/pattern.ts';
import { titleOf } from '../../core/document/title.ts';
import {
  basisWords,
  doubtWords,
  HOURS_CARE,
  NOT_COUNTED,
  percentWords,
  unusedWords,
} from '../../core/study/basis-words.ts';
import { hoursOf } from '../../core/study/hours.ts';
import type { Study } from '../../core/study/study.ts';
import { unusedFigures } from '../../core/study/unused.ts';
import { type YarnEstimate, type YarnInSize, yarnOf } from '../../core/study/yarn.ts';
import { formatNumber, metresToYards, rational, roundTo } from '../../core/trade/units.ts';
import { type TableLine, table } from './table.ts';
import { telling } from './told.ts';
import { harmless, type Paint, wrap } from './words.ts';

/** A number to the nearest whole; a dash for none. */
export function whole(value: number | null): string {
  const exact = value === null ? null : rational(value);
  return exact === null ? '–' : formatNumber(roundTo(exact, rational(1)!));
}

const yards = (metres: number | null): number | null => {
  const exact = metres === null ? null : rational(metres);
  return exact === null ? null : metresToYards(exact).valueOf();
};

const line = (label: string, cells: readonly string[]): TableLine => ({
  label,
  cells,
  remark: '',
  under: [],
});

function yarnLines({ sizes }: YarnEstimate): readonly TableLine[] {
  const cells = (one: (size: YarnInSize) => number | null) =>
    sizes.map((size) => whole(size === null ? null : one(size)));
  const lines = [
    line(
      'metres, as used',
      cells(({ metres }) => metres),
    ),
    line(
      'metres',
      cells(({ withMargin }) => withMargin.metres),
    ),
    line(
      'yards',
      cells(({ withMargin }) => yards(withMargin.metres)),
    ),
    line(
      'grams',
      cells(({ withMargin }) => withMargin.grams),
    ),
    line(
      'balls',
      cells(({ balls }) => balls),
    ),
  ];
  return lines.filter((one) => one.cells.some((cell) => cell !== '–'));
}

export const yarnName = (yarn: Pattern['yarns'][number]): string => {
  const name = yarn.name.trim() === '' ? 'Yarn without a name' : yarn.name.trim();
  return yarn.key === null || yarn.key.trim() === '' ? name : `${yarn.key.trim()}: ${name}`;
};

function words(study: Study, width: number, paint: Paint): string {
  const { pattern } = study;
  const report = yarnOf(study);
  const hours = hoursOf(study);
  const heads = pattern.sizes.map(({ label }) => harmless(label));
  const out = [paint('strong', harmless(titleOf(pattern.about)))];
  const say = (text: string) => out.push(...wrap(harmless(text), width));
  if (pattern.sizes.length === 0) {
    say('No amounts and no hours: the pattern has no sizes. Add one in the studio, under Sizes.');
    return `${out.join('\n')}\n`;
  }
  const unused = unusedFigures(study);
  for (const estimate of report.yarns) {
    out.push('', paint('strong', harmless(yarnName(estimate.yarn))));
    const basis = basisWords(estimate.basis, pattern);
    if (basis === null) {
      say(
        estimate.worked
          ? unused.length > 0
            ? 'No amount: what was weighed cannot be reckoned with; why is said below.'
            : 'No amount: nothing that was made of this pattern, or of a swatch, has its yarn weighed.'
          : 'No amount: no row says that it is worked with this yarn.',
      );
      continue;
    }
    out.push(...table(heads, yarnLines(estimate), width, paint));
    say(`Amounts have ${report.margin} % to spare. They are reckoned ${basis}.`);
  }
  out.push('', paint('strong', 'Hours'));
  const basis = basisWords(hours, pattern);
  if (basis === null)
    say(
      pattern.workbook.makings.some(({ hours: taken }) => taken !== null) && unused.length > 0
        ? 'No hours: what was told cannot be reckoned with; why is said below.'
        : 'No hours: nothing that was made says how long it took.',
    );
  else {
    out.push(...table(heads, [line('hours', hours.sizes.map(whole))], width, paint));
    say(`They are reckoned ${basis}. ${HOURS_CARE}`);
  }
  out.push('');
  const named = new Map(pattern.pieces.map(({ id, name }) => [id, name]));
  for (const { making, why } of unused) {
    const words = unusedWords(making.kind, why);
    say(`${words.charAt(0).toUpperCase()}${words.slice(1)}.`);
  }
  for (const doubt of report.doubts) say(doubtWords(doubt, named.get(doubt.piece) ?? ''));
  say(NOT_COUNTED);
  return `${out.join('\n')}\n`;
}

/** What an amount rests on, for programs: kinds of making and sizes, no names. */
export function basisJson(
  basis: {
    readonly makings: Pattern['workbook']['makings'];
    readonly spread: number | null;
    readonly heldBack: number | null;
  } | null,
) {
  return basis === null || basis.makings.length === 0
    ? null
    : {
        makings: basis.makings.map(({ kind, size }) => ({ kind, size })),
        spread: basis.spread,
        heldBack: basis.heldBack,
      };
}

function json(study: Study): unknown {
  const { pattern } = study;
  const report = yarnOf(study);
  const hours = hoursOf(study);
  return {
    sizes: pattern.sizes.map(({ label }) => label),
    margin: report.margin,
    yarns: report.yarns.map(({ yarn, sizes, basis }) => ({
      yarn: yarnName(yarn),
      basis: basisJson(basis),
      sizes: sizes.map((size) => size && { ...size, yards: yards(size.withMargin.metres) }),
    })),
    hours: { basis: basisJson(hours), sizes: hours.sizes },
    testers: report.compared.flatMap(({ making, unit, amount, off }) =>
      making.kind === 'tester'
        ? [{ size: making.size, unit, amount, off: off === null ? null : percentWords(off) }]
        : [],
    ),
  };
}

export const command = telling(words, json);
