import { type ReactNode, useCallback, useEffect, useMemo, useState } from 'react';
import { emptyValues } from '../../calculator/form-values.js';
import { goTo } from '../../calculator/go-to.js';
import { useForm } from '../../calculator/use-form.js';
import { useInputTools } from '../../calculator/use-input-tools.js';
import type { FormValues, JobFormData } from '../../data/types.js';
import { forgetJob, keepJob, keptJob } from '../../job/kept-job.js';
import type { Logs, SheetView } from '../../job/messages.js';
import { openFiles } from '../../job/open-files.js';
import { useSheet } from '../../job/use-sheet.js';
import { fieldMessages } from '../fields/field-messages.js';
import { inputId } from '../fields/fields-props.js';
import { KeypadProvider, KeypadSwitch } from '../fields/Keypad.js';
import { UndoNotice } from '../fields/UndoNotice.js';
import { FormulaProvider } from '../parts/Formula.js';
import { JobSections } from './JobSections.js';
import styles from './job.module.css';
import { SheetFrame } from './SheetFrame.js';

function Missing({ view }: { readonly view: SheetView | undefined }): ReactNode {
  if (view === undefined) return <p>The sheet appears here.</p>;
  if (view.ok) return null;
  return (
    <>
      <p>The sheet needs this first:</p>
      <ul>
        {view.issues.map((issue) => (
          <li key={`${issue.fields.join()} ${issue.text}`}>
            {issue.fields[0] === undefined ? (
              issue.text
            ) : (
              <button type="button" className={styles.lead} onClick={() => goTo(inputId(issue.fields[0] ?? ''))}>
                {issue.text}
              </button>
            )}
          </li>
        ))}
      </ul>
    </>
  );
}

/** How far the sheet is, in sight while one types; a tap leads to it. */
function SheetBar({ view }: { readonly view: SheetView | undefined }): ReactNode {
  const missing = view === undefined || view.ok ? 0 : view.issues.length;
  const text = view === undefined ? 'No sheet yet' : view.ok ? 'The sheet is ready' : `No sheet yet: ${missing} to fill in or mend`;
  return (
    <button type="button" className={`${styles.bar} screen-only`} onClick={() => goTo('sheet-part')}>
      <span>{text}</span>
      <span aria-hidden="true">↓</span>
    </button>
  );
}

function withToday(values: FormValues): FormValues {
  const rows = values.about !== undefined && 'rows' in values.about ? values.about.rows : [];
  const now = new Date();
  // The date on the wall of the workshop, not that of Greenwich.
  const two = (part: number) => String(part).padStart(2, '0');
  const today = `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  return { ...values, about: { rows: rows.map((row) => ({ ...row, date: { text: today, unit: '' } })) } };
}

/** The job from the first words to the sheet for the customer; all of it stays on the device. */
export function JobSheet({ data }: { readonly data: JobFormData }): ReactNode {
  const empty = useMemo(() => emptyValues(data.inputs), [data.inputs]);
  const form = useForm(data, empty);
  const [logs, setLogs] = useState<Logs>({});
  const [logsBefore, setLogsBefore] = useState<Logs>({});
  const [failed, setFailed] = useState(false);
  const [notice, setNotice] = useState('');
  const onFailure = useCallback(() => setFailed(true), []);
  const tools = useInputTools(onFailure);
  const view = useSheet(data.inputs, form, logs, tools, onFailure);
  const messages = useMemo(() => fieldMessages(view === undefined || view.ok ? [] : view.issues, [], form.touched), [view, form.touched]);
  const { fill } = form;

  // What the device kept is put in after the page is shown: the built page is the empty form.
  useEffect(() => {
    const kept = keptJob();
    if (kept === undefined) return fill(withToday(empty));
    fill({ ...empty, ...kept.values });
    setLogs(kept.logs);
    setNotice('This is the job that the device kept.');
  }, [empty, fill]);
  useEffect(() => {
    if (!form.edited) return;
    if (JSON.stringify(form.values) === JSON.stringify(withToday(empty))) forgetJob();
    else keepJob({ values: form.values, logs });
  }, [empty, form.edited, form.values, logs]);

  /** Put another job in place of the one that stands there; the way back is offered. */
  const replace = (values: FormValues, next: Logs, text: string) => {
    form.replace(values, text);
    setLogsBefore(logs);
    setLogs(next);
  };
  const undoWipe = () => {
    form.undoWipe();
    setLogs(logsBefore);
    setLogsBefore(logs);
  };
  const open = async (files: FileList | null) => {
    const opened = await openFiles([...(files ?? [])]);
    if (opened.job === undefined) return setNotice(opened.problem ?? '');
    const [{ formFromJob }, { fromInput }] = await Promise.all([import('@wallflow/workshop'), import('../../calculator/input-tools.js')]);
    const values = fromInput(data.inputs, formFromJob(opened.job));
    replace(values, opened.logs, 'The job file is open.');
    setNotice(opened.problem ?? '');
  };
  const startAnew = () => {
    setNotice('');
    replace(withToday(empty), {}, 'A new job.');
  };

  return (
    <FormulaProvider formulas={{}} live={false}>
      <noscript>
        <p className={styles.notice}>Without scripts the sheet cannot be made here; the command line makes it from a job file.</p>
      </noscript>
      {failed ? (
        <p className={styles.notice} role="alert">
          The sheet could not be made; there may be no signal. What you typed stays here. Reload the page when the signal is back.
        </p>
      ) : null}
      <div className={`${styles.tools} screen-only`}>
        <button type="button" onClick={() => replace(data.exampleValues, {}, 'The demo job is filled in: an invented vehicle.')}>
          Fill in the demo job
        </button>
        <button type="button" onClick={startAnew}>
          New job
        </button>
        <label className={styles.file}>
          Open a job file, with its logs
          <input type="file" accept=".json,.csv" multiple onChange={(event) => void open(event.target.files)} />
        </label>
      </div>
      <p role="status" className={styles.status}>
        {notice}
      </p>
      <UndoNotice form={{ ...form, undoWipe }} at="" />
      <form className={`${styles.form} screen-only`} aria-label="The job" onSubmit={(event) => event.preventDefault()} noValidate>
        <KeypadProvider>
          <KeypadSwitch />
          <JobSections fields={data.inputs} form={form} tools={tools} messages={messages} logs={logs} onLogs={setLogs} />
          <SheetBar view={view} />
        </KeypadProvider>
      </form>
      <section aria-labelledby="sheet" id="sheet-part" tabIndex={-1}>
        <h2 id="sheet">The sheet</h2>
        <div aria-live="polite">
          <Missing view={view} />
        </div>
        {view?.ok === true ? <SheetFrame sheet={view.sheet} /> : null}
      </section>
    </FormulaProvider>
  );
}
