/** A link that a printed page cannot show, or that nobody could type. */
import { quote, quoted, text } from '../../findings/phrases.ts';
import { found, type Rule } from '../rule.ts';
import { looking } from '../scan.ts';
import { smallPrintOf } from '../texts.ts';

interface Link {
  readonly from: number;
  readonly to: number;
  readonly why: string;
  readonly replacement: string;
}

const LINKS: readonly {
  readonly pattern: RegExp;
  readonly why: string;
  readonly write: (match: RegExpMatchArray) => string;
}[] = [
  {
    pattern: /\[[^\][\n]{1,80}\]\((?:https?:\/\/|www\.)[^\s)]{1,200}\)/giu,
    why: 'is written as a web editor writes a link, and is printed just so',
    write: () => '',
  },
  {
    pattern: /<\/?[a-z][a-z0-9]{0,9}(?:\s[^<>]{0,200})?>/giu,
    why: 'is a mark of a web page, and is printed just so',
    write: () => '',
  },
  {
    pattern: /\bclick(?:ing)?(?: (?:on|the))?(?: this| here| link)+\b/giu,
    why: 'does nothing on paper',
    write: () => '',
  },
  {
    pattern: /\bhttp:\/\/(?=[\w-]+\.)[^\s<>()]{1,200}/giu,
    why: 'begins with http, which browsers warn of',
    write: ([words]) => words!.replace(/^http:/iu, 'https:'),
  },
  {
    pattern: /\bhttps?:\/\/(?=$|[\s,;)])/giu,
    why: 'leads nowhere',
    write: () => '',
  },
  {
    pattern: /(?<![\p{L}\p{N}.@-])[\w.+-]{1,60}@[\p{L}\p{N}-]{1,60}(?![\p{L}\p{N}@-]|\.[\p{L}\p{N}])/gu,
    why: 'is no whole address: what stands behind the @ has no ending',
    write: () => '',
  },
];

function linksIn(text: string): readonly Link[] {
  return /[<[@]|http|click/iu.test(text)
    ? LINKS.flatMap(({ pattern, why, write }) =>
        [...text.matchAll(pattern)].map((match) => ({
          from: match.index,
          to: match.index + match[0].length,
          why,
          replacement: write(match),
        })),
      )
    : [];
}

const links = looking(linksIn);

export const linkNotPlain: Rule = {
  code: 'link-not-plain',
  severity: 'warning',
  title: 'A link does not work on paper',
  reason:
    'A pattern is printed and read aloud. An address helps only when it stands there in full, and begins with https or with its name.',
  message: (facts, voice) => {
    const { data } = facts[0]!.fact;
    const words = voice.words.trim() === '' ? quoted(data, 'words') : quote(voice.words);
    return `${words} ${text(data, 'why')}; write the address itself`;
  },
  fix: (facts) => {
    const replacement = text(facts[0]!.fact.data, 'replacement');
    return replacement === '' ? null : { label: `Write ${quote(replacement)}`, replacement };
  },
  example: null,
  sample: { words: 'click here', why: 'does nothing on paper', replacement: '' },
  check: (study) => {
    const texts = links(study.pattern).map(({ text: { node, text }, hits }) => ({ node, text, hits }));
    const others = smallPrintOf(study.pattern).flatMap(({ node, text, holds }) =>
      holds ? [{ node, text, hits: linksIn(text) }] : [],
    );
    return [...texts, ...others].flatMap(({ node, text, hits }) =>
      hits.map(({ from, to, why, replacement }) =>
        found(
          linkNotPlain,
          study,
          { node, text, from, to },
          { words: text.slice(from, to), why, replacement },
        ),
      ),
    );
  },
};
