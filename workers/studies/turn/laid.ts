import type { Scenario } from '../../../shared/scenario/schema';
import type { Stretch } from './replay';

/** What is done for calcium, magnesium and salinity beside a turn. */
export interface Beside {
  /** The first mornings. */
  readonly first?: Stretch | undefined;
  /** As the tank is kept once they are over. */
  readonly then?: Scenario | undefined;
}

/** Days that a common plan is tried for, where nothing ends it before. */
const TRIED_DAYS = 30;

/** What brings alkalinity by the turn; what the bottles hold by what is kept. */
function dosedAs(tank: Scenario, doses: Scenario, kept: Scenario): Scenario {
  const { topOff, calciumReactor } = doses;
  const dosers = doses.dosers.map((doser, i) => {
    const [own, other] = [tank.dosers[i], kept.dosers[i]];
    return own && other && other !== own ? { ...doser, recipe: other.recipe } : doser;
  });
  return { ...tank, dosers, topOff, calciumReactor };
}

/** What the turn does on a day; after its last the tank goes on as it then stands. */
const onDay = (turned: readonly Stretch[], day: number): Scenario | undefined =>
  (turned.find(({ untilDay }) => day < untilDay) ?? turned.at(-1))?.scenario;

/** A turn's own days and what is done beside it, laid over one another for so many days. */
export function laid(
  now: Scenario,
  turned: readonly Stretch[],
  { first, then }: Beside,
  days: number,
): Stretch[] {
  const endsDay = first?.untilDay ?? 0;
  const cuts = [...turned.map(({ untilDay }) => untilDay), endsDay, days];
  const marks = [...new Set(cuts)].filter((day) => day > 0 && day <= days);
  const byHand = new Set(now.additions);
  const poured = [first?.scenario, then]
    .flatMap((one) => one?.additions ?? [])
    .filter((one) => !byHand.has(one));
  return marks
    .toSorted((a, b) => a - b)
    .map((untilDay, i, all): Stretch => {
      const from = all[i - 1] ?? 0;
      const doses = onDay(turned, from) ?? now;
      const kept = first && from < endsDay ? first.scenario : (then ?? now);
      const additions = [...doses.additions, ...poured];
      const { waterChanges } = kept;
      const scenario = { ...dosedAs(now, doses, kept), days: untilDay, additions, waterChanges };
      return { scenario, untilDay };
    });
}

/** Whether other water would be changed while the mornings last than once they are over: a plan has one kind. */
export function changesMeanwhile({ scenario, untilDay }: Stretch, then: Scenario): boolean {
  const both = [scenario.waterChanges, then.waterChanges];
  const comes = both.some(
    ({ percent, everyDays, continuousLPerDay }) =>
      continuousLPerDay > 0 || (percent > 0 && everyDays < untilDay),
  );
  return comes && JSON.stringify(both[0]) !== JSON.stringify(both[1]);
}

/** As much of it as one plan can hold: what is changed while the mornings last comes before what follows. */
export function asOnePlan(now: Scenario, turned: readonly Stretch[], beside: Beside): Scenario {
  const { first, then } = beside;
  const isFirstAlone = first && changesMeanwhile(first, then ?? now);
  const days = isFirstAlone ? first.untilDay : TRIED_DAYS;
  const [begins] = laid(now, turned, beside, days);
  const { waterChanges } = isFirstAlone ? first.scenario : (then ?? now);
  const additions = begins!.scenario.additions.filter(({ day }) => day <= days);
  return { ...begins!.scenario, additions, waterChanges, days };
}
