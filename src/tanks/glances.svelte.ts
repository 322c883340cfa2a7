import { countedReadings } from '../../shared/log/counted';
import type { Asked, Asking } from '../ask/asking';
import type { LogAnswer } from '../ask/outcome';
import { ranUntil } from '../state/ranUntil';
import type { Tank } from '../state/tanks';
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

  constructor(private readonly client: Asking) {}

  /** Asks for every tank whose log or plan has changed since it was asked last; `now` is a local time. */
  follow(tanks: readonly Tank[], now: string): void {
    const asked = tanks.map((tank) => ({ id: tank.id, question: questionOf(tank, now) }));
    const isKnown = ({ id, question }: (typeof asked)[number]) =>
      known[id]?.asked === JSON.stringify(question);
    const there = asked.filter(isKnown).map(({ id }) => [id, known[id]!.answer] as const);
    this.answers = Object.fromEntries(there);
    for (const one of asked) if (!isKnown(one)) void this.ask(one.id, one.question);
  }

  of(tank: Tank, now: string): Glance {
    return glanceOf(tank, this.answers[tank.id], now);
  }

  private async ask(id: string, question: Asked<'answer'>): Promise<void> {
    const found = await this.client.ask('answer', question, { key: id });
    if (found.kind === 'failed') return this.put(id, found.failure.message);
    if (found.kind !== 'done') return;
    known[id] = { asked: JSON.stringify(question), answer: found.value };
    this.put(id, found.value);
  }

  private put(id: string, answer: LogAnswer | string): void {
    this.answers = { ...this.answers, [id]: answer };
  }
}
