/** The plugins of the manuscript's editor, in the order in which they answer. */
import type { Plugin } from 'prosemirror-state';
import { clipboard } from '../clipboard/plugin.ts';
import { find } from '../find/plugin.ts';
import { photographs } from '../photos/plugin.ts';
import type { Studio } from '../shell/studio.ts';
import { spelling } from '../spelling/plugin.ts';
import { caretFirst } from './caret.ts';
import { completion } from './completion/plugin.ts';
import { findingMarks } from './findings/marks.ts';
import { guard } from './guard.ts';
import { manuscriptKeys } from './keys.ts';
import { typedLabels } from './labels.ts';
import { termsOnScreen } from './terms.ts';
import { typedFigures } from './typed-figures.ts';

export function manuscriptPlugins(studio: Studio): readonly Plugin[] {
  const desk = () => studio.view().desk;
  return [
    caretFirst(),
    guard(),
    completion(),
    typedLabels(),
    typedFigures(),
    findingMarks(desk),
    termsOnScreen(desk),
    ...manuscriptKeys(studio),
    clipboard(studio),
    find(),
    photographs(studio),
    spelling(studio),
  ];
}
