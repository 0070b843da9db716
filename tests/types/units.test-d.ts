import {
  absolutePressure,
  compare,
  difference,
  differentialPressure,
  energy,
  fraction,
  gaugePressure,
  type Kind,
  type KindName,
  kinds,
  length,
  massFlow,
  massFraction,
  moleFraction,
  type Quantity,
  standardVolumeFlow,
  temperature,
  temperatureDifference,
  toAbsolute,
  torque,
  type UnitOf,
  volumeFlow,
} from '@wallflow/units';
import { convertExact } from '@wallflow/units/exact';
import { describe, expectTypeOf, it } from 'vitest';

/** Stands for a calculation that wants one kind each. */
declare function wants(inputs: {
  readonly absolute?: Quantity<'absolutePressure'>;
  readonly temperature?: Quantity<'temperature'>;
  readonly rise?: Quantity<'temperatureDifference'>;
  readonly standard?: Quantity<'standardVolumeFlow'>;
  readonly actual?: Quantity<'volumeFlow'>;
  readonly mole?: Quantity<'moleFraction'>;
  readonly energy?: Quantity<'energy'>;
}): void;

const ambient = absolutePressure(1013.25, 'hPa');
const gauge = gaugePressure(200, 'mbar');
const drop = differentialPressure(360, 'mbar');

describe('one kind of quantity', () => {
  it('is not taken for another of the same dimension', () => {
    // @ts-expect-error gauge for absolute
    wants({ absolute: gauge });
    // @ts-expect-error a pressure difference for an absolute pressure
    wants({ absolute: drop });
    // @ts-expect-error a temperature for a temperature difference
    wants({ rise: temperature(20, 'degC') });
    // @ts-expect-error a temperature difference for a temperature
    wants({ temperature: temperatureDifference(20, 'K') });
    // @ts-expect-error actual for standard flow
    wants({ standard: volumeFlow(100, 'm3/h') });
    // @ts-expect-error standard for actual flow
    wants({ actual: standardVolumeFlow(100, 'm3/h_0C') });
    // @ts-expect-error a mass fraction for a mole fraction
    wants({ mole: massFraction(1, '%') });
    // @ts-expect-error torque for energy
    wants({ energy: torque(100, 'N.m') });
    // @ts-expect-error a bare number for a quantity
    wants({ absolute: 101_325 });
    wants({ absolute: toAbsolute(gauge, ambient), temperature: temperature(20, 'degC'), rise: temperatureDifference(20, 'degC') });
  });

  it('is not assigned to, converted by or compared with another', () => {
    // @ts-expect-error gauge for absolute
    const absolute: Quantity<'absolutePressure'> = gauge;
    // @ts-expect-error a gauge pressure shown by the kind of absolute pressure
    absolutePressure.format(gauge);
    // @ts-expect-error a gauge pressure converted by the kind of absolute pressure
    absolutePressure.in(gauge, 'mbar');
    // @ts-expect-error two kinds compared
    compare(gauge, ambient);
    // @ts-expect-error a difference across two kinds
    difference(gauge, ambient);
    // @ts-expect-error the ambient pressure as a gauge pressure
    toAbsolute(ambient, gauge);
    expectTypeOf(absolute).toEqualTypeOf<Quantity<'absolutePressure'>>();
  });

  it('gives differences of the kind that differences have', () => {
    expectTypeOf(difference(ambient, ambient)).toEqualTypeOf<Quantity<'differentialPressure'>>();
    expectTypeOf(difference(gauge, gauge)).toEqualTypeOf<Quantity<'differentialPressure'>>();
    expectTypeOf(difference(temperature(20, 'degC'), temperature(0, 'degC'))).toEqualTypeOf<Quantity<'temperatureDifference'>>();
    expectTypeOf(toAbsolute(gauge, ambient)).toEqualTypeOf<Quantity<'absolutePressure'>>();
  });

  it('is still a number to calculate with', () => {
    expectTypeOf(drop).toExtend<number>();
    expectTypeOf(drop * 2).toEqualTypeOf<number>();
    // @ts-expect-error what is calculated has lost its kind until it is branded
    wants({ absolute: ambient * 2 });
    wants({ absolute: absolutePressure.si(ambient * 2) });
  });
});

describe('a unit', () => {
  it('belongs to its kind', () => {
    // @ts-expect-error a unit of mass flow
    differentialPressure(360, 'kg/h');
    // @ts-expect-error misspelt
    differentialPressure(360, 'mBar');
    // @ts-expect-error absolute marks belong to absolute pressure
    gaugePressure(1, 'psia');
    // @ts-expect-error gauge marks belong to gauge pressure
    absolutePressure(1, 'barg');
    // @ts-expect-error ambiguous: conventional, 4 °C or 60 °F
    differentialPressure(1, 'inH2O');
    // @ts-expect-error a standard flow names its reference state
    standardVolumeFlow(100, 'm3/h');
    // @ts-expect-error a ratio has no percent
    kinds.ratio(1, '%');
    // @ts-expect-error a unit of another kind to show it in
    massFlow.in(massFlow(1, 'kg/h'), 'L/s');
    // @ts-expect-error a unit of another kind
    fraction.symbol('mbar');
    // @ts-expect-error a unit of another kind for the exact path
    convertExact('length', '1', 'mm', 'kg');
    expectTypeOf<UnitOf<'ratio'>>().toEqualTypeOf<'1'>();
    expectTypeOf(length.units).toEqualTypeOf<readonly UnitOf<'length'>[]>();
  });

  it('is known of what parsing gives', () => {
    const parsed = energy.parse('5 kWh');
    if (parsed.ok) {
      expectTypeOf(parsed.quantity).toEqualTypeOf<Quantity<'energy'>>();
      expectTypeOf(parsed.unit).toEqualTypeOf<UnitOf<'energy'>>();
    } else {
      expectTypeOf(parsed.issue.code).toExtend<string>();
    }
  });
});

describe('a kind', () => {
  it('is a kind of anything, for code that handles all of them', () => {
    expectTypeOf(differentialPressure).toExtend<Kind<KindName>>();
    expectTypeOf(moleFraction.kind).toEqualTypeOf<'moleFraction'>();
    expectTypeOf(kinds.temperature).toEqualTypeOf<Kind<'temperature'>>();
  });
});
