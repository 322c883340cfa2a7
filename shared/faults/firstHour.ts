import type { FaultId } from '../scenario/faults';
import type { Scenario } from '../scenario/schema';

type Fault = Scenario['faults'][number];

/** Acts of a first hour (common practice); the words for each are in words/firstHour. */
export const actIds = [
  'breaker',
  'leaveRoom',
  'unplugTopOff',
  'liftHose',
  'unplugDoser',
  'unplugHeater',
  'moveWater',
  'warmSlowly',
  'stopAdding',
  'startWater',
  'keepWarm',
  'coolSlowly',
  'aerate',
  'skimAndSettle',
  'openWindows',
  'measurePh',
  'measureAlkalinity',
  'measureSalinity',
  'measureTemperature',
  'ammoniaTest',
  'plainWater',
  'fillByHand',
  'topOffStays',
  'topOffStaysOff',
  'emptyReservoir',
  'changeInSteps',
  'twinPump',
  'neverInOneGo',
  'measurePump',
  'noAcid',
  'noStir',
  'noFeeding',
  'noIce',
  'noReturn',
  'noTank',
] as const;

export type ActId = (typeof actIds)[number];

/** What to do when something has failed: people, then animals, then water. */
export interface FirstHour {
  /** In this order. */
  readonly first: readonly ActId[];
  readonly then: readonly ActId[];
  readonly never: readonly ActId[];
}

const hour = (first: ActId[], then: ActId[], never: ActId[] = []): FirstHour => ({
  first,
  then,
  never,
});

/** The heater drags the water up or down: what is wrong depends on where to. */
const heater = ({ endTempC }: Fault, { tank }: Scenario): FirstHour =>
  endTempC > tank.tempC
    ? hour(['unplugHeater'], ['aerate', 'measureTemperature', 'coolSlowly'], ['noIce', 'noFeeding'])
    : hour(['warmSlowly'], ['measureTemperature'], ['noFeeding']);

/** What runs goes on bringing what there is too much of already. */
const pouredIn = (_: Fault, { topOff, dosers }: Scenario): FirstHour => {
  const doses = dosers.some(({ mlPerDay, recipe }) => mlPerDay > 0 && recipe.length > 0);
  const mixes = topOff.reservoirL > 0 && topOff.additive !== 'none' && topOff.gramsPerL > 0;
  return hour(
    [
      ...(doses ? ['unplugDoser' as const] : []),
      ...(mixes ? ['unplugTopOff' as const] : []),
      'stopAdding',
    ],
    [
      'measurePh',
      'measureAlkalinity',
      'aerate',
      'changeInSteps',
      ...(mixes ? ['plainWater' as const] : []),
    ],
    ['noAcid', 'neverInOneGo'],
  );
};

const stuckTopOff = ['measurePh', 'aerate', 'plainWater'] as const;

/** One first hour for each way in which things break (advice for people comes from data sheets). */
const hours: Readonly<Record<FaultId, FirstHour | typeof heater>> = {
  topOffOn: hour(['unplugTopOff'], [...stuckTopOff, 'measureSalinity'], ['noAcid']),
  topOffOff: hour(['fillByHand'], ['measureSalinity', 'measureAlkalinity'], ['neverInOneGo']),
  sensorLow: hour(['unplugTopOff'], [...stuckTopOff, 'measureSalinity'], ['noAcid']),
  siphon: hour(['liftHose'], [...stuckTopOff, 'measureSalinity'], ['noAcid']),
  strongMix: hour(['unplugTopOff'], ['emptyReservoir', ...stuckTopOff], ['noAcid']),
  slurry: hour(
    ['unplugTopOff'],
    ['aerate', 'skimAndSettle', 'measurePh', 'ammoniaTest', 'plainWater'],
    ['noStir', 'noAcid'],
  ),
  doserOn: hour(
    ['unplugDoser'],
    ['measureAlkalinity', 'measurePh', 'aerate', 'twinPump', 'topOffStays'],
    ['noAcid'],
  ),
  doserOff: hour(['measureAlkalinity'], ['twinPump', 'measurePump'], ['neverInOneGo']),
  doserRate: hour(
    ['unplugDoser'],
    ['measureAlkalinity', 'measurePh', 'twinPump', 'measurePump', 'topOffStays'],
    ['neverInOneGo'],
  ),
  wrongNewWater: hour(['stopAdding'], ['measureSalinity', 'measureAlkalinity', 'changeInSteps']),
  heater,
  powerCut: hour(
    ['moveWater'],
    ['keepWarm', 'measureTemperature', 'topOffStaysOff', 'startWater'],
    ['noFeeding'],
  ),
  roomCo2: hour(['leaveRoom'], ['openWindows', 'aerate', 'measurePh'], ['noReturn']),
  overdose: pouredIn,
};

/** People before animals before water, what pours in before what is missing; the rest as it came. */
const RANK: readonly ActId[] = [
  ...(['breaker', 'leaveRoom', 'moveWater'] as const),
  ...(['liftHose', 'unplugTopOff', 'unplugDoser', 'unplugHeater', 'stopAdding'] as const),
];

const inOrder = (acts: readonly ActId[]): ActId[] => {
  const rank = (act: ActId) => (RANK.includes(act) ? RANK.indexOf(act) : RANK.length);
  return [...new Set(acts)].sort((a, b) => rank(a) - rank(b));
};

/** With several failures some acts are not possible, or are done already. */
function outdone(acts: readonly ActId[], faults: readonly Fault[]): ActId[] {
  const kinds = new Set(faults.map(({ kind }) => kind));
  const outs: ActId[] = [];
  if (acts.includes('unplugTopOff') || acts.includes('liftHose') || kinds.has('topOffOff')) {
    outs.push('topOffStays');
  }
  if (acts.includes('fillByHand')) outs.push('plainWater');
  // Without mains nothing runs; what is plugged in may still be unplugged before it comes back.
  if (kinds.has('powerCut')) outs.push('aerate', 'warmSlowly', 'topOffStays', 'skimAndSettle');
  if (acts.includes('unplugHeater') || acts.includes('coolSlowly')) {
    outs.push('keepWarm', 'warmSlowly');
  }
  if (acts.includes('breaker')) outs.push('topOffStays', 'skimAndSettle');
  return outs;
}

/**
 * The first hour of one failure or of several at once. `wetFloor`: water has run onto the floor, so
 * people come before everything else.
 */
export function firstHourOf(scenario: Scenario, wetFloor: boolean): FirstHour {
  const { faults } = scenario;
  const own = faults.map((fault) => {
    const found = hours[fault.kind];
    return typeof found === 'function' ? found(fault, scenario) : found;
  });
  const all = [...(wetFloor ? (['breaker'] as const) : []), ...own.flatMap(({ first }) => first)];
  const later = own.flatMap(({ then }) => then);
  const gone = outdone([...all, ...later], faults);
  const first = inOrder(all).filter((act) => !gone.includes(act));
  return {
    first,
    then: inOrder(later).filter((act) => !gone.includes(act) && !first.includes(act)),
    never: inOrder([
      ...(wetFloor ? (['noTank'] as const) : []),
      ...own.flatMap(({ never }) => never),
    ]),
  };
}
