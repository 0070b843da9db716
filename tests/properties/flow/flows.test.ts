import {
  actualVolumeFlow,
  airMassFlowAtLambda,
  exhaustMassFlow,
  fuelMassFlowAtLambda,
  gasDensity,
  lambdaOfFlows,
  molarFlowOfMass,
  molarFlowOfVolume,
  pipeArea,
  pipeVelocity,
  speedDensityAirMassFlow,
  standardVolumeFlowOfMoles,
} from '@wallflow/exhaust';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true });
const close = (a: number, b: number, relative = 1e-12) =>
  expect(Math.abs(a - b)).toBeLessThanOrEqual(relative * Math.max(Math.abs(a), Math.abs(b)));
const gas = fc.record({ pressure: between(5e4, 5e5), temperature: between(250, 1300), molarMass: between(0.028, 0.03) });
const engine = fc.record({
  displacement: between(5e-4, 0.03),
  engineSpeed: between(8, 80),
  revolutionsPerCycle: fc.constantFrom(1, 2),
  volumetricEfficiency: between(0.5, 1.2),
  manifoldPressure: between(5e4, 4e5),
  manifoldTemperature: between(250, 420),
});

describe('air and exhaust flow', () => {
  it('speed–density: twice the speed, displacement or pressure is twice the air; warmer charge is less', () => {
    fc.assert(
      fc.property(engine, between(1.01, 1.5), (input, factor) => {
        const air = speedDensityAirMassFlow(input);
        for (const key of ['engineSpeed', 'displacement', 'manifoldPressure', 'volumetricEfficiency'] as const) {
          close(speedDensityAirMassFlow({ ...input, [key]: input[key] * factor }), air * factor);
        }
        close(speedDensityAirMassFlow({ ...input, manifoldTemperature: input.manifoldTemperature * factor }), air / factor);
      }),
    );
  });

  it('a two-stroke draws twice the air of a four-stroke, and recirculated exhaust displaces its share', () => {
    fc.assert(
      fc.property(engine, between(0, 0.6), (input, share) => {
        const four = speedDensityAirMassFlow({ ...input, revolutionsPerCycle: 2 });
        close(speedDensityAirMassFlow({ ...input, revolutionsPerCycle: 1 }), 2 * four);
        close(speedDensityAirMassFlow({ ...input, revolutionsPerCycle: 2, exhaustGasRecirculation: share }), (1 - share) * four);
      }),
    );
  });

  it('air, fuel and lambda agree whichever of them is sought', () => {
    fc.assert(
      fc.property(between(0.001, 1), between(1, 20), (air, lambda) => {
        const fuel = fuelMassFlowAtLambda(air, lambda);
        close(lambdaOfFlows(air, fuel), lambda);
        close(airMassFlowAtLambda(fuel, lambda), air);
        close(exhaustMassFlow(air, fuel), air * (1 + 1 / (14.5 * lambda)));
      }),
    );
  });

  it('volume flow times density is the mass flow, and mass passes through a pipe unchanged', () => {
    fc.assert(
      fc.property(gas, between(0.001, 1), between(0.02, 0.3), (state, massFlow, diameter) => {
        close(actualVolumeFlow({ ...state, massFlow }) * gasDensity(state), massFlow);
        const density = gasDensity(state);
        close(pipeVelocity({ massFlow, density, diameter }) * density * pipeArea(diameter), massFlow);
      }),
    );
  });

  it('a standard flow does not depend on the temperature and pressure at which the gas was measured', () => {
    fc.assert(
      fc.property(gas, gas, between(0.001, 1), (first, second, massFlow) => {
        const standard = (state: typeof first) => {
          const volumeFlow = actualVolumeFlow({ ...state, molarMass: 0.029, massFlow });
          return standardVolumeFlowOfMoles(molarFlowOfVolume({ ...state, volumeFlow }));
        };
        close(standard(first), standard(second));
        close(standard(first), standardVolumeFlowOfMoles(molarFlowOfMass(massFlow, 0.029)));
      }),
    );
  });
});
