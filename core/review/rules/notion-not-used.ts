/** The materials list something that no text uses. */
import { quoted } from '../../findings/phrases.ts';
import { found, type Rule } from '../rule.ts';
import { instructionsOf } from '../texts.ts';
import { AT_HAND, THINGS } from '../things.ts';

/** The words of a name that say what it is, in the singular. */
function telling(name: string): readonly string[] {
  return (name.toLowerCase().match(/\p{L}{4,}/gu) ?? []).map((word) => word.replace(/(?:es|s)$/u, ''));
}

export const notionNotUsed: Rule = {
  code: 'notion-not-used',
  severity: 'note',
  title: 'Something is listed that nothing uses',
  reason: 'A buyer pays for what the list says, and looks in the rows for where it goes.',
  message: (facts) =>
    `${quoted(facts[0]!.fact.data, 'notion')} is listed under Materials, but no row, note or finishing says what it is for; say it there, or take it off the list`,
  example: null,
  sample: { notion: '4 buttons' },
  check: (study) => {
    const { notions } = study.pattern;
    if (notions.length === 0) return [];
    const texts = instructionsOf(study.pattern);
    return notions.flatMap((notion) => {
      const { id, name } = notion;
      if (name.trim() === '' || AT_HAND.test(name)) return [];
      const things = THINGS.filter(({ listed }) => listed.test(name));
      const words = telling(name);
      const isUsed = texts.some(({ text }) => {
        if (things.some(({ used, implied }) => text.search(used) >= 0 || implied?.test(text) === true))
          return true;
        const low = text.toLowerCase();
        return words.some((word) => low.includes(word));
      });
      return isUsed
        ? []
        : [found(notionNotUsed, study, { node: id, text: name, from: 0, to: name.length }, { notion: name })];
    });
  },
};
