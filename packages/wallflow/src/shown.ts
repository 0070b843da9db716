import type { PresentOptions } from '@wallflow/calculation';
import { metric, usCustomary } from '@wallflow/calculation/display';
import { UsageError } from './io.js';

const systems: ReadonlyMap<string, PresentOptions['system']> = new Map([
  ['metric', metric],
  ['us', usCustomary],
]);

/** How results are to be shown, from the options of a command line. */
export function shownAs(system: string | undefined, locale: string | undefined): Pick<PresentOptions, 'system' | 'locale'> {
  const found = system === undefined ? undefined : systems.get(system);
  if (system !== undefined && found === undefined) throw new UsageError(`--system is metric or us, not "${system}"`);
  if (locale !== undefined && !isLocale(locale))
    throw new UsageError(`--locale is the tag of a language, such as de or en-GB, not "${locale}"`);
  return { ...(found === undefined ? {} : { system: found }), ...(locale === undefined ? {} : { locale }) };
}

function isLocale(tag: string): boolean {
  try {
    return Intl.getCanonicalLocales(tag).length === 1;
  } catch {
    return false;
  }
}
