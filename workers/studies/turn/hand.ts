import { gramsForDkh } from '../../../shared/recipe/gramsFor';
import { threeFigures } from '../../../shared/recipe/threeFigures';
import type { Scenario } from '../../../shared/scenario/schema';
import { bringsAlkalinity, oxidisedMeqPerG } from '../../../shared/species/additives';
import type { ByHand, Dose } from '../forecast/habit';
import { handDosed } from '../forecast/goingOn';
import { settable, type Lever } from './lever';

/** Nobody weighs a twentieth of what they pour: common practice. */
const OFF_BELOW = 0.05;

const BICARBONATE = 'sodiumBicarbonate' as const;
/** Each day, and morning and evening. */
const OFTENER_DAYS = [1, 0.5];
const meqOf = ({ additive, gramsEach }: Dose): number => gramsEach * oxidisedMeqPerG(additive);

/** One of the doses at another amount, while the others go on; `now` is as long as anything is tried. */
function handLever(now: Scenario, { doses, fromH }: ByHand, i: number, dose: Dose): Lever {
  const mostDkhPerDay = 3 * (now.corals.useDkhPerDay + 0.5);
  const most = gramsForDkh(dose.additive, mostDkhPerDay * dose.everyDays, now.tank.volumeL);
  const from = threeFigures(dose.gramsEach);
  return {
    ...{ kind: 'hand', dose, from, most: Math.max(from, most), rounded: settable(from, OFF_BELOW) },
    set: (base, gramsEach) => {
      const poured = { doses: doses.with(i, { ...dose, gramsEach }), fromH };
      return { ...base, additions: handDosed(now, poured).additions };
    },
  };
}

/** What is poured in by hand and brings alkalinity. */
export const handLevers = (now: Scenario, byHand: ByHand): Lever[] =>
  byHand.doses.flatMap((dose, i) =>
    bringsAlkalinity(dose.additive) ? [handLever(now, byHand, i, dose)] : [],
  );

/** As little at once as may be asked of a hand: by bicarbonate, which lifts pH least, morning and evening. */
export const dividedDose = (dose: Dose): Dose => otherWays(dose).at(-1) ?? dose;

/** The same in other ways: by bicarbonate, which lifts pH least, and in smaller parts, which move less at once. */
function otherWays(dose: Dose): Dose[] {
  const rhythms = [dose.everyDays, ...OFTENER_DAYS.filter((days) => days < dose.everyDays)];
  const powders = dose.additive === BICARBONATE ? [BICARBONATE] : [dose.additive, BICARBONATE];
  const ways = rhythms.flatMap((everyDays) =>
    powders.map((additive): Dose => {
      const share = everyDays / dose.everyDays;
      const gramsEach = (share * meqOf(dose)) / oxidisedMeqPerG(additive);
      return { ...dose, additive, everyDays, gramsEach };
    }),
  );
  return ways.slice(1);
}

export const otherHands = (now: Scenario, byHand: ByHand): Lever[] =>
  byHand.doses.flatMap((dose, i) =>
    bringsAlkalinity(dose.additive)
      ? otherWays(dose).map((way) => ({ ...handLever(now, byHand, i, way), insteadOf: dose }))
      : [],
  );
