import { type ColumnAnswer, type Mapping, makeMapping } from '@wallflow/logs';
import { type ReactNode, useEffect, useMemo } from 'react';
import type { LogFile } from '../../job/messages.js';
import { keepMapping, keptMappings } from '../../logs/kept-mappings.js';
import type { Answer, LogLook } from '../../logs/look-at-log.js';
import { useLogLook } from '../../logs/use-log-look.js';
import { Scroll } from '../parts/Scroll.js';
import { LogPlot } from './LogPlot.js';
import styles from './logs.module.css';

function withAnswer(look: LogLook, { columns, ...more }: Answer): Mapping {
  const { columns: before = {}, decimal, clock, interval } = look.mapping ?? {};
  return makeMapping(
    look.titles,
    { ...before, ...columns },
    {
      ...(decimal === undefined ? {} : { decimal }),
      ...(clock === undefined ? {} : { clock }),
      ...(interval === undefined ? {} : { interval }),
      ...more,
    },
  );
}

interface PartProps {
  readonly look: LogLook;
  onAnswer(answer: Answer): void;
}

/** What the titles leave open, to be answered by a tap. */
function Questions({ look, onAnswer }: PartProps): ReactNode {
  return look.questions.map(({ text, offers }) => (
    <fieldset key={text} className={styles.question}>
      <legend>{text}</legend>
      {offers.map(({ label, answer }) => (
        <button key={label} type="button" onClick={() => onAnswer(answer)}>
          {label}
        </button>
      ))}
    </fieldset>
  ));
}

function Columns({ look, onAnswer }: PartProps): ReactNode {
  return (
    <Scroll label="Columns that were understood">
      <table>
        <caption>Columns that were understood</caption>
        <thead>
          <tr>
            <th scope="col">Column</th>
            <th scope="col">Read as</th>
            <th scope="col">How sure</th>
            <th scope="col">Wrong?</th>
          </tr>
        </thead>
        <tbody>
          {look.columns.map(({ column, what, sure, how }) => (
            <tr key={column}>
              <th scope="row">{column}</th>
              <td>{what}</td>
              <td>
                {sure}: {how}
              </td>
              <td>
                <button
                  type="button"
                  aria-label={`Do not use ${column}`}
                  onClick={() => onAnswer({ columns: { [column]: { channel: null } } })}
                >
                  Do not use
                </button>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </Scroll>
  );
}

function Unused({ look, onAnswer }: PartProps): ReactNode {
  if (look.unused.length === 0) return null;
  return (
    <details>
      <summary>Columns that are not used: {look.unused.length}</summary>
      <ul className={styles.unused}>
        {look.unused.slice(0, 100).map(({ column, why }) => (
          <li key={column}>
            <label>
              {column}: {why}. Use it as{' '}
              <select
                value=""
                onChange={({ target }) => {
                  const answer = look.assignments.find(({ label }) => label === target.value)?.answer as ColumnAnswer | undefined;
                  if (answer !== undefined) onAnswer({ columns: { [column]: answer } });
                }}
              >
                <option value="">nothing</option>
                {look.assignments.map(({ label }) => (
                  <option key={label}>{label}</option>
                ))}
              </select>
            </label>
          </li>
        ))}
      </ul>
    </details>
  );
}

function Sentences({ title, items }: { readonly title: string; readonly items: readonly string[] }): ReactNode {
  if (items.length === 0) return null;
  return (
    <details>
      <summary>
        {title}: {items.length}
      </summary>
      <ul>
        {items.map((item) => (
          <li key={item}>{item}</li>
        ))}
      </ul>
    </details>
  );
}

interface PanelProps {
  readonly log: LogFile;
  /** Answers for this log were given or found. */
  onMapping(mapping: Mapping): void;
}

/** What was understood of a log, what it leaves open, and the log over time. */
export function LogLookPanel({ log, onMapping }: PanelProps): ReactNode {
  const mappings = useMemo(() => (log.mapping === undefined ? keptMappings() : [log.mapping]), [log.mapping]);
  const { look: state, stop } = useLogLook(log.text, mappings);
  const result = state.state === 'read' ? state.result : undefined;
  const found = result?.ok === true ? result.look.mapping : undefined;

  // Answers that the device has from an earlier log of this shape count for the job too.
  useEffect(() => {
    if (log.mapping === undefined && found !== undefined) onMapping(found);
  }, [log.mapping, found, onMapping]);

  if (state.state === 'reading')
    return (
      <p role="status">
        Reading {log.name}: <progress aria-label={`Reading ${log.name}`} value={state.share} max={1} />{' '}
        <button type="button" onClick={stop}>
          Stop reading
        </button>
      </p>
    );
  if (state.state === 'stopped') return <p role="status">Reading was stopped. The sheet still reads the log by itself.</p>;
  if (state.state === 'failed') return <p role="alert">The log could not be shown; there may be no signal.</p>;
  if (result?.ok !== true) return <p role="alert">{result?.problem}</p>;
  const { look } = result;
  const answer = (given: Answer) => {
    const mapping = withAnswer(look, given);
    keepMapping(mapping);
    onMapping(mapping);
  };
  return (
    <div className={styles.look} data-log-look>
      <p role="status">
        {look.rows} rows, {look.columns.length} columns understood, {look.windows.length} steady stretches,{' '}
        {look.questions.length === 0 ? 'nothing open' : `${look.questions.length} to answer`}
      </p>
      <Questions look={look} onAnswer={answer} />
      <Columns look={look} onAnswer={answer} />
      <Unused look={look} onAnswer={answer} />
      <Sentences title="Left out" items={look.leftOut} />
      <Sentences title="Steady stretches" items={look.windows} />
      {look.plot === undefined ? null : <LogPlot name={log.name} data={look.plot} />}
    </div>
  );
}
