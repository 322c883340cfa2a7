import type { Scenario } from '../../shared/scenario/schema';
import { lineOf, passed, type LineResult } from '../../shared/verdict/lineResult';
import { run } from '../../workers/engine/run';
import { answerLog } from '../../workers/studies/answerLog';
import { runDrill } from '../../workers/studies/drill/drillRun';
import { dumpAt } from '../../workers/studies/drill/dump';
import { LEAST_PROMISE_DAYS } from '../../workers/studies/plan/offered';
import { usualOptions } from '../../workers/engine/simulation';
import { asItGoesOn } from '../../workers/studies/forecast/goingOn';
import { atRest } from '../../workers/studies/plan/atRest';
import { planQuestion } from '../../workers/studies/plan/planQuestion';
import { threePlans, type Candidate } from '../../workers/studies/plan/threePlans';
import type { AnyLog } from './anyLog';

/** What a log led to, and every limit that an offered plan passes although it promised not to. */
export interface Offered {
  readonly plans: readonly Candidate[];
  readonly breaches: readonly string[];
}

/** A plan that is offered, or what is said to be nearest to one that is not. */
interface Promised {
  readonly id: string;
  readonly scenario: Scenario;
  readonly promisedDays: number;
  readonly giveOrTakeDkhPerDay: number;
}

/** What is outside as the tank runs today may stay so, and go no farther than can be told. */
const UNTOLD_PH = 0.101;
const UNTOLD_SHARE = 0.006;
const DRIFTS = ['calcium', 'magnesium', 'salinity'];
/** Between the hours at which a dump is tried. */
const NEAR = { phHarm: 0.02, alkalinityHigh: 0.06 } as const;

/** The whole way from a log to its plans, as the page and the commands go it, then each run anew. */
export function offeredTo({ plan, readings, targetDkh }: AnyLog, aside: number): Offered {
  const answer = answerLog(plan, readings, 0.1);
  const question = planQuestion(plan, readings, answer, { targetDkh });
  const plans = threePlans(question);
  // Each of the tanks rests where its own use lets it; `standingAt` holds that against settled tanks.
  const at = atRest(question.now, usualOptions);
  const today = run({ ...question.now, days: 2 }).lines;
  // What is used up or piled up, and outside already, goes on so with nothing done, at each use by itself.
  const asItGoes = ({ id, quantity }: LineResult, days: number, use: number) =>
    DRIFTS.includes(quantity) && lineOf(today, id).firstH !== undefined
      ? run(at({ ...asItGoesOn(question, days), days }, use)).lines
      : today;
  const promises = plans.flatMap(({ id, scenario, promisedDays, offered, nearest }): Promised[] => {
    const own = { id, scenario, promisedDays, ...question };
    if (offered) return [own];
    if (!nearest || nearest.kind === 'otherWay') return [];
    const known = nearest.kind === 'roomCo2' ? question : nearest;
    const { giveOrTakeDkhPerDay } = known;
    return [
      {
        ...{ id: `${id}, ${nearest.kind}`, scenario: nearest.scenario, giveOrTakeDkhPerDay },
        promisedDays: LEAST_PROMISE_DAYS,
      },
    ];
  });
  const breaches = promises.flatMap(({ id, scenario, promisedDays, giveOrTakeDkhPerDay }) => {
    const uses = [-1, 0, aside, 1].map(
      (share) => scenario.corals.useDkhPerDay + share * giveOrTakeDkhPerDay,
    );
    const kept = uses.flatMap((use) =>
      passed(run(at({ ...scenario, days: promisedDays }, use)).lines).filter((line) => {
        if (line.firstH! >= promisedDays * 24) return false;
        const before = lineOf(asItGoes(line, promisedDays, use), line.id).worst;
        const farther = line.trouble === 'above' ? line.worst - before : before - line.worst;
        const untold = line.quantity === 'ph' ? UNTOLD_PH : UNTOLD_SHARE * line.limit;
        return line.quantity.startsWith('alkalinity') || farther > untold;
      }),
    );
    const { additive, reservoirL, gramsPerL } = scenario.topOff;
    const brings = additive !== 'none' && reservoirL * gramsPerL > 0;
    const dumped = (brings ? [1, 5, 8, 13, 16, 22] : []).flatMap((hour) => {
      const { lines } = runDrill(dumpAt(scenario, hour));
      return (['phHarm', 'alkalinityHigh'] as const)
        .map((line) => lineOf(lines, line))
        .filter(({ id, worst, limit }) => worst > limit + NEAR[id as keyof typeof NEAR]);
    });
    return [
      ...kept.map((line) => `${id}: ${line.id} ${line.worst} in use`),
      ...dumped.map((line) => `${id}: ${line.id} ${line.worst} in its own dump`),
    ];
  });
  return { plans, breaches };
}
