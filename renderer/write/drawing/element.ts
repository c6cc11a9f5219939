/** Small builders of elements for the manuscript's drawn parts. */

/** An element with a class and text. */
export function element<K extends keyof HTMLElementTagNameMap>(
  kind: K,
  className: string,
  text = '',
): HTMLElementTagNameMap[K] {
  const made = document.createElement(kind);
  made.className = className;
  if (text !== '') made.textContent = text;
  return made;
}

/** An element that is drawn beside the text and is no part of it. */
export function aside<K extends keyof HTMLElementTagNameMap>(
  kind: K,
  className: string,
  text = '',
): HTMLElementTagNameMap[K] {
  const made = element(kind, className, text);
  made.contentEditable = 'false';
  return made;
}

/** A button beside the text. It takes no focus from the text when it is pressed by mouse. */
export function asideButton(className: string, text: string, run: () => void): HTMLButtonElement {
  const made = aside('button', className, text);
  made.type = 'button';
  made.addEventListener('mousedown', (event) => event.preventDefault());
  made.addEventListener('click', (event) => {
    event.preventDefault();
    run();
  });
  return made;
}

/** Sets text only where it differs. */
export function setWords(at: HTMLElement, words: string): void {
  if (at.textContent !== words) at.textContent = words;
}

/** Sets an attribute, or takes it away, only where it differs. */
export function setMark(at: Element, name: string, value: string | null): void {
  if (at.getAttribute(name) === value) return;
  if (value === null) at.removeAttribute(name);
  else at.setAttribute(name, value);
}
