import type { AnyCalculation, Subject } from './definition.js';
import { nearest } from './nearest.js';

/** All calculations of a program, by id and by subject. */
export interface Registry {
  readonly all: readonly AnyCalculation[];
  get(id: string): AnyCalculation | undefined;
  bySubject(subject: Subject): readonly AnyCalculation[];
  /** Ids that an unknown id was probably meant to be. */
  suggest(id: string): readonly string[];
}

/** Collect calculations; two with one id are a programmer's mistake and throw. */
export function createRegistry(...groups: readonly (readonly AnyCalculation[])[]): Registry {
  const all: readonly AnyCalculation[] = Object.freeze(groups.flat());
  const byId = new Map<string, AnyCalculation>();
  for (const calculation of all) {
    if (byId.has(calculation.id)) throw new Error(`two calculations are called ${calculation.id}`);
    byId.set(calculation.id, calculation);
  }
  return {
    all,
    get: (id) => byId.get(id),
    bySubject: (subject) => all.filter((calculation) => calculation.subject === subject),
    suggest: (id) => nearest(id, [...byId.keys()]),
  };
}
