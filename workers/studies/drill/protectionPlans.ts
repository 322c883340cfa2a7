import { batteryKLaPerH, type HandAir } from '../../../shared/faults/handAir';
import { newResponse } from '../../../shared/scenario/newFault';
import type { FaultId } from '../../../shared/scenario/faults';
import type { Scenario } from '../../../shared/scenario/schema';
import type { ProtectionId } from '../../../shared/verdict/bought';

type Change = (scenario: Scenario, air: HandAir) => Scenario;

/** Stand-ins for what a plan does not have: common practice. */
const SECOND_SWITCH_L = 2;
const RUN_LIMIT_MIN = 10;
const MOST_K_LA_PER_H = 20;

export const switchL = ({ topOff }: Scenario): number => topOff.secondSwitchL || SECOND_SWITCH_L;
export const limitMin = ({ topOff }: Scenario): number => topOff.runLimitMinPerH || RUN_LIMIT_MIN;

const topOffWith =
  (own: (scenario: Scenario) => Partial<Scenario['topOff']>): Change =>
  (scenario) => ({ ...scenario, topOff: { ...scenario.topOff, ...own(scenario) } });

type Fault = Scenario['faults'][number];
const faultsWith =
  (own: (fault: Fault, scenario: Scenario) => Partial<Fault>): Change =>
  (scenario) => ({
    ...scenario,
    faults: scenario.faults.map((fault) => ({ ...fault, ...own(fault, scenario) })),
  });

/** The pump that is stuck, or every pump where none is. */
const dosersWith =
  (own: (doser: Scenario['dosers'][number]) => Scenario['dosers'][number]): Change =>
  (scenario) => ({ ...scenario, dosers: scenario.dosers.map(own) });

const isHot = ({ faults, tank }: Scenario): boolean =>
  faults.some(({ kind, endTempC }) => kind === 'heater' && endTempC > tank.tempC);

interface ProtectionPlan {
  /** The failures that it is for. */
  readonly against: readonly FaultId[];
  /** Whether a tank can have it. */
  readonly fits?: (scenario: Scenario) => boolean;
  readonly change: Change;
}

const pours = ['topOffOn', 'sensorLow', 'siphon', 'slurry'] as const;
const hasTopOff = ({ topOff }: Scenario): boolean => topOff.reservoirL > 0;
const hasAdditive = (scenario: Scenario): boolean =>
  hasTopOff(scenario) && scenario.topOff.additive !== 'none';

/** What a protection makes of a plan and of its failure; each on its own. */
export const protectionPlans: Readonly<Record<ProtectionId, ProtectionPlan>> = {
  secondSwitch: {
    against: ['topOffOn', 'sensorLow'],
    fits: hasTopOff,
    change: (plan, air) =>
      faultsWith(() => ({ secondSwitch: 'works' }))(
        topOffWith((own) => ({ secondSwitchL: switchL(own) }))(plan, air),
        air,
      ),
  },
  runLimit: {
    against: ['topOffOn', 'sensorLow'],
    fits: hasTopOff,
    change: (plan, air) =>
      faultsWith(() => ({ runLimit: 'works' }))(
        topOffWith((own) => ({ runLimitMinPerH: limitMin(own) }))(plan, air),
        air,
      ),
  },
  halfReservoir: {
    against: [...pours, 'strongMix'],
    fits: hasTopOff,
    change: topOffWith(({ topOff }) => ({ reservoirL: topOff.reservoirL / 2 })),
  },
  halfStrength: {
    against: pours,
    fits: hasAdditive,
    change: topOffWith(({ topOff }) => ({ gramsPerL: topOff.gramsPerL / 2 })),
  },
  halfPump: {
    against: ['topOffOn', 'sensorLow', 'slurry'],
    fits: hasTopOff,
    change: topOffWith(({ topOff }) => ({ pumpLPerH: topOff.pumpLPerH / 2 })),
  },
  plain: {
    against: [...pours, 'strongMix'],
    fits: hasAdditive,
    change: topOffWith(() => ({ additive: 'none' })),
  },
  // Its end above the water: the hose takes air, and nothing siphons.
  antiSiphon: {
    against: ['siphon'],
    fits: hasTopOff,
    change: (plan) => ({
      ...plan,
      topOff: { ...plan.topOff, siphonLPerH: 0 },
      faults: plan.faults.map((fault) =>
        fault.kind === 'siphon' ? { ...fault, litresPerH: 0 } : fault,
      ),
    }),
  },
  halfBottle: {
    against: ['doserOn', 'doserRate'],
    change: dosersWith((doser) => ({ ...doser, stockL: doser.stockL / 2 })),
  },
  // As much a day from a weaker bottle: what sticks runs at the pump's own pace.
  weakerStock: {
    against: ['doserOn'],
    change: dosersWith((doser) => ({
      ...doser,
      mlPerDay: Math.min(100_000, doser.mlPerDay * 2),
      recipe: doser.recipe.map((part) => ({ ...part, gramsPerL: part.gramsPerL / 2 })),
    })),
  },
  // One of two that fails leaves half of the way, at half the pace.
  twoHeaters: {
    against: ['heater'],
    change: faultsWith(({ kind, endTempC, degreesPerH }, { tank }) =>
      kind === 'heater'
        ? { endTempC: (endTempC + tank.tempC) / 2, degreesPerH: Math.max(0.05, degreesPerH / 2) }
        : {},
    ),
  },
  cutOut: {
    against: ['heater'],
    fits: isHot,
    change: faultsWith(({ kind, endTempC }, { limits }) =>
      kind === 'heater' ? { endTempC: Math.min(endTempC, limits.tempHighC) } : {},
    ),
  },
  batteryAir: {
    against: ['powerCut'],
    change: (plan, air) => ({
      ...plan,
      responses: plan.faults
        .filter(({ kind }) => kind === 'powerCut')
        .map(({ day, hour, endsAfterH: hours }) => {
          const kLaPerH = Math.min(MOST_K_LA_PER_H, batteryKLaPerH(plan, air));
          return newResponse('batteryAir', { day, hour, hours, kLaPerH });
        }),
    }),
  },
  halfChange: {
    against: ['wrongNewWater'],
    fits: ({ waterChanges }) => waterChanges.percent > 0,
    change: (plan) => ({
      ...plan,
      waterChanges: { ...plan.waterChanges, percent: plan.waterChanges.percent / 2 },
    }),
  },
};
