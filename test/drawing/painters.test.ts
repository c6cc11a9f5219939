/**
 * The two painters: the SVG text is what a general XML reader and a general renderer take it for, the PDF has the
 * words in one figure. Nothing of what the drawings mean is tested here.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { group, path, type Scene, type Shape, words } from '../../core/drawing/scene.ts';
import { paintSvg } from '../../core/drawing/svg.ts';
import { drawing, figure, part } from '../../core/print/content.ts';
import { writePdf } from '../../core/print/pen.ts';
import { scenePen } from '../../core/print/scene-pen.ts';
import { sample } from '../print/sample.ts';
import { fonts, objectsOf, outside, tagsOf, walk } from '../print/tools.ts';

const scene = (shapes: readonly Shape[], more: Partial<Scene> = {}): Scene => ({
  width: 200,
  height: 100,
  title: 'Back',
  alt: 'Back: 46 cm wide.',
  shapes,
  ...more,
});

/** A tag of the painter's: names and quoted values, with nothing loose in it. */
const TAG = /^<\/?[a-z]+( [a-zA-Z-]+="([^"<>&]|&(amp|lt|gt|quot);)*")*\/?>$/;

describe('SVG', () => {
  test('is the same text each time, with title, description and classes by role', () => {
    const made = scene([
      path([['M', 1, 2], ['L', 3.456, 4], ['Z']], { role: 'ground', stroke: 0, filled: true }),
      path(
        [
          ['M', 0, 0],
          ['C', 1, 1, 2, 2, 3, 3],
        ],
        { dash: [2, 1], role: 'guide' },
      ),
      group(
        [words('46 cm', 0, 0, { anchor: 'middle', bold: true, turn: -90, role: 'measure' })],
        5,
        6,
        30,
        'a',
      ),
    ]);
    expect(paintSvg(made, { standalone: false, id: 'x' })).toBe(
      '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 200 100" role="img" aria-labelledby="x-title" aria-describedby="x-desc" font-family="sans-serif"><title id="x-title">Back</title><desc id="x-desc">Back: 46 cm wide.</desc><path class="drawing-ground-area" d="M1 2L3.46 4Z" fill="#f6f3ec"/><path class="drawing-guide" d="M0 0C1 1 2 2 3 3" fill="none" stroke="#857d70" stroke-width="0.9" stroke-linecap="round" stroke-linejoin="round" stroke-dasharray="2 1"/><g data-name="a" transform="translate(5 6) rotate(30)"><text class="drawing-measure-area" x="0" y="0" transform="rotate(-90 0 0)" font-size="8" font-weight="600" text-anchor="middle" fill="#57524b">46 cm</text></g></svg>',
    );
    expect(paintSvg(made)).toBe(paintSvg(made));
  });

  test('asks for nothing outside the file', () => {
    const svg = paintSvg(scene([words('x', 0, 0)]));
    expect(svg.replace('http://www.w3.org/2000/svg', '')).not.toMatch(/https?:|url\(|href|@import/);
  });

  test('has no text or number that XML or a renderer chokes on', () => {
    const any = fc.string({ unit: 'binary', maxLength: 12 });
    const number = fc.double();
    fc.assert(
      fc.property(any, any, any, number, number, (title, alt, text, x, y) => {
        const svg = paintSvg(
          scene(
            [
              group(
                [
                  words(text, x, y),
                  path([
                    ['M', x, y],
                    ['L', y, x],
                  ]),
                ],
                x,
                y,
                x,
                text,
              ),
            ],
            { title, alt },
          ),
          { id: text },
        );
        expect(svg).not.toMatch(/NaN|Infinity/);
        // Markup of our own alone: whatever was typed stands between tags or between quotes.
        expect(svg.match(/<[^>]*>/g)!.every((tag) => TAG.test(tag))).toBe(true);
        expect(svg.replace(/<[^>]*>/g, '')).not.toMatch(/[<>]|&(?!(amp|lt|gt|quot);)/);
      }),
    );
  });
});

describe('PDF', () => {
  const made = scene([
    path([['M', 0, 0], ['L', 200, 0], ['L', 200, 100], ['Z']], { role: 'ground', filled: true, stroke: 0 }),
    group([words('46 (51, 56) cm', 0, 0, { anchor: 'middle', turn: -90, role: 'measure' })], 100, 50),
    words('A to Z 編', 10, 90),
  ]);
  const book = { ...sample(), cover: null, parts: [part('Sizes', [figure(drawing('back', 2), made.alt)])] };
  const print = (edition: 'standard' | 'ink-saving') =>
    writePdf(
      book,
      { paper: 'a4', edition },
      {
        fonts,
        picture: () => null,
        drawing: (name) => (name === 'back' ? scenePen(made, fonts) : null),
      },
    );

  test('has the words, inside one figure with the alternative text, in embedded fonts', async () => {
    const pdf = await print('standard');
    const text = outside('pdftotext', ['-layout', 'FILE', '-'], pdf);
    expect(text).toContain('46 (51, 56) cm');
    // What the fonts lack is left out, never printed as an empty box.
    expect(text).toMatch(/A to Z *\n/);
    const figures = [...walk(tagsOf(objectsOf(pdf)))].filter(({ type }) => type === 'Figure');
    expect(figures.map(({ alt }) => alt)).toEqual([made.alt]);
    expect(outside('pdffonts', ['FILE'], pdf)).not.toMatch(/ no {2}/);
    expect(await print('standard')).toEqual(pdf);
  });
});
