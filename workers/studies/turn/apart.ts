import { otherParts } from '../../../shared/recipe/pair';
import { PLAN_DAYS } from '../plan/holding';
import type { Way } from './gettingThere';
import { leversOf } from './lever';
import type { Replay } from './replay';
import type { Held, Seeker } from './seeker';

/** What comes of turning one bottle of a pair and not the other. */
export interface Apart {
  /** The pumps that stay as they are, and what they give, mL a day. */
  readonly pumps: readonly { readonly name: string; readonly mlPerDay: number }[];
  /** Calcium on the last day, as it is turned and if both were turned together, mg/L. */
  readonly calciumMgPerL: number;
  readonly togetherMgPerL: number;
  readonly day: number;
}

const lastCalcium = ({ hourly }: Replay): number => hourly('calcium_mg_l').at(-1)!;

/** Run as it is turned, and with the other part turned along. */
export function apartOf(seeker: Seeker, { lever }: Held, way: Way): Apart | undefined {
  const { now } = seeker;
  const others = otherParts(now);
  const linked = leversOf(now).find(({ kind, pump }) => kind === 'pump' && pump === lever.pump);
  if (lever.kind !== 'pump' || others.length === 0 || !linked) return undefined;
  const [use] = seeker.uses(0);
  const day = Math.max(PLAN_DAYS, ...way.stretches.map(({ untilDay }) => untilDay));
  const both = way.stretches.map(({ scenario, untilDay }) => {
    const value = scenario.dosers[lever.pump!]!.mlPerDay;
    return { scenario: { ...scenario, dosers: linked.set(now, value).dosers }, untilDay };
  });
  return {
    pumps: others.map(({ name, mlPerDay }) => ({ name, mlPerDay })),
    calciumMgPerL: lastCalcium(seeker.replay(way.stretches, use!)),
    togetherMgPerL: lastCalcium(seeker.replay(both, use!)),
    day,
  };
}
