/** Puts photographs into the document: at the caret between rows, on the cover. Each is one edit that can be undone. */
import { closeHistory } from 'prosemirror-history';
import { type EditorState, TextSelection, type Transaction } from 'prosemirror-state';
import type { EditorView } from 'prosemirror-view';
import type { Picture } from '../../core/document/media.ts';
import type { Media } from '../../core/document/pattern.ts';
import { schema } from '../../core/document/schema.ts';
import { setPart } from '../desk/edits.ts';
import { freshId } from '../desk/identity.ts';
import type { Studio } from '../shell/studio.ts';
import { photoWords } from '../words/photos.ts';
import { itemOf, within } from '../write/commands/where.ts';
import { importPhotograph } from './importing.ts';

const mediaOf = (picture: Picture): Media => ({ id: picture.id, alt: '', caption: null });

/** The edit that puts pictures after the block at the caret, or the first on the cover; null where neither is. */
export function putPictures(
  state: EditorState,
  pictures: readonly Picture[],
  onCover: boolean,
): Transaction | null {
  const [first] = pictures;
  if (first === undefined) return null;
  const { $from } = state.selection;
  if (onCover || within($from, 'cover') !== null)
    return closeHistory(setPart<'cover'>(state, ['cover'], { cover: mediaOf(first) }));
  const item = itemOf(state);
  const piece = within($from, 'piece');
  const photos = pictures.map((picture) =>
    schema.nodes.photo.create({ id: freshId(), media: mediaOf(picture) }),
  );
  if (item !== null && item.parent.type.name === 'blocks')
    return closeHistory(state.tr).insert(item.pos + item.node.nodeSize, photos);
  if (piece === null) return null;
  return closeHistory(state.tr).insert(piece.pos + 1 + piece.node.child(0).nodeSize + 1, photos);
}

/** Whether a file says that it is a picture. */
export const isPicture = (file: File): boolean => file.type.startsWith('image/');

/** Takes photographs from files and puts them in. The first is ready to be described. */
export async function takeFiles(
  view: EditorView,
  studio: Studio,
  files: readonly File[],
  where: { readonly position?: number; readonly onCover?: boolean } = {},
): Promise<void> {
  const desk = studio.view().desk;
  if (desk === null || files.length === 0) return;
  const pictures: Picture[] = [];
  for (const file of files) {
    const picture = await importPhotograph(file);
    if (picture === null) {
      studio.trouble(photoWords.photograph, photoWords.unreadable(file.name || photoWords.unnamed));
      continue;
    }
    pictures.push(picture);
  }
  // The pattern may have been put away while pictures were decoded.
  if (pictures.length === 0 || view.isDestroyed || studio.view().desk !== desk) return;
  if (where.position !== undefined) {
    const at = Math.min(where.position, view.state.doc.content.size);
    view.dispatch(view.state.tr.setSelection(TextSelection.near(view.state.doc.resolve(at))));
  }
  const transaction = putPictures(view.state, pictures, where.onCover ?? false);
  if (transaction === null) {
    studio.tell(photoWords.nowhere);
    return;
  }
  for (const picture of pictures) desk.addPicture(picture);
  view.dispatch(transaction);
  studio.tell(photoWords.added(pictures.length));
  requestAnimationFrame(() => {
    const empty = [...view.dom.querySelectorAll<HTMLTextAreaElement>('.photo-alt')].filter(
      ({ value, dataset }) => value === '' && pictures.some(({ id }) => id === dataset.picture),
    );
    empty[0]?.focus();
  });
}
