/**
 * Puts the pictures of an old pattern that stood outside its rows where a pattern has pictures: the first on the cover,
 * others before or behind the rows. What was moved or lost is told. It reads no words and looks at no picture.
 */
import type { Block, Media, Pattern, Piece } from '../document/pattern.ts';
import { tidyText } from '../document/words.ts';
import type { DoubtShown } from './doubt.ts';
import type { PicturePlace } from './pictures.ts';
import type { Section } from './sections.ts';
import { intakeWords } from './sentences.ts';

/** A picture of the text, as far as it could be taken over. */
export interface TakenPicture {
  /** Id of the picture that travels with the pattern; null where it could not be taken over. */
  readonly id: string | null;
  /** What the text says it shows. */
  readonly alt: string;
}

/** Names of files, and what word processors call a picture of which nobody has said anything. */
const NAMELESS =
  /^(?:[^\s]+\.(?:jpe?g|png|gif|bmp|tiff?|webp|heic|emf|wmf|svg)|(?:picture|image|graphic|img|photo|grafik|bild)[\s_-]*\d*)$/iu;

/** What a picture shows, in words that somebody wrote; empty where nobody has. */
function shownBy(alt: string): string {
  const words = tidyText(alt).replace(/\s+/gu, ' ').trim().slice(0, 500);
  return NAMELESS.test(words) ? '' : words;
}

/** The picture as it stands in a pattern; null where it could not be taken over. */
export const mediaOf = (picture: TakenPicture | undefined): Media | null =>
  picture === undefined || picture.id === null
    ? null
    : { id: picture.id, alt: shownBy(picture.alt), caption: null };

export interface Placing {
  readonly places: readonly PicturePlace[];
  readonly sections: readonly Section[];
  /** The pictures by their numbers. */
  readonly pictures: readonly TakenPicture[];
  readonly freshId: () => string;
}

/** The pattern with the pictures that stood outside the rows. Those among the rows are in it already. */
export function withPictures(
  pattern: Pattern,
  { places, sections, pictures, freshId }: Placing,
): { readonly pattern: Pattern; readonly doubts: readonly DoubtShown[] } {
  if (places.length === 0) return { pattern, doubts: [] };
  const firstRows = sections.findIndex(({ part }) => part === 'rows');
  const isBefore = ({ section }: PicturePlace) => firstRows < 0 || section < firstRows;
  const doubts = places.flatMap(({ picture }): DoubtShown[] => {
    if (mediaOf(pictures[picture]) !== null) return [];
    const why = intakeWords.pictureLost(shownBy(pictures[picture]?.alt ?? ''));
    return [{ node: '', why, where: '', words: '' }];
  });
  const loose = places.flatMap((place) => {
    const media = place.part === 'rows' ? null : mediaOf(pictures[place.picture]);
    return media === null ? [] : [{ media, before: isBefore(place) }];
  });
  const onCover = pattern.about.cover === null ? loose.find(({ before }) => before) : undefined;
  const others = loose.filter((one) => one !== onCover);
  const photo = ({ media }: { readonly media: Media }): Block => ({ type: 'photo', id: freshId(), media });
  const [before, after] = [true, false].map((which) =>
    others.filter((one) => one.before === which).map(photo),
  ) as [Block[], Block[]];
  for (const { id } of [...before, ...after])
    doubts.push({ node: id, why: intakeWords.pictureMoved, where: '', words: '' });
  const own: readonly Piece[] =
    pattern.pieces.length > 0 || before.length + after.length === 0
      ? pattern.pieces
      : [pieceNamed(pattern.about.title, freshId())];
  const last = own.length - 1;
  const pieces = own.map((piece, i) =>
    (i === 0 && before.length > 0) || (i === last && after.length > 0)
      ? {
          ...piece,
          blocks: [...(i === 0 ? before : []), ...piece.blocks, ...(i === last ? after : [])],
        }
      : piece,
  );
  const about = onCover === undefined ? pattern.about : { ...pattern.about, cover: onCover.media };
  return { pattern: { ...pattern, about, pieces }, doubts };
}

/** Where there are no rows at all, the pictures make a piece. */
const pieceNamed = (name: string, id: string): Piece => ({
  id,
  name,
  make: 1,
  start: { kind: 'chain' },
  firstSide: 'RS',
  gauge: '',
  blocks: [],
  meets: [],
});
