import { celsiusToKelvin } from './celsius.js';

export type DepositKindId = 'urea-biuret' | 'cyanuric-acid' | 'fused' | 'unknown';

/** What it takes to get rid of one kind of deposit. */
export interface DepositKind {
  readonly name: string;
  /** Temperature in K of the deposit itself above which published samples of the kind were gone. */
  readonly goneAbove: number;
  /** Temperature in K from which it begins to lose weight. */
  readonly losesFrom: number;
  readonly warmWater: 'dissolves' | 'does-not-dissolve';
}

export const depositKinds: Readonly<Record<DepositKindId, DepositKind>> = {
  'urea-biuret': {
    name: 'white, soft, soluble: urea and biuret',
    losesFrom: celsiusToKelvin(150),
    goneAbove: celsiusToKelvin(250),
    warmWater: 'dissolves',
  },
  'cyanuric-acid': {
    name: 'white or grey, hard: cyanuric acid',
    losesFrom: celsiusToKelvin(280),
    goneAbove: celsiusToKelvin(400),
    warmWater: 'does-not-dissolve',
  },
  fused: {
    name: 'brown or dark, stone-hard: fused rings',
    losesFrom: celsiusToKelvin(320),
    goneAbove: celsiusToKelvin(430),
    warmWater: 'does-not-dissolve',
  },
  unknown: {
    name: 'not known: taken as the most stubborn',
    losesFrom: celsiusToKelvin(320),
    goneAbove: celsiusToKelvin(430),
    warmWater: 'does-not-dissolve',
  },
};
