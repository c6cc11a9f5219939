/** Words of the spelling: suggestions for a word, taking it for right. Sentences only. */

export const spellingWords = {
  label: (word: string) => `Spelling of “${word}”`,
  notKnown: (word: string) => `“${word}” is in no dictionary here.`,
  none: 'No suggestion.',
  add: 'Add to this pattern’s words',
  added: (word: string) => `“${word}” is one of this pattern’s words now.`,
  close: 'Close',
  on: 'Spelling is checked.',
  off: 'Spelling is not checked.',
  nothing: 'The caret is in no marked word.',
} as const;
