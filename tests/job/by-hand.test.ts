import { formFromJob, jobForm, jobFromForm, jobIssueText, placeInForm, runJob, sheetAsText, succeeded } from '@wallflow/workshop';
import { describe, expect, it } from 'vitest';
import { demoFile, demoJob, paperOf, resultOf } from './demo-job.js';

// biome-ignore lint/suspicious/noExplicitAny: tests change the JSON in ways that its type forbids
const byHand = (): any => JSON.parse(demoFile('by-hand.json') ?? '');
const verdictOf = (attempt: unknown) => {
  if (!succeeded(attempt as Parameters<typeof succeeded>[0])) throw new Error('no result');
  return (attempt as { result: { outputs: { verdict: string } } }).result.outputs.verdict;
};

describe('readings that were written down by hand', () => {
  const [typed, logged] = [resultOf(byHand()), resultOf(demoJob())];

  it('give the verdicts of the logs that they are the means of', () => {
    expect(verdictOf(typed.before.condition)).toBe(verdictOf(logged.before.condition));
    expect(verdictOf(typed.after?.condition)).toBe(verdictOf(logged.after?.condition));
    expect(verdictOf(typed.comparison)).toBe(verdictOf(logged.comparison));
    expect(verdictOf(typed.permissionBefore)).toBe('refused');
  });

  it('take the zero from the row with the engine off', () => {
    expect(typed.before.zero?.mean).toMatchObject({ engineSpeed: 0, pressureDrop: 60 });
  });

  it('are refused in the unit of the user, at the row and column', () => {
    const job = byHand();
    job.readings.before[2].pressureDrop = '9000 mbar';
    job.readings.before[1].gasTemperature = '133 kg';
    const outcome = runJob(job, demoFile);
    expect(outcome.ok ? [] : outcome.issues.map(jobIssueText)).toEqual([
      expect.stringMatching(/^Readings before the work: row 2, Gas temperature before the filter: "kg" is not a unit of temperature/),
      expect.stringMatching(/^Readings before the work: row 3, Pressure drop over the filter: "9000 mbar" .* at most 2000 mbar/),
    ]);
    expect(outcome.ok ? [] : outcome.issues.map(placeInForm)).toEqual([
      ['readingsBefore', 1, 'gasTemperature'],
      ['readingsBefore', 2, 'pressureDrop'],
    ]);
  });

  it('stand instead of a log, not beside it, and one of the two must be there', () => {
    const both = { ...byHand(), logs: { before: 'before.csv' } };
    const none = byHand();
    delete none.readings;
    for (const [job, code] of [
      [both, 'inconsistent_inputs'],
      [none, 'missing_input'],
    ] as const) {
      const outcome = runJob(job, demoFile);
      expect(outcome.ok ? [] : outcome.issues.map((found) => found.code === 'input' && found.issue.code)).toEqual([code]);
    }
  });
});

describe('the job as a form', () => {
  it('keeps everything of the job file, and back', () => {
    const job = byHand();
    expect(jobForm.safeParse(formFromJob(job)).error?.issues).toBeUndefined();
    expect(jobFromForm(formFromJob(job))).toEqual(job);
  });

  it('names a log where there is one, and leaves its typed readings out', () => {
    const job = jobFromForm(formFromJob(byHand()), { before: 'before.csv' });
    expect(job.logs).toEqual({ before: 'before.csv' });
    expect(job.readings).toEqual({ after: byHand().readings.after });
  });

  it('without readings after the work asks nothing about the state after it', () => {
    const { readings, ...rest } = byHand();
    const job = jobFromForm(formFromJob({ ...rest, readings: { before: readings.before } }));
    expect(job.permission).toEqual({ before: rest.permission.before });
    expect(resultOf(job).after).toBeUndefined();
  });

  it('that is empty is refused field by field', () => {
    const outcome = runJob(jobFromForm({}), demoFile);
    const places = outcome.ok ? [] : outcome.issues.map(placeInForm);
    expect(places).toEqual(
      expect.arrayContaining([
        ['about', 'vehicle'],
        ['about', 'date'],
        ['about', 'complaint'],
      ]),
    );
  });

  it.each([
    ['filter', 'cellDensity', ['filter', 'cellDensity']],
    ['engine', 'displacement', ['engine', 'displacement']],
    ['permission.after', 'fuelLevel', ['permissionAfter', 'fuelLevel']],
    ['cleaning', 'passes', ['cleaning', 'passes']],
  ])('leads from a problem in %s to its field', (where, key, place) => {
    expect(placeInForm({ code: 'input', where, issue: { code: 'missing_input', path: [key] } })).toEqual(place);
  });
});

describe('what may be reset', () => {
  const rowsOf = (job: unknown) => {
    const { reset } = resultOf(job);
    if (!succeeded(reset)) throw new Error('no advice');
    return reset.result.outputs as { verdict: string; values: { what: string; verdict: string }[] };
  };
  /** The demo job, cleaned on the vehicle with the pressure sensor replaced. */
  const onVehicle = () => {
    const job = byHand();
    job.reset = { ...job.reset, filterWork: 'on-vehicle', pressureSensor: true, regenerationVerified: false };
    delete job.reset.ashBasis;
    delete job.reset.residualAsh;
    return job;
  };
  const verdictFor = (job: unknown, what: string) => rowsOf(job).values.find((row) => row.what === what)?.verdict;

  it('after a clean on the vehicle is the sensor zero, not the ash, and the soot is set and never zero, even after a verified regeneration', () => {
    expect(verdictFor(onVehicle(), 'ash')).toBe('leave');
    expect(verdictFor(onVehicle(), 'soot')).toBe('set');
    const job = onVehicle();
    job.reset.regenerationVerified = true;
    expect(verdictFor(job, 'soot')).toBe('set');
    expect(rowsOf(onVehicle()).values.map(({ verdict }) => verdict)).toContain('relearn');
  });

  it('takes the drop as proven from the readings alone, whatever the file says', () => {
    const job = onVehicle();
    job.reset = { ...job.reset, regenerationVerified: true, dropVerified: true };
    job.readings.after[3].pressureDrop = '90 mbar';
    expect(verdictFor(job, 'soot')).toBe('not-yet');
    const open = onVehicle();
    open.reset = { ...open.reset, regenerationVerified: true, dropVerified: true };
    delete open.readings.after;
    delete open.permission.after;
    expect(verdictFor(open, 'soot')).toBe('not-yet');
  });

  it('stands on the sheet, with what must be proven first', () => {
    const text = sheetAsText(paperOf(resultOf(onVehicle())));
    expect(text).toContain('Reset or relearn');
    expect(text).toMatch(/Left as they are: .*ash/i);
  });
});
