/** How the bytes of a log become text. */
export type Encoding = 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252';

/** A file that is no log in text, by what it is. */
export type OtherFile = 'spreadsheet' | 'measurement-data' | 'parquet' | 'compressed' | 'binary' | 'web-page' | 'json' | 'document';

/** What the first bytes of a file tell. */
export type Sniffed = { readonly encoding: Encoding; readonly mark: number } | { readonly other: OtherFile };

const ascii = (bytes: Uint8Array, length: number) => String.fromCharCode(...bytes.subarray(0, length));

function otherFile(head: Uint8Array): OtherFile | undefined {
  const start = ascii(head, 8);
  if (start.startsWith('PK\u0003\u0004') || start.startsWith('\u00d0\u00cf\u0011\u00e0')) return 'spreadsheet';
  if (start.startsWith('MDF ') || start.startsWith('UnFinMF')) return 'measurement-data';
  if (start.startsWith('PAR1')) return 'parquet';
  if (
    start.startsWith('\u001f\u008b') ||
    start.startsWith('BZh') ||
    start.startsWith('\u00fd7zXZ') ||
    start.startsWith('\u0028\u00b5\u002f\u00fd')
  )
    return 'compressed';
  if (start.startsWith('%PDF')) return 'document';
  return undefined;
}

/** Zero bytes on every second place are UTF-16 that came without its mark. */
function bareUtf16(head: Uint8Array): Encoding | undefined {
  const length = Math.min(head.length & ~1, 2000);
  let even = 0;
  let odd = 0;
  for (let i = 0; i < length; i += 2) {
    if (head[i] === 0) even += 1;
    if (head[i + 1] === 0) odd += 1;
  }
  if (length < 8) return undefined;
  if (odd > 0.35 * (length / 2) && even === 0) return 'utf-16le';
  if (even > 0.35 * (length / 2) && odd === 0) return 'utf-16be';
  return undefined;
}

/** Whether bytes are UTF-8, but for a sign that the end of the part cuts through. */
function isUtf8(head: Uint8Array): boolean {
  for (let cut = 0; cut < 4; cut += 1) {
    try {
      new TextDecoder('utf-8', { fatal: true }).decode(head.subarray(0, head.length - cut));
      return true;
    } catch {
      // The last sign may be cut in two; try once more without it.
    }
  }
  return head.length < 4;
}

/** Tell from the first bytes of a file how to read it, or what else it is. */
export function sniffBytes(head: Uint8Array): Sniffed {
  const other = otherFile(head);
  if (other !== undefined) return { other };
  const [a, b, c] = head;
  if (a === 0xef && b === 0xbb && c === 0xbf) return { encoding: 'utf-8', mark: 3 };
  if (a === 0xff && b === 0xfe) return { encoding: 'utf-16le', mark: 2 };
  if (a === 0xfe && b === 0xff) return { encoding: 'utf-16be', mark: 2 };
  const bare = bareUtf16(head);
  if (bare !== undefined) return { encoding: bare, mark: 0 };
  if (head.subarray(0, 4096).includes(0)) return { other: 'binary' };
  const text = new TextDecoder('windows-1252').decode(head.subarray(0, 200)).trimStart();
  if (/^<(?:!doctype|html|\?xml)/i.test(text)) return { other: 'web-page' };
  if (/^[[{]\s*["{[]/.test(text) && !/^\[[^\]]*\]\s*[,;\t]/.test(text)) return { other: 'json' };
  return { encoding: isUtf8(head) ? 'utf-8' : 'windows-1252', mark: 0 };
}

/** Bytes of any encoding to bytes of UTF-8, part by part. UTF-8 passes through untouched. */
export function transcoder(encoding: Encoding): (part: Uint8Array, last: boolean) => Uint8Array {
  if (encoding === 'utf-8') return (part) => part;
  const decoder = new TextDecoder(encoding);
  const encoder = new TextEncoder();
  return (part, last) => encoder.encode(decoder.decode(part, { stream: !last }));
}
