/**
 * Begins the printing thread from the sources: brings the compiler that runs them, which not every Node takes
 * over into a thread. The built program does not have it.
 */
import { tsImport } from 'tsx/esm/api';

await tsImport('./printing-worker.ts', import.meta.url);
