import { limitBands } from '../scenario/limitBands';
import type { Scenario } from '../scenario/schema';

/** What a line may be drawn across; the engine knows how to read each off the tank. */
export type LineQuantity =
  | 'alkalinity'
  | 'ph'
  | 'calcium'
  | 'magnesium'
  | 'salinity'
  | 'temperature'
  | 'phChange'
  | 'alkalinityChange'
  | 'oxygen'
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

const above = (id: string, quantity: LineQuantity, limit: number): Line => ({
  ...{ id, quantity, trouble: 'above', limit },
});
const below = (id: string, quantity: LineQuantity, limit: number): Line => ({
  ...{ id, quantity, trouble: 'below', limit },
});

/** The keeper's bands, two lines each. */
const bandLines = ({ limits }: Scenario): Line[] =>
  limitBands(limits).flatMap(({ id, low, high }) => [
    below(`${id}Low`, id, low),
    above(`${id}High`, id, high),
  ]);

/** Everything that is watched, in every trial and drill alike: what is said of ease rests on it. */
export const watchedLines = (scenario: Scenario): Line[] => {
  const { limits, tank, outflows } = scenario;
  return [
    ...bandLines(scenario),
    above('phHarm', 'ph', limits.phHarmNbs),
    below('alkalinityHarm', 'alkalinity', limits.alkalinityHarmDkh),
    above('temperatureHarm', 'temperature', limits.tempHarmC),
    below('oxygenLow', 'oxygen', limits.oxygenLowMgPerL),
    below('oxygenHarm', 'oxygen', limits.oxygenHarmMgPerL),
    above('phChange', 'phChange', limits.phChangePerH),
    above('alkalinityChange', 'alkalinityChange', limits.alkalinityChangeDkhPerDay),
    above('ammonia', 'ammonia', limits.unionisedAmmoniaMgPerL),
    above('omega', 'omega', limits.omegaHigh),
    above('overflow', 'volume', tank.volumeL + outflows.spareL),
  ];
};
