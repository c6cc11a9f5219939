/** The editions: contrast by WCAG 2.2, sizes by the issue, papers by their standards. */
import { describe, expect, test } from 'vitest';
import { type Edition, type Look, type Paper, styleOf } from '../../core/print/style.ts';

const PAPERS: readonly Paper[] = ['a4', 'letter'];
const EDITIONS: readonly Edition[] = ['standard', 'large-print', 'ink-saving'];
const STYLES = PAPERS.flatMap((paper) => EDITIONS.map((edition) => styleOf(paper, edition)));

/** Relative luminance and contrast ratio as WCAG 2.2 defines them. */
function luminance(colour: string): number {
  const [r, g, b] = [1, 3, 5].map((at) => {
    const part = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
}
const contrast = (a: string, b: string): number => {
  const [dark, light] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (light! + 0.05) / (dark! + 0.05);
};
const looksOf = (style: (typeof STYLES)[number]): Look[] => Object.values(style.looks).flat() as Look[];

describe.each(STYLES)('$edition on $paper', (style) => {
  test('sets every text with a contrast of 4.5 to 1 or more, on paper and on its tint (WCAG 2.2, 1.4.3)', () => {
    for (const look of looksOf(style)) {
      expect(contrast(look.colour, '#ffffff')).toBeGreaterThanOrEqual(4.5);
      expect(contrast(look.colour, style.colours.tint)).toBeGreaterThanOrEqual(4.5);
    }
  });

  test('leaves lines air enough', () => {
    for (const look of looksOf(style)) expect(look.leading).toBeGreaterThanOrEqual(look.size * 1.14);
    expect(style.looks.body.leading / style.looks.body.size).toBeGreaterThan(1.3);
  });

  test('uses one leading for all that stands beside the body, so that baselines meet', () => {
    for (const look of ['label', 'side', 'count', 'only'] as const) {
      expect(style.looks[look].leading).toBe(style.looks.body.leading);
    }
  });

  test('has a measure of 45 to 90 characters', () => {
    const column = style.page.width - style.margin.left - style.margin.right - style.hang;
    const characters = column / (style.looks.body.size * 0.48);
    expect(characters).toBeGreaterThan(45);
    expect(characters).toBeLessThan(95);
  });

  test('is the same object whenever it is asked for', () => {
    expect(styleOf(style.paper, style.edition)).toBe(style);
  });
});

test('papers have their published sizes (ISO 216: 210 × 297 mm; US Letter: 8.5 × 11 in)', () => {
  expect(styleOf('a4', 'standard').page.width).toBeCloseTo((210 / 25.4) * 72, 2);
  expect(styleOf('a4', 'standard').page.height).toBeCloseTo((297 / 25.4) * 72, 2);
  expect(styleOf('letter', 'standard').page).toEqual({ width: 8.5 * 72, height: 11 * 72 });
});

test('large print is 18 pt or more everywhere, black, without a column for labels, with margins of an inch', () => {
  for (const paper of PAPERS) {
    const style = styleOf(paper, 'large-print');
    for (const look of looksOf(style)) {
      expect(look.size).toBeGreaterThanOrEqual(18);
      expect(look.family).toBe('sans');
      expect(look.colour).toBe('#000000');
    }
    expect(style.hang).toBe(0);
    expect(style.tablesTold).toBe(true);
    expect(Math.min(style.margin.left, style.margin.right, style.margin.top, style.margin.bottom)).toBe(72);
  }
});

test('the ink-saving edition fills nothing and bleeds nothing', () => {
  for (const paper of PAPERS) {
    const style = styleOf(paper, 'ink-saving');
    expect(style.fills).toBe(false);
    expect(style.bleed).toBe(false);
    expect(style.rules.bar).toBeLessThan(1);
    expect(style.pictureScale).toBeLessThan(1);
  }
});
