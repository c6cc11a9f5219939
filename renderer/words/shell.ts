/** Words of the window around the places: the bar, the start screen, saving, switching. Sentences only. */
import type { Terms } from '../../core/trade/stitches.ts';
import type { Units } from '../../core/trade/units.ts';

/** The places in the order of their keys. */
export const PLACE_WORDS = {
  write: 'Write',
  sizes: 'Sizes',
  materials: 'Materials',
  drawings: 'Drawings',
  review: 'Review',
  print: 'Print',
  workbook: 'Workbook',
} as const;

export const shellWords = {
  product: 'Turnchain',
  places: 'Places',
  outline: 'Outline',
  menu: 'Menu',
  skip: 'Skip to the pattern',
  terms: (terms: Terms) => (terms === 'us' ? 'US terms' : 'UK terms'),
  units: (units: Units) => (units === 'metric' ? 'cm' : 'in'),
  termsLabel: 'Terms on screen',
  unitsLabel: 'Units on screen',
  sizeInFocus: 'Size in focus',
  readingOther: (on: Terms, of: Terms) =>
    `You are reading in ${on === 'us' ? 'US' : 'UK'} terms. The pattern is written in ${of === 'us' ? 'US' : 'UK'} terms, and typing goes on there.`,
  backToOwn: (terms: Terms) => `Back to ${terms === 'us' ? 'US' : 'UK'} terms`,
  stepped: (way: 'undo' | 'redo', place: keyof typeof PLACE_WORDS) =>
    `${way === 'undo' ? 'Undone' : 'Done again'} in ${PLACE_WORDS[place]}.`,
  saved: 'Saved',
  notSaved: 'Changes not saved',
  neverSaved: 'Not saved in a file yet',
  saving: 'Saving …',
  readOnly: 'This file may only be read. Save under another name to keep changes.',
  heldElsewhere: 'This pattern is open in another window. Changes there and here would overwrite each other.',
  journalTrouble: (why: string) => `Your latest changes could not be kept safe: ${why}`,
  close: 'Close',
  cancel: 'Cancel',
  save: 'Save',
  dontSave: 'Don’t save',
  notKept: {
    title: 'Saved, but the version before was not kept',
    text: 'Your pattern is in its file. What the file held before could not be put among the earlier versions: the folder where Turnchain keeps them cannot be written in, or its disk is full.',
  },
  openFailed: 'The pattern could not be opened',
  notLoaded: {
    title: 'This part of the studio could not be loaded',
    text: 'Turnchain’s part outside this page does not answer: it was ended. Keep this page open, start Turnchain again and save there; what you wrote is still in this page.',
  },
  saveBefore: {
    title: (name: string) => `Save the changes to “${name}”?`,
    text: 'Without saving, the changes since the last save are lost.',
    never: 'The pattern is in no file yet. Without saving, all of it is lost.',
  },
  giveUpWords: {
    title: 'Leave what you are bringing in?',
    text: 'What you pasted or chose here is in no pattern yet. When you leave, it is gone.',
    lose: 'Leave it',
    stay: 'Go on with it',
  },
  cannotSave: {
    title: 'The pattern could not be saved',
    text: (why: string) =>
      `${why} Your pattern is still here, and its changes are kept until they are saved.`,
    later: 'Later',
    saveAs: 'Save under another name…',
    again: 'Try again',
  },
  changedOnDisk: {
    title: 'The file was changed by another program',
    text: (name: string) =>
      `“${name}” on the disk is not the one you opened. Keep yours to put it in the place of the other (which stays among the earlier versions), take the one from the disk, or save yours under another name.`,
    keepMine: 'Keep mine',
    takeTheirs: 'Take the one from the disk',
    saveAs: 'Save under another name…',
  },
  gone: {
    title: 'The file is not there any more',
    text: (name: string) =>
      `“${name}” was moved, renamed or deleted. Your pattern is still here: save it again at its old place or under another name.`,
    again: 'Save at the old place',
    saveAs: 'Save under another name…',
    later: 'Later',
  },
} as const;
