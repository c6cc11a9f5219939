/** Public face of the reader. */
export { normaliseName, type ReadOptions, readDefinitionItems as readItems, readRow } from './read.ts';
export { readText } from './text.ts';
