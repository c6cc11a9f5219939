/** Which form stands over the manuscript: one at a time. It holds no data of the document, only what the form is about. */

export type Popup =
  /** A figure: what it replaces, in the document as it is while the form is open, and its expression so far. */
  | { readonly kind: 'figure'; readonly from: number; readonly to: number; readonly expression: string }
  | { readonly kind: 'block'; readonly id: string }
  | { readonly kind: 'piece'; readonly id: string }
  | { readonly kind: 'special'; readonly id: string }
  | { readonly kind: 'cover' };

export class Popups {
  #open: Popup | null = null;
  readonly #listeners = new Set<() => void>();

  readonly view = (): Popup | null => this.#open;

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  open(popup: Popup): void {
    this.#set(popup);
  }

  close(): void {
    this.#set(null);
  }

  #set(popup: Popup | null): void {
    this.#open = popup;
    for (const listener of this.#listeners) listener();
  }
}
