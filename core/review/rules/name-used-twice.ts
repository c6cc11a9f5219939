/** Two pieces, special stitches, yarns or printed measurements have the same name. */
import { quoted, text } from '../../findings/phrases.ts';
import { type At, found, type Rule } from '../rule.ts';
import { namesOfSpecial } from '../texts.ts';

interface Named {
  readonly what: string;
  readonly name: string;
  readonly at: At;
}

export const nameUsedTwice: Rule = {
  code: 'name-used-twice',
  severity: 'warning',
  title: 'Two things have the same name',
  reason:
    'A reader finds a piece, a stitch, a colour or a measurement by its name. With the same name twice nobody can tell which is meant.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    return `there is a ${text(data, 'what')} called ${quoted(data, 'name')} before this one; give one of them another name, or take it out`;
  },
  example: null,
  sample: { what: 'piece', name: 'Sleeve' },
  check: (study) => {
    const { pieces, specials, yarns, lines, terms } = study.pattern;
    const all: readonly Named[] = [
      ...pieces.map(({ id, name }) => ({ what: 'piece', name, at: { node: id } })),
      ...specials.flatMap((special) =>
        namesOfSpecial(special, terms).map((name) => ({
          what: 'special stitch',
          name,
          at: { node: special.id },
        })),
      ),
      ...yarns.map(({ id, key, name }) => ({ what: 'yarn', name: key ?? '', at: { node: id, text: name } })),
      ...lines.map(({ id, name, printed }) => ({
        what: 'printed measurement',
        name: printed ?? '',
        at: { node: id, text: name },
      })),
    ];
    const seen = new Map<string, string | null>();
    const told = new Set<string>();
    return all.flatMap(({ what, name, at }) => {
      const key = `${what}:${name.trim().toLowerCase()}`;
      if (name.trim() === '') return [];
      const before = seen.get(key);
      if (before === undefined) {
        seen.set(key, at.node);
        return [];
      }
      if (before === at.node || told.has(`${what}:${at.node}`)) return [];
      told.add(`${what}:${at.node}`);
      return [found(nameUsedTwice, study, at, { what, name: name.trim() })];
    });
  },
};
