/** Containers made and spoilt for tests. */
import { strToU8, zipSync } from 'fflate';
import { compose } from '../../core/document/compose.ts';
import { writeContainer } from '../../core/document/container.ts';
import { type Picture, type Pictures, takePicture } from '../../core/document/media.ts';
import { VERSION } from '../../core/document/migrations.ts';
import type { Pattern } from '../../core/document/pattern.ts';
import { blankPattern } from '../../core/outlines/blank.ts';
import { png } from './pictures.ts';

export const blank: Pattern = blankPattern({
  title: 'Harbour vest',
  terms: 'us',
  units: 'metric',
  date: '2024-05-01',
});

export function taken(bytes: Uint8Array): Picture {
  const result = takePicture(bytes);
  if (!result.ok) throw new Error(result.error.message);
  return result.picture;
}

export const cover = taken(png(90));
export const media: Pictures = new Map([[cover.id, cover]]);

/** The blank pattern with a cover picture. */
export const covered: Pattern = {
  ...blank,
  about: { ...blank.about, cover: { id: cover.id, alt: 'The vest on a chair', caption: null } },
};

/** A whole file, good in every way. */
export const goodFile: Uint8Array = writeContainer(compose(covered), media);

/** JSON of a good document's tree, for tests to spoil. */
// biome-ignore lint/suspicious/noExplicitAny: what tests spoil has no shape
export const goodTree = (): any => JSON.parse(JSON.stringify(compose(covered).toJSON()));

/** A zip with `pattern.json` holding `text`, and whatever else. */
export function fileWith(text: string, others: Record<string, Uint8Array> = {}): Uint8Array {
  return zipSync({ 'pattern.json': strToU8(text), ...others });
}

/** A file whose tree is `tree`, of the version given. */
export const fileOf = (tree: unknown, version: unknown = VERSION): Uint8Array =>
  fileWith(JSON.stringify({ format: 'turnchain', version, document: tree }));

/** A copy with other bytes at `at`. */
export function patched(bytes: Uint8Array, at: number, values: readonly number[]): Uint8Array {
  const copy = bytes.slice();
  copy.set(values, at);
  return copy;
}

/** Where the n-th record with this signature ("PK" and two numbers) begins. */
export function record(bytes: Uint8Array, signature: readonly [number, number], nth = 0): number {
  let found = -1;
  for (let seen = 0; seen <= nth; seen++) {
    found = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length).indexOf(
      Buffer.from([0x50, 0x4b, ...signature]),
      found + 1,
    );
    if (found < 0) throw new Error('no such record');
  }
  return found;
}

export const LOCAL = [3, 4] as const;
export const DIRECTORY = [1, 2] as const;
export const END = [5, 6] as const;

/** Every occurrence of one name made another of the same length: in the header and in the directory. */
export function renamed(bytes: Uint8Array, from: string, to: string): Uint8Array {
  return new Uint8Array(Buffer.from(Buffer.from(bytes).toString('latin1').replaceAll(from, to), 'latin1'));
}
