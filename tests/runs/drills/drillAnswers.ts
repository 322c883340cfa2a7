import { clockText, spanText } from '../../../src/say/clockText';
import type { DrillOutcome } from '../../../shared/verdict/drillOutcome';
import type { LineResult } from '../../../shared/verdict/lineResult';

const line = (outcome: DrillOutcome, id: string): LineResult =>
  outcome.lines.find((one) => one.id === id)!;
const first = (outcome: DrillOutcome, id: string) => clockText(line(outcome, id).firstH!, 0);
const worst = (outcome: DrillOutcome, id: string, digits: number) =>
  line(outcome, id).worst.toFixed(digits);
const outside = (outcome: DrillOutcome, id: string) => spanText(line(outcome, id).outsideH);
const dryAt = ({ switchings }: DrillOutcome, wanted: string) =>
  clockText(switchings.find(({ pipe, dry }) => dry && pipe === wanted)!.timeH, 0);

/** What the answer of each drill must state, as the engine gives it. */
export const drillAnswers: Record<string, (outcome: DrillOutcome) => string[]> = {
  'drill-stuck-pump.json': (o) => [
    ...[first(o, 'phHigh'), first(o, 'phHarm'), dryAt(o, 'topOff')],
    ...[worst(o, 'phHigh', 2), outside(o, 'phHarm'), outside(o, 'phHigh')],
  ],
  'drill-second-switch.json': (o) => [worst(o, 'phHigh', 2), worst(o, 'alkalinityHigh', 1)],
  'drill-empty-reservoir.json': (o) => [
    ...[first(o, 'alkalinityLow'), first(o, 'salinityHigh')],
    ...[worst(o, 'salinityHigh', 1), worst(o, 'phHigh', 2)],
  ],
  'drill-power-cut.json': (o) => [
    ...[first(o, 'oxygenLow'), first(o, 'oxygenHarm')],
    ...[first(o, 'phLow'), worst(o, 'phLow', 2), worst(o, 'phHigh', 2)],
  ],
  'drill-strong-mix.json': (o) => [first(o, 'phHigh'), worst(o, 'phHigh', 2)],
  'drill-doser-stuck.json': (o) => [
    ...[first(o, 'alkalinityHigh'), dryAt(o, 'stock1')],
    ...[worst(o, 'alkalinityHigh', 0), worst(o, 'phHigh', 2)],
  ],
  'drill-wrong-water.json': (o) => [
    ...[first(o, 'phLow'), first(o, 'salinityLow')],
    ...[worst(o, 'salinityLow', 1), worst(o, 'phLow', 2)],
  ],
};
