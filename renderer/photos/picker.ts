/** Asks the maker for photographs by the page’s own dialog for files. */
import type { EditorView } from 'prosemirror-view';
import type { Studio } from '../shell/studio.ts';
import { isPicture, takeFiles } from './putting.ts';

/** Opens the dialog and puts in what was chosen. Nothing happens when nothing was. */
export function choosePhotographs(
  view: EditorView,
  studio: Studio,
  where: { readonly onCover?: boolean } = {},
): void {
  const input = document.createElement('input');
  input.type = 'file';
  input.accept = 'image/*';
  input.multiple = where.onCover !== true;
  input.addEventListener('change', () => {
    void takeFiles(view, studio, [...(input.files ?? [])].filter(isPicture), where);
  });
  input.click();
}
