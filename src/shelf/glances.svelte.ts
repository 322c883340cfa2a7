import { countedReadings } from '../../shared/log/counted';
import type { Asked, Asking } from '../ask/asking';
import { KeptAnswers } from '../ask/keptAnswers';
import type { LogAnswer, Unanswered, UsedUp } from '../ask/outcome';
import { knownOf } from '../diary/planAsked';
import { pairNames } from '../say/plan/ways';
import { isCounted } from '../say/stock/runsOut';
import { ranUntil } from '../diary/ranUntil';
import { unansweredSentence } from '../say/fit/unanswered';
import type { Tank } from '../store/tanks';
import { glanceOf, type Glance } from './glance';

/** What was worked out of a tank, and of what. */
interface Known {
  readonly asked: string;
  readonly answer: LogAnswer | string;
  /** Undefined where nothing was counted or filled. */
  readonly usedUp: UsedUp | undefined;
}

const FRAME_MS = 16;

/** Kept as long as the page lives: a shelf that is looked at again is there at once. */
const known: Record<string, Known | undefined> = {};

function questionOf({ bench, log }: Tank, now: string): Asked<'answer'> {
  const { readings } = countedReadings(log, now);
  const { withinDkhPerDay } = log;
  const plan = bench.plans[0]!.scenario;
  return { plan, log: readings, withinDkhPerDay, ran: ranUntil(bench) };
}

/** What the log of each tank says, asked of the workers where it is not known yet. */
export class Glances {
  private answers: Readonly<Record<string, Omit<Known, 'asked'>>> = $state.raw({});

  private come: Readonly<Record<string, Omit<Known, 'asked'>>> = {};

  private readonly kept: KeptAnswers<'answer'>;
  private readonly stock: KeptAnswers<'usedUp'>;

  constructor(client: Asking) {
    this.kept = new KeptAnswers(client, 'answer');
    this.stock = new KeptAnswers(client, 'usedUp');
  }

  /** Asks for every tank whose log or plan has changed since it was asked last; `now` is a local time. */
  follow(tanks: readonly Tank[], now: string): void {
    const there: Record<string, Known> = {};
    for (const tank of tanks) {
      const question = questionOf(tank, now);
      const asked = JSON.stringify([question, isCounted(tank.log)]);
      const last = known[tank.id];
      if (last?.asked === asked) there[tank.id] = last;
      else void this.ask(tank, question, asked);
    }
    // What comes in of a tank that has changed meanwhile comes again.
    this.come = {};
    this.answers = there;
  }

  of(tank: Tank, now: string): Glance {
    const { answer, usedUp } = this.answers[tank.id] ?? {};
    return glanceOf(tank, answer, now, usedUp);
  }

  private async ask(tank: Tank, question: Asked<'answer'>, asked: string): Promise<void> {
    const { id } = tank;
    const found = await this.kept.ask(id, question);
    if (found.kind === 'failed') return this.put(id, { answer: found.failure.message });
    if (found.kind !== 'done') return;
    const told = 'why' in found.value ? undefined : found.value;
    const answer = told ?? unansweredSentence(found.value as Unanswered);
    this.put(id, { answer });
    // What the tile says first stands already; what runs out comes after all of them.
    const counts = isCounted(tank.log);
    const usedUp = counts ? await this.used(tank, question, told) : undefined;
    if (counts && !usedUp) return;
    known[id] = { asked, answer, usedUp };
    if (usedUp) this.put(id, { answer, usedUp });
  }

  /** As it was kept, or by a run of two weeks. */
  private async used(
    { id, log: { targetDkh } }: Tank,
    { plan, log }: Asked<'answer'>,
    told: LogAnswer | undefined,
  ): Promise<UsedUp | undefined> {
    const asked = { plan, log, known: told && knownOf(told), wanted: { targetDkh, pairNames } };
    const found = await this.stock.ask(id, asked);
    return found.kind === 'done' ? found.value : undefined;
  }

  /** Forty tanks come within a few frames: each frame's are shown at once. */
  private put(id: string, one: { answer: LogAnswer | string; usedUp?: UsedUp }): void {
    const waits = Object.keys(this.come).length > 0;
    this.come = { ...this.come, [id]: { usedUp: undefined, ...one } };
    if (waits) return;
    setTimeout(() => {
      this.answers = { ...this.answers, ...this.come };
      this.come = {};
    }, FRAME_MS);
  }
}
