import { pulsesOf } from '../../../shared/devices/doseTimes';
import { otherParts, stockMeqPerL } from '../../../shared/recipe/pair';
import { threeFigures } from '../../../shared/recipe/threeFigures';
import { quantityAt } from '../../../shared/scenario/fields';
import type { Scenario } from '../../../shared/scenario/schema';
import { limewaterSaturationGPerL } from '../../../shared/seawater/limewater';
import type { Dose } from '../forecast/habit';

type Doser = Scenario['dosers'][number];

/** Something that brings alkalinity and can be turned: mL a day, g/L, L an hour, or grams poured in by hand. */
export interface Lever {
  readonly kind: 'pump' | 'mix' | 'drip' | 'hand' | 'channel';
  /** Which pump of the turned plan, counted from 0. */
  readonly pump?: number;
  /** What is poured in by hand, and how often. */
  readonly dose?: Dose;
  /** What it takes the place of, where that is another powder. */
  readonly insteadOf?: Dose;
  readonly from: number;
  readonly most: number;
  /** As fine as it can be set. */
  readonly rounded: (value: number) => number;
  readonly set: (plan: Scenario, value: number) => Scenario;
}

/** Less than a hundredth of what it gives now is off: no pump is set to it (common practice). */
const OFF_BELOW = 0.01;
/** As fine as something is set; below a share of what it gives now it is off. */
export const settable =
  (from: number, offBelow = OFF_BELOW) =>
  (value: number): number =>
    value < offBelow * from ? 0 : threeFigures(value);

const hundredths = (value: number) => Math.round(value * 100) / 100;

/** What a pump can give in a day of its hours, mL. */
function mostMlPerDay({ schedule }: Doser): number {
  const { count, spacingH } = pulsesOf(schedule, 0);
  const byHours = count * spacingH * 60 * schedule.pumpMlPerMin;
  return Math.min(byHours, quantityAt(['dosers', 0, 'mlPerDay']).quantity.max);
}

const broughtMeqPerDay = (dosers: readonly Doser[]): number =>
  dosers.reduce((sum, doser) => sum + (doser.mlPerDay / 1000) * stockMeqPerL(doser), 0);

/** One pump at another dose, by itself. */
const pumpAlone = (plan: Scenario, pump: number, mlPerDay: number): Scenario => ({
  ...plan,
  dosers: plan.dosers.map((doser, i) => (i === pump ? { ...doser, mlPerDay } : doser)),
});

/** One pump at another dose; pumps that bring no alkalinity are its other part, and go with it. */
function pumpAt(plan: Scenario, pump: number, mlPerDay: number): Scenario {
  const turned = pumpAlone(plan, pump, mlPerDay).dosers;
  const times = broughtMeqPerDay(turned) / broughtMeqPerDay(plan.dosers);
  const dosers = turned.map((doser) =>
    stockMeqPerL(doser) > 0 ? doser : { ...doser, mlPerDay: threeFigures(doser.mlPerDay * times) },
  );
  return { ...plan, dosers };
}

function pumpLever(plan: Scenario, pump: number, unlinked: boolean): Lever {
  const { dosers } = plan;
  const { mlPerDay: from } = dosers[pump]!;
  const others = unlinked ? [] : otherParts(plan);
  // As far as the slower pump of a pair goes.
  const timesOthers = Math.min(...others.map((doser) => mostMlPerDay(doser) / doser.mlPerDay));
  const all = broughtMeqPerDay(dosers);
  const own = broughtMeqPerDay([dosers[pump]!]);
  const byOthers = (from * (timesOthers * all - (all - own))) / own;
  return {
    ...{ kind: 'pump', pump, from, rounded: settable(from) },
    most: Math.min(mostMlPerDay(dosers[pump]!), byOthers),
    set: (base, mlPerDay) => (unlinked ? pumpAlone : pumpAt)({ ...base, dosers }, pump, mlPerDay),
  };
}

function mixLever({ topOff, tank }: Scenario): Lever {
  const most =
    topOff.additive === 'calciumHydroxide'
      ? (limewaterSaturationGPerL(tank.tempC) * topOff.saturationPercent) / 100
      : quantityAt(['topOff', 'gramsPerL']).quantity.max;
  return {
    ...{ kind: 'mix', from: Math.min(topOff.gramsPerL, most), rounded: hundredths },
    most: Math.floor(most * 100) / 100,
    set: (base, gramsPerL) => ({ ...base, topOff: { ...base.topOff, gramsPerL, settledG: 0 } }),
  };
}

const dripLever = ({ calciumReactor }: Scenario): Lever => ({
  ...{ kind: 'drip', from: calciumReactor.dripLPerH, rounded: settable(calciumReactor.dripLPerH) },
  most: quantityAt(['calciumReactor', 'dripLPerH']).quantity.max,
  set: (base, dripLPerH) => ({ ...base, calciumReactor: { ...base.calciumReactor, dripLPerH } }),
});

/** All that brings alkalinity as the tank runs: what is there but does nothing is no lever. */
export function leversOf(plan: Scenario, unlinked = false): Lever[] {
  const { dosers, topOff, calciumReactor } = plan;
  const pumps = dosers.flatMap((doser, i) =>
    doser.mlPerDay > 0 && stockMeqPerL(doser) > 0 ? [pumpLever(plan, i, unlinked)] : [],
  );
  const mixes = topOff.additive !== 'none' && topOff.reservoirL > 0 && topOff.gramsPerL > 0;
  return [
    ...pumps,
    ...(mixes ? [mixLever(plan)] : []),
    ...(calciumReactor.dripLPerH > 0 ? [dripLever(plan)] : []),
  ];
}
