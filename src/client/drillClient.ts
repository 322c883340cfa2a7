import * as Comlink from 'comlink';
import type { Scenario } from '../../shared/scenario/schema';
import type { Spreads } from '../../shared/verdict/spreads';
import type {
  Answer,
  Design,
  DesignQuestion,
  DrillDesk,
  MemberResult,
  Members,
} from '../../workers/trial.worker';
import { openDoor } from './openDoor';

type Desk = Comlink.Remote<DrillDesk>;

/** Members that one worker takes at a time: short enough to show progress. */
const CHUNK = 8;
const MOST_WORKERS = 4;

const openDesk = async (): Promise<Desk> => (await (await openDoor()).drills()) as unknown as Desk;

export interface EnsembleQuestion {
  readonly scenario: Scenario;
  readonly spreads: Spreads;
  readonly seed: number;
  readonly members: number;
}

/** Several workers that answer what is asked of a drill; they open when first asked. */
export class DrillClient {
  private desks: Promise<Desk[]> | undefined;
  private job = 0;
  private readonly latest = new Map<string, number>();

  private open(): Promise<Desk[]> {
    const count = Math.max(1, Math.min(MOST_WORKERS, navigator.hardwareConcurrency || 2));
    this.desks ??= Promise.all(Array.from({ length: count }, openDesk));
    return this.desks;
  }

  /** Asks one desk; a newer question under the same key supersedes it. */
  async ask<T>(
    key: string,
    question: (desk: Desk, job: number) => Promise<Answer<T>>,
  ): Promise<Answer<T>> {
    const job = this.begin(key);
    const answer = await question((await this.open())[0]!, job);
    return this.latest.get(key) === job ? answer : { kind: 'superseded' };
  }

  /** Shares numbered tasks out among the workers; the answers come back by number. */
  async share<T>(
    key: string,
    tasks: number,
    task: (desk: Desk, job: number, number: number) => Promise<Answer<T>>,
    onDone: (results: readonly (T | undefined)[]) => void,
  ): Promise<Answer<T[]>> {
    const begun = performance.now();
    const job = this.begin(key);
    const results = new Array<T | undefined>(tasks).fill(undefined);
    let next = 0;
    let trouble: Answer<T> | undefined;
    const work = async (desk: Desk): Promise<void> => {
      while (next < tasks && this.latest.get(key) === job && !trouble) {
        const number = next++;
        const answer = await task(desk, job, number);
        if (this.latest.get(key) !== job) return;
        if (answer.kind !== 'done') trouble = answer;
        else {
          results[number] = answer.value;
          onDone(results);
        }
      }
    };
    await Promise.all((await this.open()).map(work));
    if (this.latest.get(key) !== job) return { kind: 'superseded' };
    if (trouble && trouble.kind !== 'done') return trouble;
    return { kind: 'done', value: results as T[], tookMs: performance.now() - begun };
  }

  /** Every member of an ensemble, in order of their numbers whoever ran them. */
  async ensemble(
    { scenario, spreads, seed, members }: EnsembleQuestion,
    onSome: (soFar: readonly MemberResult[]) => void,
  ): Promise<Answer<MemberResult[]>> {
    const answer = await this.share<MemberResult[]>(
      'ensemble',
      Math.ceil(members / CHUNK),
      (desk, job, number) => {
        const from = number * CHUNK;
        const to = Math.min(members, from + CHUNK);
        return desk.members('ensemble', job, { scenario, spreads, seed, from, to });
      },
      (results) => onSome(results.flatMap((some) => some ?? [])),
    );
    return answer.kind === 'done' ? { ...answer, value: answer.value.flat() } : answer;
  }

  async member(question: Members, index: number): Promise<Scenario> {
    return (await this.open())[0]!.member(question, index);
  }

  /** The search backwards, with its progress. */
  design(question: DesignQuestion, report: (share: number) => void): Promise<Answer<Design>> {
    return this.ask('design', (desk, job) =>
      desk.design('design', job, question, Comlink.proxy(report)),
    );
  }

  /** Ends what runs under a key, in every worker. */
  async cancel(key: string): Promise<void> {
    this.latest.delete(key);
    if (this.desks) for (const desk of await this.desks) void desk.cancel(key);
  }

  private begin(key: string): number {
    this.latest.set(key, ++this.job);
    return this.job;
  }
}
