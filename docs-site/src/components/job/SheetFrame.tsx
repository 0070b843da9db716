import { type ReactNode, useRef, useState } from 'react';
import type { MadeSheet } from '../../job/messages.js';
import { saveFile } from '../../job/save-file.js';
import styles from './job.module.css';

function fileName({ title }: MadeSheet, ending: string, before = ''): string {
  const name = title
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-|-$/g, '')
    .slice(0, 60);
  return `${before}${name === '' ? 'job-sheet' : name}.${ending}`;
}

/** The sheet as the customer gets it, with what can be done with it. */
export function SheetFrame({ sheet }: { readonly sheet: MadeSheet }): ReactNode {
  const frame = useRef<HTMLIFrameElement>(null);
  const [height, setHeight] = useState(900);
  return (
    <>
      <div className={styles.tools}>
        <button type="button" className={styles.main} onClick={() => frame.current?.contentWindow?.print()}>
          Print the sheet
        </button>
        <button type="button" onClick={() => saveFile(fileName(sheet, 'html'), 'text/html', sheet.html)}>
          Save the sheet
        </button>
        <button type="button" onClick={() => saveFile(fileName(sheet, 'html', 'annex-'), 'text/html', sheet.annex)}>
          Save the annex: cautions, readings, options, methods, sources
        </button>
        <button type="button" onClick={() => saveFile(fileName(sheet, 'json'), 'application/json', sheet.job)}>
          Save the job file
        </button>
      </div>
      <iframe
        ref={frame}
        className={styles.sheet}
        title={`Job sheet: ${sheet.title}`}
        srcDoc={sheet.html}
        sandbox="allow-same-origin allow-modals"
        height={height}
        onLoad={() => setHeight((frame.current?.contentDocument?.documentElement.scrollHeight ?? 880) + 20)}
      />
    </>
  );
}
