/**
 * The `.turnchain` file: a zip container with `pattern.json` and the pictures under `media/`. Reading is all
 * or nothing and never throws; writing gives the same bytes for the same document. Where the bytes come from
 * and go to is not known here. `resources/format.md` describes the format for people.
 */
import { strToU8, type Zippable, zipSync } from 'fflate';
import type { Node } from 'prosemirror-model';
import { checkTree } from './check.ts';
import { canonical, parseJson } from './json.ts';
import { FILE_LIMITS } from './limits.ts';
import { EXTENSION, lookAt, type Picture, type Pictures, shownPictures } from './media.ts';
import { MIGRATIONS, type Migration, upgrade, VERSION, versionAfter } from './migrations.ts';
import { type Refusal, refuse } from './refusals.ts';
import { isId } from './words.ts';
import { unzip } from './zip.ts';

/** What `format` says in every file. */
export const FORMAT = 'turnchain';

const PATTERN = 'pattern.json';
const MEDIA = 'media/';

export type ContainerRead =
  | {
      readonly ok: true;
      readonly document: Node;
      readonly media: Pictures;
      /** Version the file had when it was older than today's, else null. */
      readonly migratedFrom: number | null;
    }
  | { readonly ok: false; readonly error: Refusal };

/** Id and extension of a picture's entry, or null when the name is not one that Turnchain gives. */
function pictureName(name: string): readonly [id: string, extension: string] | null {
  const dot = name.lastIndexOf('.');
  const id = name.slice(MEDIA.length, dot);
  const extension = name.slice(dot + 1);
  return isId(id) && Object.values(EXTENSION).includes(extension) ? [id, extension] : null;
}

/**
 * What is unpacked, and how much of it. Entries of other names may have been put there by a system that made
 * the zip anew: they stay packed, unread, and do not outlive the next save. Under `media/` only hidden files
 * are passed over so; whatever else is no picture there is a surprise, and the file is refused.
 */
function allowance(name: string): number | null | Refusal {
  if (name === PATTERN) return FILE_LIMITS.patternBytes;
  if (!name.startsWith(MEDIA) || name === MEDIA || name.startsWith(`${MEDIA}.`)) return null;
  return pictureName(name) ? FILE_LIMITS.pictureBytes : refuse('strange-picture', name);
}

function readPictures(entries: ReadonlyMap<string, Uint8Array>): Pictures | Refusal {
  const pictures = new Map<string, Picture>();
  for (const [name, bytes] of entries) {
    const named = pictureName(name);
    if (!name.startsWith(MEDIA) || !named) continue;
    const [id, extension] = named;
    const look = lookAt(bytes);
    if ('code' in look || EXTENSION[look.kind] !== extension) return refuse('strange-picture', name);
    if (pictures.has(id)) return refuse('repeated-name', name);
    pictures.set(id, { ...look, id, bytes });
    if (pictures.size > FILE_LIMITS.pictures) return refuse('too-many', 'pictures', FILE_LIMITS.pictures);
  }
  return pictures;
}

interface Opened {
  readonly tree: unknown;
  readonly version: number;
}

function openPattern(bytes: Uint8Array, chain: readonly Migration[]): Opened | Refusal {
  const parsed = parseJson(bytes);
  if (!parsed.ok) return parsed.error;
  const file = parsed.value;
  if (typeof file !== 'object' || file === null || !('format' in file) || file.format !== FORMAT) {
    return refuse('wrong-format');
  }
  const version = 'version' in file ? file.version : null;
  if (typeof version !== 'number' || !Number.isSafeInteger(version) || version < 1)
    return refuse('bad-version');
  const known = versionAfter(chain);
  if (version > known) return refuse('newer-version', version, known);
  const current = upgrade({ ...file }, version, chain);
  if (current === null) return refuse('bad-structure', `as a file of version ${version}`);
  const { format: _format, version: _version, document, ...others } = current;
  if (Object.keys(others).length > 0) return refuse('bad-structure', 'the pattern');
  return { tree: document, version };
}

/**
 * Reads a `.turnchain` file. Whatever is wrong with the bytes, the answer is one refusal and nothing else.
 * `chain` is the history of the format, today's unless a test has one of its own.
 */
export function readContainer(bytes: Uint8Array, chain: readonly Migration[] = MIGRATIONS): ContainerRead {
  const unzipped = unzip(bytes, allowance);
  if (!unzipped.ok) return unzipped;
  const pattern = unzipped.entries.get(PATTERN);
  if (!pattern) return { ok: false, error: refuse('no-pattern') };
  const opened = openPattern(pattern, chain);
  if ('code' in opened) return { ok: false, error: opened };
  const checked = checkTree(opened.tree);
  if (!checked.ok) return checked;
  const media = readPictures(unzipped.entries);
  if ('code' in media) return { ok: false, error: media };
  const { version } = opened;
  return {
    ok: true,
    document: checked.document,
    media,
    migratedFrom: version === versionAfter(chain) ? null : version,
  };
}

interface Branch {
  readonly type: string;
  readonly text?: string;
  readonly content?: readonly Branch[];
}

/** The tree without texts that are empty once they are tidied: a document has none. */
function withoutEmptyText(branch: Branch): Branch {
  if (!branch.content) return branch;
  return { ...branch, content: branch.content.filter(({ text }) => text !== '').map(withoutEmptyText) };
}

/**
 * The bytes of a `.turnchain` file. Pictures that the document does not show stay out. The same document and
 * pictures give the same bytes, on every machine and day. The bytes of a document within the limits of
 * `attributes` and `limits` are always read back; whoever saves makes sure by reading them.
 */
export function writeContainer(document: Node, media: Pictures): Uint8Array {
  const tree = withoutEmptyText(canonical(document.toJSON()) as unknown as Branch);
  const file = { format: FORMAT, version: VERSION, document: tree };
  const shown = [...shownPictures(document)].flatMap((id) => media.get(id) ?? []);
  const entries: [string, Zippable[string]][] = [
    [PATTERN, [strToU8(JSON.stringify(file)), { level: 6 }]],
    // Pictures are compressed already: packing them again costs time and saves nothing.
    ...shown.map(({ id, kind, bytes }): [string, Zippable[string]] => [
      `${MEDIA}${id}.${EXTENSION[kind]}`,
      [bytes, { level: 0 }],
    ]),
  ];
  entries.sort(([a], [b]) => (a < b ? -1 : 1));
  // Zip holds local time without a zone; the first moment it can hold, in whatever zone this runs.
  return zipSync(Object.fromEntries(entries), { mtime: new Date(1980, 0, 1) });
}
