import { type ReactNode, useCallback, useMemo, useState } from 'react';
import { goTo } from '../../calculator/go-to.js';
import { useForm } from '../../calculator/use-form.js';
import { useInputTools } from '../../calculator/use-input-tools.js';
import type { JobFormData } from '../../data/types.js';
import type { SheetView } from '../../job/messages.js';
import { openFiles } from '../../job/open-files.js';
import { newJob, useJobs } from '../../job/use-jobs.js';
import { useSheet } from '../../job/use-sheet.js';
import { keepMapping } from '../../logs/kept-mappings.js';
import { fieldMessages } from '../fields/field-messages.js';
import { inputId } from '../fields/fields-props.js';
import { KeypadProvider, KeypadSwitch } from '../fields/Keypad.js';
import { FormulaProvider } from '../parts/Formula.js';
import { JobList } from './JobList.js';
import { JobSections } from './JobSections.js';
import styles from './job.module.css';
import { SheetFrame } from './SheetFrame.js';

const noFormulas = {};

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
function SheetBar({ view, pending }: { readonly view: SheetView | undefined; readonly pending: boolean }): ReactNode {
  const missing = view === undefined || view.ok ? 0 : view.issues.length;
  const text = pending ? 'Making the sheet…' : view?.ok ? 'The sheet is ready' : `No sheet yet: ${missing} to complete or correct`;
  return (
    <button type="button" className={`${styles.bar} screen-only`} onClick={() => goTo('sheet-part')}>
      <span>{text}</span>
      <span aria-hidden="true">↓</span>
    </button>
  );
}

/** The job from the first words to the sheet for the customer; all of it stays on the device. */
export function JobSheet({ data }: { readonly data: JobFormData }): ReactNode {
  const form = useForm(data);
  const jobs = useJobs(data.inputs, form);
  const [failed, setFailed] = useState(false);
  const onFailure = useCallback(() => setFailed(true), []);
  const tools = useInputTools(onFailure);
  const { view, pending, kept, open: openInWorker } = useSheet(data.inputs, form, jobs.logs, tools, setFailed);
  const messages = useMemo(() => fieldMessages(view === undefined || view.ok ? [] : view.issues, [], form.touched), [view, form.touched]);

  const open = async (input: HTMLInputElement) => {
    const opened = await openFiles([...(input.files ?? [])]);
    // The same files can be chosen again after they were changed.
    input.value = '';
    if (opened.job === undefined) return jobs.say(opened.problem ?? '');
    // The answers on its logs serve the next log of that shape too.
    for (const mapping of opened.mappings ?? []) keepMapping(mapping);
    const found = await openInWorker(opened.job);
    if (found === undefined) return jobs.say('This job file cannot be read: it holds something that no job has.');
    await jobs.begin(found.values, ['The job file is open.', opened.problem ?? ''].join(' ').trim(), opened.logs);
  };

  return (
    <FormulaProvider formulas={noFormulas}>
      <noscript>
        <p className={styles.notice}>Without scripts the sheet cannot be made here; the command line makes it from a job file.</p>
      </noscript>
      {failed ? (
        <p className={styles.notice} role="alert">
          The sheet could not be made; there may be no signal. What you typed stays here. Reload the page when the signal is back.
        </p>
      ) : null}
      {jobs.lost === '' ? null : (
        <p className={styles.notice} role="alert">
          {jobs.lost}
        </p>
      )}
      <div className={`${styles.tools} screen-only`}>
        <button type="button" onClick={() => void jobs.begin(form.example, 'The demo job is filled in: an invented vehicle.')}>
          Fill in the demo job
        </button>
        <button type="button" onClick={() => void jobs.begin(newJob(data.inputs), 'A new job. The one before is kept.')}>
          New job
        </button>
        <label className={styles.file}>
          Open a job file, with its logs
          <input type="file" accept=".json,.csv,.tsv,.txt,.log,text/*" multiple onChange={(event) => void open(event.currentTarget)} />
        </label>
      </div>
      <p role="status" className={styles.status}>
        {jobs.notice}
      </p>
      <JobList jobs={jobs} />
      <form className={`${styles.form} screen-only`} aria-label="The job" onSubmit={(event) => event.preventDefault()} noValidate>
        <KeypadProvider>
          <KeypadSwitch />
          <JobSections fields={data.inputs} form={form} tools={tools} messages={messages} logs={jobs.logs} onLogs={jobs.changeLogs} />
          <SheetBar view={view} pending={pending} />
        </KeypadProvider>
      </form>
      <section aria-labelledby="sheet" id="sheet-part" tabIndex={-1}>
        <h2 id="sheet">The sheet</h2>
        <div aria-live="polite">{pending && view !== undefined ? <p>Making the sheet…</p> : <Missing view={view} />}</div>
        {view?.ok === true ? (
          <div className={pending ? styles.waiting : undefined} aria-busy={pending} data-sheet>
            <SheetFrame sheet={view.sheet} />
          </div>
        ) : null}
        {kept ? (
          <p className="screen-only" data-kept>
            Works without signal on this device.
          </p>
        ) : null}
      </section>
    </FormulaProvider>
  );
}
