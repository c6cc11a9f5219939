/** A booklet as plain text, block by block, for golden tests and for reading: what it says, not how it looks. */
import type { Block, Booklet, Words } from '../../core/print/content.ts';

export const wordsText = (words: Words): string => words.map((run) => run.text).join('');

export function booklet(of: Booklet): string {
  const { meta, cover, parts } = of;
  const lines = [
    `${meta.title} | ${meta.language} | ${meta.termsNote} | ${meta.version} | ${meta.sizeKey} | ${meta.date}`,
    '',
  ];
  if (cover !== null) {
    lines.push('# Cover');
    for (const words of [cover.subtitle, cover.byline, ...cover.summary]) {
      if (words !== null) lines.push(wordsText(words));
    }
    for (const item of cover.glance) lines.push(`- ${wordsText(item.label)}: ${wordsText(item.value)}`);
    lines.push('');
  }
  for (const part of parts) {
    lines.push(`# ${part.title}`, ...part.blocks.flatMap(blockLines), '');
  }
  return lines.join('\n').replaceAll('\u00A0', '~');
}

function blockLines(block: Block): readonly string[] {
  switch (block.kind) {
    case 'heading':
      return [`${'#'.repeat(block.level)} ${wordsText(block.words)}`];
    case 'paragraph':
      return [wordsText(block.words)];
    case 'row': {
      const side = block.side === null ? '' : ` (${block.side})`;
      const only = block.only === null ? '' : `[${block.only}] `;
      const count = block.count === null ? '' : ` ${wordsText(block.count)}`;
      return [`${block.label}${side}: ${only}${wordsText(block.body)}${count}`];
    }
    case 'list':
      return block.items.map(
        (item, i) => `${block.form === 'numbered' ? `${i + 1}.` : '*'} ${wordsText(item)}`,
      );
    case 'entries':
      return block.items.map((item) => `- ${wordsText(item.label)}: ${wordsText(item.value)}`);
    case 'table':
      return [
        `Table: ${wordsText(block.caption)}`,
        `| ${[block.corner, ...block.heads].map(wordsText).join(' | ')}`,
        ...block.rows.map((row) => `| ${[row.head, ...row.cells].map(wordsText).join(' | ')}`),
        ...(block.note === null ? [] : [wordsText(block.note)]),
      ];
    case 'figure':
      return [
        `[${block.image.name}: ${block.alt}]${block.caption === null ? '' : ` ${wordsText(block.caption)}`}`,
      ];
    case 'caution':
      return [`! ${block.title}`, ...block.paragraphs.map((words) => `! ${wordsText(words)}`)];
    case 'key':
      return [`${block.title}: ${wordsText(block.words)}`];
    case 'together':
      return block.blocks.flatMap(blockLines);
    case 'with-next':
      return blockLines(block.block);
    case 'space':
    case 'page-break':
      return [];
  }
}
