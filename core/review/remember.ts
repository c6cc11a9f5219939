/**
 * Remembering what was made of a text: after an edit almost every text is what it was. Only speed hangs on it;
 * the memory starts afresh when it has grown past any pattern.
 */

/** More texts than the longest pattern has. */
const MOST = 20_000;

/** `make`, remembered by the text and by `under`: everything else that the result depends on, as a string. */
export function remembered<T>(make: (text: string, under: string) => T): (text: string, under: string) => T {
  let memory = new Map<string, Map<string, T>>();
  let size = 0;
  return (text, under) => {
    let texts = memory.get(under);
    const known = texts?.get(text);
    if (known !== undefined) return known;
    if (size >= MOST) {
      memory = new Map();
      size = 0;
      texts = undefined;
    }
    if (texts === undefined) {
      texts = new Map();
      memory.set(under, texts);
    }
    const made = make(text, under);
    texts.set(text, made);
    size += 1;
    return made;
  };
}
