import type { ReactNode } from 'react';
import { entryAt } from '../../calculator/edit-values.js';
import { isRows } from '../../calculator/form-values.js';
import type { Form } from '../../calculator/use-form.js';
import type { InputTools } from '../../calculator/use-input-tools.js';
import type { FieldData, FormValues, GroupFieldData, ListFieldData } from '../../data/types.js';
import type { Logs } from '../../job/messages.js';
import { Fields } from '../fields/Fields.js';
import { FormFields } from '../fields/FormFields.js';
import type { FieldMessages } from '../fields/fields-props.js';
import { ListInput } from '../fields/ListInput.js';
import styles from './job.module.css';
import { LogChoice } from './LogChoice.js';

interface SectionsProps {
  readonly fields: readonly FieldData[];
  readonly form: Form;
  readonly tools: InputTools | undefined;
  readonly messages: FieldMessages;
  readonly logs: Logs;
  onLogs(logs: Logs): void;
}

/** Sections that every sheet needs; the others start folded. */
const needed = new Set(['about', 'ambient', 'filter', 'readingsBefore']);

function filled(values: FormValues): number {
  return Object.values(values).filter((entry) => !isRows(entry) && entry.text.trim() !== '').length;
}

function state(field: ListFieldData | GroupFieldData, form: Form, errors: number): string {
  if (errors > 0) return errors === 1 ? '1 to correct' : `${errors} to correct`;
  const found = entryAt(form.values, [field.key]);
  const rows = isRows(found) ? found.rows : [];
  if (field.type === 'group') return `${filled(rows[0] ?? {})} filled in`;
  return rows.length === 1 ? '1 row' : `${rows.length} rows`;
}

function side(key: string): 'before' | 'after' | undefined {
  return key === 'readingsBefore' ? 'before' : key === 'readingsAfter' ? 'after' : undefined;
}

function Section({
  field,
  form,
  logs,
  onLogs,
  ...rest
}: Omit<SectionsProps, 'fields'> & { readonly field: ListFieldData | GroupFieldData }): ReactNode {
  const errors = [...rest.messages.errors.keys()].filter(
    (key) => key === field.key || (/^[.[]/.test(key.slice(field.key.length)) && key.startsWith(field.key)),
  ).length;
  const of = side(field.key);
  const hasLog = of !== undefined && logs[of] !== undefined;
  const list =
    field.type === 'group' ? null : (
      <ListInput field={field} path={[field.key]} form={form} tools={rest.tools} messages={rest.messages}>
        {(row) => <Fields fields={field.item} path={[field.key, row]} form={form} {...rest} />}
      </ListInput>
    );
  return (
    <details className={styles.section} open={needed.has(field.key) || undefined} data-wrong={errors > 0 || undefined}>
      <summary>
        <span className={styles.sectionTitle}>{field.key === 'readingsBefore' ? 'Readings before the work' : field.label}</span>
        <span className={styles.sectionState}>{hasLog ? 'from a log' : state(field, form, errors)}</span>
      </summary>
      {field.type === 'group' ? (
        <>
          {field.description === undefined ? null : <p className={styles.lead}>{field.description}</p>}
          <FormFields fields={field.item} path={[field.key]} form={form} {...rest} />
        </>
      ) : of === undefined ? (
        list
      ) : (
        <LogChoice side={of} logs={logs} onLogs={onLogs}>
          {list}
        </LogChoice>
      )}
    </details>
  );
}

/** The job, section by section in the order of the work. */
export function JobSections({ fields, ...rest }: SectionsProps): ReactNode {
  return fields.map((field) =>
    field.type === 'list' || field.type === 'group' ? <Section key={field.key} field={field} {...rest} /> : null,
  );
}
