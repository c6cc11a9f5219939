/**
 * The kinds of finding that only printing can make: what the fonts lack, what cannot be shown, what has no
 * number in an edition. Sentences only; the layout and the editions notice them.
 */
import type { FindingKind } from '../findings/kind.ts';
import { listed, quoted, text, words } from '../findings/phrases.ts';

export const PRINT_KINDS: readonly FindingKind[] = [
  {
    code: 'character-not-printable',
    severity: 'warning',
    title: 'A character that cannot be printed',
    reason:
      'The embedded fonts do not have every character. What they lack is replaced or left out, never printed as an empty box.',
    message: (facts) => {
      const { data } = facts[0]!.fact;
      const instead = text(data, 'instead');
      const characters = [...new Set(facts.map(({ fact }) => `"${text(fact.data, 'character')}"`))];
      const [stand, are] = characters.length === 1 ? ['stands', 'it is'] : ['stand', 'they are'];
      const done = instead === '' ? 'left out' : `printed as "${instead}"`;
      return `the fonts have no ${listed(characters)}, which ${stand} in ${quoted(data, 'words')}; ${are} ${done}`;
    },
    example: null,
    sample: { character: '→', codePoint: 'U+2192', words: 'Work A → B', instead: '->' },
  },
  {
    code: 'picture-not-readable',
    severity: 'warning',
    title: 'A picture that cannot be printed',
    reason: 'The place of a picture that is damaged or missing stays empty, with its description.',
    message: () =>
      'a picture of the pattern cannot be read, and its description is printed in its place; add the picture again as PNG or JPEG',
    example: null,
    sample: { name: 'cover' },
  },
  {
    code: 'figure-without-number',
    severity: 'error',
    title: 'A figure has no number in an edition',
    reason: 'A buyer cannot follow a row without its number, so a dash is printed where it should be.',
    message: (facts) => {
      const { data } = facts[0]!.fact;
      const sizes = words(data, 'sizes');
      return `the figure ${quoted(data, 'figure')} has no number in ${sizes.length === 1 ? 'size' : 'sizes'} ${listed(sizes)}, and a dash is printed there; look at its line in the sizes`;
    },
    example: null,
    sample: { figure: 'back stitches', sizes: ['S', 'M'] },
  },
  {
    code: 'size-without-number',
    severity: 'warning',
    title: 'A typed list has no number for a size',
    reason:
      'A booklet for one size picks that size’s number out of each list. A list that is too short for it is printed whole.',
    message: (facts) => {
      const { data } = facts[0]!.fact;
      return `the list ${quoted(data, 'list')} has no number for size ${text(data, 'size')}, so the booklet for that size shows all of it; give one number for each size`;
    },
    example: null,
    sample: { list: '12 (14)', size: 'L' },
  },
  {
    code: 'size-not-known',
    severity: 'error',
    title: 'A booklet for a size that is not there',
    reason: 'Without the size, the booklet is printed with all sizes.',
    message: (facts) =>
      `the pattern has no size ${quoted(facts[0]!.fact.data, 'size')}, so the booklet shows all sizes; choose one of the pattern’s sizes`,
    example: null,
    sample: { size: 'XXL' },
  },
];
