/**
 * Paints a scene as SVG text. Each role is a class whose colour a page may set by custom properties; every shape
 * also carries a plain colour, so that the file reads the same alone, in a viewer that knows no style. Nothing
 * outside the file is asked for. The same scene gives the same text. It places nothing.
 *
 * Markup: Scalable Vector Graphics (SVG) 1.1 and 2, W3C; text alternatives as SVG Accessibility asks
 * (`title`, `desc`, role "img").
 */
import {
  type PathShape,
  type PathStep,
  type Role,
  type Scene,
  type Shape,
  type TextShape,
  toHundredth,
} from './scene.ts';

export interface SvgOptions {
  /** Begins the ids in the text, so that several drawings can stand in one page. */
  readonly id?: string;
  /** A file of its own: with its style and a ground of paper. Inside a page, the page has both. */
  readonly standalone?: boolean;
}

/** Colours of a file that stands alone; all but the ground are told apart on white by 4.5:1 at least (WCAG 2.2). */
const COLOURS: Readonly<Record<Role, string>> = {
  outline: '#1d1b19',
  other: '#6b645b',
  measure: '#57524b',
  guide: '#857d70',
  ground: '#f6f3ec',
};

const ROLES = Object.keys(COLOURS) as readonly Role[];

const FAMILY = 'sans-serif';

const STYLE = [
  '.drawing-paper{fill:var(--drawing-paper,#fff)}',
  ...ROLES.map((role) => {
    const colour = `var(--drawing-${role},${COLOURS[role]})`;
    return `.drawing-${role}{stroke:${colour}}.drawing-${role}-area{fill:${colour}}`;
  }),
].join('');

/** The scene as SVG text, without an XML declaration. Total. */
export function paintSvg(scene: Scene, options: SvgOptions = {}): string {
  const id = options.id ?? 'drawing';
  const { standalone = true } = options;
  const [width, height] = [number(scene.width), number(scene.height)];
  const size = standalone ? ` width="${width}pt" height="${height}pt"` : '';
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}"${size} role="img"`,
    ` aria-labelledby="${quoted(id)}-title" aria-describedby="${quoted(id)}-desc" font-family="${FAMILY}">`,
    `<title id="${quoted(id)}-title">${escaped(scene.title)}</title>`,
    `<desc id="${quoted(id)}-desc">${escaped(scene.alt)}</desc>`,
    standalone ? `<style>${STYLE}</style>` : '',
    standalone ? `<rect class="drawing-paper" width="${width}" height="${height}" fill="#fff"/>` : '',
    ...scene.shapes.map(shapeText),
    '</svg>',
    standalone ? '\n' : '',
  ].join('');
}

function shapeText(shape: Shape): string {
  switch (shape.kind) {
    case 'path':
      return pathText(shape);
    case 'text':
      return wordsText(shape);
    case 'group': {
      const moves = [
        ...(shape.x === 0 && shape.y === 0 ? [] : [`translate(${number(shape.x)} ${number(shape.y)})`]),
        ...(shape.turn === 0 ? [] : [`rotate(${number(shape.turn)})`]),
      ];
      const transform = moves.length === 0 ? '' : ` transform="${moves.join(' ')}"`;
      const name = shape.name === null ? '' : ` data-name="${quoted(shape.name)}"`;
      return `<g${name}${transform}>${shape.shapes.map(shapeText).join('')}</g>`;
    }
  }
}

function pathText({ steps, role, stroke, filled, dash }: PathShape): string {
  const classes = [
    ...(stroke > 0 ? [`drawing-${role}`] : []),
    ...(filled ? [`drawing-${role}-area`] : []),
  ].join(' ');
  const line =
    stroke > 0
      ? ` stroke="${COLOURS[role]}" stroke-width="${number(stroke)}" stroke-linecap="round" stroke-linejoin="round"`
      : '';
  const gaps = dash === null || stroke <= 0 ? '' : ` stroke-dasharray="${dash.map(number).join(' ')}"`;
  const fill = filled ? COLOURS[role] : 'none';
  return `<path class="${classes}" d="${steps.map(stepText).join('')}" fill="${fill}"${line}${gaps}/>`;
}

function stepText(step: PathStep): string {
  const [letter, ...numbers] = step;
  return `${letter}${numbers.map(number).join(' ')}`;
}

function wordsText({ x, y, words, size, bold, anchor, role, turn }: TextShape): string {
  const at = ` x="${number(x)}" y="${number(y)}"`;
  const turned = turn === 0 ? '' : ` transform="rotate(${number(turn)} ${number(x)} ${number(y)})"`;
  const from = anchor === 'start' ? '' : ` text-anchor="${anchor}"`;
  const weight = bold ? ' font-weight="600"' : '';
  return `<text class="drawing-${role}-area"${at}${turned} font-size="${number(size)}"${weight}${from} fill="${COLOURS[role]}">${escaped(words)}</text>`;
}

/** Larger than any sheet, in points. */
const FAR = 1e6;

/** A number with two decimals at most; what no sheet has is 0, so that a drawing never fails to open. */
function number(value: number): string {
  if (!(Math.abs(value) < FAR)) return '0';
  const rounded = toHundredth(value);
  return String(Object.is(rounded, -0) ? 0 : rounded);
}

/** Characters that XML 1.0 has no place for: controls, halves of pairs, the two non-characters. */
const NOT_XML =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what XML forbids
  /[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF]|[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/g;

function escaped(text: string): string {
  return text.replace(NOT_XML, '').replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}

function quoted(text: string): string {
  return escaped(text).replaceAll('"', '&quot;');
}
