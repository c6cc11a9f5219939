/**
 * Which abbreviations and special stitches the texts of a pattern use, text by text, remembered as long as a
 * pattern lives. It says what is used; whether that is right is the rules' concern.
 */
import type { Pattern } from '../document/pattern.ts';
import { abbreviationsIn } from '../notation/abbreviations.ts';
import type { Used } from '../trade/abbreviations.ts';
import { namesOfSpecial, type Text, textsOf } from './texts.ts';

export interface TextUse {
  readonly text: Text;
  readonly used: readonly Used[];
  /** The pattern's own abbreviations and special stitches among them, as the pattern writes them. */
  readonly own: ReadonlySet<string>;
}

const known = new WeakMap<Pattern, readonly TextUse[]>();

/** What each text uses, in the order of the texts. */
export function usesOf(pattern: Pattern): readonly TextUse[] {
  const before = known.get(pattern);
  if (before !== undefined) return before;
  const names = [
    ...Object.keys(pattern.abbreviations),
    ...pattern.specials.flatMap((special) => namesOfSpecial(special, pattern.terms)),
  ];
  const ours = new Set(names);
  const uses = textsOf(pattern).map((text): TextUse => {
    const used = abbreviationsIn([text.text], pattern.terms, names);
    const own = used.flatMap((use) => (typeof use !== 'string' && ours.has(use.id) ? [use.id] : []));
    return { text, used, own: new Set(own) };
  });
  known.set(pattern, uses);
  return uses;
}
