import { newestOf } from '../../../shared/log/newest';
import { say } from '../../../shared/words/turn';
import type { TurnTold } from '../../ask/outcome';
import { listed, name } from '../season/texts';
import type { Around } from './known';

/** As what a reading has them. */
export const readAs = {
  calcium: 'calciumMgPerL',
  magnesium: 'magnesiumMgPerL',
  salinity: 'salinityPractical',
} as const;
const ids = ['calcium', 'magnesium', 'salinity'] as const;

/** What a turn goes outside with, or is refused for. */
function outside(turn: TurnTold['turn']): readonly string[] {
  if (turn.kind === 'nothingRuns') return [];
  const { also = [], breach } =
    turn.kind === 'turn'
      ? { also: turn.turned.also, breach: turn.turned.endedBy?.breach }
      : { also: [], breach: undefined, ...turn.refusal };
  return [...also, ...(breach ? [breach] : [])].map(({ quantity }) => quantity);
}

/** What of a turn nobody has read; nothing of what is told beside it. */
export const unreadSentences = (
  turn: TurnTold['turn'],
  around: Around,
  steered: readonly string[],
): string[] => unreadOf(outside(turn), around, steered);

/** What of some quantities nobody has read, so that a plan's number speaks. */
export function unreadOf(
  named: readonly string[],
  { readings }: Around,
  steered: readonly string[] = [],
): string[] {
  const unread = ids.filter(
    (id) =>
      named.includes(id) && !steered.includes(id) && newestOf(readings, readAs[id]) === undefined,
  );
  return unread.length > 0 ? [say.unread(listed(unread.map(name)))] : [];
}
