/** Lends the command that puts in photographs while the manuscript is on screen. It draws nothing. */

import type { EditorView } from 'prosemirror-view';
import { useMemo } from 'react';
import { useLentCommands } from '../commands/context.ts';
import { useStudio } from '../shell/hooks.ts';
import { commandWords } from '../words/dialogs.ts';
import { choosePhotographs } from './picker.ts';

export function PhotoCommands({ editor }: { readonly editor: EditorView }) {
  const studio = useStudio();
  useLentCommands(
    useMemo(
      () => ({
        'insert-photo': {
          hinders: () =>
            editor.editable && !editor.isDestroyed ? null : commandWords.hindrances.notToChange,
          run: () => choosePhotographs(editor, studio),
        },
      }),
      [editor, studio],
    ),
  );
  return null;
}
