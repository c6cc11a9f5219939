/** Words of finding and replacing. Sentences only. */

export const findWords = {
  label: 'Find and replace',
  find: 'Find',
  replace: 'Replace with',
  matchCase: 'Match capitals',
  wholeWord: 'Whole words',
  next: 'Next',
  previous: 'Previous',
  replaceOne: 'Replace',
  replaceAll: 'Replace all',
  close: 'Close',
  told: (current: number, of: number) =>
    of === 0 ? 'Not found' : current < 0 ? `${of} found` : `${current + 1} of ${of}`,
  replaced: (n: number) => (n === 1 ? 'One place changed.' : `${n} places changed.`),
  readOnly: 'Go back to the pattern’s own terms to replace.',
} as const;
