import type { Block, Sheet, Tone } from './blocks.js';
import { visibleText } from './visible-text.js';

const width = 88;
const marks: Readonly<Record<Tone, string>> = { good: '[ok]', bad: '[!!]', open: '[??]' };

function wrap(text: string, indent: string, first = indent): string {
  const lines: string[] = [];
  let line = first;
  let empty = true;
  for (const word of text.split(/\s+/)) {
    if (!empty && line.length + 1 + word.length > width) {
      lines.push(line);
      line = indent + word;
    } else {
      line += empty ? word : ` ${word}`;
    }
    empty = false;
  }
  return [...lines, line].join('\n');
}

function facts(rows: readonly (readonly [string, string])[]): string {
  const column = Math.max(...rows.map(([name]) => name.length)) + 2;
  return rows.map(([name, value]) => wrap(value, ' '.repeat(column + 2), `  ${name.padEnd(column)}`)).join('\n');
}

/** A table as one paragraph a row: narrow terminals and screen readers manage that, columns they do not. */
function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  return rows
    .map((cells) => {
      const parts = cells
        .map((cell, index) => (cell === '' ? '' : head[index] === '' ? cell : `${head[index]} ${cell}`))
        .filter((part) => part !== '');
      return wrap(parts.join(' · '), '    ', '  - ');
    })
    .join('\n');
}

function render(block: Block): string {
  switch (block.type) {
    case 'heading':
      return `\n${block.text.toUpperCase()}`;
    case 'paragraph':
      return wrap(block.text, '  ');
    case 'facts':
      return facts(block.rows);
    case 'verdicts':
      return block.lines.map(({ question, answer, tone }) => wrap(`${question}: ${answer}`, '       ', `  ${marks[tone]} `)).join('\n');
    case 'table':
      return `  ${block.caption}:\n${table(block.head, block.rows)}`;
    case 'list':
      return block.items.map((item) => wrap(item, '    ', block.tone === 'caution' ? '  ! ' : '  - ')).join('\n');
    case 'page-end':
      return `\n${'-'.repeat(width)}`;
    case 'plot':
      return wrap(`${block.title}: ${block.description}`, '  ');
  }
}

/** The sheet for a terminal or a plain mail. */
export function sheetAsText(sheet: Sheet): string {
  const rule = '='.repeat(Math.min(width, sheet.title.length));
  return visibleText(`${sheet.title}\n${rule}\n${sheet.blocks.map(render).join('\n')}\n`);
}
