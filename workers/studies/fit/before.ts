import type { Parameter } from './parameters';

/** What is known of the fitted numbers before the log is read, as steps from where the slopes were taken. */
export interface Before {
  readonly mean: readonly number[];
  readonly sigma: readonly number[];
  readonly odds: number;
}

/** What was not known beforehand is taken to lie within so much of the plain fit. */
const WIDE = { use: 5, start: 5 } as Readonly<Record<string, number>>;
/** At rest is within this share of the prior's own width: a filter needs some. */
const REST = 0.02;

/** By the priors, and with each number that may stand still doing so. */
export function beforesOf(parameters: readonly Parameter[], values: readonly number[]): Before[] {
  const usual: Before = {
    mean: parameters.map(({ prior }, i) => (prior ? prior.mean - values[i]! : 0)),
    sigma: parameters.map(({ prior, id }) => prior?.sigma ?? WIDE[id]!),
    odds: 1,
  };
  return parameters.reduce<Before[]>(
    (befores, { mayRest }, i) =>
      mayRest
        ? befores.flatMap((before) => [
            { ...before, odds: before.odds * (1 - mayRest.odds) },
            {
              mean: before.mean.with(i, mayRest.at - values[i]!),
              sigma: before.sigma.with(i, before.sigma[i]! * REST),
              odds: before.odds * mayRest.odds,
            },
          ])
        : befores,
    [usual],
  );
}

/** How wide a number is known before the log is read, whichever holds; undefined when nothing is. */
export function widthBefore({ prior, mayRest }: Parameter): number | undefined {
  if (!prior || !mayRest) return prior?.sigma;
  const { at, odds } = mayRest;
  return Math.sqrt((1 - odds) * prior.sigma ** 2 + odds * (1 - odds) * (prior.mean - at) ** 2);
}
