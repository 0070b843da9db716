import { checkMapping, type Mapping } from '@wallflow/logs';

/** The mappings among what was stored or came with a job file; anything else counts as none. */
export function usableMappings(found: unknown): readonly Mapping[] {
  if (!Array.isArray(found)) return [];
  return found.flatMap((one) => {
    const checked = checkMapping(one);
    return checked.ok ? [checked.mapping] : [];
  });
}
