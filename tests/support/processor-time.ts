/**
 * Processor time of this process in ms that a piece of work takes. What other programs do at the time does not count,
 * so that a ceiling on it holds on a busy machine too.
 */
export function processorTime(work: () => void): number {
  const start = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1000;
}
