import { countedReadings, type Counted } from '../../shared/log/counted';
import type { Reading } from '../../shared/log/reading';
import type { Scenario } from '../../shared/scenario/schema';
import * as ask from '../../workers/desk/logQuestions';
import type {
  AwayTold,
  Offered,
  SeasonTold,
  SteerTold,
  TurnTold,
} from '../../workers/desk/logQuestions';
import type { LogAnswer, Unanswered } from '../../workers/studies/answerLog';
import type { RanUntil } from '../../workers/studies/fit/turnedAt';
import type { NobodyLooks } from '../../workers/studies/away/unnoticed';
import type { UsedUp } from '../../workers/studies/stock/paces';
import type { Correction } from '../../workers/studies/plan/correct';
import { awayAsked } from '../diary/away/awayAsked';
import { ranUntil } from '../diary/ranUntil';
import { metalWants, seasonWants } from '../diary/season/seasonAsked';
import { isCounted } from '../say/stock/runsOut';
import { toldOffer, type ToldOffer } from '../say/plan/offer';
import { pairNames } from '../say/plan/ways';
import type { Tank } from '../store/tanks';

/** Everything that is told of a tank: what the page's log shows and works out. */
export interface TankAnswer {
  readonly tank: Tank;
  /** A local time. */
  readonly now: string;
  readonly plan: Scenario;
  readonly ran: readonly RanUntil[];
  readonly counted: Counted;
  /** Why there is none where the log says nothing yet: plans then go by the typed use. */
  readonly answer: LogAnswer | Unanswered;
  readonly question: Offered['question'];
  readonly offers: readonly ToldOffer[];
  /** The first that is offered, else the first of all: the correction goes with its dosing. */
  readonly chosen: ToldOffer;
  readonly correction: Correction;
  readonly turn: TurnTold;
  /** Calcium, magnesium and salinity beside the turn. */
  readonly steer: SteerTold;
  /** How fast what is used up goes; undefined where nobody has counted or filled anything. */
  readonly usedUp: UsedUp | undefined;
  /** Undefined where calcium, magnesium and salinity have never been read. */
  readonly season: SeasonTold | undefined;
  /** Days without the keeper; undefined where none were asked for. */
  readonly absence: { readonly asked: AwayTold; readonly looks: NobodyLooks } | undefined;
}

/** Days away and between visits; 0 days away: nobody asks, 0 between visits: nobody comes. */
export interface Absence {
  readonly days: number;
  readonly visitDays: number;
}

const tellsOfASeason = ({ calciumMgPerL, magnesiumMgPerL, salinityPractical }: Reading): boolean =>
  (calciumMgPerL ?? magnesiumMgPerL ?? salinityPractical) !== undefined;

/** A command goes on to the end, and tells of nothing on the way. */
const headless = { goesOn: () => Promise.resolve(true), tell: () => {} };

/** Asks of a tank what the page asks, in the same order; `now` is a local time. */
export async function tankAnswer(
  tank: Tank,
  now: string,
  { days, visitDays }: Absence = { days: 0, visitDays: 0 },
): Promise<TankAnswer> {
  const { log, bench } = tank;
  const plan = bench.plans[0]!.scenario;
  const counted = countedReadings(log, now);
  const { readings } = counted;
  const { withinDkhPerDay } = log;
  const ran = ranUntil(bench);
  const answer = await ask.answer({ plan, log: readings, withinDkhPerDay, ran });
  const known = 'why' in answer ? undefined : answer;
  const { targetDkh, scoopG, pumpMlPerMin, pairUnlinked } = log;
  const kit = { scoopG, pumpMlPerMin };
  const wanted = { targetDkh, kit, pairNames, unlinked: pairUnlinked };
  const asked = { plan, log: readings, known, wanted };
  const plans = await ask.plans(asked);
  const { question } = plans;
  const offers = plans.offers.map((offer) => toldOffer(offer, kit));
  const chosen = offers.find(({ offered }) => offered) ?? offers[0]!;
  const correction = { question, plan: chosen.scenario, additive: 'sodiumBicarbonate' } as const;
  const { happened } = counted;
  const turn = await ask.turn(asked);
  const steer = await ask.steer({ plan, told: turn, happened, wants: metalWants(plan, log) });
  const away =
    days > 0 ? await ask.away({ ...asked, absence: awayAsked(days, visitDays, known) }) : undefined;
  return {
    ...{ tank, now, plan, ran, counted, answer, question, offers, chosen },
    correction: await ask.correct(correction),
    absence: away && { asked: away, looks: (await ask.nobodyLooks(away, headless))! },
    ...{ turn, steer },
    usedUp: isCounted(log) ? await ask.usedUp(asked) : undefined,
    season: counted.happened.some(tellsOfASeason)
      ? await ask.season({
          ...{
            ...asked,
            happened: counted.happened,
            ran,
            told: turn,
            wants: seasonWants(plan, log),
          },
        })
      : undefined,
  };
}
