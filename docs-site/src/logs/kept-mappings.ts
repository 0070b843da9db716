import { type Mapping, mappingFor } from '@wallflow/logs';
import { type Kept, store, stored } from '../storage/guarded.js';
import { usableMappings } from './usable-mappings.js';

const place = 'wallflow-log-mappings';
/** A workshop has a few tools; the oldest answers make room. */
const most = 50;

/** The answers on logs that this device keeps, the latest first. */
export function keptMappings(): readonly Mapping[] {
  try {
    return usableMappings(JSON.parse(stored(place) ?? '[]'));
  } catch {
    return [];
  }
}

/** Keep answers for the next log with the same titles, in the place of older ones. */
export function keepMapping(mapping: Mapping): Kept {
  const others = keptMappings().filter((known) => mappingFor(mapping.titles, [known]) === undefined);
  return store(place, JSON.stringify([mapping, ...others].slice(0, most)));
}
