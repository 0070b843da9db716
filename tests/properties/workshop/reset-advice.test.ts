import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { registry } from '../../support/calculations.js';

type Input = Readonly<Record<string, unknown>>;
interface Row {
  readonly what: string;
  readonly verdict: string;
  readonly value?: number;
  readonly first?: string;
}
interface Result {
  readonly verdict: string;
  readonly next: string;
  readonly values: readonly Row[];
  readonly open: readonly { readonly action: string; readonly waiting: number }[];
  readonly ashToSet?: number;
  readonly allowed: number;
  readonly waiting: number;
  readonly left: number;
}

const calculation = registry.get('reset-advice');

function advice(input: Input): Result {
  const result = calculation?.run(input);
  if (!result?.ok) throw new Error(`refused as input: ${JSON.stringify(result?.issues)}`);
  return result.outputs as unknown as Result;
}

const changing = ['reset', 'set', 'relearn', 'confirm'];
const changed = (input: Input) => advice(input).values.filter(({ verdict }) => changing.includes(verdict));
const changedCodes = (input: Input) => changed(input).map(({ what }) => what);

const parts = [
  'pressureSensor',
  'temperatureSensor',
  'noxSensor',
  'airMassSensor',
  'recirculationValve',
  'fuelInjectors',
  'reductantParts',
  'reductantRefilled',
  'scrCatalyst',
  'oilChanged',
  'noxFault',
];
const proofs = [
  'emissionComplete',
  'saved',
  'batterySupport',
  'causeRepaired',
  'regenerationVerified',
  'dropVerified',
  'sensorsPlausible',
  'dosingTestPassed',
  'reductantInOrder',
];

// A yes is more frequent than the rest: with nine proofs nearly nothing would be allowed otherwise.
const answer = fc.constantFrom(true, true, true, true, true, false, undefined);
const filterWork = fc.constantFrom('none', 'on-vehicle', 'off-vehicle', 'new', 'exchange', 'unknown');
const grams = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map((value) => ({ value, unit: 'g' }));
const known = (record: Input) => Object.fromEntries(Object.entries(record).filter(([, value]) => value !== undefined));

const anyInput = fc
  .record({
    filterWork,
    ...Object.fromEntries(parts.map((key) => [key, fc.boolean()])),
    ...Object.fromEntries(proofs.map((key) => [key, answer])),
    ashBasis: fc.constantFrom('weighed', 'weighed', 'estimated', undefined),
    residualAsh: fc.option(grams(0, 100), { nil: undefined, freq: 4 }),
    ashUncertainty: grams(0.1, 30),
  })
  .map((record) => known(record.filterWork === 'new' ? { ...record, residualAsh: undefined } : record));

/** What the table of the trade asks for, written down again: work that makes the value untrue, and what must be true. */
const needed: Readonly<Record<string, (input: Input) => boolean>> = {
  soot: ({ filterWork: work, regenerationVerified, dropVerified, ashBasis, residualAsh }) =>
    work === 'new' ||
    (work === 'on-vehicle' && regenerationVerified === true && dropVerified === true) ||
    ((work === 'off-vehicle' || work === 'exchange') &&
      dropVerified === true &&
      (regenerationVerified === true || (ashBasis === 'weighed' && residualAsh !== undefined))),
  ash: ({ filterWork: work, ashBasis, residualAsh, dropVerified }) =>
    work === 'new' ||
    ((work === 'off-vehicle' || work === 'exchange') && ashBasis === 'weighed' && residualAsh !== undefined && dropVerified === true),
  filter_changed: (input) => input.filterWork === 'new',
  statistics: (input) => input.filterWork === 'new',
  pressure_zero: (input) =>
    input.sensorsPlausible === true && (input.pressureSensor === true || input.filterWork === 'new' || input.filterWork === 'exchange'),
  temperature_sensors: (input) => input.temperatureSensor === true && input.sensorsPlausible === true,
  nox_sensors: (input) => input.noxSensor === true && input.sensorsPlausible === true,
  air_mass: (input) => input.airMassSensor === true && input.sensorsPlausible === true,
  recirculation: (input) => input.recirculationValve === true,
  fuel_injectors: (input) => input.fuelInjectors === true,
  dosing: (input) => input.reductantParts === true && input.causeRepaired === true && input.dosingTestPassed === true,
  reductant: (input) => (input.reductantParts === true || input.reductantRefilled === true) && input.reductantInOrder === true,
  scr_catalyst: (input) => input.scrCatalyst === true,
  oil: (input) => input.oilChanged === true,
  countdown: (input) =>
    input.noxFault === true && input.causeRepaired === true && input.reductantInOrder === true && input.sensorsPlausible === true,
  fault_codes: (input) =>
    input.causeRepaired === true && (input.filterWork === 'none' || input.filterWork === 'new' || input.dropVerified === true),
};

describe('what may be reset', () => {
  it('changes a value exactly when the work made it untrue and every proof is a yes', () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(anyInput, (input) => {
        const always = input.emissionComplete === true && input.saved === true && input.batterySupport === true;
        for (const { what, verdict } of advice(input).values) {
          expect(changing.includes(verdict), what).toBe(always && needed[what]?.(input) === true);
          if (changing.includes(verdict)) seen.add(what);
        }
      }),
      { numRuns: 600 },
    );
    expect([...seen].sort()).toEqual(Object.keys(needed).sort());
  });

  it('allows no more when any proof is taken back or becomes a no', () => {
    fc.assert(
      fc.property(anyInput, fc.subarray(proofs, { minLength: 1 }), fc.constantFrom(false, undefined), (input, lost, as) => {
        const before = changedCodes(input);
        const after = changedCodes(known({ ...input, ...Object.fromEntries(lost.map((key) => [key, as])) }));
        expect(before).toEqual(expect.arrayContaining(after));
      }),
      { numRuns: 300 },
    );
  });

  it('allows no more when the ash is only estimated, or not known', () => {
    fc.assert(
      fc.property(anyInput, fc.constantFrom('estimated', undefined), (input, ashBasis) => {
        expect(changedCodes(input)).toEqual(expect.arrayContaining(changedCodes(known({ ...input, ashBasis }))));
      }),
      { numRuns: 200 },
    );
  });

  it('allows no more when less was done to the parts', () => {
    fc.assert(
      fc.property(anyInput, fc.subarray(parts, { minLength: 1 }), (input, undone) => {
        const less = { ...input, ...Object.fromEntries(undone.map((key) => [key, false])) };
        expect(changedCodes(input)).toEqual(expect.arrayContaining(changedCodes(less)));
      }),
      { numRuns: 300 },
    );
  });

  it('writes no less soot than the readings allow, whatever else is proven, unless the filter is new', () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(anyInput, grams(0.1, 100), (input, mostSoot) => {
        const soot = advice({ ...input, mostSoot }).values.find(({ what }) => what === 'soot');
        if (soot === undefined || !changing.includes(soot.verdict)) return;
        seen.add(String(input.filterWork));
        const { filterWork: work } = input;
        expect([soot.verdict, soot.value]).toEqual(work === 'new' ? ['reset', 0] : ['set', expect.closeTo(mostSoot.value / 1000, 12)]);
      }),
      { numRuns: 600 },
    );
    expect([...seen].sort()).toEqual(['exchange', 'new', 'off-vehicle', 'on-vehicle']);
  });

  it('enters ash as zero only for a new filter, and never less than was measured or can be measured', () => {
    const seen = new Set<unknown>();
    fc.assert(
      fc.property(anyInput, (input) => {
        const { ashToSet, values } = advice(input);
        expect(values.find(({ what }) => what === 'ash')?.value).toBe(ashToSet);
        if (ashToSet === undefined) return;
        seen.add(input.filterWork);
        if (input.filterWork === 'new') return void expect(ashToSet).toBe(0);
        const si = (key: string) => (input[key] as { value: number }).value / 1000;
        expect(ashToSet).toBeGreaterThan(0);
        expect(ashToSet).toBeGreaterThanOrEqual(si('residualAsh') * (1 - 1e-12));
        expect(ashToSet).toBeGreaterThanOrEqual(si('ashUncertainty') * (1 - 1e-12));
        expect(ashToSet).toBeLessThanOrEqual((si('residualAsh') + si('ashUncertainty')) * (1 + 1e-12));
      }),
      { numRuns: 600 },
    );
    expect([...seen].sort()).toEqual(['exchange', 'new', 'off-vehicle']);
  });

  it('leaves the ash alone after a clean on the vehicle, and every value of the filter when nothing was done to it', () => {
    const ofFilter = ['soot', 'ash', 'filter_changed', 'statistics'];
    fc.assert(
      fc.property(anyInput, (input) => {
        const cleaned = advice({ ...input, filterWork: 'on-vehicle' }).values;
        expect(cleaned.find(({ what }) => what === 'ash')?.verdict).toBe('leave');
        const untouched = advice({ ...input, filterWork: 'none' }).values.filter(({ what }) => ofFilter.includes(what));
        expect(untouched.map(({ verdict }) => verdict)).toEqual(['leave', 'leave', 'leave', 'leave']);
      }),
      { numRuns: 100 },
    );
  });

  it('never lets anybody clear a countdown: the vehicle confirms it', () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        const row = advice(input).values.find(({ what }) => what === 'countdown');
        expect(['confirm', 'leave', 'not-yet']).toContain(row?.verdict);
      }),
      { numRuns: 100 },
    );
  });

  it('counts every value once, and its answer follows from the values', () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        const { verdict, values, allowed, waiting, left } = advice(input);
        const count = (wanted: readonly string[]) => values.filter((row) => wanted.includes(row.verdict)).length;
        expect([allowed, waiting, left]).toEqual([count(changing), count(['not-yet']), count(['leave'])]);
        expect(allowed + waiting + left).toBe(values.length);
        expect(verdict).toBe(allowed === 0 ? 'none' : waiting > 0 ? 'some' : 'all');
      }),
      { numRuns: 200 },
    );
  });

  it('says for every value that waits what must be proven, and names the first of these as the next step', () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        const { next, values, open, waiting } = advice(input);
        for (const row of values) expect(row.first !== undefined, row.what).toBe(row.verdict === 'not-yet');
        expect(open.length > 0).toBe(waiting > 0);
        if (open.length > 0) expect(next).toBe(open[0]?.action);
        for (const proof of open) expect(proof.waiting).toBeLessThanOrEqual(waiting);
      }),
      { numRuns: 200 },
    );
  });
});
