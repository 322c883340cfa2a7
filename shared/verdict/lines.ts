import { limitBands } from '../scenario/limitBands';
import type { Scenario } from '../scenario/schema';

/** What a line may be drawn across; the engine knows how to read each off the tank. */
export type LineQuantity =
  | 'alkalinity'
  | 'ph'
  | 'calcium'
  | 'magnesium'
  | 'salinity'
  | 'phChange'
  | 'alkalinityChange'
  | 'ammonia'
  | 'omega'
  | 'volume';

/** One value that a quantity should not pass, and on which side lies trouble. */
export interface Line {
  readonly id: string;
  readonly quantity: LineQuantity;
  readonly trouble: 'above' | 'below';
  readonly limit: number;
}

/** The keeper's bands, two lines each. */
export const limitLines = ({ limits }: Scenario): Line[] =>
  limitBands(limits).flatMap(({ id, low, high }): Line[] => [
    { id: `${id}Low`, quantity: id, trouble: 'below', limit: low },
    { id: `${id}High`, quantity: id, trouble: 'above', limit: high },
  ]);

/** What a drill watches: the bands that animals feel, how fast things move, and the sump's rim. */
export const drillLines = ({ limits, tank, outflows }: Scenario): Line[] => {
  const above = (id: string, quantity: LineQuantity, limit: number): Line => ({
    ...{ id, quantity, trouble: 'above', limit },
  });
  const below = (id: string, quantity: LineQuantity, limit: number): Line => ({
    ...{ id, quantity, trouble: 'below', limit },
  });
  return [
    above('phHigh', 'ph', limits.phHighNbs),
    above('phHarm', 'ph', limits.phHarmNbs),
    below('phLow', 'ph', limits.phLowNbs),
    above('phChange', 'phChange', limits.phChangePerH),
    above('alkalinityHigh', 'alkalinity', limits.alkalinityHighDkh),
    below('alkalinityLow', 'alkalinity', limits.alkalinityLowDkh),
    above('alkalinityChange', 'alkalinityChange', limits.alkalinityChangeDkhPerDay),
    above('salinityHigh', 'salinity', limits.salinityHighPractical),
    below('salinityLow', 'salinity', limits.salinityLowPractical),
    above('ammonia', 'ammonia', limits.unionisedAmmoniaMgPerL),
    above('omega', 'omega', limits.omegaHigh),
    above('overflow', 'volume', tank.volumeL + outflows.spareL),
  ];
};
