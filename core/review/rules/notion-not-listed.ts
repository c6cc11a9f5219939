/** A text asks for something that the materials do not list. */
import { quoted, text } from '../../findings/phrases.ts';
import { found, type Rule } from '../rule.ts';
import { tellsHow } from '../texts.ts';
import { thingsAsked } from '../things.ts';

export const notionNotListed: Rule = {
  code: 'notion-not-listed',
  severity: 'warning',
  title: 'Something is needed that the materials do not list',
  reason:
    'A maker lays out what the list says. What turns up in the last paragraph has to be bought on another day.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    return `${quoted(data, 'words')} is used here, but the materials list no ${text(data, 'thing').replace(/^an? /u, '')}; add it to the notions, with how many`;
  },
  example: null,
  sample: { words: 'buttons', thing: 'buttons' },
  check: (study) => {
    const { notions } = study.pattern;
    const told = new Set<string>();
    const isHow = tellsHow(study.pattern);
    return thingsAsked(study.pattern).flatMap(({ text: { node, text }, hits }) =>
      hits.flatMap(({ thing, from, to }) => {
        if (!isHow(node) || told.has(thing.name) || notions.some(({ name }) => thing.listed.test(name)))
          return [];
        told.add(thing.name);
        const data = { words: text.slice(from, to), thing: thing.name };
        return [found(notionNotListed, study, { node, text, from, to }, data)];
      }),
    );
  },
};
