import { jobIssueText, runJob } from '@wallflow/workshop';
import { describe, expect, it } from 'vitest';
import { demoFile, demoJob } from './demo-job.js';

const own = [
  'time [s]',
  'engineSpeed [rpm]',
  'airMassFlow [kg/h]',
  'gasTemperature [°C]',
  'pressureDrop [mbar]',
  'coolantTemperature [°C]',
];
const spoken = ['Time (s)', 'Engine RPM', 'MAF (kg/h)', 'Exhaust Temp Before DPF (°C)', 'DPF Diff. Press. (hPa)', 'Coolant temp (°C)'];
const german = [
  'Zeit (s)',
  'Motordrehzahl (1/min)',
  'Luftmassenstrom (kg/h)',
  'Abgastemperatur vor Partikelfilter (°C)',
  'Differenzdruck Partikelfilter (mbar)',
  'Kühlmitteltemperatur (°C)',
];

/** The demo job with other titles in its log of the time before, and what else is done to it. */
function run(titles: readonly string[], change: (text: string) => string = (text) => text) {
  const before = demoFile('before.csv') ?? '';
  const [header = '', ...lines] = before.split(/\r?\n/);
  expect(header.split(',')).toEqual(own);
  const text = change([titles.join(','), ...lines].join('\n'));
  return runJob(demoJob(), (name) => (name === 'before.csv' ? text : demoFile(name)));
}

const conditionOf = (outcome: ReturnType<typeof run>) => {
  if (!outcome.ok) throw new Error(outcome.issues.map(jobIssueText).join(' '));
  return outcome.result.before.condition;
};

describe('a log of any tool in a job', () => {
  const asOwn = conditionOf(run(own));

  it.each([
    ['with titles as tools write them', spoken, undefined],
    ['with German titles', german, undefined],
    ['with a title line above and a foot below', spoken, (text: string) => `Recorded in the yard\n\n${text}\nEnd of recording\n`],
  ])('%s says the same of the filter', (_, titles, change) => {
    expect(conditionOf(run(titles, change)).result.outputs).toEqual(asOwn.result.outputs);
  });

  it('says on the sheet what was left out', () => {
    const outcome = run(spoken, (text) => text.replace(/\n70,[^\n]*/, '\n70,700,6553.5,118,18.9,85'));
    expect(outcome.ok && outcome.result.before.leftOut).toContain('air mass flow, line 72: the value that stands for a lost signal');
  });

  it('asks where a title says too little', () => {
    const outcome = run(spoken.map((title) => (title.startsWith('Exhaust') ? 'EGT (°C)' : title)));
    const texts = outcome.ok ? [] : outcome.issues.map(jobIssueText);
    expect(texts[0]).toMatch(/no column that is understood as the gas temperature before the filter/);
    expect(texts[1]).toMatch(/What is “EGT \(°C\)”\? It could be gas temperature before the filter in °C;/);
    expect(texts).toHaveLength(2);
  });
});
