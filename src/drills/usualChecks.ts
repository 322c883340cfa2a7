import type { Scenario } from '../../shared/scenario/schema';
import { say } from '../../shared/words/ready';

/** What a keeper of such a tank should have tried (common practice), in the words of the list. */
export function usualChecks({ topOff, dosers, outflows }: Scenario): string[] {
  const { usual } = say.checks;
  return [
    ...(topOff.reservoirL > 0 ? [usual.floatSwitch, usual.antiSiphon] : []),
    ...(topOff.reservoirL > 0 && topOff.secondSwitchL > 0 ? [usual.secondSwitch] : []),
    ...(topOff.reservoirL > 0 && topOff.runLimitMinPerH + topOff.runLimitMinPerDay > 0
      ? [usual.runLimit]
      : []),
    ...(dosers.length > 0 ? [usual.doserMl] : []),
    ...(outflows.spareL > 0 ? [usual.overflowRoom] : []),
    ...[usual.batteryAir, usual.heater, usual.thermometer, usual.residualCurrent],
  ];
}
