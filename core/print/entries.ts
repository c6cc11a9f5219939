/**
 * Measures labels and what they mean: facts and terms, the label hanging left of its value or before it on the
 * same line; a long list of short terms stands in two columns.
 */
import { type Entries, type Entry, plain } from './content.ts';
import { baselineOf, besideSlices, type Desk, lineMarks, span, textOf, textSlices } from './desk.ts';
import { breakLines, naturalWidth } from './lines.ts';
import { type Mark, type Tag, tag } from './page.ts';
import { BREAK, bindAll, bindFirst, type Slice, slice, withGap } from './slice.ts';

/** Lines up to which an entry stands whole on a page. */
const MOST_HELD = 8;

export function entrySlices(block: Entries, parent: Tag, desk: Desk): Slice[] {
  const { looks, spaces, hang } = desk.style;
  const items = block.items.filter((item) => textOf(item.label) !== '' || textOf(item.value) !== '');
  if (items.length === 0) return [];
  const own = tag('L');
  parent.children.push(own);
  const paired =
    block.form === 'terms' && hang > 0 && items.length >= 8 ? pairedSlice(items, own, desk) : null;
  if (paired) return [paired];
  return items.flatMap((item, i) => {
    const label = tag('Lbl');
    const value = tag('LBody');
    own.children.push(tag('LI', {}, [label, value]));
    const colon = block.form === 'facts' || hang === 0;
    const labelSpan = span(colon ? [...item.label, plain(':')] : item.label, looks.label);
    const valueSpan = span(item.value, looks.body);
    const lines =
      hang > 0
        ? besideSlices(
            desk,
            { lines: breakLines([labelSpan], hang - 10, desk.fonts), tags: [label], x: desk.left },
            { lines: breakLines([valueSpan], desk.bodyWidth, desk.fonts), tags: [value], x: desk.bodyX },
          )
        : textSlices(
            desk,
            [{ ...labelSpan, words: [...labelSpan.words, plain(' ')] }, valueSpan],
            desk.left,
            desk.width,
            [label, value],
          );
    // What a label means is read at once: a list of numbers is turned over within only where it is a long one.
    const held = lines.length > MOST_HELD ? lines : bindAll(lines, BREAK.together);
    const lone = i === 1 || i === items.length - 1;
    return i === 0 ? held : withGap(bindFirst(held, lone ? BREAK.inside * 4 : BREAK.inside), spaces.item);
  });
}

/**
 * A long list of short terms in two columns, read down the first and then down the second: one slice, so that
 * no page break can upset that order; null when it would be taller than part of a page.
 */
function pairedSlice(items: readonly Entry[], own: Tag, desk: Desk): Slice | null {
  const { looks } = desk.style;
  const gutter = 22;
  const column = (desk.width - gutter) / 2;
  const widest = Math.max(...items.map((item) => naturalWidth([span(item.label, looks.label)], desk.fonts)));
  const indent = Math.min(widest + 12, column * 0.4);
  const set = items.map((item) => ({
    label: breakLines([span(item.label, looks.label)], indent - 8, desk.fonts),
    value: breakLines([span(item.value, looks.body)], column - indent, desk.fonts),
  }));
  const lengths = set.map(({ label, value }) => Math.max(1, label.length, value.length));
  const total = lengths.reduce((a, b) => a + b, 0);
  let half = 0;
  for (let lines = 0; lines < total / 2; half++) lines += lengths[half]!;
  const first = lengths.slice(0, half).reduce((a, b) => a + b, 0);
  const height = Math.max(first, total - first) * looks.body.leading;
  if (height > desk.height * 0.45) return null;
  const marks: Mark[] = [];
  let y = 0;
  for (const [i, { label, value }] of set.entries()) {
    if (i === half) y = 0;
    const x = desk.left + (i < half ? 0 : column + gutter);
    const tags = [tag('Lbl'), tag('LBody')] as const;
    own.children.push(tag('LI', {}, [...tags]));
    const baseline = (n: number): number => y + n * looks.body.leading + baselineOf(looks.body);
    for (const [n, line] of label.entries()) marks.push(...lineMarks(line, x, baseline(n), [tags[0]]));
    for (const [n, line] of value.entries())
      marks.push(...lineMarks(line, x + indent, baseline(n), [tags[1]]));
    y += lengths[i]! * looks.body.leading;
  }
  return slice(height, marks);
}
