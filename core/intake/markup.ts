/**
 * Simple, well-formed HTML as lines of text: paragraphs, lists with their numbers, tables as rows, a line for each
 * picture below the paragraph that has it. For markup that a library of ours wrote; what is on a clipboard is read by
 * the page, which has a parser for it.
 */
import { pictureLine } from './pictures.ts';
import { textOfTable } from './table.ts';

const ENTITIES: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  apos: "'",
  nbsp: ' ',
};

/** Text of markup with its entities as the signs they stand for. */
export const plain = (text: string): string =>
  text.replace(/&(?:#(\d{1,7})|#x([\da-f]{1,6})|([a-z]{2,6}));/giu, (whole, decimal, hex, name) => {
    if (name !== undefined) return ENTITIES[name.toLowerCase()] ?? whole;
    const code = decimal === undefined ? Number.parseInt(hex, 16) : Number(decimal);
    return code > 0 && code <= 0x10ffff ? String.fromCodePoint(code) : '';
  });

const TOKEN = /<(\/)?([a-z][a-z\d]*)([^<>]*)>|([^<]+|<)/giu;

interface Table {
  readonly rows: string[][];
  /** The text that went on before the table. */
  readonly outside: string;
}

/** What a picture of the markup is called by: its number, as source. */
export const pictureSource = (picture: number): string => `picture:${picture}`;

/** The text of the markup. */
export function textOfMarkup(html: string): string {
  let text = '';
  const tables: Table[] = [];
  const lists: (number | null)[] = [];
  let silent = 0;
  let pictures: string[] = [];
  const line = (): void => {
    text = text.replace(/ +$/u, '');
    if (text !== '' && !text.endsWith('\n')) text += '\n';
  };
  const showPictures = (): void => {
    if (pictures.length === 0 || tables.length > 0) return;
    line();
    text += `${pictures.join('\n')}\n`;
    pictures = [];
  };
  for (const [, closes, name, attributes = '', words] of html.matchAll(TOKEN)) {
    if (words !== undefined) {
      if (silent === 0) text += plain(words).replace(/\s+/gu, ' ');
      continue;
    }
    const tag = name!.toLowerCase();
    const isEnd = closes !== undefined;
    switch (tag) {
      case 'a':
        // Numbers of footnotes and the arrows back from them are no words of the pattern.
        if (isEnd) silent = Math.max(0, silent - 1);
        else if (silent > 0 || /note-ref/u.test(attributes)) silent += 1;
        else silent = 0;
        break;
      case 'img': {
        const source = /\bsrc="picture:(\d+)"/u.exec(attributes);
        if (source !== null) pictures.push(pictureLine(Number(source[1])));
        break;
      }
      case 'br':
        text = `${text.replace(/ +$/u, '')}\n`;
        break;
      case 'ul':
      case 'ol':
        line();
        if (isEnd) {
          lists.pop();
          showPictures();
        } else lists.push(tag === 'ol' ? 0 : null);
        break;
      case 'li': {
        line();
        if (isEnd) showPictures();
        const at = lists.length - 1;
        if (!isEnd && at >= 0 && lists[at] !== null) {
          lists[at] = lists[at]! + 1;
          text += `${lists[at]}. `;
        }
        break;
      }
      case 'table':
        if (isEnd) {
          const table = tables.pop();
          if (table !== undefined)
            text = `${table.outside}${textOfTable(table.rows.filter((cells) => cells.length > 0))}\n`;
          showPictures();
        } else {
          line();
          tables.push({ rows: [[]], outside: text });
          text = '';
        }
        break;
      case 'tr':
        if (!isEnd) tables.at(-1)?.rows.push([]);
        break;
      case 'td':
      case 'th':
        if (isEnd && tables.length > 0) tables.at(-1)!.rows.at(-1)!.push(text.trim());
        if (tables.length > 0) text = '';
        break;
      case 'h1':
      case 'h2':
      case 'h3':
      case 'h4':
      case 'h5':
      case 'h6':
        line();
        if (isEnd) showPictures();
        else if (text !== '') text += '\n';
        break;
      case 'p':
      case 'div':
        line();
        if (isEnd) showPictures();
        break;
    }
  }
  showPictures();
  return text.replace(/^\n+|\s+$/gu, '');
}
