// In a loop over a log the kernels do without parsing and checking: SI numbers in, SI numbers out.
import { flowResistance, sutherlandViscosity } from '@wallflow/exhaust';
import { differentialPressure, temperature, volumeFlow } from '@wallflow/units';

const log = [
  { drop: 15, flow: 60, gas: 130 },
  { drop: 84, flow: 290, gas: 220 },
];

for (const { drop, flow, gas } of log) {
  const viscosity = sutherlandViscosity(temperature(gas, 'degC'));
  const resistance = flowResistance(differentialPressure(drop, 'mbar'), viscosity, volumeFlow(flow, 'm3/h'));
  console.log(`${resistance.toExponential(2)} 1/m³`);
}

// prints:
// 3.91e+9 1/m³
// 3.94e+9 1/m³
