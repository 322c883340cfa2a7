import { countedReadings } from '../../shared/log/counted';
import type { Asked, Asking } from '../ask/asking';
import { KeptAnswers } from '../ask/keptAnswers';
import type { LogAnswer } from '../ask/outcome';
import { ranUntil } from '../diary/ranUntil';
import { unansweredSentence } from '../say/fit/unanswered';
import type { Tank } from '../store/tanks';
import { glanceOf, type Glance } from './glance';

/** What was worked out of a tank, and of what. */
interface Known {
  readonly asked: string;
  readonly answer: LogAnswer | string;
}

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
  private answers: Readonly<Record<string, LogAnswer | string>> = $state.raw({});

  private readonly kept: KeptAnswers;

  constructor(client: Asking) {
    this.kept = new KeptAnswers(client);
  }

  /** Asks for every tank whose log or plan has changed since it was asked last; `now` is a local time. */
  follow(tanks: readonly Tank[], now: string): void {
    const there: Record<string, LogAnswer | string> = {};
    for (const tank of tanks) {
      const question = questionOf(tank, now);
      const asked = JSON.stringify(question);
      const last = known[tank.id];
      if (last?.asked === asked) there[tank.id] = last.answer;
      else void this.ask(tank.id, question, asked);
    }
    this.answers = there;
  }

  of(tank: Tank, now: string): Glance {
    return glanceOf(tank, this.answers[tank.id], now);
  }

  private async ask(id: string, question: Asked<'answer'>, asked: string): Promise<void> {
    const found = await this.kept.ask(id, question);
    if (found.kind === 'failed') return this.put(id, found.failure.message);
    if (found.kind !== 'done') return;
    const answer = 'why' in found.value ? unansweredSentence(found.value) : found.value;
    known[id] = { asked, answer };
    this.put(id, answer);
  }

  private put(id: string, answer: LogAnswer | string): void {
    this.answers = { ...this.answers, [id]: answer };
  }
}
