import type { TankEvent } from '../../../shared/events/event';
import { pouredIn } from '../../../shared/events/addition';
import { changeOfWater } from '../../../shared/events/waterChange';
import { calcification } from '../../../shared/processes/calcification';
import type { ProcessKind } from '../../../shared/processes/process';
import { processes } from '../../../shared/processes/registry';
import { gramsForMgPerL } from '../../../shared/recipe/gramsFor';
import type { Scenario } from '../../../shared/scenario/schema';
import { isUse } from '../../../shared/trace/trace';
import { meqPerLPerDkh } from '../../../shared/seawater/alkalinity';
import { molarMassGPerMol } from '../../../shared/seawater/atomicMasses';
import { indexOf } from '../../../shared/species/block';
import { alkalinityMeqPerG, type AdditiveId } from '../../../shared/species/additives';
import { compile } from '../../../workers/engine/compile';
import { takenOver } from '../../../workers/engine/goOn';
import { settle } from '../../../workers/engine/settle';
import { Simulation, usualOptions } from '../../../workers/engine/simulation';
import { simulatedState } from '../../../workers/engine/tankState';
import type { Draw } from './draw';
import { typedPlan, type Tank } from './tank';
import type { Variant } from './variants';

/** What a keeper did besides testing, and when, hours since midnight before the first test. */
export interface Done {
  readonly timeH: number;
  readonly additive?: AdditiveId;
  readonly grams?: number;
  readonly percent?: number;
}

/** The tank as it is. The fit never sees it. */
export interface Truth {
  readonly scenario: Scenario;
  readonly done: readonly Done[];
  /** The corals take so many times more from this hour on. */
  readonly step: { readonly fromH: number; readonly times: number };
  /** Its pumps dose so many times more from this hour on, and the keeper says so. */
  readonly turned: { readonly atH: number; readonly times: number } | undefined;
  readonly dkh: readonly number[];
  /** Alkalinity in the fourteen days after the log at the same hour, all going on as before. */
  readonly later: readonly Later[];
  /** What the corals took in the last 48 h, dKH a day. */
  readonly useDkhPerDay: number;
  readonly omegaReference: number;
  /** The tank as it truly stands when the log ends, with what its corals have grown to. */
  readonly ended: Scenario;
}

/** A look at the water after the log's end. */
export interface Later {
  /** Hours since the log's midnight, as everything here. */
  readonly timeH: number;
  readonly dkh: number;
}

const LATER_DAYS = 14;
const LAST_H = 48;

/** How the twin differs from what its keeper would guess: nobody types any of this. */
function hidden(draw: Draw, tank: Tank, variant: Variant): Scenario {
  const { between, evenly } = draw;
  const other = variant === 'other gas and law';
  const volumeL = tank.volumeL * (variant === 'volume 15 % off' ? between(0.85, 1.15) : 1);
  const wetter = variant === 'evaporation 30 % off' ? between(0.7, 1.3) : 1;
  const typed = typedPlan(tank, tank.startDkh);
  return {
    ...typed,
    days: tank.days + LATER_DAYS + 1,
    tank: {
      ...typed.tank,
      volumeL,
      calciumMgPerL: between(400, 450),
      magnesiumMgPerL: between(1250, 1400),
      salinityPractical: between(34, 36),
    },
    corals: {
      ...typed.corals,
      useDkhPerDay: tank.useDkhPerDay,
      growthPercentPerDay: tank.growthPercentPerDay,
      lightDarkRatio: between(2, 4),
      omegaLaw: other ? 'proportional' : 'gentle',
    },
    food: { ...typed.food, gramsPerDay: tank.volumeL * between(0.001, 0.005) },
    room: { ...typed.room, co2Ppm: other ? evenly(450, 1500) : between(550, 850) },
    gas: { ...typed.gas, kLaPerH: other ? evenly(0.4, 5) : evenly(0.9, 1.6) },
    lights: { ...typed.lights, hours: between(8, 12) },
    evaporation: { ...typed.evaporation, litresPerDay: tank.evaporationLPerDay * wetter },
    topOff: {
      ...typed.topOff,
      reservoirL: Math.ceil(tank.evaporationLPerDay * 5),
      deadBandL: Number((tank.volumeL * 0.002).toPrecision(1)),
    },
    photosynthesis: { ...typed.photosynthesis, grossMmolPerLPerDay: between(0.3, 0.8) },
  };
}

/** The pumps stand for some days, and nobody notes it. */
function withPumpOff(draw: Draw, scenario: Scenario, days: number): Scenario {
  const hours = 24 * draw.between(2, 5);
  const fromH = draw.between(days * 12, days * 24 - 12);
  const off = { day: Math.floor(fromH / 24) + 1, hour: fromH % 24, hours };
  const kinds: object[] = scenario.dosers.length
    ? scenario.dosers.map((_, i) => ({ ...off, kind: 'doserOff', pump: i + 1 }))
    : [{ ...off, kind: 'topOffOff' }];
  return { ...scenario, faults: kinds as unknown as Scenario['faults'] };
}

/** Dosed so many times more: what a keeper types of it, and what the tank truly gets. */
export const dosedAnew = (tank: Tank, times: number): Tank => ({
  ...tank,
  dosedDkhPerDay: tank.dosedDkhPerDay * times,
});

/** Half way, more or less; limewater is near its saturation already. */
function turnOf(draw: Draw, { days, carrier }: Tank): Truth['turned'] {
  const most = carrier === 'limewater' ? 1 : 1.4;
  return { atH: days * 24 * draw.between(0.4, 0.7), times: draw.between(0.6, most) };
}

function withDosing(scenario: Scenario, tank: Tank): Scenario {
  const { dosers, topOff } = typedPlan(tank, tank.startDkh);
  return { ...scenario, dosers, topOff: { ...scenario.topOff, gramsPerL: topOff.gramsPerL } };
}

/** Doses by hand every day or two, or a water change every week. */
function whatIsDone(draw: Draw, { carrier, days, dosedDkhPerDay, volumeL }: Tank): Done[] {
  const every = carrier === 'waterChanges' ? 7 : Math.round(draw.between(1, 2));
  const grams =
    (dosedDkhPerDay * every * meqPerLPerDkh * volumeL) / alkalinityMeqPerG('sodiumBicarbonate');
  const until = days + LATER_DAYS;
  const at = (i: number) => (i * every + (carrier === 'waterChanges' ? 3 : 0)) * 24 + 20;
  const count = Math.max(0, Math.floor((until * 24 - at(0)) / (24 * every)) + 1);
  if (carrier === 'bicarbonate') {
    const calciumG = gramsForMgPerL(
      'calciumChlorideDihydrate',
      'Ca',
      7.1 * dosedDkhPerDay * every,
      volumeL,
    );
    return Array.from({ length: count }, (_, i): Done[] => [
      { timeH: at(i), additive: 'sodiumBicarbonate', grams: Number(grams.toPrecision(3)) },
      {
        timeH: at(i),
        additive: 'calciumChlorideDihydrate',
        grams: Number(calciumG.toPrecision(3)),
      },
    ]).flat();
  }
  if (carrier !== 'waterChanges') return [];
  return Array.from({ length: count }, (_, i) => ({ timeH: at(i), percent: 15 }));
}

const eventsOf = (scenario: Scenario, done: readonly Done[]): TankEvent[] =>
  done.map(({ timeH, additive, grams, percent }) =>
    additive === undefined
      ? changeOfWater(scenario, percent!)(timeH)
      : pouredIn(timeH, additive, grams!),
  );

/** Growth that steps at an hour; everything else as the engine has it. */
const registryWith = ({ fromH, times }: Truth['step']): readonly ProcessKind[] =>
  processes.map((kind) =>
    kind.id !== calcification.id
      ? kind
      : {
          ...kind,
          bind(start) {
            const process = kind.bind(start);
            if (process === null) return null;
            const timesAt = (timeH: number) => (timeH > fromH ? times : 1);
            const { rate, drift } = process;
            return {
              ...process,
              rate: (view, ...rest) => rate(view, ...rest) * timesAt(view.timeH),
              ...(drift && {
                drift: (view, ...rest) => drift(view, ...rest) * timesAt(view.timeH),
              }),
            };
          },
        },
  );

/** Runs the tank and looks at it where it will be tested. */
export function runTruth(
  draw: Draw,
  tank: Tank,
  variant: Variant,
  timesH: readonly number[],
): Truth {
  const { days } = tank;
  const still = hidden(draw, tank, variant);
  const scenario = variant === 'pump off, unlogged' ? withPumpOff(draw, still, days) : still;
  const step =
    variant === 'use steps up'
      ? { fromH: days * 24 * draw.between(0.4, 0.7), times: draw.between(1.15, 1.4) }
      : { fromH: 0, times: 1 };
  const done = whatIsDone(draw, tank);
  const reference = settle({ ...scenario, faults: [] }, usualOptions);
  const { omegaReference } = reference;
  const registry = registryWith(step);
  const events = eventsOf(scenario, done);
  const plan = compile(scenario, { ...reference, events, registry });
  let simulation = new Simulation(plan, usualOptions);
  const turned = variant === 'dosing changed and said' ? turnOf(draw, tank) : undefined;
  const after = turned ? withDosing(still, dosedAnew(tank, turned.times)) : still;
  const goTo = (timeH: number) => {
    if (turned && simulation.timeH < turned.atH && timeH >= turned.atH) {
      simulation.advanceTo(turned.atH);
      const from = { ...simulatedState(simulation), start: reference };
      simulation = new Simulation(takenOver(after, from, { events }), usualOptions, from);
    }
    simulation.advanceTo(timeH);
  };
  const takenEq = () =>
    simulation.plan.ledger.reduce(
      (sum, { role }, row) => (isUse(role) ? sum - simulation.books.ledgerEq[row]! : sum),
      0,
    );
  const taken = () => (takenEq() * 1000) / meqPerLPerDkh / scenario.tank.volumeL;
  const endH = timesH.at(-1)!;
  let before = 0;
  const dkh: number[] = [];
  for (const timeH of timesH) {
    if (simulation.timeH < endH - LAST_H && timeH >= endH - LAST_H) {
      goTo(endH - LAST_H);
      before = taken();
    }
    goTo(timeH);
    dkh.push(simulation.view.alkalinityDkh);
  }
  const ended = taken();
  const { view } = simulation;
  const salts = {
    calciumMgPerL: view.mgPerL(indexOf.Ca, molarMassGPerMol({ Ca: 1 })),
    magnesiumMgPerL: view.mgPerL(indexOf.Mg, molarMassGPerMol({ Mg: 1 })),
    salinityPractical: view.salinityPractical,
    alkalinityDkh: view.alkalinityDkh,
  };
  const useDkhPerDay = ((ended - before) * 24) / LAST_H;
  const later = Array.from({ length: LATER_DAYS }, (_, day): Later => {
    const timeH = endH + (1 + day) * 24;
    goTo(timeH);
    return { timeH, dkh: simulation.view.alkalinityDkh };
  });
  const grown = Math.exp(((tank.growthPercentPerDay / 100) * endH) / 24) * step.times;
  const endedTank: Scenario = {
    ...after,
    start: { ...still.start, omegaReference, clockHour: Math.floor(endH) % 24 },
    tank: { ...still.tank, ...salts },
    corals: { ...still.corals, useDkhPerDay: still.corals.useDkhPerDay * grown },
  };
  return {
    scenario,
    ended: endedTank,
    done,
    step,
    turned,
    dkh,
    later,
    useDkhPerDay,
    omegaReference,
  };
}
