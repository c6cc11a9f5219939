/**
 * Where the files that travel with the program are: fonts and example patterns. Found by looking upwards from
 * this module, so that they are the same from a checkout and from the bundle in `dist`. Reads no contents.
 */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const ENDING = '.turnchain';

/** The package's own folder: the nearest above this module that holds the resources. */
export function packageFolder(from: string = fileURLToPath(import.meta.url)): string {
  for (let folder = dirname(from); ; folder = dirname(folder)) {
    if (existsSync(join(folder, 'resources', 'fonts'))) return folder;
    if (folder === dirname(folder))
      throw new Error('Turnchain is not installed whole: its resources are missing.');
  }
}

/** Which Turnchain this is: "0.1.0". */
export function packageVersion(): string {
  const pack: unknown = JSON.parse(readFileSync(join(packageFolder(), 'package.json'), 'utf8'));
  return String((pack as { version: unknown }).version);
}

/** Folder of the fonts that patterns are printed with. */
export function fontsFolder(): string {
  return join(packageFolder(), 'resources', 'fonts');
}

/** An example pattern that comes with the program. */
export interface Example {
  /** "boxy-vest": the file's name without its ending. */
  readonly name: string;
  readonly path: string;
}

/** All examples, by name. */
export function examples(): readonly Example[] {
  const folder = join(packageFolder(), 'resources', 'examples');
  if (!existsSync(folder)) return [];
  return readdirSync(folder)
    .filter((file) => file.endsWith(ENDING))
    .sort()
    .map((file) => ({ name: file.slice(0, -ENDING.length), path: join(folder, file) }));
}
