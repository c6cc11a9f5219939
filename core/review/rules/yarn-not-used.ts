/** A yarn of several is listed, and no row or note uses its letter. */
import { quoted } from '../../findings/phrases.ts';
import { found, type Rule } from '../rule.ts';
import { instructionsOf } from '../texts.ts';

/** Words that many yarns share, and that tell none of them by name. */
const SHARED =
  /^(?:colou?rs?|yarns?|wool|cotton|merino|acrylic|alpaca|linen|mohair|bamboo|silk|main|contrast|shade|light|dark|fine|sport|worsted|aran|chunky|bulky|lace|sock|soft|baby|balls?|skeins?|hanks?|grams?|metres|meters|yards|weight|ply|with|and|the|for|about|each|same|other|next|last|first|second|third|one|two|three)$/iu;

/** "Colour A: brown – 25 g": the words by which a yarn is called besides its letter. */
const colourWords = (name: string, others: readonly string[]): readonly string[] =>
  (name.toLowerCase().match(/\p{L}{3,}/gu) ?? []).filter(
    (word) => !SHARED.test(word) && others.every((other) => !other.toLowerCase().includes(word)),
  );

export const yarnNotUsed: Rule = {
  code: 'yarn-not-used',
  severity: 'warning',
  title: 'A yarn is listed that no row uses',
  reason: 'A buyer pays for every yarn on the list.',
  message: (facts) =>
    `no row or note works with ${quoted(facts[0]!.fact.data, 'yarn')}; say where it is used, or take it off the list`,
  example: null,
  sample: { yarn: 'C' },
  check: (study) => {
    const { yarns } = study.pattern;
    if (yarns.length < 2) return [];
    return yarns.flatMap(({ id, key, name }) => {
      const word = key?.trim() ?? '';
      if (word === '') return [];
      const pattern = new RegExp(
        String.raw`(?<![\p{L}\p{N}])${word.replace(/[.*+?^${}()|[\]\\]/gu, '\\$&')}(?![\p{L}\p{N}])`,
        'u',
      );
      // "Change to brown": a colour is called by its name as well.
      const others = yarns.filter((other) => other.id !== id).map((other) => other.name);
      const words = colourWords(name, others).map(
        (each) =>
          new RegExp(String.raw`\b(?:with|to|using|join|attach|in)\s(?:the\s)?${each}(?!\p{L})`, 'iu'),
      );
      const names = study.pattern.pieces.map((piece) => piece.name);
      const isUsed = [...instructionsOf(study.pattern).map(({ text }) => text), ...names].some(
        (text) =>
          pattern.test(text) ||
          (name.trim() !== '' && text.includes(name.trim())) ||
          words.some((each) => each.test(text)),
      );
      return isUsed ? [] : [found(yarnNotUsed, study, { node: id, text: name }, { yarn: word })];
    });
  },
};
