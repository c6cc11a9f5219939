/**
 * Paints a scene into its box on a page of a PDF. It stands here and not beside the painter for SVG, because of
 * the core only `core/print` may know pdfkit. Colours, fills and faces are those of the edition; nothing is
 * placed that the scene has not placed. The pages' pen brackets all of it as one figure, whose alternative text
 * is the scene's.
 */
import type { PathShape, Role, Scene, Shape, TextShape } from '../drawing/scene.ts';
import { type FontSource, type Typefaces, typefacesOf } from './fonts.ts';
import { cleanText, spell } from './glyphs.ts';
import type { DrawingPen } from './layout.ts';
import type { Face, Style } from './style.ts';

/** The pen of a scene: drawn whole into the box, its proportions kept. */
export function scenePen(scene: Scene, source: FontSource): DrawingPen {
  return (document, box, style) => {
    const scale = Math.min(box.width / scene.width, box.height / scene.height);
    if (!(scale > 0) || !Number.isFinite(scale)) return;
    document.save();
    document.translate(box.x, box.y).scale(scale);
    const fonts = typefacesOf(source);
    for (const shape of scene.shapes) paint(document, shape, style, fonts);
    document.restore();
  };
}

/** Editions that print no fills leave grounds out; what is drawn in them is outlined all the same. */
function colourOf(role: Role, { colours }: Style): string {
  if (role === 'outline') return colours.ink;
  return role === 'ground' ? colours.tint : colours.soft;
}

function paint(document: PDFKit.PDFDocument, shape: Shape, style: Style, fonts: Typefaces): void {
  switch (shape.kind) {
    case 'path':
      paintPath(document, shape, style);
      break;
    case 'text':
      paintWords(document, shape, style, fonts);
      break;
    case 'group':
      document.save();
      document.translate(shape.x, shape.y);
      if (shape.turn !== 0) document.rotate(shape.turn);
      for (const inner of shape.shapes) paint(document, inner, style, fonts);
      document.restore();
      break;
  }
}

function paintPath(document: PDFKit.PDFDocument, shape: PathShape, style: Style): void {
  const { steps, role, stroke, dash } = shape;
  const colour = colourOf(role, style);
  const filled = shape.filled && (role !== 'ground' || style.fills);
  if (steps.length === 0 || (!filled && stroke <= 0)) return;
  document.save();
  if (stroke > 0) document.lineWidth(stroke).lineCap('round').lineJoin('round');
  if (dash !== null && stroke > 0) document.dash(dash[0], { space: dash[1] });
  for (const step of steps) {
    if (step[0] === 'M') document.moveTo(step[1], step[2]);
    else if (step[0] === 'L') document.lineTo(step[1], step[2]);
    else if (step[0] === 'C') document.bezierCurveTo(step[1], step[2], step[3], step[4], step[5], step[6]);
    else document.closePath();
  }
  if (filled && stroke > 0) document.fillAndStroke(colour, colour);
  else if (filled) document.fill(colour);
  else document.stroke(colour);
  document.restore();
}

/** Words as the fonts can print them: silent characters gone, what is missing spelled plainly or left out. */
function printable(text: string, face: Face, fonts: Typefaces): string {
  return [...cleanText(text)]
    .map((one) => (fonts.has(face, one.codePointAt(0)!) ? one : spell(one, face, fonts)))
    .join('');
}

function paintWords(document: PDFKit.PDFDocument, shape: TextShape, style: Style, fonts: Typefaces): void {
  const face: Face = shape.bold ? 'sans-semibold' : 'sans';
  const text = printable(shape.words, face, fonts);
  if (text.trim() === '') return;
  const width = fonts.width(text, face, shape.size);
  const back = shape.anchor === 'start' ? 0 : shape.anchor === 'middle' ? width / 2 : width;
  document.save();
  document.translate(shape.x, shape.y);
  if (shape.turn !== 0) document.rotate(shape.turn);
  document
    .fillColor(colourOf(shape.role, style))
    .font(face, shape.size)
    .text(text, -back, 0, { lineBreak: false, baseline: 'alphabetic' });
  document.restore();
}
