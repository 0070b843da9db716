import {
  type Attempt,
  customerPage,
  formFromJob,
  jobFromForm,
  jobIssueText,
  runJob,
  sheetAsHtml,
  sheetAsMarkdown,
  sheetAsText,
  succeeded,
} from '@wallflow/workshop';
import { describe, expect, it } from 'vitest';
import { demoFile, demoJob, paperOf, resultOf } from './demo-job.js';

// biome-ignore lint/suspicious/noExplicitAny: tests change the JSON in ways that its type forbids
const byHand = (): any => JSON.parse(demoFile('by-hand.json') ?? '');
// biome-ignore lint/suspicious/noExplicitAny: outputs are looked at by name
function outputs(attempt: Attempt | undefined): any {
  if (!succeeded(attempt)) throw new Error('no result');
  return { ...attempt.result.intermediates, ...attempt.result.outputs };
}
const sheetOf = (job: unknown) => sheetAsText(paperOf(resultOf(job))).replace(/\s+/g, ' ');
const issuesOf = (job: unknown) => {
  const outcome = runJob(job, demoFile);
  return outcome.ok ? [] : outcome.issues.map(jobIssueText);
};

describe('the soot load of the permission', () => {
  it('is the larger of what was typed and what the readings give, and both are on the sheet', () => {
    const { permissionBefore } = resultOf(byHand());
    const { countedLoad, conditions } = outputs(permissionBefore);
    expect(countedLoad).toBeGreaterThan(6.6);
    const upper = conditions.find(({ condition }: { condition: string }) => condition.startsWith('Soot load not above'));
    expect(upper).toMatchObject({ result: 'refuse', measured: expect.stringMatching(/from the readings \(entered: 6\.56 g\/L/) });
    expect(sheetOf(byHand())).toMatch(/Before, as entered 38 g in the whole filter, ± 1 g\/L/);
  });

  it('that was typed low does not permit what the readings refuse', () => {
    const job = byHand();
    job.permission.before = { ...job.permission.after, sootLoad: '3 g/L', sootLoadUncertainty: '1 g/L' };
    const { verdict, refusedBy } = outputs(resultOf(job).permissionBefore);
    expect(verdict).toBe('refused');
    expect(refusedBy).toContain('Soot load not above');
  });

  it('that is further off than both uncertainties refuses, and the likely reason is named', () => {
    const job = byHand();
    job.permission.before = { ...job.permission.before, sootMass: '1.2 g', sootLoadUncertainty: '0.1 g/L' };
    const conditions = outputs(resultOf(job).permissionBefore).conditions as { condition: string; result: string; reason: string }[];
    const agreement = conditions.find(({ condition }) => condition === 'The two soot loads agree');
    expect(agreement).toMatchObject({ result: 'refuse', reason: expect.stringContaining('control unit believes a wrong sensor') });
  });

  it('in grams is a load by the volume of this filter', () => {
    // 38 g in π/4 · (1.905 dm)² · 2.032 dm = 5.792 L.
    expect(outputs(resultOf(byHand()).permissionBefore).enteredLoad).toBeCloseTo(38 / 5.792, 2);
    expect(sheetOf(byHand())).not.toMatch(/Filter volume: not used/);
  });

  it('has one limit: sections that name different materials are refused', () => {
    const job = byHand();
    job.permission.before.substrate = 'silicon-carbide';
    const [issue = ''] = issuesOf(job);
    expect(issue).toMatch(/cordierite and silicon carbide/);
    expect(issue).not.toContain('silicon-carbide');
  });
});

describe('the reading that is used', () => {
  /** Two holds at nearly one speed, the first of them with far less flow. */
  const twoHolds = () => {
    const job = byHand();
    job.readings.before = [
      job.readings.before[0],
      { engineSpeed: '2200 rpm', pressureDrop: '20 mbar', gasTemperature: '118 °C', airMassFlow: '81 kg/h' },
      { engineSpeed: '2201 rpm', pressureDrop: '95 mbar', gasTemperature: '206 °C', airMassFlow: '300 kg/h' },
    ];
    return job;
  };

  it('is found by its place, not by a name that two readings share', () => {
    const [both, alone] = [
      resultOf(twoHolds()),
      resultOf({ ...twoHolds(), readings: { ...twoHolds().readings, before: twoHolds().readings.before.toSpliced(1, 1) } }),
    ];
    expect(both.before.deciding.steady.mean.pressureDrop).toBe(9500);
    expect(outputs(both.before.soot).sootMass).toBe(outputs(alone.before.soot).sootMass);
    expect(outputs(both.comparison)).toEqual(outputs(alone.comparison));
  });

  it('keeps on the sheet what was typed, with its unit', () => {
    const job = byHand();
    job.readings.before[3].pressureDrop = '9.5 kPa';
    expect(sheetOf(job)).toMatch(/as read 9\.5 kPa · drop 94\.4 mbar/);
    expect(sheetOf(job)).toMatch(/engine off · as read 0\.6 mbar/);
  });
});

describe('the uncertainty of a reading', () => {
  const wide = () => {
    const job = byHand();
    job.readings.after[3].pressureDrop = '14 ± 15 mbar';
    return job;
  };

  it('that was typed takes a verdict away that it does not support', () => {
    const result = resultOf(wide());
    expect(outputs(resultOf(byHand()).comparison).verdict).toBe('cleaned');
    expect(outputs(result.comparison).verdict).not.toBe('cleaned');
    const rows = outputs(result.reset).values as { what: string; verdict: string }[];
    expect(rows.find(({ what }) => what === 'soot')?.verdict).toBe('not-yet');
  });

  it('makes a condition unsure that another value within it would change, and the sheet says so', () => {
    const job = byHand();
    for (const row of job.readings.after.slice(1)) row.pressureDrop = `${Number.parseFloat(row.pressureDrop)} ± 30 mbar`;
    expect(sheetOf(job)).toMatch(/\[\?\?\] Filter after: [^[]*Not sure:/);
    expect(sheetOf(job)).toMatch(/HOW SURE .*Filter after: within the ±/);
  });

  it('widens the range of the soot', () => {
    const job = byHand();
    job.readings.before[3].pressureDrop = '95 ± 10 mbar';
    const [sure, unsure] = [outputs(resultOf(byHand()).before.soot), outputs(resultOf(job).before.soot)];
    expect(unsure.mostSootMass).toBeGreaterThan(sure.mostSootMass);
    expect(unsure.leastSootMass).toBeLessThan(sure.leastSootMass);
  });

  it('comes out of the scatter of a log too', () => {
    const { before } = resultOf(demoJob());
    expect(before.deciding.steady.uncertainty.pressureDrop).toBeGreaterThan(0);
    expect(before.condition.result.uncertainty?.values.cleanRatio).toBeGreaterThan(0);
  });
});

describe('a log with lost signals', () => {
  const withLost = (change: (cells: string[], index: number) => string[]) => (name: string) => {
    const text = demoFile(name);
    if (name !== 'before.csv' || text === undefined) return text;
    const [head = '', ...lines] = text.trim().split('\n');
    return [head, ...lines.map((line, index) => change(line.split(','), index).join(','))].join('\n');
  };
  const honest = outputs(resultOf(demoJob()).before.soot).sootMass;

  it.each([
    ['air mass', 2, '6553.5'],
    ['pressure drop', 4, '655.35'],
    ['gas temperature', 3, '6513.5'],
  ])('of %s in every fourth row gives the soot of the sound log, and says what was left out', (label, column, lost) => {
    const result = resultOf(
      demoJob(),
      withLost((cells, index) => (index % 4 === 0 ? cells.with(column, lost) : cells)),
    );
    expect(Math.abs(outputs(result.before.soot).sootMass / honest - 1)).toBeLessThan(0.02);
    expect(result.before.leftOut.join(' ')).toMatch(new RegExp(`${label}[^:]*line 2: `));
    expect(sheetAsText(paperOf(result)).replace(/\s+/g, ' ')).toContain('the value that stands for a lost signal');
  });

  it('of air mass in most rows leaves its stretches out, rather than guess the air', () => {
    const job = demoJob();
    job.engine = { ...job.engine, manifoldPressure: '100 kPa', manifoldTemperature: '30 °C' };
    const outcome = runJob(
      job,
      withLost((cells, index) => (index % 4 === 0 ? cells : cells.with(2, '6553.5'))),
    );
    expect(outcome.ok ? [] : outcome.issues.map(jobIssueText)).toEqual([
      expect.stringContaining('the air mass flow is missing in most of it'),
    ]);
  });

  it('of the gas temperature all through is no verdict', () => {
    const outcome = runJob(
      demoJob(),
      withLost((cells) => cells.with(3, '-40')),
    );
    expect(outcome.ok).toBe(false);
  });
});

describe('two logs of one name', () => {
  it('are two logs', () => {
    const job = demoJob();
    job.logs = { before: 'log.csv', after: 'log.csv' };
    const outcome = runJob(job, (_, side) => demoFile(`${side}.csv`));
    expect(outcome.ok && outputs(outcome.result.comparison).verdict).toBe('cleaned');
  });
});

describe('fault codes', () => {
  it('are not none where nobody has read them', () => {
    const form = { ...formFromJob(byHand()), codesAfter: [] };
    expect(sheetOf(jobFromForm(form))).toMatch(/Fault codes after not read/);
    expect(sheetOf(jobFromForm({ ...form, codesAfter: [{ line: 'None' }] }))).toMatch(/Fault codes after none/);
  });
});

describe('a job whose filter reads clean', () => {
  it('is never told to regenerate what holds too little soot to burn', () => {
    const job = byHand();
    job.reset = { ...job.reset, filterWork: 'on-vehicle', regenerationVerified: false };
    delete job.reset.ashBasis;
    delete job.reset.residualAsh;
    const result = resultOf(job);
    const soot = outputs(result.reset).values.find(({ what }: { what: string }) => what === 'soot');
    expect(soot.verdict).toBe('set');
    expect(sheetOf(job)).not.toMatch(/do it completely/);
    expect(sheetOf(job)).not.toMatch(/Forced regeneration now: refused\. (Do not heat it: remove|Leave it)/);
  });

  it('takes the ash that was weighed for the ash that is left', () => {
    expect(resultOf(byHand()).after?.soot.input.ashMass).toBe('35 g');
    expect(resultOf(byHand()).before.soot.input.ashMass).toBe('70 g');
  });

  it('whose hose leaked before compares with nothing, and is not worse', () => {
    const job = byHand();
    job.readings.before = job.readings.before.map((row: Record<string, string>, index: number) =>
      index === 0 ? row : { ...row, pressureDrop: ['', '1.4 mbar', '3 mbar', '5.6 mbar'][index] },
    );
    expect(sheetOf(job)).not.toMatch(/worse/i);
    expect(sheetOf(job)).toMatch(/hose/);
  });

  it('after a verified regeneration names ash for what is left', () => {
    const job = byHand();
    job.readings.after = job.readings.before.map((row: Record<string, string>, index: number) =>
      index === 0 ? row : { ...row, pressureDrop: ['', '15 mbar', '41 mbar', '78 mbar'][index] },
    );
    job.reset = { ...job.reset, filterWork: 'none', regenerationVerified: true };
    expect(sheetOf(job)).toMatch(/soot cannot explain what is left: it is ash/);
  });
});

describe('the soot that may be written into the control unit', () => {
  /** Kinds of work on a filter that stays or is not new, with every other proof a yes. */
  const worked = [
    ['cleaned off the vehicle, baked and weighed', { filterWork: 'off-vehicle' }],
    ['exchanged for a reconditioned one, weighed', { filterWork: 'exchange' }],
    ['regenerated completely on the vehicle', { filterWork: 'on-vehicle', regenerationVerified: true }],
    ['cleaned on the vehicle, not regenerated', { filterWork: 'on-vehicle', regenerationVerified: false }],
  ] as const;

  it.each(worked)('is the most that the estimate allows, in whole grams rounded up: %s', (_, done) => {
    const job = byHand();
    job.reset = { ...job.reset, ...done };
    const result = resultOf(job);
    const soot = outputs(result.reset).values.find(({ what }: { what: string }) => what === 'soot');
    const most = (result.estimateAfter?.sootMass.p95 ?? Number.NaN) * 1000;
    expect(soot.verdict).toBe('set');
    expect(soot.value * 1000).toBeGreaterThanOrEqual(most);
    expect(soot.value * 1000).toBeLessThan(most + 1);
    expect(soot.value * 1000).toBeCloseTo(Math.round(soot.value * 1000), 9);
  });

  it('is nowhere zero while a range of soot after the work stands beside it', () => {
    const text = sheetOf(byHand());
    const [, most = ''] = /Soot after, 90 % range [\d.]+ to ([\d.]+) g\/L/.exec(text) ?? [];
    // 190.5 mm across and 203.2 mm long.
    const grams = Number(most) * (Math.PI / 4) * 1.905 ** 2 * 2.032;
    const [, written = ''] = /Soot load · what to do [^·]* · value ([\d.]+) g/.exec(text) ?? [];
    expect(Number(written)).toBeGreaterThan(grams * 0.97);
    expect(text).not.toMatch(/Soot load · what to do reset to zero/);
  });

  it('is zero for a new filter, whose soot is not taken from readings', () => {
    const job = byHand();
    job.reset = { ...job.reset, filterWork: 'new' };
    delete job.reset.ashBasis;
    delete job.reset.residualAsh;
    expect(sheetOf(job)).toMatch(/Soot load · what to do reset to zero/);
    expect(sheetOf(job)).not.toMatch(/Soot after, 90 % range/);
    expect(sheetOf(job)).toMatch(/Soot after none: a new filter was fitted/);
  });
});

describe('what is wrong with a job', () => {
  it('is told in a bounded number of sentences', () => {
    const job = byHand();
    for (let index = 0; index < 100_000; index += 1) job.filter[`x${index}`] = 1;
    const outcome = runJob(job, demoFile);
    const issues = outcome.ok ? [] : outcome.issues;
    expect(issues.length).toBeLessThan(30);
    expect(JSON.stringify(issues).length).toBeLessThan(10_000);
    expect(issues.map(jobIssueText).at(-1)).toMatch(/^99\s?980 more/);
    const strange = { ...byHand(), ...Object.fromEntries(Array.from({ length: 5000 }, (_, index) => [`y${index}`, 1])) };
    expect(issuesOf(strange).length).toBeLessThan(30);
  });

  it.each([
    ['a date of another country', { date: '12.03.2026' }, /Date: "12\.03\.2026" is not a date as the job needs it; write 2026-03-12\./],
    ['nothing in place of a section', { filter: null }, /Filter: .* is not a group of entries/],
    ['an odometer of fruit', { vehicle: { description: 'bus', odometer: '-5 bananas' } }, /Odometer: .*bananas/],
    ['an odometer that runs backwards', { vehicle: { description: 'bus', odometer: '-5 km' } }, /Odometer: "-5 km" is out of range/],
    ['a temperature in words', { ambient: { pressure: '986 hPa', temperature: 'hot' } }, /Ambient temperature: "hot"/],
  ])('is said in our words: %s', (_, change, sentence) => {
    const found = issuesOf({ ...byHand(), ...change });
    expect(found.join('\n')).toMatch(sentence);
    expect(found.join('\n')).not.toMatch(/Invalid|expected object|received/);
  });

  it('is told once, however often the value is used', () => {
    expect(issuesOf({ ...byHand(), ambient: { pressure: '3 bananas' } })).toHaveLength(1);
  });

  it('names no key of the file', () => {
    const job = byHand();
    job.readings.before[1].gasTemperature = 'warm';
    job.permission.before.fuelLevel = 'half';
    job.filter.wallThickness = '12';
    const found = issuesOf(job).join('\n');
    expect(found).not.toMatch(/gasTemperature|fuelLevel|wallThickness|readings\.|permission\.|\[\d\]/);
  });
});

describe('the sheet', () => {
  const sheet = paperOf(resultOf(demoJob()));
  const text = sheetAsText(sheet);

  it('begins with a page for the customer that fits on one: wrong, done, better, next, sure', () => {
    const page = sheetAsText(customerPage(sheet));
    expect(text.startsWith(page.trimEnd())).toBe(true);
    const order = ['WHAT WAS WRONG', 'WHAT WAS DONE', 'HOW MUCH BETTER', 'WHAT NEXT', 'HOW SURE'].map((title) => page.indexOf(title));
    expect(order.every((at, index) => at > (order[index - 1] ?? 0))).toBe(true);
    expect(page.split('\n').length).toBeLessThan(60);
    expect(page).not.toMatch(/refused|caustic/i);
  });

  it('holds no key, code or program word', () => {
    for (const form of [text, sheetAsMarkdown(sheet)]) {
      expect(form).not.toMatch(/\b[a-z]{3,}[A-Z]\w*/);
      expect(form).not.toMatch(/\b[a-z]+_[a-z_]+\b/);
      expect(form).not.toMatch(/\b(?:undefined|null|NaN|true assumed|false)\b/);
      expect(form).not.toMatch(/\((?:[a-z]+-)+[a-z]+ \d/);
    }
  });

  it('carries a policy against scripts and requests', () => {
    expect(sheetAsHtml(sheet)).toMatch(/Content-Security-Policy" content="default-src 'none'/);
  });

  it('shows marks of a writer as they are, in Markdown too', () => {
    const job = byHand();
    job.complaint = '~~gone~~ &lt;b&gt; http://example.org';
    job.rootCause = '- not a list';
    job.advice = ['1. no number', '---'];
    const markdown = sheetAsMarkdown(paperOf(resultOf(job)));
    expect(markdown).toContain('\\~\\~gone');
    expect(markdown).toContain('\\&lt;');
    expect(markdown).not.toMatch(/https?:\/\//);
    expect(markdown).not.toMatch(/^- 1\. no|^- ---$/m);
  });
});

describe('the title', () => {
  it('survives the form and back', () => {
    expect(jobFromForm(formFromJob({ ...byHand(), title: 'Bus 7, second visit' })).title).toBe('Bus 7, second visit');
  });
});

describe('a job file that holds what no field can show', () => {
  it.each([
    { complaint: { toString: null } },
    { vehicle: { description: { toString: null } } },
    { history: [{ toString: null }], advice: [1, null] },
    { filter: { substrate: { toString: null } }, permission: { before: { substrate: 'cordierite' } } },
    { title: 7, date: [], rootCause: {} },
  ])('%j throws nowhere', (change) => {
    const job = { ...byHand(), ...change };
    expect(() => jobFromForm(formFromJob(job))).not.toThrow();
    expect(runJob(job, demoFile).ok).toBe(false);
  });
});
