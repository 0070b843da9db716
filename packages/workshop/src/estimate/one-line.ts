import { differentialPressure, type Kind, type KindName, length, massFlow, rotationalSpeed, temperature, volume } from '@wallflow/units';
import type { EstimateInput, SpeedReading } from './evidence-input.js';

/** What was not understood of a line, in words that can be shown. */
export interface LineProblem {
  readonly given: string;
  readonly problem: string;
}

export type LineResult =
  | { readonly ok: true; readonly input: EstimateInput }
  | { readonly ok: false; readonly problems: readonly LineProblem[] };

const example = '"2.2 L; 0 rpm 0.5 mbar; 800 rpm 14 mbar; 2800 rpm 290 mbar 210 °C"';

/** The kinds that may stand in a line; none shares a unit with another. */
const readable = { speed: rotationalSpeed, drop: differentialPressure, temperature, air: massFlow, displacement: volume, distance: length };
type Word = keyof typeof readable;

interface Found {
  readonly word: Word;
  readonly value: number;
  /** Half a unit of the last digit that was typed, as a standard uncertainty, or what stood behind ±. */
  readonly uncertainty: number;
}

function read(text: string): Found | undefined {
  for (const [word, kind] of Object.entries(readable) as [Word, Kind<KindName>][]) {
    const parsed = kind.parse(text);
    if (!parsed.ok) continue;
    const decimals = /[.,](\d+)/.exec(text)?.[1]?.length ?? 0;
    const rounding = (0.5 * 10 ** -decimals) / kind.differenceIn(1, parsed.unit) / Math.sqrt(3);
    return { word, value: parsed.quantity, uncertainty: parsed.uncertainty ?? rounding };
  }
  return undefined;
}

/** What may stand between the quantities of a line and says nothing. */
const fillers = /(?<=\s)(?:at|and|bei|und)(?=\s)|[=:@](?=\s|\d|$)/g;

/** The quantities of a piece of a line, a number and its unit each, in the order in which they stand. */
function quantitiesIn(piece: string, problems: LineProblem[]): Found[] {
  const text = piece.replaceAll(fillers, ' ');
  const parts = text.match(/[-+−]?\d[\d.,]*\s*(?:±\s*[\d.,]+\s*)?[^\d\s;,+−-][^\s;]*/g) ?? [];
  if (parts.join('').replaceAll(/[\s,]/g, '').length !== text.replaceAll(/[\s,]/g, '').length || parts.length === 0) {
    problems.push({ given: piece, problem: 'write numbers with their units' });
    return [];
  }
  return parts.flatMap((part) => {
    const quantity = read(part.replace(/,$/, ''));
    if (quantity !== undefined) return [quantity];
    problems.push({ given: part, problem: 'not a speed, pressure, temperature, air mass, displacement or distance' });
    return [];
  });
}

/** The readings of a piece: each begins with the quantity, speed or drop, that the first one begins with. */
function readingsIn(piece: string, problems: LineProblem[]): Map<Word, Found>[] {
  const quantities = quantitiesIn(piece, problems);
  const first = quantities.find(({ word }) => word === 'speed' || word === 'drop')?.word;
  const readings = [new Map<Word, Found>()];
  for (const quantity of quantities) {
    if (quantity.word === first && readings.at(-1)?.has(first)) readings.push(new Map());
    const reading = readings.at(-1);
    if (reading?.has(quantity.word)) problems.push({ given: piece, problem: 'put a semicolon between two readings' });
    else reading?.set(quantity.word, quantity);
  }
  return readings;
}

/** Where a vehicle's figures cannot lie; further out a unit was mistyped. */
const displacementRange = [0.5e-3, 20e-3] as const;
const speedRange = [0, 6000 / 60] as const;

/**
 * Read what a technician has on one line: displacement, odometer if it is known, and readings as speed, drop, and
 * temperature or air mass if they are known. A reading at 0 rpm is that with the engine off. Never throws.
 */
export function readLine(line: string): LineResult {
  const problems: LineProblem[] = [];
  const readings: SpeedReading[] = [];
  let zero: EstimateInput['zero'];
  let displacement: number | undefined;
  let distance: number | undefined;
  const pieces = line.split(';').filter((text) => text.trim() !== '');
  for (const [piece, found] of pieces.flatMap((text) => readingsIn(text.trim(), problems).map((one) => [text.trim(), one] as const))) {
    const [speed, drop] = [found.get('speed'), found.get('drop')];
    displacement = found.get('displacement')?.value ?? displacement;
    distance = found.get('distance')?.value ?? distance;
    if (speed === undefined && drop === undefined) continue;
    if (speed === undefined || drop === undefined) {
      problems.push({ given: piece, problem: 'a reading needs an engine speed and a pressure drop' });
    } else if (speed.value < speedRange[0] || speed.value > speedRange[1]) {
      problems.push({ given: piece, problem: 'an engine speed lies between 0 and 6000 rpm' });
    } else if (Math.abs(drop.value) > 1.5e5) {
      problems.push({ given: piece, problem: 'a pressure drop lies within 1500 mbar' });
    } else if (speed.value === 0) {
      zero = { pressureDrop: drop.value, uncertainty: drop.uncertainty };
    } else {
      const [gas, air] = [found.get('temperature'), found.get('air')];
      readings.push({
        engineSpeed: speed.value,
        pressureDrop: drop.value,
        uncertainty: drop.uncertainty,
        ...(gas === undefined ? {} : { gasTemperature: gas.value }),
        ...(air === undefined ? {} : { airMassFlow: air.value }),
      });
    }
  }
  if (displacement === undefined) problems.push({ given: line, problem: `the displacement of the engine is missing: ${example}` });
  else if (displacement < displacementRange[0] || displacement > displacementRange[1]) {
    problems.push({ given: line, problem: 'a displacement lies between 0.5 and 20 litres' });
  }
  if (readings.length === 0) problems.push({ given: line, problem: `a reading with the engine running is missing: ${example}` });
  if (problems.length > 0 || displacement === undefined) return { ok: false, problems };
  return {
    ok: true,
    input: {
      vehicle: { displacement, ...(distance === undefined ? {} : { distance }) },
      readings,
      ...(zero === undefined ? {} : { zero }),
    },
  };
}
