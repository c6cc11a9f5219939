/**
 * Which abbreviations and special stitches the texts of a pattern use, text by text, remembered as long as a
 * pattern lives. It says what is used; whether that is right is the rules' concern.
 */
import type { Pattern } from '../document/pattern.ts';
import { abbreviationsIn } from '../notation/abbreviations.ts';
import type { Used } from '../trade/abbreviations.ts';
import { remembered } from './remember.ts';
import { namesOfSpecial, type Text, textsOf } from './texts.ts';

export interface TextUse {
  readonly text: Text;
  readonly used: readonly Used[];
  /** The pattern's own abbreviations and special stitches among them, as the pattern writes them. */
  readonly own: ReadonlySet<string>;
}

/** Under: the terms and the pattern's own names, as JSON. */
const abbreviations = remembered((text, under): readonly Used[] => {
  const [terms, names] = JSON.parse(under) as [Pattern['terms'], readonly string[]];
  return abbreviationsIn([text], terms, names);
});

const known = new WeakMap<Pattern, readonly TextUse[]>();
const byText = new WeakMap<Text, { readonly under: string; readonly use: TextUse }>();

/** What each text uses, in the order of the texts. */
export function usesOf(pattern: Pattern): readonly TextUse[] {
  const before = known.get(pattern);
  if (before !== undefined) return before;
  const names = [
    ...Object.keys(pattern.abbreviations),
    ...pattern.specials.flatMap((special) => namesOfSpecial(special, pattern.terms)),
  ];
  const ours = new Set(names);
  const under = JSON.stringify([pattern.terms, names]);
  const uses = textsOf(pattern).map((text): TextUse => {
    const before = byText.get(text);
    if (before?.under === under) return before.use;
    const used = abbreviations(text.text, under);
    const own = used.flatMap((use) => (typeof use !== 'string' && ours.has(use.id) ? [use.id] : []));
    const use: TextUse = { text, used, own: new Set(own) };
    byText.set(text, { under, use });
    return use;
  });
  known.set(pattern, uses);
  return uses;
}
