import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { emptyValues } from '../calculator/form-values.js';
import type { Form } from '../calculator/use-form.js';
import type { FieldData, FormValues } from '../data/types.js';
import type { Kept } from '../storage/guarded.js';
import { holdJob } from './hold-job.js';
import { jobName, type ListedJob, listJobs, newId, readSlot, removeSlot, takeOverOldJob, writeSlot } from './job-slots.js';
import { keepLog, keptLogs } from './log-store.js';
import type { Logs } from './messages.js';
import { ownTab, rememberOwnTab } from './own-tab.js';

const sides = ['before', 'after'] as const;

interface Current {
  readonly id: string;
  readonly logs: Logs;
}

export interface Jobs {
  /** Undefined until the device was asked. */
  readonly id: string | undefined;
  readonly logs: Logs;
  readonly listed: readonly ListedJob[];
  /** What happened, as a sentence. */
  readonly notice: string;
  /** Why something is not kept. */
  readonly lost: string;
  changeLogs(logs: Logs): void;
  /** Another job of this device into the form. */
  switchTo(id: string): Promise<void>;
  /** A job from elsewhere into the form; what stands there keeps its own place. */
  begin(values: FormValues, notice: string, logs?: Logs): Promise<void>;
  remove(id: string): void;
  say(notice: string): void;
}

/** Today where the vehicle stands, which late in the evening is another day than in Greenwich. */
function today(): string {
  const now = new Date();
  const two = (value: number) => String(value).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/** The empty form of a new job, dated today. */
export function newJob(fields: readonly FieldData[]): FormValues {
  const empty = emptyValues(fields);
  const rows = empty.about !== undefined && 'rows' in empty.about ? empty.about.rows : [];
  return { ...empty, about: { rows: rows.map((row) => ({ ...row, date: { text: today(), unit: '' } })) } };
}

const save = 'Save the job file before you leave this page.';
const why: Readonly<Record<Exclude<Kept, 'kept'>, string>> = {
  full: `The storage of this browser is full, and the last change is not kept. ${save}`,
  denied: `This browser lets no page store anything, so the job is not kept. ${save}`,
};

/** The jobs that this device keeps, one of them in the form. Each tab has its own, so that none writes over another. */
export function useJobs(fields: readonly FieldData[], form: Form): Jobs {
  const [current, setCurrent] = useState<Current>();
  const [listed, setListed] = useState<readonly ListedJob[]>([]);
  const [notice, setNotice] = useState('');
  const [lostJob, setLostJob] = useState<Kept>('kept');
  const [lostLog, setLostLog] = useState<Kept>('kept');
  const letGo = useRef<(() => void) | undefined>(undefined);
  const written = useRef<string | undefined>(undefined);
  const keptLog = useRef<Logs>({});
  const { fill, values } = form;
  const blank = useMemo(() => textOf(newJob(fields), {}), [fields]);

  /** Put a job into the form; the one that stood there has its place on the device already. */
  const show = useCallback(
    (next: Current, nextValues: FormValues, isKept: boolean, release: () => void) => {
      letGo.current?.();
      letGo.current = release;
      rememberOwnTab(next.id);
      written.current = isKept ? textOf(nextValues, next.logs) : blank;
      keptLog.current = isKept ? next.logs : {};
      fill(nextValues);
      setCurrent(next);
      setListed(listJobs());
    },
    [blank, fill],
  );

  const load = useCallback(
    async (id: string, own = false): Promise<'shown' | 'elsewhere' | 'gone'> => {
      const release = await holdJob(id, own);
      if (release === undefined) return 'elsewhere';
      const slot = readSlot(id);
      if (slot === undefined) {
        release();
        return 'gone';
      }
      const logs = await keptLogs(id);
      const missing = sides.filter((side) => slot.logs[side] !== undefined && logs[side] === undefined).map((side) => slot.logs[side]);
      show({ id, logs }, { ...emptyValues(fields), ...slot.values }, true, release);
      const gone = missing.length === 0 ? '' : ` The device could not keep the log ${missing.join(' and ')}: choose it again.`;
      setNotice(`This is the job that the device kept.${gone}`);
      return 'shown';
    },
    [fields, show],
  );

  const fresh = useCallback(
    async (nextValues: FormValues, logs: Logs = {}) => {
      const id = newId();
      const release = await holdJob(id);
      show({ id, logs }, nextValues, false, release ?? (() => undefined));
    },
    [show],
  );

  // What the device kept is put in after the page is shown: the built page is the empty form.
  useEffect(() => {
    let wanted = true;
    const begin = async () => {
      await takeOverOldJob();
      const own = ownTab();
      if (own !== undefined && readSlot(own) !== undefined && (await load(own, true)) === 'shown') return;
      // A tab that had begun a new job, with nothing in it yet, comes back to a new job.
      if (own !== undefined && readSlot(own) === undefined) return void (await fresh(newJob(fields)));
      const [newest] = listJobs();
      const came = newest === undefined ? 'gone' : await load(newest.id);
      if (!wanted || came === 'shown') return;
      await fresh(newJob(fields));
      if (came === 'elsewhere') {
        setNotice(`“${newest?.name}” is open in another tab. This tab begins a new job; both are kept.`);
      }
    };
    void begin();
    return () => {
      wanted = false;
      letGo.current?.();
      letGo.current = undefined;
    };
  }, [fields, fresh, load]);

  useEffect(() => {
    if (current === undefined) return;
    const { id, logs } = current;
    const text = textOf(values, logs);
    if (text !== written.current) {
      written.current = text;
      if (text === blank) removeSlot(id);
      else setLostJob(writeSlot(id, { ...JSON.parse(text), changed: Date.now() }));
      setListed(listJobs());
    }
    for (const side of sides) {
      if (logs[side] === keptLog.current[side]) continue;
      void keepLog(id, side, logs[side]).then(setLostLog);
    }
    keptLog.current = logs;
  }, [blank, current, values]);

  // Another tab has kept or removed a job.
  useEffect(() => {
    const look = () => setListed(listJobs());
    window.addEventListener('storage', look);
    return () => window.removeEventListener('storage', look);
  }, []);

  const lost = lostJob !== 'kept' ? lostJob : lostLog;
  return {
    id: current?.id,
    logs: current?.logs ?? {},
    listed,
    notice,
    lost: lost === 'kept' ? '' : why[lost],
    changeLogs: (logs) => setCurrent((before) => (before === undefined ? before : { ...before, logs })),
    say: setNotice,
    async switchTo(id) {
      const name = listed.find((job) => job.id === id)?.name ?? '';
      const came = await load(id);
      if (came === 'elsewhere') setNotice(`“${name}” is open in another tab. Go on there, so that no tab writes over the other.`);
      else if (came === 'gone') setListed(listJobs());
    },
    async begin(nextValues, text, logs) {
      await fresh(nextValues, logs);
      setNotice(text);
    },
    remove(id) {
      const slot = readSlot(id);
      removeSlot(id);
      setListed(listJobs());
      setNotice(slot === undefined ? '' : `“${jobName(slot)}” is deleted.`);
    },
  };
}

/** The form and the names of its logs as they are kept. */
function textOf(values: FormValues, logs: Logs): string {
  const { before, after } = logs;
  return JSON.stringify({
    values,
    logs: { ...(before === undefined ? {} : { before: before.name }), ...(after === undefined ? {} : { after: after.name }) },
  });
}
