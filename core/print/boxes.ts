/**
 * Measures what stands apart from the running text: cautions in their box and the size key between its lines.
 */
import { type Caution, plain, type SizeKey } from './content.ts';
import { across, besideSlices, type Desk, span, textSlices } from './desk.ts';
import { breakLines } from './lines.ts';
import { type Mark, type Tag, tag } from './page.ts';
import { BREAK, bindAll, bindFirst, type Slice, slice, withGap } from './slice.ts';

/** A box: every slice carries its part of the bar and the fill, so the box may go over a page break. */
export function cautionSlices(block: Caution, parent: Tag, desk: Desk): Slice[] {
  const { looks, spaces, colours, rules, fills, hang } = desk.style;
  const own = tag('Div');
  parent.children.push(own);
  const indent = spaces.inset + rules.bar;
  const boxX = hang > 0 ? desk.bodyX - indent : desk.left;
  const textX = boxX + indent;
  const width = desk.left + desk.width - textX - spaces.inset;
  const title = tag('P');
  own.children.push(title);
  const inner = bindAll(
    textSlices(desk, [span(block.title, looks.cautionTitle)], textX, width, [title]),
    BREAK.strand,
  );
  for (const text of block.paragraphs) {
    const paragraph = tag('P');
    const lines = textSlices(desk, [span(text, looks.body)], textX, width, [paragraph]);
    if (lines.length === 0) continue;
    own.children.push(paragraph);
    const first = inner.length === 0 || inner.length === 1;
    inner.push(
      ...withGap(
        bindFirst(lines, first ? BREAK.strand : BREAK.together),
        first ? spaces.item : spaces.paragraph * 0.6,
      ),
    );
  }
  const pad = spaces.inset * 0.7;
  return bindAll(
    inner.map((one, i) => {
      const top = i === 0 ? pad : one.gap;
      const height = top + one.height + (i === inner.length - 1 ? pad : 0);
      const marks: Mark[] = [];
      if (fills) {
        const box = { x: boxX, y: 0, width: desk.left + desk.width - boxX, height };
        marks.push({ kind: 'fill', tag: null, ...box, colour: colours.tint });
      }
      marks.push({
        kind: 'fill',
        tag: null,
        x: boxX,
        y: 0,
        width: rules.bar,
        height,
        colour: colours.accent,
      });
      marks.push(...one.marks.map((mark) => ({ ...mark, y: mark.y + top })));
      return { ...one, gap: 0, height, marks };
    }),
    BREAK.together,
  );
}

/** The size key between two thin lines. */
export function keySlices(block: SizeKey, parent: Tag, desk: Desk): Slice[] {
  const { looks, rules, colours, spaces, hang } = desk.style;
  const title = tag('P');
  const own = tag('P');
  parent.children.push(tag('Div', {}, [title, own]));
  const label = span([plain(block.title), plain(hang > 0 ? '' : ': ')], looks.label);
  const body = span(block.words, looks.body);
  const lines =
    hang > 0
      ? besideSlices(
          desk,
          { lines: breakLines([label], hang - 10, desk.fonts), tags: [title], x: desk.left },
          { lines: breakLines([body], desk.bodyWidth, desk.fonts), tags: [own], x: desk.bodyX },
        )
      : textSlices(desk, [label, body], desk.left, desk.width, [title, own]);
  const pad = spaces.inset * 0.45;
  const right = desk.left + desk.width;
  return bindAll(
    lines.map((one, i) => {
      const top = i === 0 ? pad : 0;
      const height = top + one.height + (i === lines.length - 1 ? pad : 0);
      const marks: Mark[] = one.marks.map((mark) => ({ ...mark, y: mark.y + top }));
      if (i === 0) marks.unshift(across(desk.left, right, 0, rules.hair, colours.rule));
      if (i === lines.length - 1) marks.push(across(desk.left, right, height, rules.hair, colours.rule));
      return slice(height, marks, { cost: one.cost });
    }),
    BREAK.together,
  );
}
