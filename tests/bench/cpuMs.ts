/** CPU time of some work, ms: what others on the machine take does not count. */
export function cpuMs(work: () => unknown): number {
  const begun = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(begun);
  return (user + system) / 1000;
}
