/** Words of photographs: what is asked of the maker, why one cannot be taken. Sentences only. */

export const photoWords = {
  photograph: 'Photograph',
  cover: 'Cover photograph',
  addCover: 'Add a cover photograph',
  alt: 'What the photograph shows, for those who hear the pattern',
  altHint: 'Such as “The vest laid flat, front up, in oat and moss”',
  altMissing: 'Not described yet',
  caption: 'Caption, printed below it',
  earlier: 'Move up',
  later: 'Move down',
  remove: 'Remove',
  lost: 'The photograph itself is missing from this file. Remove it, or put it in anew.',
  added: (n: number) =>
    n === 1
      ? 'The photograph was added. Say what it shows.'
      : `${n} photographs were added. Say what each shows.`,
  unreadable: (name: string) =>
    `“${name}” is no photograph that can be read here. Save it as JPEG or PNG and try again.`,
  nowhere: 'Put the caret into a piece, or onto the cover, where the photograph is to stand.',
  unnamed: 'The picture',
} as const;
