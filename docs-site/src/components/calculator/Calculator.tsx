import { type ReactNode, useCallback, useMemo, useState } from 'react';
import { fieldLabel } from '../../calculator/field-names.js';
import { isBlank, keysOfExample } from '../../calculator/form-values.js';
import { useForm } from '../../calculator/use-form.js';
import { useInputTools } from '../../calculator/use-input-tools.js';
import { usePermalink } from '../../calculator/use-permalink.js';
import { useResult } from '../../calculator/use-result.js';
import type { CalculationData, SuccessView } from '../../data/types.js';
import { FormFields } from '../fields/FormFields.js';
import { fieldMessages } from '../fields/field-messages.js';
import { KeypadProvider, KeypadSwitch } from '../fields/Keypad.js';
import { UndoNotice } from '../fields/UndoNotice.js';
import { Cautions } from '../parts/Cautions.js';
import { FormulaProvider, usePrepareFormulas } from '../parts/Formula.js';
import { Given } from '../parts/Given.js';
import { OutputTable } from '../parts/OutputTable.js';
import { PrintedFrom } from '../parts/PrintedFrom.js';
import { Results } from '../parts/Results.js';
import { Working } from '../parts/Working.js';
import styles from './calculator.module.css';
import { FilterFromBefore } from './FilterFromBefore.js';
import { LinkNotice } from './LinkNotice.js';
import { ResultBar } from './ResultBar.js';
import { ResultPanel } from './ResultPanel.js';
import { Toolbar } from './Toolbar.js';

function Tables({ result }: { readonly result: SuccessView }): ReactNode {
  return result.tables.map((table) => <OutputTable key={table.key} table={table} />);
}

interface FoldedWorkingProps {
  readonly lead: string;
  readonly steps: SuccessView['steps'];
  readonly open: boolean;
  onOpen(open: boolean): void;
}

function workingText(isExample: boolean, borrowed: readonly string[]): string {
  const whose = isExample
    ? 'With the numbers of the example'
    : borrowed.length > 0
      ? 'With your numbers and the example’s'
      : 'With your numbers';
  return `${whose}; quantities are in SI base units, results in the unit that people use.`;
}

/** The working of what was typed: folded, as beside a vehicle the answer comes first; what sets its formulas is loaded when it is opened. */
function FoldedWorking({ lead, steps, open, onOpen }: FoldedWorkingProps): ReactNode {
  const prepare = usePrepareFormulas();
  return (
    <details
      className={styles.example}
      open={open}
      onToggle={({ currentTarget }) => {
        onOpen(currentTarget.open);
        if (currentTarget.open) void prepare();
      }}
    >
      <summary>
        <h2 id="working">Working</h2>
      </summary>
      <p className={styles.lead}>{lead}</p>
      <Working steps={steps} />
    </details>
  );
}

/** What the page has for reading before anything is typed, and where there are no scripts. */
function WorkedExample({ data }: { readonly data: CalculationData }): ReactNode {
  const prepare = usePrepareFormulas();
  return (
    <details className={styles.example} onToggle={({ currentTarget }) => currentTarget.open && void prepare()}>
      <summary>The worked example: given, result and working</summary>
      <p className={styles.lead}>Invented readings, worked through. None of it is about your vehicle.</p>
      <h2>Given in the example</h2>
      <Given fields={data.inputs} values={data.exampleValues} onlyGiven />
      <div className={styles.result} data-example-result>
        <h2>Result of the example</h2>
        <Results values={data.example.values} drawing={data.example.drawing} limited={data.limits.length > 0} onUnit={undefined} />
      </div>
      <Tables result={data.example} />
      <h2>Working of the example</h2>
      <Working steps={data.example.steps} />
    </details>
  );
}

/** The calculator of one definition: form, live result and working. */
export function Calculator({ data }: { readonly data: CalculationData }): ReactNode {
  const form = useForm(data);
  const [failed, setFailed] = useState(false);
  const [explained, setExplained] = useState(false);
  const onFailure = useCallback(() => setFailed(true), []);
  const tools = useInputTools(onFailure);
  const { result, last, pending, kept } = useResult(data, form, tools, setFailed);
  const link = usePermalink(data, form, tools);
  const messages = useMemo(
    () => fieldMessages(last?.ok === false ? last.issues : [], last?.ok ? last.warnings : [], form.touched),
    [last, form.touched],
  );
  const blank = isBlank(form.values);
  const isExample = form.values === form.example;
  const borrowed = useMemo(
    () => keysOfExample(form.values).flatMap((key) => fieldLabel(data.inputs, [key])?.toLowerCase() ?? []),
    [data, form.values],
  );
  const success = result?.ok ? result : undefined;
  // Kept here, for while a result is on its way there is no working that could remember.
  const [workingOpen, setWorkingOpen] = useState(false);
  return (
    <FormulaProvider formulas={data.formulas}>
      <Cautions cautions={data.cautions} folded />
      <LinkNotice opened={link.opened} tooLong={link.tooLong} version={data.version} history={data.history} result={success} />
      <noscript>
        <p className={styles.notice}>
          Without scripts the form cannot calculate. The worked example below it opens at a tap, is complete and can be printed.
        </p>
      </noscript>
      {failed ? (
        <p className={styles.notice} role="alert">
          The calculation could not be loaded; there may be no signal. What you typed stays here. Reload the page when the signal is back.
        </p>
      ) : null}
      <div className={styles.grid}>
        <form
          className={styles.form}
          data-brief={explained ? undefined : true}
          aria-label={`Inputs of ${data.title}`}
          onSubmit={(event) => event.preventDefault()}
          noValidate
        >
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
              <button type="button" className={styles.explain} aria-pressed={explained} onClick={() => setExplained(!explained)}>
                Symbols, ranges and hints
              </button>
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
            <ResultBar result={result} example={isExample} borrowed={borrowed.length} />
          </KeypadProvider>
        </form>
        <div className={styles.side}>
          <ResultPanel
            data={data}
            result={result}
            isExample={isExample}
            borrowed={isExample ? [] : borrowed}
            blank={blank}
            onExample={form.fillExample}
            pending={pending}
            onUnit={tools === undefined ? undefined : form.chooseUnit}
          />
          <Toolbar citation={() => link.citation(success)} ready={tools !== undefined && !pending} />
          {kept ? (
            <p className={`${styles.kept} screen-only`} data-kept>
              Works without signal on this device.
            </p>
          ) : null}
        </div>
      </div>
      <PrintedFrom title={data.title} id={data.id} version={data.version} address={link.address} />
      {success === undefined ? null : (
        <>
          <Tables result={success} />
          <FoldedWorking lead={workingText(isExample, borrowed)} steps={success.steps} open={workingOpen} onOpen={setWorkingOpen} />
        </>
      )}
      {blank ? <WorkedExample data={data} /> : null}
    </FormulaProvider>
  );
}
