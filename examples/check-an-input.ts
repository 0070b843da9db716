// A shop tool takes what the technician typed, runs a calculation, and shows either the answer or what to correct.
import { issueText, present } from '@wallflow/calculation';
import { registry } from '@wallflow/exhaust/calculations';

const calculation = registry.get('gas-density');
if (calculation === undefined) throw new Error('the calculation is gone');

for (const typed of [
  { gasPressure: '1013 mbar', gasTemperature: '250 °C' },
  { gasPressure: '14.7 psi', gasTemperature: '250' },
  { gasPressure: '0.2 kPa', gasTemperature: '250 °C' },
]) {
  const result = calculation.runUnknown(typed);
  if (result.ok) {
    const { density } = present(calculation, result).outputs;
    console.log(density?.type === 'quantity' ? density.text : '');
  } else {
    for (const issue of result.issues) console.log(issueText(issue));
  }
}

// prints:
// 0.675 kg/m³
// Gas temperature: "250" has no unit; use one of degC, K, degF, degR.
// Absolute pressure of the gas: "0.2 kPa" is out of range; it must be more than 1 kPa.
