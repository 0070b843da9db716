import type { Block, Sheet, Tone } from './blocks.js';
import { visibleText } from './visible-text.js';

const marks: Readonly<Record<Tone, string>> = { good: '✔', bad: '✘', open: '?' };

function escaped(text: string): string {
  return (
    visibleText(text)
      .replace(/[\\`*_{}[\]<>|#~&]/g, '\\$&')
      .replace(/\s*\n\s*/g, ' ')
      // What would begin a list, a rule or a link when it stands first or alone.
      .replace(/^(\s*)([-+=])/, '$1\\$2')
      .replace(/^(\s*\d+)([.)])/, '$1\\$2')
      .replace(/\b(https?|ftp|mailto):/gi, '$1\\:')
      .replace(/\bwww\./gi, 'www\\.')
  );
}

function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) => `| ${cells.map(escaped).join(' | ')} |`;
  return [line(head), `|${head.map(() => ' --- |').join('')}`, ...rows.map(line)].join('\n');
}

function render(block: Block): string {
  switch (block.type) {
    case 'heading':
      return `## ${escaped(block.text)}`;
    case 'paragraph':
      return escaped(block.text);
    case 'facts':
      return block.rows.map(([name, value]) => `- **${escaped(name)}:** ${escaped(value)}`).join('\n');
    case 'verdicts':
      return block.lines.map(({ question, answer, tone }) => `- ${marks[tone]} **${escaped(question)}** ${escaped(answer)}`).join('\n');
    case 'table':
      return `${escaped(block.caption)}:\n\n${table(block.head, block.rows)}`;
    case 'list':
      return block.items.map((item) => `- ${block.tone === 'caution' ? '**!** ' : ''}${escaped(item)}`).join('\n');
    case 'page-end':
      return '---';
    case 'plot':
      return `**${escaped(block.title)}.** ${escaped(block.description)}`;
  }
}

/** The sheet for a ticket or a wiki. */
export function sheetAsMarkdown(sheet: Sheet): string {
  return `# ${escaped(sheet.title)}\n\n${sheet.blocks.map(render).join('\n\n')}\n`;
}
