/**
 * A photograph as it stands in the manuscript: the picture, what it shows in words, its caption, and buttons to
 * move and remove it. Fields are the page's own; what is typed goes to the document when the typing rests. It
 * lets go of the picture when it leaves the screen.
 */
import type { Pictures } from '../../core/document/media.ts';
import type { Media } from '../../core/document/pattern.ts';
import { tidyText } from '../../core/document/words.ts';
import { photoWords } from '../words/photos.ts';
import { aside, asideButton, element } from '../write/drawing/element.ts';

/** How long typing rests before it goes to the document. */
const REST = 400;

export interface FrameDeeds {
  readonly pictures: () => Pictures;
  readonly mayChange: () => boolean;
  readonly onChange: (media: Media) => void;
  /** Null where it cannot be moved: on the cover. */
  readonly onMove: ((by: 1 | -1) => void) | null;
  readonly onRemove: () => void;
}

let frames = 0;

export class PhotoFrame {
  readonly dom: HTMLElement;
  #media: Media;
  #url: string | null = null;
  #rest = 0;
  readonly #deeds: FrameDeeds;
  readonly #image = element('img', 'photo-image');
  readonly #lost = element('p', 'quiet', photoWords.lost);
  readonly #alt = element('textarea', 'photo-alt');
  readonly #missing = element('span', 'photo-missing', photoWords.altMissing);
  readonly #caption = element('input', 'photo-caption');

  constructor(media: Media, title: string, deeds: FrameDeeds) {
    this.#media = media;
    this.#deeds = deeds;
    this.dom = aside('div', 'photo-frame');
    this.dom.setAttribute('role', 'group');
    this.dom.setAttribute('aria-label', title);
    const number = ++frames;
    this.#alt.rows = 2;
    this.#alt.placeholder = photoWords.altHint;
    const fields = element('div', 'photo-fields');
    fields.append(
      labelled(`photo-alt-${number}`, photoWords.alt, this.#alt, this.#missing),
      labelled(`photo-caption-${number}`, photoWords.caption, this.#caption),
    );
    const buttons = element('div', 'photo-buttons');
    const { onMove } = deeds;
    if (onMove !== null) {
      buttons.append(
        asideButton('', photoWords.earlier, () => this.#act(() => onMove(-1))),
        asideButton('', photoWords.later, () => this.#act(() => onMove(1))),
      );
    }
    buttons.append(asideButton('', photoWords.remove, () => this.#act(deeds.onRemove)));
    fields.append(buttons);
    this.dom.append(this.#image, this.#lost, fields);
    for (const field of [this.#alt, this.#caption]) {
      field.addEventListener('input', () => {
        window.clearTimeout(this.#rest);
        this.#rest = window.setTimeout(() => this.#take(), REST);
      });
      field.addEventListener('change', () => this.#take());
    }
    this.#draw();
  }

  get media(): Media {
    return this.#media;
  }

  /** Shows another state of the photograph. A field that is being typed in keeps what is typed. */
  show(media: Media): void {
    const isOther = media.id !== this.#media.id;
    this.#media = media;
    if (isOther) this.#letGo();
    this.#draw();
  }

  /** Puts the caret where the photograph is described. */
  describe(): void {
    this.#alt.focus();
  }

  destroy(): void {
    window.clearTimeout(this.#rest);
    this.#letGo();
  }

  #act(deed: () => void): void {
    if (this.#deeds.mayChange()) deed();
  }

  #take(): void {
    window.clearTimeout(this.#rest);
    const alt = tidyText(this.#alt.value);
    const caption = tidyText(this.#caption.value);
    const next: Media = { id: this.#media.id, alt, caption: caption.trim() === '' ? null : caption };
    if (next.alt === this.#media.alt && next.caption === this.#media.caption) return;
    if (this.#deeds.mayChange()) this.#deeds.onChange(next);
  }

  #draw(): void {
    const { id, alt, caption } = this.#media;
    const picture = this.#deeds.pictures().get(id);
    if (picture !== undefined && this.#url === null) {
      const type = picture.kind === 'png' ? 'image/png' : 'image/jpeg';
      this.#url = URL.createObjectURL(new Blob([new Uint8Array(picture.bytes)], { type }));
      this.#image.src = this.#url;
      this.#image.width = picture.width;
      this.#image.height = picture.height;
    }
    this.#image.hidden = picture === undefined;
    this.#lost.hidden = picture !== undefined;
    this.#image.alt = alt;
    this.#alt.dataset.picture = id;
    this.#missing.hidden = alt.trim() !== '';
    if (document.activeElement !== this.#alt) this.#alt.value = alt;
    if (document.activeElement !== this.#caption) this.#caption.value = caption ?? '';
  }

  #letGo(): void {
    if (this.#url === null) return;
    // A picture that is still being read is not looked for any more.
    this.#image.removeAttribute('src');
    URL.revokeObjectURL(this.#url);
    this.#url = null;
  }
}

function labelled(
  id: string,
  words: string,
  field: HTMLElement,
  ...more: readonly HTMLElement[]
): HTMLElement {
  const line = element('p', 'photo-field');
  const label = element('label', '', words);
  label.htmlFor = id;
  field.id = id;
  line.append(label, ...more, field);
  return line;
}
