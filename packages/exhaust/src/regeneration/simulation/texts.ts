import type { Advice, CodedText } from '@wallflow/calculation';
import { say } from '@wallflow/calculation';
import { cautions } from '../../cautions.js';

export const simulationAssumptions: readonly CodedText[] = [
  { code: 'even_soot', text: 'The soot lies evenly along the filter, and every part of the wall takes the same share of the gas.' },
  { code: 'no_heat_loss', text: 'No heat is lost through the can: the inside of a well insulated filter; its rim stays cooler.' },
  { code: 'one_channel', text: 'All channels behave alike; no heat flows sideways.' },
  { code: 'constant_data', text: 'Specific heats and conductivities are constant: means over the temperature range.' },
  { code: 'one_heat', text: 'Soot gives the same heat with nitrogen dioxide as with oxygen; no soot comes in during the run.' },
  {
    code: 'mixed_layer',
    text: 'Where diffusion is counted, the oxygen is evenly mixed within the soot layer; none comes from the outlet side.',
  },
  { code: 'gas_follows', text: 'The gas follows the wall at once, as it holds only a thousandth of the heat of the honeycomb.' },
];

export const simulationLimits: readonly CodedText[] = [
  {
    code: 'not_a_permission',
    text: 'A simulation is no permission: uneven soot, oil or fuel in the filter makes it hotter than any model.',
  },
  {
    code: 'kinetics_spread',
    text: 'Rates measured on coated and uncoated filters differ by a factor of five at 600 °C, laws from flames by far more: try more than one before you rely on a peak.',
  },
  {
    code: 'wrong_way_temperature',
    text: 'A sudden fall of the gas temperature alone was measured to raise the peak by about 50 K. With diffusion the model shows up to 30 K of this at low flow, without diffusion none.',
  },
];

export const simulationCautions = [cautions.makerFirst, cautions.hotExhaust, cautions.fumes, cautions.neverUnattended, cautions.runaway];

/** What a peak means for the material, after the review of ash damage of 2019. */
export function peakAdvice(peak: number, substrate: 'silicon-carbide' | 'cordierite', scenario: string): Advice[] {
  const celsius = peak - 273.15;
  const advice: Advice[] = [];
  const damaging = substrate === 'silicon-carbide' ? 1100 : 900;
  if (celsius >= damaging) {
    advice.push({ tone: 'do-not', text: say`Do not heat this filter: above ${damaging} °C the material is damaged. Take soot out first.` });
  } else if (celsius >= 800) {
    advice.push({
      tone: 'do-not',
      text: 'Do not heat it like this: from 800 °C ash with water or alkali attacks a filter. Take soot out, or heat more slowly.',
    });
  }
  if (scenario === 'drop-to-idle')
    advice.push({
      tone: 'do-not',
      text: 'Never let the engine drop to idle while the filter burns: the cooling flow falls, and the oxygen rises.',
    });
  return advice;
}

/** How the simulated peak stands to the adiabatic estimate, and why. */
export function comparisonText(above: number, lumped: boolean): string {
  if (above <= 0) {
    return lumped
      ? 'Below the adiabatic estimate: the gas carried heat away. With one temperature for the whole filter it can never be above.'
      : 'Below the adiabatic estimate: the gas carried heat away faster than it brought it to the hottest place.';
  }
  return 'Above the adiabatic estimate: heat carried downstream by the gas added to the heat released there, near the outlet.';
}
