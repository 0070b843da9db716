import {
  type Attempt,
  jobAnnex,
  jobIssueText,
  jobSheet,
  runJob,
  type Sheet,
  sheetAsHtml,
  sheetAsMarkdown,
  sheetAsText,
  succeeded,
} from '@wallflow/workshop';
import { describe, expect, it } from 'vitest';
import { demoFile, demoJob, paperOf, resultOf } from './demo-job.js';

function outputs(attempt: Attempt | undefined): Record<string, unknown> {
  if (!succeeded(attempt)) throw new Error('no result');
  return { ...attempt.result.intermediates, ...attempt.result.outputs };
}

describe('the demo job', () => {
  it('keeps cautions, assumptions, methods and sources off the sheet, in the annex', () => {
    const heads = (sheet: Sheet) => sheet.blocks.flatMap((block) => (block.type === 'heading' ? [block.text] : []));
    const result = resultOf(demoJob());
    const apart = ['Cautions', 'Assumed, because not entered', 'Methods', 'Sources'];
    expect(heads(jobSheet(result))).not.toEqual(expect.arrayContaining([expect.stringMatching(new RegExp(apart.join('|')))]));
    expect(heads(jobAnnex(result))).toEqual(expect.arrayContaining(apart));
  });

  const result = resultOf(demoJob());

  it('reads loaded before and clean after, as the trade would on such readings', () => {
    expect(outputs(result.before.condition).verdict).toBe('loaded');
    expect(outputs(result.after?.condition).verdict).toBe('clean');
    expect(result.before.deciding.state).toBe('2200 rpm');
  });

  it('takes the zero reading from the engine-off part of the log', () => {
    expect(result.before.zero?.mean.engineSpeed).toBe(0);
    expect(result.before.zero?.mean.pressureDrop).toBeGreaterThan(20);
    expect(result.before.zero?.mean.pressureDrop).toBeLessThan(100);
  });

  it('refuses heat on the loaded filter, for the load among other reasons', () => {
    const { verdict, conditions } = outputs(result.permissionBefore) as {
      verdict: string;
      conditions: { condition: string; result: string }[];
    };
    expect(verdict).toBe('refused');
    expect(
      conditions
        .filter((row) => row.result === 'refuse')
        .map((row) => row.condition)
        .join(),
    ).toMatch(/Soot load not above/);
  });

  it('states the soot with its range, and takes the most of it into the permission', () => {
    const text = sheetAsText(paperOf(result)).replace(/\s+/g, ' ');
    expect(text).toMatch(/Before, from the drop alone:? [^.]*at least [^.]*at most/);
    expect(text).toMatch(/After, from the drop alone.{0,120}at most/);
    for (const side of [result.before, result.after]) {
      const { sootLoad, mostSootLoad } = outputs(side?.soot) as Record<string, number>;
      expect(mostSootLoad).toBeGreaterThan(sootLoad as number);
    }
  });

  it('never lets what is not known pass', () => {
    const raw = demoJob();
    raw.permission.after = { faultCodes: false };
    const changed = outputs(resultOf(raw).permissionAfter);
    expect(changed.verdict).not.toBe('permitted');
    expect(changed.unknowns).toBeGreaterThan(outputs(result.permissionAfter).unknowns as number);
  });

  it('proves the work at comparable flow', () => {
    const { verdict, improvement, rawReduction, flowEffect } = outputs(result.comparison) as Record<string, number | string>;
    expect(verdict).toBe('cleaned');
    // By hand from the deciding readings: R = Δp/(μQ), μ by Sutherland's formula.
    const viscosity = (kelvin: number) => (1.716e-5 * (kelvin / 273) ** 1.5 * (273 + 111)) / (kelvin + 111);
    const side = (measured: typeof result.before) => {
      const { gasTemperature = 0, pressureDrop = 0, airMassFlow = 0 } = measured.deciding.steady.mean;
      const drop = pressureDrop - (measured.zero?.mean.pressureDrop ?? 0);
      const pressure = 98_600 + pressureDrop / 2;
      const flow = (airMassFlow * 1.015 * 8.31446261815324 * gasTemperature) / (0.02896559 * pressure);
      return { drop, flow, resistance: drop / (viscosity(gasTemperature) * flow) };
    };
    if (result.after === undefined) throw new Error('no after');
    const [before, after] = [side(result.before), side(result.after)];
    expect(improvement).toBeCloseTo(1 - after.resistance / before.resistance, 6);
    expect(rawReduction).toBeCloseTo(1 - after.drop / before.drop, 9);
    expect(flowEffect).toBeCloseTo(after.flow / before.flow, 6);
  });

  /** The after log with its pressure drop, in mbar, replaced by what the engine speed gives. */
  const afterWith = (drop: (speed: number, found: number) => number) => (name: string) => {
    const text = demoFile(name);
    if (name !== 'after.csv' || text === undefined) return text;
    const [head = '', ...lines] = text.trim().split('\n');
    const changed = lines.map((line) => {
      const cells = line.split(';');
      const number = (cell = '') => Number(cell.replace(',', '.'));
      return cells.map((cell, index) => (index === 4 ? String(drop(number(cells[1]), number(cell))) : cell)).join(';');
    });
    return [head, ...changed].join('\n');
  };

  it('takes a sensor that has fallen silent for no success', () => {
    const silent = resultOf(
      demoJob(),
      afterWith(() => 0.4),
    );
    expect(outputs(silent.comparison).verdict).toBe('no-signal');
    expect(outputs(silent.after?.condition).verdict).not.toBe('clean');
    expect(sheetAsText(paperOf(silent))).not.toMatch(/\[ok\] (Filter after|Result of the work)/);
  });

  it('proves nothing with readings that contradict each other, or a sensor that does not read zero', () => {
    const atIdle = resultOf(
      demoJob(),
      afterWith((speed, found) => (speed > 400 && speed < 1200 ? 60 : found)),
    );
    expect(outputs(atIdle.after?.condition).verdict).toBe('contradiction');
    const off = resultOf(
      demoJob(),
      afterWith((_, found) => found + 40),
    );
    expect(outputs(off.after?.condition).verdict).toBe('zero-fault');
    for (const wrong of [atIdle, off]) {
      expect(succeeded(wrong.comparison)).toBe(false);
      expect(sheetAsText(paperOf(wrong)).replace(/\s+/g, ' ')).toMatch(
        /Result of the work: not known\. The readings after the work prove nothing\./,
      );
    }
  });

  it('mixes one part of concentrate with five of water', () => {
    const { concentrateVolume, waterVolume } = outputs(result.cleaning) as Record<string, number>;
    expect((concentrateVolume as number) * 5).toBeCloseTo(waterVolume as number, 15);
  });

  it('keeps the verdict when the log is written in other units', () => {
    const raw = demoJob();
    const other = (name: string) => {
      const text = demoFile(name);
      if (name !== 'before.csv' || text === undefined) return text;
      const [head = '', ...lines] = text.trim().split('\n');
      const scaled = lines.map((line) => {
        const [time, speed, air, temperature, drop, coolant] = line.split(',').map(Number);
        return [time, speed, (air ?? 0) / 3.6, ((temperature ?? 0) * 9) / 5 + 32, (drop ?? 0) / 10, coolant].join(',');
      });
      return [head.replace('kg/h', 'g/s').replace('gasTemperature [°C]', 'gasTemperature [°F]').replace('mbar', 'kPa'), ...scaled].join(
        '\n',
      );
    };
    const same = outputs(resultOf(raw, other).comparison);
    expect(same.improvement).toBeCloseTo(outputs(result.comparison).improvement as number, 9);
  });

  it('goes by engine speed and displacement when the log has no air mass flow', () => {
    const raw = demoJob();
    raw.engine = { ...raw.engine, manifoldPressure: '101 kPa', manifoldTemperature: '30 °C', volumetricEfficiency: '90 %' };
    const without = (name: string) => demoFile(name)?.replace('airMassFlow [kg/h]', 'note');
    const changed = resultOf(raw, without);
    expect(outputs(changed.before.condition).verdict).toBe('loaded');
    expect(changed.before.deciding.massFlow.input.airFrom).toBe('speed-density');
  });

  it('leaves readings of a cold engine out and says so', () => {
    const cold = (name: string) => demoFile(name)?.replaceAll(/,8[3-7]$/gm, ',35');
    const changed = resultOf(demoJob(), cold);
    expect(changed.before.leftOut.join()).toMatch(/idle, 700 rpm: the engine was cold/);
    expect(paperOf(changed).blocks.some((block) => block.type === 'paragraph' && block.text.startsWith('Left out'))).toBe(true);
  });

  it('does without an after log', () => {
    const raw = demoJob();
    delete raw.logs.after;
    const changed = resultOf(raw);
    expect(changed.comparison).toBeUndefined();
    expect(sheetAsText(paperOf(changed))).not.toMatch(/Filter after/);
  });
});

describe('a job that cannot be run', () => {
  function sentences(change: (raw: ReturnType<typeof demoJob>) => void, readFile = demoFile): string {
    const raw = demoJob();
    change(raw);
    const outcome = runJob(raw, readFile);
    return outcome.ok ? 'accepted' : outcome.issues.map(jobIssueText).join('\n');
  }

  it.each([
    ['a missing section', (raw: ReturnType<typeof demoJob>) => delete raw.complaint, /^Vehicle and complaint: Complaint is missing/],
    ['an unknown section', (raw: ReturnType<typeof demoJob>) => (raw.engin = {}), /^Job file: "engin" is not known here/],
    [
      'a wrong date',
      (raw: ReturnType<typeof demoJob>) => (raw.date = '12.3.2026'),
      /Date: "12\.3\.2026" is not a date as the job needs it; write 2026-03-12\./,
    ],
    [
      'a unit of another kind',
      (raw: ReturnType<typeof demoJob>) => (raw.filter.filterLength = '152 kg'),
      /^Filter: Filter length: "kg" is not a unit of length/,
    ],
    [
      'a misspelt input',
      (raw: ReturnType<typeof demoJob>) => (raw.filter.celldensity = '200 cpsi'),
      /^Filter: "celldensity" is not known here/,
    ],
    [
      'an unknown calculation',
      (raw: ReturnType<typeof demoJob>) => (raw.reductant = { 'no-such': {} }),
      /^Reductant: "no-such" is not known here/,
    ],
    [
      'a log that is not there',
      (raw: ReturnType<typeof demoJob>) => (raw.logs.before = 'gone.csv'),
      /gone\.csv cannot be read as a log: there is no such file/,
    ],
    [
      'a missing cleaning value',
      (raw: ReturnType<typeof demoJob>) => delete raw.cleaning.dilutionRatio,
      /^Cleaning: Dilution.* is missing; for example 1:/,
    ],
  ])('%s', (_, change, expected) => {
    expect(sentences((raw) => void change(raw))).toMatch(expected);
  });

  it('a log without a steady stretch', () => {
    const short = (name: string) => demoFile(name)?.split('\n').slice(0, 12).join('\n');
    expect(sentences(() => undefined, short)).toMatch(/before\.csv: no steady reading/);
  });

  it.each([[null], [[]], ['x'], [{}], [{ format: 'wallflow-job/1', __proto__: { title: 'x' } }]])('%j is refused, not thrown at', (raw) => {
    expect(runJob(raw, demoFile).ok).toBe(false);
  });
});

describe('the job sheet', () => {
  const sheet = paperOf(resultOf(demoJob()));

  it('says the verdicts, the cautions and the sources in every form', () => {
    for (const text of [sheetAsText(sheet), sheetAsMarkdown(sheet), sheetAsHtml(sheet)].map((form) => form.replace(/\s+/g, ' '))) {
      expect(text).toMatch(/Filter before.{0,40}loaded/);
      expect(text).toMatch(/Filter after.{0,40}clean/);
      expect(text).toMatch(/Never leave a regeneration unattended/);
      expect(text).toMatch(/Konstandopoulos/);
      expect(text).toMatch(/common practice, no source/);
    }
  });

  it('is one HTML file that needs nothing from elsewhere and runs no script', () => {
    const html = sheetAsHtml(sheet);
    expect(html).not.toMatch(/<script|<link|<img|src=|url\(|https?:/);
    expect(html).toMatch(/<svg[^>]*role="img"[^>]*aria-labelledby/);
  });

  it('shows what a user typed and never runs it', () => {
    const raw = demoJob();
    raw.title = '<script>alert(1)</script>';
    raw.complaint = '"><img src=x onerror=alert(1)> | `a` | *b*';
    const hostile = paperOf(resultOf(raw));
    expect(sheetAsHtml(hostile)).not.toMatch(/<script>|<img/);
    expect(sheetAsHtml(hostile)).toContain('&lt;script&gt;alert(1)&lt;/script&gt;');
    expect(sheetAsMarkdown(hostile)).toContain('\\<img');
  });

  it('keeps to the width of a terminal', () => {
    const longest = Math.max(
      ...sheetAsText(sheet)
        .split('\n')
        .map((line) => line.length),
    );
    expect(longest).toBeLessThanOrEqual(100);
  });
});
