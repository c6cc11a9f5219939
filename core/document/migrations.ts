/**
 * How older files become today's. A version of the file is a number; each migration turns the JSON of one
 * version into that of the next, and is never changed after it has been released. What the JSON means is
 * not known here.
 *
 * To change the format: append a migration, describe the version in `resources/format.md`, and add a file
 * of the old version to the tests.
 */

/** From one version to the next. Given the whole of `pattern.json`, it returns the whole anew. */
export interface Migration {
  /** Version it starts from; it ends at `from + 1`. */
  readonly from: number;
  /** What changed, for the description of the format. */
  readonly change: string;
  readonly migrate: (file: Readonly<Record<string, unknown>>) => Readonly<Record<string, unknown>>;
}

/** Every migration so far, oldest first. */
export const MIGRATIONS: readonly Migration[] = [
  {
    from: 1,
    change:
      'Charts and the workbook stand after the closing page. A yarn may have `ballPrice`, a notion `price`, a piece `gauge`.',
    migrate: (file) => {
      const document = file.document as { readonly content: readonly unknown[] };
      const content = [
        ...document.content,
        { type: 'charts' },
        {
          type: 'workbook',
          content: ['makings', 'people', 'accepted', 'doubts'].map((type) => ({ type })),
        },
      ];
      return { ...file, document: { ...document, content } };
    },
  },
];

/** The version that a chain of migrations ends at. */
export function versionAfter(chain: readonly Migration[]): number {
  return (chain.at(-1)?.from ?? 0) + 1;
}

/** The version written today. */
export const VERSION = versionAfter(MIGRATIONS);

/**
 * Brings `file`, of `version`, to the chain's last version, one step after another. Null when the content
 * is not what the version promises or the chain has no step for it.
 */
export function upgrade(
  file: Readonly<Record<string, unknown>>,
  version: number,
  chain: readonly Migration[],
): Readonly<Record<string, unknown>> | null {
  let current = file;
  for (let at = version; at < versionAfter(chain); at++) {
    const step = chain.find(({ from }) => from === at);
    if (!step) return null;
    try {
      current = { ...step.migrate(current), version: at + 1 };
    } catch {
      return null;
    }
  }
  return current;
}
