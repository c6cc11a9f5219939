/**
 * What a large marketplace takes for one digital listing, so that a maker hears of it before uploading. From third-party
 * pages (a glossary of digital downloads, see the notes on conventions): five files of 20 MB each; to be confirmed there.
 */
export const LISTING_LIMITS = { files: 5, bytes: 20 * 1024 * 1024 } as const;

const mb = (bytes: number): string => `${(bytes / (1024 * 1024)).toFixed(1)} MB`;

/** Sentences on what goes beyond the limits; none where all is well. */
export function listingNotes(pack: {
  readonly name: string;
  readonly bytes: number;
  readonly files: readonly { readonly name: string; readonly bytes: number }[];
}): readonly string[] {
  const notes: string[] = [];
  const confirm = 'Ask the marketplace for its own limits.';
  if (pack.bytes > LISTING_LIMITS.bytes)
    notes.push(
      `“${pack.name}” is ${mb(pack.bytes)}; a large marketplace takes ${mb(LISTING_LIMITS.bytes)} for one file. Fewer papers, editions or photographs make it smaller. ${confirm}`,
    );
  if (pack.files.length > LISTING_LIMITS.files)
    notes.push(
      `There are ${pack.files.length} PDFs in “${pack.name}”; a large marketplace takes ${LISTING_LIMITS.files} files for one listing, so upload the zip, or choose fewer. ${confirm}`,
    );
  for (const { name, bytes } of pack.files)
    if (bytes > LISTING_LIMITS.bytes)
      notes.push(
        `“${name}” alone is ${mb(bytes)}; a large marketplace takes ${mb(LISTING_LIMITS.bytes)} for one file. ${confirm}`,
      );
  return notes;
}
