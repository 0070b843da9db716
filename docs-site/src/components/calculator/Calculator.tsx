import { type ReactNode, useCallback, useMemo, useState } from 'react';
import { useForm } from '../../calculator/use-form.js';
import { useInputTools } from '../../calculator/use-input-tools.js';
import { usePermalink } from '../../calculator/use-permalink.js';
import { useResult } from '../../calculator/use-result.js';
import type { CalculationData } from '../../data/types.js';
import { FormFields } from '../fields/FormFields.js';
import { fieldMessages } from '../fields/field-messages.js';
import { KeypadProvider, KeypadSwitch } from '../fields/Keypad.js';
import { UndoNotice } from '../fields/UndoNotice.js';
import { Cautions } from '../parts/Cautions.js';
import { FormulaProvider } from '../parts/Formula.js';
import { Given } from '../parts/Given.js';
import { OutputTable } from '../parts/OutputTable.js';
import { PrintedFrom } from '../parts/PrintedFrom.js';
import { Working } from '../parts/Working.js';
import styles from './calculator.module.css';
import { FilterFromBefore } from './FilterFromBefore.js';
import { LinkNotice } from './LinkNotice.js';
import { ResultBar } from './ResultBar.js';
import { ResultPanel } from './ResultPanel.js';
import { Toolbar } from './Toolbar.js';

/** The calculator of one definition: form, live result and working. */
export function Calculator({ data }: { readonly data: CalculationData }): ReactNode {
  const form = useForm(data);
  const [failed, setFailed] = useState(false);
  const onFailure = useCallback(() => setFailed(true), []);
  const tools = useInputTools(onFailure);
  const { result, pending } = useResult(data, form, tools, onFailure);
  const link = usePermalink(data, form, tools);
  const messages = useMemo(
    () => fieldMessages(result.ok ? [] : result.issues, result.ok ? result.warnings : [], form.touched),
    [result, form.touched],
  );
  const isExample = form.values === data.exampleValues;
  const success = result.ok ? result : undefined;
  return (
    <FormulaProvider formulas={data.formulas} live={!isExample && success !== undefined}>
      <Cautions cautions={data.cautions} />
      <LinkNotice opened={link.opened} version={data.version} result={success} />
      <noscript>
        <p className={styles.notice}>Without scripts the form cannot calculate. The worked example below is complete and can be printed.</p>
      </noscript>
      {failed ? (
        <p className={styles.notice} role="alert">
          The calculation could not be loaded; there may be no signal. What you typed stays here. Reload the page when the signal is back.
        </p>
      ) : null}
      <div className={styles.grid}>
        <form className={styles.form} aria-label={`Inputs of ${data.title}`} onSubmit={(event) => event.preventDefault()} noValidate>
          <KeypadProvider>
            <div className={styles.formHead}>
              <h2>Inputs</h2>
              <div className={styles.formButtons}>
                <button type="button" onClick={form.fillExample} disabled={isExample}>
                  Example
                </button>
                <button type="button" onClick={form.clear}>
                  Clear
                </button>
              </div>
              <KeypadSwitch />
            </div>
            <div className="screen-only">
              <UndoNotice form={form} at="" />
              <FilterFromBefore data={data} form={form} tools={tools} refused={messages.errors} settled={!pending}>
                <FormFields fields={data.inputs} form={form} tools={tools} messages={messages} />
              </FilterFromBefore>
            </div>
            <div className="print-only">
              <Given fields={data.inputs} values={form.values} onlyGiven />
            </div>
            <ResultBar result={result} />
          </KeypadProvider>
        </form>
        <div className={styles.side}>
          <ResultPanel
            data={data}
            result={result}
            isExample={isExample}
            pending={pending}
            onUnit={tools === undefined ? undefined : form.chooseUnit}
          />
          <Toolbar citation={() => link.citation(success)} ready={tools !== undefined && !pending} />
        </div>
      </div>
      <PrintedFrom title={data.title} id={data.id} version={data.version} address={link.address} />
      {success === undefined ? null : (
        <>
          {success.tables.map((table) => (
            <OutputTable key={table.key} table={table} />
          ))}
          <section aria-labelledby="working">
            <h2 id="working">Working</h2>
            <p className={styles.lead}>
              {isExample ? 'With the numbers of the example' : 'With your numbers'}; quantities stand in SI base units, results in the unit
              that people use.
            </p>
            <Working steps={success.steps} />
          </section>
        </>
      )}
    </FormulaProvider>
  );
}
