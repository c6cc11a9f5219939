/**
 * Collects the pictures of a document while a library turns it into markup, in which each gets its number as source,
 * and takes them over into a pattern. For the readers of documents, whatever bundle of the library they use; what a
 * picture holds is looked at by who is asked to take it.
 */
import { FILE_LIMITS } from '../document/limits.ts';
import type { Picture } from '../document/media.ts';
import type { DocxPicture } from './docx.ts';
import { pictureSource } from './markup.ts';
import type { TakenPicture } from './placed-pictures.ts';

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

/**
 * The pictures of a document as pictures of a pattern, up to as many as one can have, in the order found. `take` makes
 * one fit for a pattern, or gives null where it cannot be.
 */
export async function takePictures(
  found: readonly DocxPicture[],
  take: (bytes: Uint8Array) => Promise<Picture | null>,
): Promise<{
  readonly pictures: readonly TakenPicture[];
  readonly media: ReadonlyMap<string, Picture>;
}> {
  const media = new Map<string, Picture>();
  const pictures: TakenPicture[] = [];
  for (const { bytes, alt } of found) {
    const picture = bytes === null || media.size >= FILE_LIMITS.pictures ? null : await take(bytes);
    if (picture !== null) media.set(picture.id, picture);
    pictures.push({ id: picture?.id ?? null, alt });
  }
  return { pictures, media };
}
