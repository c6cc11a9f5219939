/** The calls by which a page without dialogs of the system looks at folders, with what it may say in them. */
import * as z from 'zod';
import type { Folders } from '../host/folders.ts';
import { BadCall } from '../services/calls.ts';

const handle = z.string().min(1).max(100);
const name = z.string().max(300);

const SHAPES = {
  roots: z.tuple([]),
  list: z.tuple([handle, z.boolean()]),
  newFile: z.tuple([handle, name]),
  newFolder: z.tuple([handle, name]),
} satisfies { readonly [Name in keyof Folders]: z.ZodType<Parameters<Folders[Name]>> };

export type FolderCall = `folders.${keyof Folders}`;

const nameOf = (call: string): string => call.slice('folders.'.length);

export const isFolderCall = (call: string): call is FolderCall =>
  call.startsWith('folders.') && Object.hasOwn(SHAPES, nameOf(call));

/** Carries the call out. Throws `BadCall`. */
export async function callFolders(folders: Folders, call: FolderCall, values: unknown): Promise<unknown> {
  const known = nameOf(call) as keyof Folders;
  const parsed = SHAPES[known].safeParse(values);
  if (!parsed.success) throw new BadCall(`The call “${call}” cannot be carried out as it stands.`);
  const run = folders[known] as (...given: readonly unknown[]) => Promise<unknown>;
  return run.apply(folders, parsed.data as unknown[]);
}
