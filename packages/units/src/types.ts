import type * as data from './generated/units.js';

/** Exponents of the SI base dimensions. */
export interface Dimension {
  readonly length: number;
  readonly mass: number;
  readonly time: number;
  readonly temperature: number;
  readonly amount: number;
  readonly current: number;
}

type DataModule = typeof data;
type DataOf<K extends string> = `${K}Data` extends keyof DataModule ? DataModule[`${K}Data`] : never;

/** Names of all kinds of quantity. */
export type KindName = DataModule[keyof DataModule]['kind'];

/** Unit ids of one kind. */
export type UnitOf<K extends KindName> = K extends KindName ? keyof DataOf<K>['units'] & string : never;

declare const brand: unique symbol;

/** A number in SI that carries its kind in its type, and nothing at run time. */
export type Quantity<K extends KindName> = number & { readonly [brand]: K };

/** One unit as the parser and the converter need it. */
export interface UnitData {
  readonly symbol: string;
  /** SI = (value + offset) × factor, or factor / value for a reciprocal unit. */
  readonly factor: number;
  readonly offset?: number;
  readonly reciprocal?: true;
  /** Other spellings, separated by spaces. */
  readonly aliases: string;
}

export interface KindData {
  readonly kind: string;
  readonly label: string;
  readonly dimension: Dimension;
  readonly base: string;
  /** Whether values below zero do not exist. */
  readonly floor: boolean;
  readonly order: readonly string[];
  readonly ambiguous: Readonly<Record<string, readonly string[]>>;
  readonly units: Readonly<Record<string, UnitData>>;
}
