import { randomNormal } from 'd3-random';
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { withValue } from '../../../shared/scenario/change';
import { quantityAt, type FieldPath } from '../../../shared/scenario/fields';
import { breathing, respirationDoubt } from '../../../shared/processes/respirationDoubt';
import type { Scenario } from '../../../shared/scenario/schema';
import { withoutChalk } from '../../../shared/scenario/chalk';
import { spreadKinds, type SpreadId, type Spreads } from '../../../shared/verdict/spreads';
import { shifted } from './shifted';

/** How far one member's tank is off in each respect, in standard deviations (the hour: −1 to 1). */
export type Draws = Readonly<Record<SpreadId, number>>;

/** The same draws for the same seed and number, whoever asks and in whatever order. */
export function drawsOf(seed: number, index: number): Draws {
  // Neighbouring seeds of a generator may start alike: the number goes in through a mix of bits.
  const rng = xoroshiro128plus(Math.imul(index + 1, 0x9e3779b1) ^ seed);
  for (let i = 0; i < 8; i++) rng.next();
  const uniform = () => uniformFloat64(rng);
  const normal = randomNormal.source(uniform)(0, 1);
  return Object.fromEntries(
    spreadKinds.map(({ id }) => [id, id === 'hour' ? 2 * uniform() - 1 : normal()]),
  ) as Draws;
}

const within = (path: FieldPath, value: number): number => {
  const { min, max } = quantityAt(path).quantity;
  return Math.max(min, Math.min(max, value));
};

/** A factor whose logarithm is normal: never below nothing. */
const factor = (percent: number, draw: number): number =>
  Math.exp(Math.log1p(percent / 100) * draw);

/** One tank that the keeper's might be. */
export function memberOf(scenario: Scenario, spreads: Spreads, draws: Draws): Scenario {
  const times = (id: SpreadId) => Math.max(0.1, 1 + (spreads[id] / 100) * draws[id]);
  const scaled = (path: FieldPath, now: number, factor: number): [FieldPath, number] => [
    path,
    within(path, now * factor),
  ];
  const { tank, gas, topOff, room, start } = scenario;
  const changes: [FieldPath, number][] = [
    scaled(['tank', 'volumeL'], tank.volumeL, times('volume')),
    scaled(['gas', 'kLaPerH'], gas.kLaPerH, factor(spreads.kLa, draws.kLa)),
    scaled(['topOff', 'pumpLPerH'], topOff.pumpLPerH, times('pump')),
    scaled(['topOff', 'gramsPerL'], topOff.gramsPerL, times('strength')),
    scaled(['topOff', 'saturationPercent'], topOff.saturationPercent, times('strength')),
    scaled(['room', 'co2Ppm'], room.co2Ppm, times('roomCo2')),
    [
      ['tank', 'alkalinityDkh'],
      within(['tank', 'alkalinityDkh'], tank.alkalinityDkh + spreads.alkalinity * draws.alkalinity),
    ],
    [['start', 'phNbs'], within(['start', 'phNbs'], start.phNbs + spreads.startPh * draws.startPh)],
  ];
  const tankOf = changes.reduce((plan, [path, value]) => withValue(plan, path, value), scenario);
  const isTyped = scenario.oxygen.respirationMmolPerLPerDay > 0;
  const most = isTyped ? 100 * respirationDoubt(scenario) : Infinity;
  const breathed = factor(Math.min(spreads.respiration, most), draws.respiration);
  const breathes = breathed === 1 ? tankOf : breathing(tankOf, breathed);
  return shifted(withoutChalk(breathes), spreads.hour * draws.hour);
}
