/** A line of a table as text, with where it lies. */
export interface TextRecord {
  /** The line of the file on which it begins, from 1. */
  readonly line: number;
  readonly cells: readonly string[];
  /** Where it ends in the text, its line end included. */
  readonly end: number;
}

/** Cut the start of a text into records; a cell that begins with a quotation mark may hold separators and line ends. */
export function recordsOf(text: string, separator: string, most: number): TextRecord[] {
  const records: TextRecord[] = [];
  let at = 0;
  let line = 1;
  while (at < text.length && records.length < most) {
    const begun = line;
    const cells: string[] = [];
    for (;;) {
      const cell = cellAt(text, at, separator);
      cells.push(cell.value);
      line += cell.lines;
      at = cell.end;
      if (text[at] !== separator) break;
      at += 1;
    }
    if (text[at] === '\r' && text[at + 1] === '\n') at += 1;
    at += 1;
    line += 1;
    records.push({ line: begun, cells, end: Math.min(at, text.length) });
  }
  return records;
}

function cellAt(text: string, from: number, separator: string): { value: string; end: number; lines: number } {
  let start = from;
  while (text[start] === ' ') start += 1;
  if (text[start] === '"') {
    const quoted = quotedAt(text, start);
    if (quoted !== undefined) {
      let end = quoted.end;
      while (end < text.length && text[end] !== separator && text[end] !== '\n' && text[end] !== '\r') end += 1;
      return { value: quoted.value, end, lines: quoted.lines };
    }
  }
  let end = from;
  while (end < text.length && text[end] !== separator && text[end] !== '\n' && text[end] !== '\r') end += 1;
  return { value: text.slice(from, end), end, lines: 0 };
}

function quotedAt(text: string, open: number): { value: string; end: number; lines: number } | undefined {
  let at = open + 1;
  for (;;) {
    const close = text.indexOf('"', at);
    if (close < 0) return undefined;
    if (text[close + 1] === '"') {
      at = close + 2;
      continue;
    }
    const inside = text.slice(open + 1, close);
    return { value: inside.replace(/""/g, '"'), end: close + 1, lines: inside.match(/\r\n|\r|\n/g)?.length ?? 0 };
  }
}
