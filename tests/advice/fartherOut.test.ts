import { expect, it } from 'vitest';
import { lineOf } from '../../shared/verdict/lineResult';
import { run } from '../../workers/engine/run';
import { fartherOut } from '../../workers/studies/turn/fartherOut';
import type { Replay } from '../../workers/studies/turn/replay';
import { quietTank } from '../runs/quietTank';

const { lines } = run(quietTank());

/** Outside by so much, on whichever side is trouble. */
const outBy = (id: string, by: number) => {
  const line = lineOf(lines, id);
  const worst = line.limit + (line.trouble === 'above' ? by : -by);
  return { lines: [{ ...line, firstH: 1, worst }] } as unknown as Replay;
};

it.each(['phLow', 'phHigh'])(
  '%s that is passed anyway may be passed farther by what a probe does not tell, and by no more',
  (id) => {
    const ids = (by: number) => fartherOut(outBy(id, by), outBy(id, 0.2), 0).map((line) => line.id);
    expect([ids(0.1), ids(0.25), ids(0.35)]).toEqual([[], [], [id]]);
  },
);
