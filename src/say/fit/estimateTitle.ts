import { hoursOf, localTimeOf } from '../../../shared/log/localTime';
import { spokenDay } from '../../../shared/log/spokenTime';
import { say } from '../../../shared/words/fit';
import type { LogAnswer } from '../../ask/outcome';

const { fitted } = say;

const plain = ['use', 'growth', 'start', 'lnKLa', 'gross', 'phOffset'] as const;
type Plain = (typeof plain)[number];
const isPlain = (id: string): id is Plain => (plain as readonly string[]).includes(id);

/** What a fitted number is; `lot 1` and `corals 0` are those of the log, counted from 0. */
export function estimateTitle(
  id: string,
  {
    lots,
    stockings,
    leaps,
    startAt,
  }: Pick<LogAnswer['fit'], 'lots' | 'stockings' | 'leaps' | 'startAt'>,
): string {
  if (isPlain(id)) return fitted[id];
  const [kind, index] = id.split(' ');
  if (kind === 'leap') {
    return fitted.leap(spokenDay(localTimeOf(hoursOf(startAt) + leaps[Number(index)]!.afterH)));
  }
  return kind === 'lot'
    ? fitted.lot(lots[Number(index)] || fitted.nameless)
    : fitted.corals(spokenDay(stockings[Number(index)]!.at));
}
