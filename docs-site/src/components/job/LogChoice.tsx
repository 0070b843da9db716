import type { Mapping } from '@wallflow/logs';
import { type ReactNode, useCallback } from 'react';
import type { Logs } from '../../job/messages.js';
import { logText } from '../../logs/log-text.js';
import { LogLookPanel } from '../logs/LogLookPanel.js';
import styles from './job.module.css';

interface LogChoiceProps {
  readonly side: 'before' | 'after';
  readonly logs: Logs;
  onLogs(logs: Logs): void;
  /** The readings typed in, for where there is no log. */
  readonly children: ReactNode;
}

/** A log from the device in place of typed readings. */
export function LogChoice({ side, logs, onLogs, children }: LogChoiceProps): ReactNode {
  const id = `log-${side}`;
  const log = logs[side];
  const onMapping = useCallback(
    (mapping: Mapping) => {
      const of = logs[side];
      if (of !== undefined) onLogs({ ...logs, [side]: { ...of, mapping } });
    },
    [logs, onLogs, side],
  );
  if (log !== undefined) {
    const { [side]: _, ...others } = logs;
    return (
      <>
        <p className={styles.log}>
          Taken from the log <strong>{log.name}</strong>; readings typed in below it do not count while it is here.{' '}
          <button type="button" onClick={() => onLogs(others)}>
            Take the log out
          </button>
        </p>
        <LogLookPanel log={log} onMapping={onMapping} />
      </>
    );
  }
  return (
    <>
      {children}
      <p className={styles.log}>
        <label htmlFor={id}>
          Or a log of a tool: a text file with a title over each column, for time, engine speed, pressure drop and gas temperature. What is
          not clear is asked here
        </label>
        <input
          id={id}
          type="file"
          accept=".csv,.tsv,.txt,.log,text/*"
          onChange={async (event) => {
            const file = event.target.files?.[0];
            if (file !== undefined)
              onLogs({ ...logs, [side]: { name: file.name, text: logText(new Uint8Array(await file.arrayBuffer())) } });
          }}
        />
      </p>
    </>
  );
}
