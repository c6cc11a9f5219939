/**
 * The places and dialogs that no start shows: everything of the window but the start screen and Write. They are
 * one part of the program, loaded once the page rests (`later`), so that nobody who begins to write waits for them.
 */
import type { ReactNode } from 'react';
import { BringIn } from '../bring/dialog.tsx';
import { CommandSearch } from '../dialogs/commands.tsx';
import { KeyList } from '../dialogs/keys.tsx';
import { NewPattern } from '../dialogs/new-pattern.tsx';
import { About, ThemeChoice } from '../dialogs/small.tsx';
import { Versions } from '../dialogs/versions.tsx';
import { DrawingsPlace } from '../drawings/place.tsx';
import { MaterialsPlace } from '../materials/place.tsx';
import { PrintPlace } from '../print/place.tsx';
import { ReviewPlace } from '../review/place.tsx';
import { SizesPlace } from '../sizes/place.tsx';
import { WorkbookPlace } from '../workbook/place.tsx';
import type { Dialog, Place } from './studio.ts';

export const PLACES: Readonly<Record<Exclude<Place, 'write'>, () => ReactNode>> = {
  sizes: SizesPlace,
  materials: MaterialsPlace,
  drawings: DrawingsPlace,
  workbook: WorkbookPlace,
  review: ReviewPlace,
  print: PrintPlace,
};

export const DIALOGS: Readonly<Record<Dialog, () => ReactNode>> = {
  new: NewPattern,
  bring: BringIn,
  versions: Versions,
  commands: CommandSearch,
  keys: KeyList,
  about: About,
  theme: ThemeChoice,
};
