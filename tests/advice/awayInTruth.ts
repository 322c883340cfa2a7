import type { Scenario } from '../../shared/scenario/schema';
import { quantityAt } from '../../shared/scenario/fields';
import { newFault } from '../../shared/scenario/newFault';
import { readColumn } from '../../shared/trace/trace';
import { lineOf } from '../../shared/verdict/lineResult';
import { run } from '../../workers/engine/run';
import { usualOptions } from '../../workers/engine/simulation';
import type { Away } from '../../workers/studies/away/away';
import { LeftTank } from '../../workers/studies/away/leftTank';
import { mostGiven, thirstiest } from '../../workers/studies/away/needs';
import { leftWith } from '../../workers/studies/away/provided';
import { unattended } from '../../workers/studies/away/unattended';
import { dayMeans } from '../../workers/studies/dayMeans';
import type { AnyTurn } from './anyTurn';

/** Read 0.05 off; and what the law of growth makes of it. */
const READ_DKH = 0.25;

/** What a tank that was promised to stay inside does in its true water. */
export function breachesInTruth({ truth }: AnyTurn, { provided: told }: Away): string[] {
  const days = told.insideDays;
  const left = leftWith(
    { ...told, scenario: { ...told.scenario, corals: truth.corals, tank: truth.tank } },
    days,
  );
  const { run: own, reservoirDryH, bottlesDryH } = new LeftTank(left, usualOptions).run(left);
  const { alkalinityLowDkh: low, alkalinityHighDkh: high } = truth.limits;
  const start = truth.tank.alkalinityDkh;
  const means = dayMeans([...readColumn(own.trace, 'alkalinity_dkh')]);
  return [
    ...(reservoirDryH === undefined ? [] : [`reservoir empty after ${reservoirDryH} h`]),
    ...bottlesDryH.flatMap((dryH) => (dryH === undefined ? [] : [`bottle empty after ${dryH} h`])),
    ...means
      .filter(
        (dkh) => dkh < Math.min(low, start) - READ_DKH || dkh > Math.max(high, start) + READ_DKH,
      )
      .map((dkh) => `a day at ${dkh}`),
  ];
}

export const LEAST_L = quantityAt(['dosers', 0, 'stockL']).quantity.min;
export const withBottle = (plan: Scenario, pump: number, stockL: number): Scenario => ({
  ...plan,
  dosers: plan.dosers.map((one, i) => (i === pump ? { ...one, stockL } : one)),
});

/** Whether a stuck pump that empties its bottle at once passes a line of harm, day or night, with chalk or without. */
export function bottleHarms(plan: Scenario, pump: number): boolean {
  const { stockL, schedule } = plan.dosers[pump]!;
  const hours = Math.ceil((stockL * 1000) / (schedule.pumpMlPerMin * 60)) + 1;
  return [2, 14].some((hour) => {
    const fault = newFault('doserOn', { day: 1, hour, endsAfterH: hours, pump: pump + 1 });
    const calm = { ...unattended(plan, hours / 24), start: { ...plan.start, clockHour: hour } };
    const passes = (own: Scenario, id: string) => lineOf(run(own).lines, id).firstH !== undefined;
    // What is passed with nothing stuck is no bottle's doing.
    return ['phHarm', 'alkalinityHigh'].some(
      (id) => passes({ ...calm, faults: [fault] }, id) && !passes(calm, id),
    );
  });
}

/** What a promise leaves empty where it is used fastest: by visits where somebody fills it up, else for all days. */
export function standsEmpty({ provided: told, comesDays, vessels, topUps }: Away): string[] {
  const { scenario, insideDays: days } = told;
  return vessels.flatMap(({ pump, name = 'reservoir' }) => {
    const isFilledUp = topUps.some((one) => one.pump === pump);
    const plan = unattended(scenario, isFilledUp ? comesDays : days);
    const fastest = pump === undefined ? thirstiest(plan) : mostGiven(plan);
    const { reservoirDryH, bottlesDryH } = new LeftTank(plan, usualOptions).run(fastest);
    const dryH = pump === undefined ? reservoirDryH : bottlesDryH[pump];
    return dryH === undefined ? [] : [`${name} after ${dryH} h of ${plan.days} days`];
  });
}

/** Whether so much in the reservoir lasts, with all bottles as full as they are needed, however fast it is used. */
export function reservoirLasts(
  found: Away,
  now: Scenario,
  days: number,
  reservoirL: number,
): boolean {
  const plan: Scenario = {
    ...unattended(now, days),
    topOff: { ...now.topOff, refillEveryDays: 0, reservoirL },
    dosers: now.dosers.map((doser, i) => ({
      ...doser,
      stockL: found.vessels.find(({ pump }) => pump === i)?.needL ?? doser.stockL,
    })),
  };
  const tank = new LeftTank(plan, usualOptions);
  const runs = [tank.run(plan), tank.run(thirstiest(plan)), tank.run(mostGiven(plan))];
  return runs.every(
    (one, i) =>
      one.reservoirDryH === undefined &&
      (i === 1 || one.bottlesDryH.every((dryH) => dryH === undefined)),
  );
}
