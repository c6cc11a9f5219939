/**
 * What the host itself cannot do, in sentences for the maker: everything that is not about a disk or a file's
 * contents. It decides nothing.
 */
import type { HostError } from '../host/host.ts';

const SENTENCES = {
  'unknown-handle': () =>
    'Turnchain does not know this file any more. Open it again; nothing on the disk was changed.',
  'unknown-desk': () => 'There is no work kept under this name. It was saved or given up before.',
  'unknown-example': (name: string) => `There is no example “${name}” in this installation.`,
  interrupted: () => 'Stopped before it was done.',
  'bad-name': () =>
    'This cannot be a file’s name. Use letters, figures, spaces, hyphens and dots, without / \\ : * ? " < > |.',
  'folder-closed': (name: string) => `You are not allowed to look into the folder “${name}”.`,
  'folder-gone': (name: string) => `The folder “${name}” is not there any more.`,
  'printing-failed': (fault: string) =>
    `The booklet could not be made (${fault}). The pattern is unharmed. Save it, and try again after a restart.`,
} as const satisfies Record<string, (...values: never[]) => string>;

export type HostErrorCode = keyof typeof SENTENCES;

/** The error for a reason, with the value that its sentence needs. */
export function hostError(code: HostErrorCode, value = ''): HostError {
  const sentence: (value: string) => string = SENTENCES[code];
  return { code, message: sentence(value) };
}
