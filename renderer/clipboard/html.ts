/**
 * The words of a piece of HTML, as programs put it on the clipboard: paragraphs, lists and tables as lines of
 * text. Looks, scripts and what is hidden are passed over. It reads a document that was parsed aside, in which
 * nothing runs and nothing is fetched.
 */
import { type Passage, passageOfText, plainCharacters } from '../../core/intake/passage.ts';
import { textOfTable } from '../../core/intake/table.ts';

const BLOCKS = new Set(
  'address article aside blockquote dd div dl dt fieldset figcaption figure footer h1 h2 h3 h4 h5 h6 header hr li main nav ol p pre section table ul'.split(
    ' ',
  ),
);
const PASSED_OVER = new Set(
  'head style script template title meta link object iframe svg img del'.split(' '),
);

/** Text as the reader of the page sees it, marked: "\n" breaks a line, "\n\n" parts paragraphs. */
class Writer {
  #text = '';
  /** The number of an item was written, and none of its words yet. */
  #isNumbered = false;

  /** The number of an item, which a paragraph within the item goes on behind. */
  number(n: number): void {
    this.#text += `${n}. `;
    this.#isNumbered = true;
  }

  words(text: string, isPre: boolean): void {
    const plain = isPre ? text : text.replace(/[ \t\r\n\f]+/g, ' ');
    if (this.#isNumbered && plain.trim() === '') return;
    this.#isNumbered = false;
    this.#text += /\n$/.test(this.#text) && !isPre ? plain.replace(/^ /, '') : plain;
  }

  /** Begins a new line, unless one has just begun. */
  line(): void {
    if (this.#isNumbered) return;
    this.#text = this.#text.replace(/ +$/, '');
    if (this.#text !== '' && !this.#text.endsWith('\n')) this.#text += '\n';
  }

  /** A break that the maker made. */
  break(): void {
    this.#isNumbered = false;
    this.#text = `${this.#text.replace(/ +$/, '')}\n`;
  }

  get text(): string {
    return this.#text;
  }
}

const isHidden = (element: Element): boolean =>
  /display\s*:\s*none|mso-hide\s*:\s*all/i.test(element.getAttribute('data-style') ?? '');

function write(node: Node, out: Writer, isPre: boolean): void {
  for (const child of node.childNodes) {
    if (child.nodeType === Node.TEXT_NODE) {
      out.words(child.textContent ?? '', isPre);
      continue;
    }
    if (child.nodeType !== Node.ELEMENT_NODE) continue;
    const element = child as Element;
    const name = element.localName.toLowerCase();
    if (PASSED_OVER.has(name) || isHidden(element)) continue;
    if (name === 'br') {
      out.break();
      continue;
    }
    if (name === 'table') {
      out.line();
      out.words(textOfTable(cellsOf(element)), true);
      out.break();
      continue;
    }
    const isBlock = BLOCKS.has(name);
    if (isBlock) out.line();
    if (name === 'li' && element.parentElement?.localName === 'ol') out.number(numberOf(element));
    const style = element.getAttribute('data-style') ?? '';
    write(element, out, isPre || name === 'pre' || /white-space\s*:\s*pre(?!-line)/i.test(style));
    if (isBlock) out.line();
  }
}

function numberOf(item: Element): number {
  const list = item.parentElement!;
  const items = [...list.children].filter((other) => other.localName === 'li');
  return Number(list.getAttribute('start') ?? 1) + items.indexOf(item);
}

function cellsOf(table: Element): readonly (readonly string[])[] {
  return [...table.querySelectorAll('tr')].map((row) =>
    [...row.children]
      .filter(({ localName }) => localName === 'td' || localName === 'th')
      .map((cell) => {
        const out = new Writer();
        write(cell, out, false);
        return out.text;
      }),
  );
}

/** The passage in a piece of HTML. */
export function passageOfHtml(html: string): Passage {
  // Programs mark what was copied; what stands around it is not meant.
  const fragment = /<!--StartFragment-->([\s\S]*)<!--EndFragment-->/i.exec(html)?.[1] ?? html;
  // Looks are taken out before the page's policy has to refuse them; what they hide is still known.
  const bare = fragment
    .replace(/<style\b[\s\S]*?<\/style\s*>/gi, '')
    .replace(/(<[a-z][^>]*?)\sstyle(?=\s*=)/gi, '$1 data-style');
  const parsed = new DOMParser().parseFromString(bare, 'text/html');
  const out = new Writer();
  write(parsed.body, out, false);
  return passageOfText(plainCharacters(out.text));
}

/** Whether HTML has more to say than its plain text: paragraphs, lists, tables. */
export function isStructured(html: string): boolean {
  return /<(?:p|div|li|h[1-6]|table|br)\b/i.test(html);
}
