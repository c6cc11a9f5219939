/**
 * Reads pictures (JPEG, PNG) before they are laid out: whether they are whole, how many pixels they have, and
 * the bytes the pen can place. Transparent and interlaced PNGs are flattened on white, the colour of paper:
 * pdfkit would decode them in callbacks that cannot be caught and end in no fixed order. Never throws.
 */
import { inflateSync } from 'node:zlib';
import PDFDocument from 'pdfkit';
import { PNG } from 'pngjs';

export interface Picture {
  /** Pixels as the picture is meant to stand, a camera's turn counted in. */
  readonly width: number;
  readonly height: number;
  readonly bytes: Uint8Array;
}

/** More pixels than any camera for the purpose has; a header that claims more is not believed. */
const MOST_PIXELS = 120_000_000;

/** The picture, or null when it is none that can be printed. */
export function readPicture(bytes: Uint8Array): Picture | null {
  try {
    if (bytes[0] === 0xff && bytes[1] === 0xd8) return readJpeg(bytes);
    if (bytes[0] === 0x89 && bytes[1] === 0x50 && bytes[2] === 0x4e && bytes[3] === 0x47)
      return readPng(bytes);
    return null;
  } catch {
    return null;
  }
}

/** PDF can hold baseline, extended and progressive JPEG with 8 bits (ISO 32000-1, 7.4.8). */
function readJpeg(bytes: Uint8Array): Picture | null {
  let at = 2;
  while (at + 9 < bytes.length) {
    if (bytes[at] !== 0xff) return null;
    const marker = bytes[at + 1]!;
    if (marker === 0xff) {
      at++;
      continue;
    }
    if (marker >= 0xc0 && marker <= 0xc2) {
      const bits = bytes[at + 4]!;
      const channels = bytes[at + 9]!;
      return bits === 8 && [1, 3, 4].includes(channels) ? opened(bytes) : null;
    }
    // The scan, or a frame of a kind that PDF does not know.
    const otherFrame = marker >= 0xc3 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
    if (marker === 0xda || marker === 0xd9 || otherFrame) return null;
    at += 2 + bytes[at + 2]! * 256 + bytes[at + 3]!;
  }
  return null;
}

interface Chunk {
  readonly type: string;
  readonly data: Uint8Array;
}

function chunksOf(bytes: Uint8Array): Chunk[] | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const chunks: Chunk[] = [];
  for (let at = 8; at + 12 <= bytes.length; ) {
    const length = view.getUint32(at);
    const end = at + 8 + length;
    if (end + 4 > bytes.length) return null;
    const type = String.fromCharCode(...bytes.subarray(at + 4, at + 8));
    chunks.push({ type, data: bytes.subarray(at + 8, end) });
    if (type === 'IEND') return chunks;
    at = end + 4;
  }
  return null;
}

const CHANNELS: Readonly<Record<number, number>> = { 0: 1, 2: 3, 3: 1, 4: 2, 6: 4 };

function readPng(bytes: Uint8Array): Picture | null {
  const chunks = chunksOf(bytes);
  const header = chunks?.[0];
  if (!chunks || header?.type !== 'IHDR' || header.data.length !== 13) return null;
  const view = new DataView(header.data.buffer, header.data.byteOffset, 13);
  const [width, height] = [view.getUint32(0), view.getUint32(4)];
  const [bits, colour, interlace] = [header.data[8]!, header.data[9]!, header.data[12]!];
  const channels = CHANNELS[colour];
  if (channels === undefined || width === 0 || height === 0 || width * height > MOST_PIXELS) return null;
  if (colour >= 4 || interlace !== 0 || chunks.some((chunk) => chunk.type === 'tRNS'))
    return flattened(bytes);
  if (colour === 3 && !chunks.some((chunk) => chunk.type === 'PLTE')) return null;
  const size = (Math.ceil((width * channels * bits) / 8) + 1) * height;
  const packed = Buffer.concat(chunks.filter((chunk) => chunk.type === 'IDAT').map((chunk) => chunk.data));
  return inflateSync(packed, { maxOutputLength: size + 1 }).length === size ? opened(bytes) : null;
}

function flattened(bytes: Uint8Array): Picture {
  const image = PNG.sync.read(Buffer.from(bytes));
  const { width, height, data } = image;
  for (let i = 0; i < data.length; i += 4) {
    const alpha = data[i + 3]!;
    for (let c = i; c < i + 3; c++) data[c] = Math.round((data[c]! * alpha + 255 * (255 - alpha)) / 255);
    data[i + 3] = 255;
  }
  const written = PNG.sync.write(image, { colorType: 2, inputHasAlpha: true });
  return { width, height, bytes: new Uint8Array(written) };
}

interface OpenImage {
  readonly width: number;
  readonly height: number;
  readonly orientation?: number;
}

/** What pdfkit itself reads of it: size, and the turn that a camera noted. */
function opened(bytes: Uint8Array): Picture | null {
  const probe = new PDFDocument({ autoFirstPage: false, font: null as unknown as string });
  const image = (probe as unknown as { openImage(src: Uint8Array): OpenImage }).openImage(bytes);
  const turned = (image.orientation ?? 1) > 4;
  const [width, height] = turned ? [image.height, image.width] : [image.width, image.height];
  return width > 0 && height > 0 && width * height <= MOST_PIXELS ? { width, height, bytes } : null;
}
