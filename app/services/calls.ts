/**
 * Every call that a page may make to its host, with what it may say in it: the one gate for both shells. What
 * does not have the shape is refused before the host hears of it.
 */
import * as z from 'zod';
import { FILE_LIMITS, TREE_LIMITS, VALUE_LIMITS } from '../../core/document/limits.ts';
import { isId } from '../../core/document/words.ts';
import type { ExportStep, Host } from '../host/host.ts';
import { SETTINGS } from './settings.ts';

const handle = z.string().min(1).max(100);
const desk = z.string().refine(isId);
const title = z.string().max(VALUE_LIMITS.sentence);
const stamp = z.string().min(1).max(100).nullable();
const name = z.string().max(300);
const bytes = (most: number) => z.instanceof(Uint8Array).refine(({ length }) => length <= most);

const terms = z.enum(['us', 'uk']);
const paper = z.enum(['a4', 'letter']);
const edition = z.enum(['standard', 'large-print', 'ink-saving']);
const size = z.string().max(VALUE_LIMITS.id).nullable();
/** Characters of a drawing; the largest schematics have some ten thousand. */
const DRAWING_MOST = 20_000_000;
/** Sizes, terms and the like, each once at most. */
const MOST_CHOICES = 100;

const JOB = z.strictObject({ desk, document: z.unknown() });
const person = z.string().max(VALUE_LIMITS.id);
const CHOICE = z.strictObject({ terms, paper, edition, size, person: person.optional() });
const REQUEST = z.strictObject({
  terms: z.array(terms).max(MOST_CHOICES),
  papers: z.array(paper).max(MOST_CHOICES),
  editions: z.array(edition).max(MOST_CHOICES),
  sizes: z.array(size).max(MOST_CHOICES),
  people: z.array(person).max(MOST_CHOICES).optional(),
  report: z.boolean().optional(),
  as: z
    .discriminatedUnion('kind', [
      z.strictObject({
        kind: z.literal('pack'),
        pages: z.array(z.strictObject({ terms, page: z.int().min(1).max(10_000) })).max(MOST_CHOICES),
      }),
      z.strictObject({ kind: z.literal('errata'), handle, version: z.string().max(100) }),
    ])
    .optional(),
  pictures: z.array(bytes(FILE_LIMITS.pictureBytes)).max(MOST_CHOICES).optional(),
  folder: handle,
});

/** Words typed for forms: each of a form's length, and what it is for tells no more than a finding's words. */
const ASIDES = z
  .record(z.string().max(2 * VALUE_LIMITS.sentence + 200), z.string().max(VALUE_LIMITS.sentence))
  .refine((asides) => Object.keys(asides).length <= TREE_LIMITS.items);

/** Calls that are answered once and cannot be stopped. */
export type ShortCall = Exclude<keyof Host, 'print' | 'export' | 'listen'>;

const SHORT = {
  start: z.tuple([]),
  chooseFile: z.tuple([]),
  chooseSave: z.tuple([name]),
  chooseFolder: z.tuple([]),
  read: z.tuple([handle]),
  save: z.tuple([handle, bytes(FILE_LIMITS.fileBytes), stamp, title]),
  release: z.tuple([handle]),
  example: z.tuple([name]),
  versions: z.tuple([handle]),
  version: z.tuple([handle, z.string().max(100)]),
  keep: z.tuple([
    desk,
    z.strictObject({
      title,
      handle: handle.nullable(),
      stamp,
      document: z.unknown(),
      asides: ASIDES.optional(),
    }),
  ]),
  keepPicture: z.tuple([desk, z.string().refine(isId), bytes(FILE_LIMITS.pictureBytes)]),
  forget: z.tuple([desk]),
  recovered: z.tuple([]),
  recover: z.tuple([desk]),
  saveDrawing: z.tuple([handle, name, z.string().max(DRAWING_MOST).startsWith('<svg ')]),
  reveal: z.tuple([handle]),
  recent: z.tuple([]),
  forgetRecent: z.tuple([handle]),
  saveSettings: z.tuple([SETTINGS]),
  openLink: z.tuple([z.string().max(5_000)]),
  newWindow: z.tuple([]),
  close: z.tuple([z.enum(['close', 'stay'])]),
} satisfies { readonly [Name in ShortCall]: z.ZodType<Parameters<Host[Name]>> };

export const SHORT_CALLS = Object.keys(SHORT) as readonly ShortCall[];

/** A call that is not one of the host's, or says what it may not. A sentence for the page's own log. */
export class BadCall extends Error {}

function checked<T>(name: string, shape: z.ZodType<T>, values: unknown): T {
  const parsed = shape.safeParse(values);
  if (parsed.success) return parsed.data;
  const at = parsed.error.issues[0]?.path.join('.') || 'what was given';
  throw new BadCall(`The call “${name}” cannot be carried out: ${at} is not what it may be.`);
}

export const isShortCall = (name: string): name is ShortCall => Object.hasOwn(SHORT, name);

/** Carries out a call that is answered once. Throws `BadCall`. */
export async function callHost(host: Host, name: ShortCall, values: unknown): Promise<unknown> {
  const call = host[name] as (...given: readonly unknown[]) => Promise<unknown>;
  return call.apply(host, [...(checked<unknown>(name, SHORT[name], values) as readonly unknown[])]);
}

/** Carries out `print`. Throws `BadCall`. */
export async function callPrint(host: Host, values: unknown, signal: AbortSignal): Promise<unknown> {
  const [job, choice] = checked('print', z.tuple([JOB, CHOICE]), values);
  return host.print(job, choice, signal);
}

/** Carries out `export`. Throws `BadCall`. */
export async function callExport(
  host: Host,
  values: unknown,
  progress: (step: ExportStep) => void,
  signal: AbortSignal,
): Promise<unknown> {
  const [job, request] = checked('export', z.tuple([JOB, REQUEST]), values);
  return host.export(job, request, progress, signal);
}
