/**
 * Reading a zip file from anywhere. The directory is checked whole before one byte is unpacked, unpacking
 * stops at the size that was declared and allowed, and every checksum is verified. It knows nothing of
 * patterns and never throws. Layout: the ZIP application note (APPNOTE 6.3), sections 4.3 and 4.4.
 */
import { Inflate, strFromU8, strToU8 } from 'fflate';
import { FILE_LIMITS } from './limits.ts';
import { type Refusal, refuse } from './refusals.ts';

export type Unzipped =
  | { readonly ok: true; readonly entries: ReadonlyMap<string, Uint8Array> }
  | { readonly ok: false; readonly error: Refusal };

/**
 * Most bytes that an entry of this name may unpack to; null leaves the entry packed and unread; a refusal
 * refuses the file.
 */
export type Allowance = (name: string) => number | null | Refusal;

const LOCAL_HEADER = 0x04034b50;
const DIRECTORY_HEADER = 0x02014b50;
const END_RECORD = 0x06054b50;
const LOCAL_SIZE = 30;
const DIRECTORY_SIZE = 46;
const END_SIZE = 22;
const STORED = 0;
const DEFLATED = 8;
const ENCRYPTED_FLAG = 1;
/** DEFLATE cannot shrink more than 1032 to 1 (RFC 1951: 258 bytes from 2 bits). */
const DEFLATE_MOST = 1032;
/** Packed bytes handed over at once, so that a bomb is noticed after at most 1032 times as much. */
const MORSEL = 16 * 1024;

interface Entry {
  readonly name: string;
  readonly method: number;
  readonly checksum: number;
  readonly packed: number;
  readonly size: number;
  readonly header: number;
}

/** Thrown within this module only, to leave a nested reading at once. */
class Refused extends Error {
  readonly refusal: Refusal;
  constructor(refusal: Refusal) {
    super(refusal.code);
    this.refusal = refusal;
  }
}

function stop(refusal: Refusal): never {
  throw new Refused(refusal);
}

const CHECKSUMS = Uint32Array.from({ length: 256 }, (_, byte) => {
  let value = byte;
  for (let bit = 0; bit < 8; bit++) value = value & 1 ? (value >>> 1) ^ 0xedb88320 : value >>> 1;
  return value;
});

/** CRC-32 as zip uses it (ISO/IEC 8802-3, reflected). */
export function crc32(bytes: Uint8Array): number {
  let value = 0xffffffff;
  for (const byte of bytes) value = (value >>> 8) ^ CHECKSUMS[(value ^ byte) & 0xff]!;
  return (value ^ 0xffffffff) >>> 0;
}

/** Text of UTF-8 bytes, or null when they are not UTF-8. */
export function decodeUtf8(bytes: Uint8Array): string | null {
  const text = strFromU8(bytes);
  const back = strToU8(text);
  return back.length === bytes.length && back.every((byte, at) => byte === bytes[at]) ? text : null;
}

/** Where the end record stands: it closes the file, but for a comment whose length it states. */
function findEnd(view: DataView): number {
  const earliest = Math.max(0, view.byteLength - END_SIZE - 0xffff);
  for (let at = view.byteLength - END_SIZE; at >= earliest; at--) {
    if (view.getUint32(at, true) !== END_RECORD) continue;
    if (at + END_SIZE + view.getUint16(at + 20, true) === view.byteLength) return at;
  }
  return stop(refuse('cut-short'));
}

/** Names that could reach outside a folder, on any system, or that a person could not read. */
function isUnsafe(name: string): boolean {
  return (
    name === '' ||
    name.length > 255 ||
    /[\p{Cc}\\:]/u.test(name) ||
    name.startsWith('/') ||
    name
      .split('/')
      .some((part, at, all) => part === '..' || part === '.' || (part === '' && at < all.length - 1))
  );
}

function readDirectory(bytes: Uint8Array, view: DataView): readonly Entry[] {
  const end = findEnd(view);
  const count = view.getUint16(end + 10, true);
  const size = view.getUint32(end + 12, true);
  const from = view.getUint32(end + 16, true);
  const oneDisk = view.getUint16(end + 4, true) === 0 && view.getUint16(end + 6, true) === 0;
  if (!oneDisk || view.getUint16(end + 8, true) !== count || from + size !== end)
    stop(refuse('damaged', 'its list of parts'));
  if (count > FILE_LIMITS.entries) stop(refuse('too-many-parts', FILE_LIMITS.entries));

  const entries: Entry[] = [];
  let at = from;
  while (entries.length < count) {
    if (at + DIRECTORY_SIZE > end || view.getUint32(at, true) !== DIRECTORY_HEADER)
      stop(refuse('damaged', 'its list of parts'));
    const nameSize = view.getUint16(at + 28, true);
    const next =
      at + DIRECTORY_SIZE + nameSize + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
    if (next > end) stop(refuse('damaged', 'its list of parts'));
    const name = decodeUtf8(bytes.subarray(at + DIRECTORY_SIZE, at + DIRECTORY_SIZE + nameSize));
    if (name === null) stop(refuse('damaged', 'the name of a part'));
    if (isUnsafe(name)) stop(refuse('unsafe-name', name));
    if (view.getUint16(at + 8, true) & ENCRYPTED_FLAG) stop(refuse('encrypted'));
    entries.push({
      name,
      method: view.getUint16(at + 10, true),
      checksum: view.getUint32(at + 16, true),
      packed: view.getUint32(at + 20, true),
      size: view.getUint32(at + 24, true),
      header: view.getUint32(at + 42, true),
    });
    at = next;
  }
  if (at !== end) stop(refuse('damaged', 'its list of parts'));
  return entries;
}

/** Names that differ by capitals alone are one name on many disks. */
function refuseRepeated(entries: readonly Entry[]): void {
  const seen = new Set<string>();
  for (const { name } of entries) {
    const key = name.toLowerCase();
    if (seen.has(key)) stop(refuse('repeated-name', name));
    seen.add(key);
  }
}

/** Packed bytes of each entry. Two entries may not share a byte: that is how a small file claims a huge size. */
function locate(
  bytes: Uint8Array,
  view: DataView,
  entries: readonly Entry[],
): ReadonlyMap<Entry, Uint8Array> {
  const packed = new Map<Entry, Uint8Array>();
  const inOrder = [...entries].sort((a, b) => a.header - b.header);
  let free = 0;
  for (const entry of inOrder) {
    const { header, name } = entry;
    if (
      header < free ||
      header + LOCAL_SIZE > bytes.length ||
      view.getUint32(header, true) !== LOCAL_HEADER
    ) {
      stop(refuse('damaged', name));
    }
    const nameSize = view.getUint16(header + 26, true);
    const own = decodeUtf8(bytes.subarray(header + LOCAL_SIZE, header + LOCAL_SIZE + nameSize));
    if (own !== name) stop(refuse('damaged', name));
    const from = header + LOCAL_SIZE + nameSize + view.getUint16(header + 28, true);
    free = from + entry.packed;
    if (free > bytes.length) stop(refuse('damaged', name));
    packed.set(entry, bytes.subarray(from, free));
  }
  return packed;
}

function inflate(packed: Uint8Array, { name, size }: Entry): Uint8Array {
  if (size > packed.length * DEFLATE_MOST) stop(refuse('damaged', name));
  const whole = new Uint8Array(size);
  let filled = 0;
  const stream = new Inflate((chunk) => {
    if (filled + chunk.length > size) stop(refuse('damaged', name));
    whole.set(chunk, filled);
    filled += chunk.length;
  });
  for (let at = 0; at === 0 || at < packed.length; at += MORSEL) {
    stream.push(packed.subarray(at, at + MORSEL), at + MORSEL >= packed.length);
  }
  return filled === size ? whole : stop(refuse('damaged', name));
}

function unpack(packed: Uint8Array, entry: Entry): Uint8Array {
  let whole: Uint8Array;
  if (entry.method === STORED) {
    if (entry.size !== packed.length) stop(refuse('damaged', entry.name));
    whole = packed.slice();
  } else if (entry.method === DEFLATED) {
    whole = inflate(packed, entry);
  } else {
    return stop(refuse('damaged', entry.name));
  }
  return crc32(whole) === entry.checksum ? whole : stop(refuse('damaged', entry.name));
}

function read(bytes: Uint8Array, allowance: Allowance): ReadonlyMap<string, Uint8Array> {
  if (bytes.length === 0) stop(refuse('empty-file'));
  if (bytes.length > FILE_LIMITS.fileBytes) stop(refuse('too-large', 'the file', FILE_LIMITS.fileBytes));
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const first = bytes.length < 4 ? 0 : view.getUint32(0, true);
  if (first === END_RECORD && bytes.length === END_SIZE) return new Map();
  if (first !== LOCAL_HEADER) stop(refuse('not-a-container'));
  if (bytes.length < END_SIZE) stop(refuse('cut-short'));

  const entries = readDirectory(bytes, view);
  refuseRepeated(entries);
  const packed = locate(bytes, view, entries);
  const wanted = entries.filter(({ name, size }) => {
    const most = allowance(name);
    if (typeof most === 'object' && most !== null) stop(most);
    if (most !== null && size > most) stop(refuse('too-large', `“${name}”`, most));
    return most !== null;
  });
  const total = wanted.reduce((sum, { size }) => sum + size, 0);
  const most = FILE_LIMITS.patternBytes + FILE_LIMITS.mediaBytes;
  if (total > most) stop(refuse('too-large', 'everything in it', most));
  return new Map(wanted.map((entry) => [entry.name, unpack(packed.get(entry)!, entry)]));
}

/**
 * Unpacks the entries that `allowance` lets in, by name. All or nothing: the first fault anywhere refuses
 * the whole file.
 */
export function unzip(bytes: Uint8Array, allowance: Allowance): Unzipped {
  try {
    return { ok: true, entries: read(bytes, allowance) };
  } catch (fault) {
    // Besides our own refusals only the inflating library throws, on packed bytes that make no sense.
    return {
      ok: false,
      error: fault instanceof Refused ? fault.refusal : refuse('damaged', 'its packed content'),
    };
  }
}
