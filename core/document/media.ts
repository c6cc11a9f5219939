/**
 * Pictures that travel with a pattern: which kinds there are, how they are told apart, how they are named.
 * It looks at a picture's first bytes only; it does not decode, scale or draw.
 */
import type { Node } from 'prosemirror-model';
import { sha256 } from './digest.ts';
import { FILE_LIMITS } from './limits.ts';
import { orientationIn } from './orientation.ts';
import type { Media } from './pattern.ts';
import { type Refusal, refuse } from './refusals.ts';

export type PictureKind = 'png' | 'jpeg';

/** What can be told of a picture without decoding it. Sides in pixels, as it stands upright. */
export interface Look {
  readonly kind: PictureKind;
  readonly width: number;
  readonly height: number;
}

/** A picture as it is kept: its id is the `id` of the `Media` that show it. */
export interface Picture extends Look {
  readonly id: string;
  readonly bytes: Uint8Array;
}

/** Pictures by id. */
export type Pictures = ReadonlyMap<string, Picture>;

export type Taken =
  | { readonly ok: true; readonly picture: Picture }
  | { readonly ok: false; readonly error: Refusal };

/** The end of a picture's file name in the container. */
export const EXTENSION: Readonly<Record<PictureKind, string>> = { png: 'png', jpeg: 'jpg' };

/** PNG (ISO/IEC 15948), §5.2: the eight bytes that every PNG begins with. */
const PNG_START = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];
/** JPEG (ITU-T T.81), annex B: start of image, then the marker of a first segment. */
const JPEG_START = [0xff, 0xd8, 0xff];

const begins = (bytes: Uint8Array, start: readonly number[]): boolean =>
  start.every((byte, at) => bytes[at] === byte);

/** PNG §11.2.2: the first chunk is IHDR, 13 bytes, width and height first. */
function pngSides(view: DataView): readonly [number, number] | null {
  if (view.byteLength < 33 || view.getUint32(8) !== 13 || view.getUint32(12) !== 0x49484452) return null;
  return [view.getUint32(16), view.getUint32(20)];
}

/**
 * T.81, B.2.2: the frame header SOF0–SOF15 (DHT, JPG and DAC share the range) holds height, then width. Where the camera
 * was held otherwise, they change places.
 */
function jpegSides(view: DataView): readonly [number, number] | null {
  let at = 2;
  let isTurned = false;
  while (at + 9 <= view.byteLength) {
    if (view.getUint8(at) !== 0xff) return null;
    const marker = view.getUint8(at + 1);
    if (marker === 0xff) {
      at += 1; // fill byte
      continue;
    }
    const isFrame = marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
    if (isFrame) {
      const [width, height] = [view.getUint16(at + 7), view.getUint16(at + 5)];
      return isTurned ? [height, width] : [width, height];
    }
    if (marker === 0xda || marker === 0xd9) return null; // picture data, or the end, before any frame
    if (marker === 0xe1) {
      const from = view.byteOffset + at + 4;
      const length = Math.min(view.getUint16(at + 2) - 2, view.byteLength - at - 4);
      const payload = new Uint8Array(view.buffer, from, Math.max(0, length));
      isTurned = (orientationIn(payload) ?? 1) > 4;
    }
    const alone = marker === 0x01 || (marker >= 0xd0 && marker <= 0xd7);
    at += alone ? 2 : 2 + view.getUint16(at + 2);
  }
  return null;
}

/** Kind and sides of a picture, or why it cannot be kept. */
export function lookAt(bytes: Uint8Array): Look | Refusal {
  const kind = begins(bytes, PNG_START) ? 'png' : begins(bytes, JPEG_START) ? 'jpeg' : null;
  if (kind === null) return refuse('picture-unknown');
  if (bytes.length > FILE_LIMITS.pictureBytes) return refuse('picture-too-heavy', FILE_LIMITS.pictureBytes);
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const [width, height] = (kind === 'png' ? pngSides(view) : jpegSides(view)) ?? [0, 0];
  if (width === 0 || height === 0) return refuse('picture-broken');
  const { pictureSide, picturePixels } = FILE_LIMITS;
  if (Math.max(width, height) > pictureSide || width * height > picturePixels) {
    return refuse('picture-too-wide', width, height, pictureSide);
  }
  return { kind, width, height };
}

/**
 * Takes a picture into a pattern. Its id comes from its bytes, so that the same picture added twice is kept
 * once, and the same pattern gives the same file.
 */
export function takePicture(bytes: Uint8Array): Taken {
  const look = lookAt(bytes);
  if ('code' in look) return { ok: false, error: look };
  return { ok: true, picture: { ...look, id: sha256(bytes).slice(0, 32), bytes } };
}

/** Ids of the pictures that a document shows. */
export function shownPictures(document: Node): ReadonlySet<string> {
  const ids = new Set<string>();
  document.descendants((node) => {
    const media: Media | null =
      node.type.name === 'photo' ? node.attrs.media : node.type.name === 'cover' ? node.attrs.cover : null;
    if (media) ids.add(media.id);
    return !node.isTextblock;
  });
  return ids;
}
