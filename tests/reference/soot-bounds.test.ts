import { describe, expect, it } from 'vitest';
import { registry } from '../support/calculations.js';
import { readMeasuredCurves } from '../support/measured-curve.js';

const id = 'soot-mass-from-pressure-drop';
const calculation = registry.get(id)!;

/** What a workshop does not know: without it the range of the result has to come from what is published. */
const material = new Set(['wallPermeability', 'sootPermeability', 'sootPackingDensity', 'entranceExitCoefficient']);

function withoutMaterial(inputs: Readonly<Record<string, unknown>>): Record<string, unknown> {
  return Object.fromEntries(Object.entries(inputs).filter(([key]) => !material.has(key)));
}

interface Bounds {
  readonly leastSootMass?: number;
  readonly mostSootMass?: number;
}

function bounds(inputs: Readonly<Record<string, unknown>>): Bounds {
  const result = calculation.run(inputs);
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  return result.outputs as unknown as Bounds;
}

/** Grams of a mass as printed. */
function grams(text: string): number {
  const [number, unit] = text.split(' ');
  if (unit !== 'g') throw new Error(`${text} is no mass in grams`);
  return Number(number);
}

/** How far off a point may have been read from its figure. */
const readingError = 0.3;

const loaded = readMeasuredCurves().filter((curve) => curve.models.some((model) => model.calculation === id));
/** Of one filter only what came to it is known, not what stayed in it. */
const upperEndOnly = new Set(['sic-coated-b-soot']);
const models = ['closed-form', 'compressible', 'one-dimensional', 'deep-bed'];

describe.each(loaded)('$id', (curve) => {
  it.each(models)('%s: least and most hold the soot that was found, with only the geometry known', (model) => {
    for (const { at, measured } of curve.points) {
      const { leastSootMass, mostSootMass } = bounds({ ...withoutMaterial(curve.inputs), model, pressureDrop: at });
      expect.soft(1000 * (leastSootMass ?? Number.NaN), at).toBeLessThanOrEqual(grams(measured) + readingError);
      if (!upperEndOnly.has(curve.id)) {
        expect.soft(1000 * (mostSootMass ?? Number.NaN), at).toBeGreaterThanOrEqual(grams(measured) - readingError);
      }
    }
  });

  it.each(models)('%s: least and most hold it with the wall and the soot that were published', (model) => {
    for (const { at, measured } of curve.points) {
      const { leastSootMass, mostSootMass } = bounds({ ...curve.inputs, model, pressureDrop: at });
      expect.soft(1000 * (leastSootMass ?? Number.NaN), at).toBeLessThanOrEqual(grams(measured) + readingError);
      if (!upperEndOnly.has(curve.id)) {
        expect.soft(1000 * (mostSootMass ?? Number.NaN), at).toBeGreaterThanOrEqual(grams(measured) - readingError);
      }
    }
  });
});

it('rests on the published curves of ten filters at least', () => {
  expect(loaded.length).toBeGreaterThanOrEqual(10);
});
