import { type ComputeContext, inconsistentInputs, isRefusal, type Refusal } from '@wallflow/calculation';
import { squareCellFiltrationArea } from '../../soot/load/kernel.js';
import { chosenKinetics } from '../../soot/oxidation/inputs.js';
import { honeycombOf } from '../honeycomb.js';
import type { SimulationInput, simulationConstants } from './inputs.js';
import { sootHeat } from './kernel-adiabatic.js';
import type { FeedPoint } from './kernel-feed.js';
import type { AxialRegeneration } from './kernel-run.js';
import { dropFeed, rampFeed, steadyFeed } from './kernel-scenario.js';
import { channelHeatTransfer, channelOxygenTransfer } from './kernel-substrate.js';

type Context = ComputeContext<typeof simulationConstants>;

/** The feed of the chosen scenario, or why it cannot be. */
export function scenarioFeed(input: SimulationInput): FeedPoint[] | Refusal {
  const { massFlow, inletTemperature: temperature, oxygen, nitrogenDioxide } = input;
  const gas = { massFlow, temperature, oxygen, nitrogenDioxide };
  const ramp = rampFeed(gas, input.initialTemperature, input.rampDuration);
  switch (input.scenario) {
    case 'steady':
      return steadyFeed(gas);
    case 'ramp':
      return ramp;
    case 'drop-to-idle':
      return dropFeed(ramp, input.dropTime, {
        massFlow: input.idleMassFlow,
        temperature: input.idleTemperature,
        oxygen: input.idleOxygen,
        nitrogenDioxide,
      });
    default:
      return ownFeed(input);
  }
}

function ownFeed({ course, nitrogenDioxide }: SimulationInput): FeedPoint[] | Refusal {
  if (course === undefined) return { refused: [{ code: 'missing_input', path: ['course'] }] };
  const late = course.findIndex((point, index) => index > 0 && point.time < (course[index - 1]?.time ?? 0));
  if (late > 0)
    return inconsistentInputs('the points of the course are not in order of time', ['course', late, 'time'], ['course', late - 1, 'time']);
  return course.map((point) => ({ ...point, nitrogenDioxide }));
}

/** The whole model input in SI for a number of cells, or why there is none. */
export function prepareRun(input: SimulationInput, cells: number, { constants, assume }: Context): AxialRegeneration | Refusal {
  const kinetics = chosenKinetics(input, constants);
  if (isRefusal(kinetics)) return kinetics;
  const feed = scenarioFeed(input);
  if (!Array.isArray(feed)) return feed;
  const channelWidth = 1 / Math.sqrt(input.cellDensity) - input.wallThickness;
  if (channelWidth <= 0)
    return inconsistentInputs('the wall is thicker than the distance between the walls', ['wallThickness'], ['cellDensity']);
  const { heatToDioxide, heatToMonoxide, carbonMolarMass, gasMolarMass, gasConstant } = constants;
  const { carbonMonoxideShare, gasSpecificHeat } = input;
  const { honeycombDensity: bulkDensity, honeycombHeatCapacity: specificHeat } = honeycombOf(input, constants, assume);
  const conductivity = input.substrate === 'silicon-carbide' ? constants.siliconCarbideConductivity : constants.cordieriteConductivity;
  return {
    bed: {
      volume: input.filterVolume,
      length: input.filterLength,
      bulkDensity,
      specificHeat,
      axialConductivity: input.axialConductivity ?? conductivity,
      filtrationAreaPerVolume: squareCellFiltrationArea(input.cellDensity, input.wallThickness),
      heatTransferCoefficient: channelHeatTransfer(input.gasConductivity, channelWidth),
      ...(input.oxygenTransport === 'diffusion' ? { oxidantTransferCoefficient: channelOxygenTransfer(channelWidth) } : {}),
    },
    combustion: {
      kinetics,
      heatOfCombustion: sootHeat(heatToDioxide, heatToMonoxide, carbonMonoxideShare, carbonMolarMass),
      carbonMonoxideShare,
      gasSpecificHeat,
      gasMolarMass,
      gasConstant,
    },
    soot: new Float64Array(cells).fill(input.sootLoad),
    initialTemperature: new Float64Array(cells).fill(input.initialTemperature),
    feed,
    duration: input.duration,
  };
}
