/** Whether a parsed file is a job of the first version. */
function isFirst(raw: unknown): raw is Readonly<Record<string, unknown>> {
  return typeof raw === 'object' && raw !== null && !Array.isArray(raw) && (raw as { format?: unknown }).format === 'wallflow-job/1';
}

/**
 * A job of the first version as one of the second; anything else as it is. Everything of the first version is still there, under
 * the same names. What the first took for the ash in the filter was the figure of the control unit or of a calculation, and stays
 * where it was: the second knows that figure apart.
 */
export function upToDate(raw: unknown): unknown {
  return isFirst(raw) ? { ...raw, format: 'wallflow-job/2' } : raw;
}
