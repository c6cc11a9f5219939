/**
 * Writes the example patterns as files, from their sources in `resources/examples`: run by `npm run examples`.
 * A test checks that the files are current. It decides nothing about a pattern.
 */
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { compose } from '../../core/document/compose.ts';
import { writeContainer } from '../../core/document/container.ts';
import type { Pattern } from '../../core/document/pattern.ts';
import { hat } from '../../resources/examples/hat.ts';
import { tee } from '../../resources/examples/tee.ts';
import { vest } from '../../resources/examples/vest.ts';

/** Every example by the name of its file. */
export const EXAMPLES: Readonly<Record<string, Pattern>> = {
  'boxy-vest': vest,
  'crown-down-hat': hat,
  'raglan-tee': tee,
};

/** Where an example's file stands. */
export function exampleFile(name: string): string {
  return fileURLToPath(new URL(`../../resources/examples/${name}.turnchain`, import.meta.url));
}

/** The bytes of an example's file. */
export function exampleBytes(pattern: Pattern): Uint8Array {
  return writeContainer(compose(pattern), new Map());
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  for (const [name, pattern] of Object.entries(EXAMPLES)) {
    writeFileSync(exampleFile(name), exampleBytes(pattern));
    console.log(`${name}.turnchain`);
  }
}
