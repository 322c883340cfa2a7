import type { FieldPath } from '../../shared/scenario/fields';
import type { Scenario } from '../../shared/scenario/schema';

/** Fields that only mean something together with another choice. */
const usefulWhen: Readonly<Record<string, (scenario: Scenario) => boolean>> = {
  'topOff.gramsPerL': ({ topOff }) => topOff.additive !== 'none',
  'topOff.settledG': ({ topOff }) => topOff.additive === 'calciumHydroxide',
  'topOff.saturationPercent': ({ topOff }) => topOff.additive === 'calciumHydroxide',
  'corals.useDkhPerDay': ({ corals }) => corals.measuredAs === 'use',
  'corals.rateMmolPerM2PerDay': ({ corals }) => corals.measuredAs === 'area',
  'corals.areaM2': ({ corals }) => corals.measuredAs === 'area',
  'evaporation.litresPerDay': ({ evaporation }) => evaporation.mode === 'fixed',
  'evaporation.airTempC': ({ evaporation, faults }) =>
    evaporation.mode === 'byAir' || faults.some(({ kind }) => kind === 'powerCut'),
  'evaporation.humidityPercent': ({ evaporation }) => evaporation.mode === 'byAir',
  'waterChanges.freshPhNbs': ({ waterChanges }) => waterChanges.newWater === 'fresh',
  'topOff.lossPercentPerDay': ({ topOff }) => topOff.additive === 'calciumHydroxide',
  'gas.outsideAirPercent': ({ gas }) => gas.aeration === 'skimmerOutsideAir',
  'start.phNbs': ({ start }) => start.carbon === 'measuredPh',
};

export const isUseful = (path: FieldPath, scenario: Scenario): boolean =>
  usefulWhen[path.join('.')]?.(scenario) ?? true;
