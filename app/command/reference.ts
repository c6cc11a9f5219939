/**
 * Writes the reference of everything that the program can find fault with, from the kinds and rules
 * themselves: run by `npm run findings`, read in `resources/findings.md`. A test checks that the file is
 * current. It words nothing of its own.
 */
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { CATALOGUE, type FindingKind, tellAs } from '../../core/findings/index.ts';
import { PRINT_KINDS } from '../../core/print/kinds.ts';
import { ACCEPTANCE_STALE, RULES } from '../../core/review/index.ts';
import { reportRows } from '../../core/study/index.ts';

/** Where the reference stands. */
export const REFERENCE = fileURLToPath(new URL('../../resources/findings.md', import.meta.url));

const SEVERITIES = {
  error: 'the pattern cannot be followed, or a number is wrong',
  warning: 'a reader would stumble',
  note: 'worth knowing',
} as const;

/** What its example makes the program say; of a kind that needs a whole pattern, what its sample would. */
function sentenceOf(kind: FindingKind): string {
  if (kind.example !== null) {
    const { findings, rows } = reportRows(kind.example, 'us');
    const own = [...findings, ...rows.flatMap((row) => row.findings)].find(({ code }) => code === kind.code);
    if (own === undefined) throw new Error(`The example of ${kind.code} does not raise it`);
    return own.message;
  }
  const fact = { code: kind.code, from: 0, to: 0, data: kind.sample ?? {} };
  const telling = { terms: 'us', labels: ['S', 'M', 'L'], node: null, text: '' } as const;
  return tellAs(kind, [{ size: null, fact }], telling).message;
}

function entry(kind: FindingKind): string {
  const example = kind.example === null ? '' : `\`\`\`text\n${kind.example}\n\`\`\`\n\n`;
  return `### ${kind.code}

**${kind.title}** (${kind.severity}). ${kind.reason}

${example}> ${sentenceOf(kind)}
`;
}

function entries(kinds: readonly FindingKind[]): string {
  return [...kinds]
    .sort((a, b) => (a.code < b.code ? -1 : 1))
    .map(entry)
    .join('\n');
}

/** The whole reference, as Markdown. */
export function reference(): string {
  const ruled = new Set(RULES.map(({ code }) => code));
  const severities = Object.entries(SEVERITIES).map(([name, meaning]) => `- **${name}**: ${meaning}.`);
  return `# What Turnchain finds

Made by \`npm run findings\`; not to be edited by hand. Each finding has a code that does not change, says how
grave it is and why it matters, and is shown with the sentence a maker reads. Examples are in US terms.

${severities.join('\n')}

## Reading, working and grading

${entries(CATALOGUE.filter(({ code }) => !ruled.has(code)))}
## The technical edit

${entries([...RULES, ACCEPTANCE_STALE])}
## Printing

${entries(PRINT_KINDS)}`;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  writeFileSync(REFERENCE, reference());
  process.stdout.write(`Wrote ${CATALOGUE.length} kinds and ${RULES.length} rules.\n`);
}
