/** What a question is given to work by, beside what was asked. */
export interface Job<Told = never> {
  /** Lets messages in, and says whether the answer is still wanted. */
  goesOn(): Promise<boolean>;
  /** Says how far it has come; that it is heard from at all keeps it from being stopped. */
  tell(told: Told): void;
}

/** A named question: from what is asked to what it gives, undefined when it is no longer wanted. */
export type Question<Asked, Given, Told = never> = (
  asked: Asked,
  job: Job<Told>,
) => Promise<Given | undefined> | Given | undefined;

export type AskedOf<Q> = Q extends Question<infer Asked, unknown, never> ? Asked : never;
export type GivenBy<Q> = Q extends (...asked: never) => infer R
  ? Exclude<Awaited<R>, undefined>
  : never;
export type ToldBy<Q> = Q extends (asked: never, job: Job<infer Told>) => unknown ? Told : never;
