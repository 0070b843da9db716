import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { Kept } from '../storage/guarded.js';
import type { LogFile, Logs } from './messages.js';

// Logs are too large for the small store that keeps the jobs, and they change rarely.

type Side = keyof Logs;

interface Schema extends DBSchema {
  logs: { key: string; value: LogFile };
}

let opened: Promise<IDBPDatabase<Schema>> | undefined;

function database(): Promise<IDBPDatabase<Schema>> {
  opened ??= openDB<Schema>('wallflow', 1, { upgrade: (fresh) => void fresh.createObjectStore('logs') });
  // A browser that refuses today may allow it after its settings were changed.
  opened.catch(() => {
    opened = undefined;
  });
  return opened;
}

const place = (id: string, side: Side) => `${id}/${side}`;

/** Keep a log of a job on this device, or forget the one that was kept. */
export async function keepLog(id: string, side: Side, log: LogFile | undefined): Promise<Kept> {
  try {
    const store = await database();
    if (log === undefined) await store.delete('logs', place(id, side));
    else await store.put('logs', log, place(id, side));
    return 'kept';
  } catch (error) {
    return error instanceof DOMException && error.name === 'QuotaExceededError' ? 'full' : 'denied';
  }
}

/** The logs that this device keeps of a job. */
export async function keptLogs(id: string): Promise<Logs> {
  try {
    const store = await database();
    const [before, after] = await Promise.all([store.get('logs', place(id, 'before')), store.get('logs', place(id, 'after'))]);
    return { ...(before === undefined ? {} : { before }), ...(after === undefined ? {} : { after }) };
  } catch {
    return {};
  }
}
