/**
 * The worker that looks words up. Its dictionaries come with the page: US English for patterns in US terms,
 * British English for those in UK terms. It fetches nothing from anywhere else.
 */
import nspell from 'nspell';
import type { Terms } from '../../core/trade/stitches.ts';
import type { FromSpeller, ToSpeller } from './protocol.ts';
import { wordsToSpell } from './words.ts';

const FILES: Readonly<Record<Terms, readonly [aff: URL, dic: URL]>> = {
  us: [
    new URL('../../node_modules/dictionary-en/index.aff', import.meta.url),
    new URL('../../node_modules/dictionary-en/index.dic', import.meta.url),
  ],
  uk: [
    new URL('../../node_modules/dictionary-en-gb/index.aff', import.meta.url),
    new URL('../../node_modules/dictionary-en-gb/index.dic', import.meta.url),
  ],
};

/** More than these are of no help. */
const SUGGESTIONS = 5;

const dictionaries = new Map<Terms, Promise<nspell>>();
let terms: Terms = 'us';
let known: ReadonlySet<string> = new Set();
const looked = new Map<string, boolean>();

async function load(language: Terms): Promise<nspell> {
  const [aff, dic] = await Promise.all(FILES[language].map(async (url) => (await fetch(url)).text()));
  return nspell(aff!, dic);
}

function dictionaryOf(language: Terms): Promise<nspell> {
  const there = dictionaries.get(language) ?? load(language);
  dictionaries.set(language, there);
  return there;
}

function isRight(dictionary: nspell, word: string): boolean {
  const plain = word.replace(/’/g, "'");
  if (known.has(plain.toLowerCase())) return true;
  const right = looked.get(plain) ?? dictionary.correct(plain);
  looked.set(plain, right);
  return right;
}

const tell = (message: FromSpeller): void => self.postMessage(message);

async function hear(message: ToSpeller): Promise<void> {
  if (message.kind === 'language') {
    if (message.terms !== terms) looked.clear();
    terms = message.terms;
    known = new Set(message.known);
    return;
  }
  const language = terms;
  const dictionary = await dictionaryOf(language);
  if (message.kind === 'suggest') {
    const words = dictionary.suggest(message.word.replace(/’/g, "'")).slice(0, SUGGESTIONS);
    tell({ kind: 'suggested', serial: message.serial, words });
    return;
  }
  const wrong = message.texts.map((text) =>
    wordsToSpell(text, language).filter(([from, to]) => !isRight(dictionary, text.text.slice(from, to))),
  );
  tell({ kind: 'checked', serial: message.serial, wrong });
}

// One after the other: what is known now holds for the checks that follow.
let last: Promise<void> = Promise.resolve();
self.onmessage = ({ data }: MessageEvent<ToSpeller>): void => {
  last = last.then(() => hear(data));
};
