import type { Scenario } from '../../../shared/scenario/schema';
import { usualDisplay, type DisplayUnits } from '../../../shared/units/display';
import { numberText } from '../../../shared/units/format';
import { dayOf } from '../../../shared/verdict/measures';
import type { DryReservoir, Supplies } from '../../../shared/verdict/supplies';
import { say } from '../../../shared/words/reasons';

/** A reservoir that stands empty in a trial, and what keeps it from that. */
export function dryReservoirSentence(
  { firstH, hours, lastsDays }: DryReservoir,
  { faults }: Scenario,
): string {
  // What a failure has emptied says nothing about how large the reservoir should be.
  if (faults.length > 0) return say.reservoir.emptied(String(dayOf(firstH)), String(hours));
  const often =
    lastsDays >= 1 ? say.reservoir.refillEvery(String(lastsDays)) : say.reservoir.notADay;
  return say.reservoir.runsDry(String(dayOf(firstH)), String(hours), often);
}

/** What runs out, in a sentence; empty when nothing does. */
export function suppliesSentence(
  { reservoirDays, calciumHydroxideGPerMonth, saltKgPerMonth }: Supplies,
  display: DisplayUnits = usualDisplay,
): string {
  const number = (value: number, digits: number) => numberText(value, digits, '', display);
  const parts = [
    reservoirDays && say.supplies.reservoir(number(reservoirDays, 1)),
    calciumHydroxideGPerMonth > 0 &&
      say.supplies.calciumHydroxide(number(calciumHydroxideGPerMonth, 0)),
    saltKgPerMonth > 0 && say.supplies.salt(number(saltKgPerMonth, 1)),
  ].filter((part) => typeof part === 'string');
  return parts.length === 0 ? '' : say.supplies.all(parts.join('; '));
}
