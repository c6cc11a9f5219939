/**
 * The first page: picture, title, byline, summary, facts at a glance. In the standard edition the picture
 * runs to the edges of the paper and takes what height the words leave; words that do not fit one page simply
 * go on on the next. Measures only.
 */
import type { Booklet, Cover } from './content.ts';
import { across, type Desk, span, textOf, textSlices } from './desk.ts';
import { entrySlices } from './entries.ts';
import { aspectOf, measureFigure } from './figure.ts';
import { type Mark, type Tag, tag } from './page.ts';
import { BREAK, bindAll, bindFirst, heightOf, type Slice, slice, withGap } from './slice.ts';

export function measureCover(booklet: Booklet, root: Tag, desk: Desk): Slice[] {
  const cover = booklet.cover;
  if (!cover) return [];
  const section = tag('Sect', { title: booklet.meta.title });
  root.children.push(section);
  const { bleed, spaces } = desk.style;
  const image: Slice[] = [];
  const words: Slice[] = [];
  const picture = tag('Figure', { alt: cover.alt });
  const aspect = cover.image ? aspectOf(cover.image, desk) : null;
  if (cover.image && aspect !== null && bleed) section.children.push(picture);
  words.push(...titleSlices(booklet, cover, section, desk));
  if (cover.image && aspect !== null && bleed) {
    image.push(bleedSlice(cover, aspect, picture, heightOf(words), desk));
    return [...image, ...withGap(bindFirst(words, BREAK.strand), 30)];
  }
  if (!cover.image) {
    // No picture: on a page of its own the title stands at about a third of it, the words below.
    if (!desk.style.coverPage) return words;
    const drop = Math.max(0, Math.min(desk.height * 0.26, desk.height - heightOf(words) - 24));
    return [slice(drop, []), ...bindFirst(words, BREAK.strand)];
  }
  // What the words leave of the first page, if that is enough for a picture.
  const room = desk.height - heightOf(words) - spaces.large - 12;
  const inside = measureFigure(
    { kind: 'figure', image: cover.image, alt: cover.alt, caption: null, width: 'page' },
    section,
    desk,
    room > desk.height * 0.2 ? room : Number.POSITIVE_INFINITY,
  );
  return [...words, ...withGap(inside, spaces.large)];
}

/** The picture to the paper's edges: across the whole width when it is broad, in the right upper corner when it is tall. */
function bleedSlice(cover: Cover, aspect: number, own: Tag, wordsHeight: number, desk: Desk): Slice {
  const { page, margin } = desk.style;
  const room = margin.top + desk.height - wordsHeight - 54;
  const tallest = Math.max(page.height * 0.25, Math.min(page.height * 0.6, room));
  const width = Math.min(page.width, tallest * aspect);
  const height = width / aspect;
  const x = page.width - width;
  const mark: Mark = {
    kind: 'image',
    tag: own,
    source: cover.image!.source,
    name: cover.image!.name,
    x,
    y: -margin.top,
    width,
    height,
  };
  return slice(Math.max(0, height - margin.top), [mark]);
}

function titleSlices(booklet: Booklet, cover: Cover, section: Tag, desk: Desk): Slice[] {
  const { looks, spaces, colours, rules, hang } = desk.style;
  const slices: Slice[] = [];
  const put = (own: Slice[], gap: number): void => {
    slices.push(...(slices.length === 0 ? own : withGap(own, gap)));
  };
  const title = tag('H1');
  section.children.push(title);
  const lines = bindAll(
    textSlices(desk, [span(booklet.meta.title, looks.title)], desk.left, desk.width, [title]),
    BREAK.strand,
  );
  if (lines.length > 0) lines[0] = { ...lines[0]!, bookmark: { title: booklet.meta.title, level: 1 } };
  put(lines, 0);
  for (const [words, gap] of [
    [cover.subtitle, 4],
    [cover.byline, 4],
  ] as const) {
    if (!words || textOf(words) === '') continue;
    const own = tag('P');
    section.children.push(own);
    put(textSlices(desk, [span(words, looks.subtitle)], desk.left, desk.width, [own]), gap);
  }
  const rule = across(desk.left, desk.left + (hang > 0 ? hang - 16 : 72), 0, rules.bar * 0.7, colours.accent);
  put([slice(1, [rule])], spaces.block);
  for (const [i, text] of cover.summary.entries()) {
    const own = tag('P');
    section.children.push(own);
    put(
      textSlices(desk, [span(text, i === 0 ? looks.lead : looks.body)], desk.bodyX, desk.bodyWidth, [own]),
      i === 0 ? spaces.block : spaces.paragraph,
    );
  }
  put(entrySlices({ kind: 'entries', form: 'facts', items: cover.glance }, section, desk), spaces.block);
  return slices;
}
