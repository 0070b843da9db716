import { log } from '../drive.js';
import { type CorpusFile, utf8 } from './shape.js';

const bytes = (start: string, length = 400) => {
  const content = new Uint8Array(length);
  content.set(Uint8Array.from(start, (sign) => sign.charCodeAt(0)));
  return content;
};
const refuse = (name: string, content: () => string | Uint8Array, problem: NonNullable<CorpusFile['expect']['problem']>): CorpusFile => ({
  name,
  content,
  expect: { problem },
});

/** Files that are no log in text. */
export const refused: readonly CorpusFile[] = [
  refuse('nothing', () => '', 'empty'),
  refuse('blanks and line ends', () => ' \n\n  \r\n', 'empty'),
  refuse('the mark of UTF-8 alone', () => utf8('\ufeff'), 'empty'),
  refuse('a spreadsheet', () => bytes('PK\u0003\u0004'), 'not_text'),
  refuse('a spreadsheet of the old kind', () => bytes('\u00d0\u00cf\u0011\u00e0\u00a1\u00b1\u001a\u00e1'), 'not_text'),
  refuse('a measurement file', () => bytes('MDF     4.10    '), 'not_text'),
  refuse('a Parquet file', () => bytes('PAR1'), 'not_text'),
  refuse('a compressed file', () => bytes('\u001f\u008b\u0008'), 'not_text'),
  refuse('a PDF document', () => bytes('%PDF-1.7'), 'not_text'),
  refuse('random bytes', () => Uint8Array.from({ length: 5000 }, (_, index) => (index * 7919 + (index >> 3) * 31) % 256), 'not_text'),
  refuse('a web page', () => '<!DOCTYPE html><html><body>Log in</body></html>', 'not_text'),
  refuse('JSON', () => '{"time":[0,1],"engineSpeed":[700,700]}', 'not_text'),
  refuse('a letter', () => 'Dear reader,\nthe log follows tomorrow.\nKind regards', 'no_table'),
  refuse('one number', () => '7', 'no_table'),
  refuse('the first half of a log’s bytes read the wrong way round', () => utf8(log()).map((byte) => byte ^ 0x80), 'no_table'),
];
