import type { UnitIds } from './generated/unit-ids.js';

/** Exponents of the SI base dimensions. */
export interface Dimension {
  readonly length: number;
  readonly mass: number;
  readonly time: number;
  readonly temperature: number;
  readonly amount: number;
  readonly current: number;
}

/** Names of all kinds of quantity. */
export type KindName = keyof UnitIds;

/** Unit ids of one kind. */
export type UnitOf<K extends KindName> = UnitIds[K];

declare const brand: unique symbol;

/** A number in SI that carries its kind in its type, and nothing at run time. */
export type Quantity<K extends KindName> = number & { readonly [brand]: K };

/**
 * One unit as the data files give it. The symbol is null where it follows from the id; `shift` is the offset of a
 * temperature scale, or `'reciprocal'`; the factor's text is left away where the number says the same.
 */
export type UnitRow = readonly [
  id: string,
  symbol: string | null,
  name: string,
  aliases: string,
  source: string,
  factor: number,
  factorText?: string,
  shift?: number | 'reciprocal',
];

/** One kind as the data files give it; units in the order of use. */
export interface KindRow<K extends KindName> {
  readonly kind: K;
  readonly label?: string;
  /** Exponents of length, mass, time, temperature, amount, current. */
  readonly dimension: readonly [number, number, number, number, number, number];
  readonly base: UnitOf<K>;
  /** Whether values below zero do not exist. */
  readonly floor?: true;
  /** Spellings that could mean several units, and those units. */
  readonly ambiguous?: readonly (readonly [spellings: string, units: string])[];
  readonly units: readonly UnitRow[];
}

/** One unit as the parser and the converter need it. */
export interface UnitData {
  readonly id: string;
  readonly symbol: string;
  readonly name: string;
  /** Other spellings. */
  readonly aliases: readonly string[];
  /** Key of the source. */
  readonly source: string;
  /** SI = (value + offset) × factor, or factor / value for a reciprocal unit. */
  readonly factor: number;
  /** The exact factor; after `~` one that is itself rounded or measured. */
  readonly factorText: string;
  readonly offset: number;
  readonly reciprocal: boolean;
}

/** One kind as the parser and the converter need it. */
export interface KindData {
  readonly kind: KindName;
  /** What it is called in words. */
  readonly label: string;
  readonly base: string;
  readonly floor: boolean;
  /** Unit ids, most usual first. */
  readonly order: readonly string[];
  readonly units: ReadonlyMap<string, UnitData>;
  readonly ambiguous: NonNullable<KindRow<KindName>['ambiguous']>;
}
