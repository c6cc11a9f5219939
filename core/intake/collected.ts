/**
 * Collects the pictures of a document while a library turns it into markup, in which each gets its number as source.
 * For the readers of documents, whatever bundle of the library they use; it looks at no picture.
 */
import type { DocxPicture } from './docx.ts';
import { pictureSource } from './markup.ts';

/** A picture as the library hands it on. */
interface Handed {
  readonly altText?: string | null;
  readAsArrayBuffer(): Promise<ArrayBuffer>;
}

export class CollectedPictures {
  readonly pictures: DocxPicture[] = [];

  /** Takes a picture and tells the source that the markup has for it. Never rejects. */
  readonly take = async (image: unknown): Promise<{ src: string }> => {
    const handed = image as Handed;
    const at = this.pictures.length;
    this.pictures.push({ bytes: null, alt: handed.altText ?? '' });
    try {
      const bytes = new Uint8Array(await handed.readAsArrayBuffer());
      this.pictures[at] = { ...this.pictures[at]!, bytes };
    } catch {
      // The document names a picture that stands elsewhere, or nowhere.
    }
    return { src: pictureSource(at) };
  };
}
