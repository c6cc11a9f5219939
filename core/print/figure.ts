/**
 * Measures pictures, reserved places for drawings, and their captions. A picture that cannot be read and a
 * drawing nobody supplies keep their place as a thin frame that holds their alternative text, so a page never
 * has a hole that says nothing.
 */
import type { Figure, Image } from './content.ts';
import { across, baselineOf, type Desk, lineMarks, span, textSlices } from './desk.ts';
import { breakLines } from './lines.ts';
import { type Mark, type Tag, tag } from './page.ts';
import { BREAK, bindAll, type Slice, slice, withGap } from './slice.ts';

/** Width divided by height, or null when the image cannot be shown. */
export function aspectOf(image: Image, desk: Desk): number | null {
  if (image.source === 'drawing') {
    return desk.hasDrawing(image.name) && image.aspect > 0 && Number.isFinite(image.aspect)
      ? image.aspect
      : null;
  }
  const size = desk.pictureSize(image.name);
  return size && size.width > 0 && size.height > 0 ? size.width / size.height : null;
}

/** `tallest` limits the image's height (points) below what the style allows. */
export function measureFigure(
  figure: Figure,
  parent: Tag,
  desk: Desk,
  tallest = Number.POSITIVE_INFINITY,
): Slice[] {
  const { style } = desk;
  const x = figure.width === 'page' ? desk.left : desk.bodyX;
  const column = figure.width === 'page' ? desk.width : desk.bodyWidth;
  const meant = figure.image.source === 'drawing' ? figure.image.width : null;
  const most =
    meant === null
      ? (figure.width === 'half' && style.hang > 0 ? column / 2 : column) * style.pictureScale
      : Math.min(meant, column);
  const own = tag('Figure', { alt: figure.alt });
  const group = figure.caption ? tag('Div', {}, [own]) : own;
  parent.children.push(group);
  const slices = [imageSlice(figure.image, figure.alt, own, { x, most, tallest }, desk)];
  if (figure.caption) {
    const caption = tag('Caption');
    group.children.push(caption);
    const lines = textSlices(desk, [span(figure.caption, style.looks.caption)], x, column, [caption]);
    slices.push(
      ...bindAll(withGap(lines, style.spaces.small / 2), BREAK.strand).map((one) => ({
        ...one,
        cost: BREAK.strand,
      })),
    );
  }
  return slices;
}

interface Room {
  readonly x: number;
  readonly most: number;
  readonly tallest: number;
}

function imageSlice(image: Image, alt: string, own: Tag, room: Room, desk: Desk): Slice {
  const { style } = desk;
  const { x, most } = room;
  // A drawing that says how wide it is has been made for the edition: its labels are not made smaller.
  const whole = image.source === 'drawing' && image.width !== null;
  const share = whole ? 0.9 : style.pictureHeight;
  const tallest = Math.min(style.page.height * share, desk.height * (whole ? 0.9 : 0.8), room.tallest);
  const aspect = aspectOf(image, desk);
  if (aspect === null) return frameSlice(image, alt, own, { x, most, tallest }, desk);
  // A picture is not blown up beyond 96 pixels to the inch, where it would look coarse.
  const pixels =
    image.source === 'picture' ? desk.pictureSize(image.name)!.width * 0.75 : Number.POSITIVE_INFINITY;
  const width = Math.min(most, pixels, tallest * aspect);
  const height = width / aspect;
  return slice(height, [
    { kind: 'image', tag: own, source: image.source, name: image.name, x, y: 0, width, height },
  ]);
}

function frameSlice(image: Image, alt: string, own: Tag, { x, most, tallest }: Room, desk: Desk): Slice {
  const { looks, colours, rules, spaces } = desk.style;
  const inset = spaces.inset;
  const lines = breakLines([span(alt, looks.caption)], most - 2 * inset, desk.fonts);
  const asked =
    image.source === 'drawing' && image.aspect > 0 && Number.isFinite(image.aspect)
      ? most / image.aspect
      : most / 2.4;
  const room = Math.max(1, Math.floor((tallest - 2 * inset) / looks.caption.leading));
  const shown = lines.slice(0, room);
  const height = Math.min(tallest, Math.max(asked, shown.length * looks.caption.leading + 2 * inset));
  const line = (x1: number, y1: number, x2: number, y2: number): Mark => ({
    kind: 'rule',
    tag: null,
    x: x1,
    y: y1,
    x2,
    y2,
    weight: rules.hair,
    colour: colours.rule,
  });
  const marks: Mark[] = [
    across(x, x + most, 0, rules.hair, colours.rule),
    across(x, x + most, height, rules.hair, colours.rule),
    line(x, 0, x, height),
    line(x + most, 0, x + most, height),
  ];
  const top = (height - shown.length * looks.caption.leading) / 2;
  for (const [i, one] of shown.entries()) {
    const left = x + (most - one.width) / 2;
    marks.push(...lineMarks(one, left, top + i * looks.caption.leading + baselineOf(looks.caption), [own]));
  }
  return slice(height, marks);
}
