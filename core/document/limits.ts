/**
 * How large a pattern may be. Far above what any maker writes and far below what would freeze a machine, so
 * that a damaged or hostile file is refused early. Only numbers: who enforces them stands elsewhere.
 * `resources/format.md` lists the same numbers, and a test holds the two together.
 */

const MiB = 1024 * 1024;

/** Bounds of the file as bytes, before and after unpacking. */
export const FILE_LIMITS = {
  /** The whole `.turnchain` file. */
  fileBytes: 256 * MiB,
  /** Entries in the container, unknown ones included. */
  entries: 2_000,
  /** `pattern.json`, unpacked. */
  patternBytes: 32 * MiB,
  /** All pictures together, unpacked. */
  mediaBytes: 256 * MiB,
  /** One picture. */
  pictureBytes: 25 * MiB,
  /** Pictures in one pattern. */
  pictures: 500,
  /** Width or height of a picture, in pixels, and their product. */
  pictureSide: 20_000,
  picturePixels: 100_000_000,
  /** Brackets within brackets in `pattern.json`. */
  jsonDepth: 64,
} as const;

/** Bounds of the document's tree. */
export const TREE_LIMITS = {
  sizes: 64,
  lines: 2_000,
  pieces: 500,
  rows: 20_000,
  /** Gauges, yarns, hooks, notions, special stitches, abbreviations, notes: each of them. */
  items: 2_000,
  /** Everything that is a node, text and figures included. */
  nodes: 500_000,
  /** Characters of all text, in rows and forms together. */
  characters: 1_000_000,
  depth: 12,
} as const;

/** Bounds of single values. */
export const VALUE_LIMITS = {
  /** Characters of a name, label or short form field. */
  name: 200,
  /** Characters of a formula, a figure or a sentence. */
  sentence: 2_000,
  /** Characters of one row, paragraph or description. */
  paragraph: 20_000,
  /** Largest number in any field, either side of zero. */
  number: 1_000_000,
  /** Characters of an id. */
  id: 64,
} as const;
