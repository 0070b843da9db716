import type { AnyCalculation } from '@wallflow/calculation';
import { registry } from '../index.js';
import { UsageError } from '../io.js';

/** The calculation of an id, or a usage error with the ids that were probably meant. */
export function findCalculation(id: string | undefined): AnyCalculation {
  if (id === undefined) throw new UsageError('name a calculation; `wallflow list` shows them');
  const found = registry.get(id);
  if (found !== undefined) return found;
  const meant = registry.suggest(id);
  throw new UsageError(`there is no calculation "${id}"${meant.length === 0 ? '' : `; did you mean ${meant.join(', ')}?`}`);
}
