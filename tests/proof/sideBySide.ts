/** Jobs in their order, so many at once; their results in the same order. */
export async function sideBySide<Result>(
  jobs: readonly (() => Promise<Result>)[],
  atOnce: number,
): Promise<Result[]> {
  const results: Result[] = [];
  const waiting = jobs.entries();
  const oneAfterTheOther = async () => {
    for (const [i, job] of waiting) results[i] = await job();
  };
  await Promise.all(Array.from({ length: atOnce }, oneAfterTheOther));
  return results;
}
