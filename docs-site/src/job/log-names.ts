/** The name under which a job file has the log of after where it shares its name with that of before. */
export function nameOfAfter(name: string): string {
  return name.replace(/(\.[^.]*)?$/, ' (after)$1');
}
