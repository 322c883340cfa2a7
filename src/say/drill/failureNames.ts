import { faultKinds } from '../../../shared/faults/faultKinds';
import type { Scenario } from '../../../shared/scenario/schema';
import type { ProtectionId } from '../../../shared/verdict/bought';
import { figure } from '../../../shared/words/figure';
import { say } from '../../../shared/words/ready';

/** What fails, in a keeper's words: a heater by the way in which it fails. */
export function failureName(
  { kind, endTempC }: Scenario['faults'][number],
  { tank }: Scenario,
): string {
  if (kind !== 'heater') return faultKinds[kind].label;
  return endTempC > tank.tempC ? say.wall.hot : say.wall.cold;
}

/** A protection, with what a plan has of it or would be given. */
export function protectionName(id: ProtectionId, { topOff }: Scenario): string {
  const { names } = say.protections;
  if (id === 'secondSwitch') return names.secondSwitch(figure(topOff.secondSwitchL || 2));
  if (id === 'runLimit') return names.runLimit(figure(topOff.runLimitMinPerH || 10));
  return names[id];
}
