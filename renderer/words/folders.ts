/** Words of the dialog for files and folders that a browser page shows in place of the system's. Sentences only. */

export const folderWords = {
  title: { open: 'Open a pattern', save: 'Save the pattern', folder: 'Choose a folder' },
  begin: 'Begin at',
  inFolder: (name: string) => `In “${name}”`,
  above: 'Folder above',
  folder: 'folder',
  file: 'pattern',
  empty: { files: 'There are no folders and no patterns here.', folders: 'There are no folders here.' },
  cut: 'There is more here than can be listed. Go into a folder, or type the name.',
  name: 'Name of the file',
  newFolder: 'New folder',
  newFolderName: 'Name of the new folder',
  make: 'Make the folder',
  save: 'Save here',
  useFolder: 'Use this folder',
  there: (name: string) =>
    `There is a file “${name}” here already. Yours takes its place; the one that is there stays among the earlier versions.`,
  replace: 'Put mine in its place',
  otherName: 'Choose another name',
  loading: 'Looking …',
  keys: 'Arrow keys go through the list, Enter goes in, Backspace goes to the folder above.',
} as const;

/** What a page shows that was not let in. */
export const NOT_LET_IN =
  'This address works once, and was used before or is of an earlier start. Run “npm start” again for a new one; no work is lost.';
