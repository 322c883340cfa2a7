import { gramsForDkh } from '../../../shared/recipe/gramsFor';
import { threeFigures } from '../../../shared/recipe/threeFigures';
import type { Scenario } from '../../../shared/scenario/schema';
import { oxidisedMeqPerG } from '../../../shared/species/additives';
import type { ByHand, Dose } from '../forecast/habit';
import { handDosed } from '../forecast/goingOn';
import { settable, type Lever } from './lever';

/** Nobody weighs a twentieth of what they pour: common practice. */
const OFF_BELOW = 0.05;

const BICARBONATE = 'sodiumBicarbonate';
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
  byHand.doses.flatMap((dose, i) => (meqOf(dose) > 0 ? [handLever(now, byHand, i, dose)] : []));

/** The same by bicarbonate, which lifts pH least, where it is something else. */
export const milderHands = (now: Scenario, byHand: ByHand): Lever[] =>
  byHand.doses.flatMap((dose, i): Lever[] => {
    if (meqOf(dose) <= 0 || dose.additive === BICARBONATE) return [];
    const gramsEach = meqOf(dose) / oxidisedMeqPerG(BICARBONATE);
    const milder = { ...dose, additive: BICARBONATE, gramsEach } as const;
    return [{ ...handLever(now, byHand, i, milder), insteadOf: dose }];
  });
