/**
 * The foot of every page: title · terms · version and "page n of m", with the size key under them. It is an
 * artifact: a reader of the page aloud is not told it on every page.
 */
import type { Meta } from './content.ts';
import { across, baselineOf, lineMarks, span } from './desk.ts';
import type { Typefaces } from './fonts.ts';
import { breakLines, type Line } from './lines.ts';
import type { Mark } from './page.ts';
import type { Style } from './style.ts';

export interface Foot {
  /** From its last line to the rule above it, with the white above that. */
  readonly height: number;
  readonly marks: (page: number, pages: number) => readonly Mark[];
}

const GAP = 6;

export function measureFoot(meta: Meta, style: Style, fonts: Typefaces): Foot {
  const look = style.looks.foot;
  const left = style.margin.left;
  const width = style.page.width - style.margin.left - style.margin.right;
  const pageText = (page: number, pages: number): string => `page ${page} of ${pages}`;
  const pageWidth = fonts.width(pageText(888, 888), 'sans', look.size) + look.size * 2;
  const about = [meta.title, meta.termsNote, meta.version].filter((text) => text.trim() !== '').join(' · ');
  const lines: Line[] = [
    ...breakLines([span(about, look)], width - pageWidth, fonts),
    ...breakLines([span([{ text: meta.sizeKey, emphasis: 'plain', hold: 'loose' }], look)], width, fonts),
  ];
  const height = GAP + Math.max(1, lines.length) * look.leading;
  const top = style.page.height - style.footRise - height;
  const baseline = (i: number): number => top + GAP + i * look.leading + baselineOf(look);
  const fixed: Mark[] = [
    across(left, left + width, top, style.rules.hair, style.colours.rule),
    ...lines.flatMap((line, i) => lineMarks(line, left, baseline(i), [null])),
  ];
  return {
    height: height + Math.max(GAP * 2, look.leading),
    marks: (page, pages) => {
      const line = breakLines([span(pageText(page, pages), look)], width, fonts)[0]!;
      return [...fixed, ...lineMarks(line, left + width - line.width, baseline(0), [null])];
    },
  };
}
