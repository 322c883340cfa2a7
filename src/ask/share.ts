import { partKey, type Asked, type Asking, type Given } from './asking';
import type { Answer } from './answer';
import type { QuestionName } from './outcome';

/**
 * Asks one question of many things, as many at a time as there are workers; `onSome` hears of those
 * that are answered so far. The answers come back in the order of what was asked.
 */
export async function share<Name extends QuestionName>(
  asking: Asking,
  name: Name,
  asked: readonly Asked<Name>[],
  { key = name, onSome }: { key?: string; onSome?: (some: readonly Given<Name>[]) => void } = {},
): Promise<Answer<Given<Name>[]>> {
  const begun = performance.now();
  const found = new Map<number, Given<Name>>();
  const inOrder = () => [...found].sort(([a], [b]) => a - b).map(([, given]) => given);
  const left = asked.entries();
  let trouble: Exclude<Answer<never>, { kind: 'done' }> | undefined;
  const work = async (part: number): Promise<void> => {
    for (const [number, one] of left) {
      const answer = await asking.ask(name, one, { key: partKey(key, part) });
      if (answer.kind === 'done') found.set(number, answer.value);
      else trouble ??= answer;
      if (trouble) return;
      onSome?.(inOrder());
    }
  };
  await Promise.all(Array.from({ length: asking.pool.atOnce }, (_, part) => work(part)));
  return trouble ?? { kind: 'done', value: inOrder(), tookMs: performance.now() - begun };
}
