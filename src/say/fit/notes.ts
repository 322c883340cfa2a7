import { hoursOf, localTimeOf } from '../../../shared/log/localTime';
import { spokenDay } from '../../../shared/log/spokenTime';
import { quantityAt } from '../../../shared/scenario/fields';
import type { Scenario } from '../../../shared/scenario/schema';
import { signed } from '../texts';
import { figure, figureText } from '../../../shared/words/figure';
import { say } from '../../../shared/words/fit';
import type { LogAnswer } from '../../ask/outcome';
import { estimateTitle } from './estimateTitle';

const { notes } = say;

type Fit = LogAnswer['fit'];
type Estimate = Fit['estimates'][number];

/** A number that the log has hardly moved from what was known before. */
const HARDLY = 0.8;
const FEW_READINGS = 4;
/** Chance alone seldom makes the readings scatter so much wider than they are said to. */
const WIDE = 1.5;

const find = (fit: Fit, id: string) => fit.estimates.find((estimate) => estimate.id === id);

const isToldByLog = ({ standardError, priorSigma }: Estimate) =>
  priorSigma === undefined || standardError < HARDLY * priorSigma;

function aboutReadings({ points }: Fit): string[] {
  const count = points.filter(({ kind }) => kind === 'alkalinity').length;
  return count < FEW_READINGS ? [notes.fewReadings(count)] : [];
}

function aboutUse(fit: Fit): string[] {
  const { useDkhPerDay, covariance } = fit.now;
  const most = quantityAt(['corals', 'useDkhPerDay']).quantity.max;
  return [
    ...(useDkhPerDay < 2 * Math.sqrt(covariance[1]![1]!) ? [notes.noneAtAll] : []),
    ...(useDkhPerDay > most ? [notes.mostUse(figure(most))] : []),
  ];
}

/** Something happened on the way that the log does not tell. */
function aboutJump({ jump, startAt }: Fit): string[] {
  if (!jump) return [];
  const date = spokenDay(localTimeOf(hoursOf(startAt) + jump.atH));
  const by = figure(Math.abs(jump.byDkhPerDay), 2);
  return [jump.byDkhPerDay > 0 ? notes.fasterSince(date, by) : notes.slowerSince(date, by)];
}

/** What the ± leaves out, since no reading can tell it. */
function aboutDoubts({ now: { doubts, covariance } }: Fit): string[] {
  if (doubts.length === 0) return [];
  const parts = doubts.map(({ id, useDkhPerDay }) =>
    notes.doubt[id](figure(Math.abs(useDkhPerDay), 2)),
  );
  const all = Math.hypot(...doubts.map(({ useDkhPerDay }) => 2 * useDkhPerDay));
  const together = Math.hypot(all, 2 * Math.sqrt(covariance[1]![1]!));
  return [notes.doubts(parts.join(', '), figure(together, 2))];
}

/** Corals that were noted as added or taken out, and what the readings make of it. */
const aboutCorals = (fit: Fit): string[] =>
  fit.stockings.map(({ at, percent }, index) => {
    const { value, standardError } = find(fit, `corals ${index}`)!;
    const by = figure(2 * standardError, 2);
    return notes.corals(spokenDay(at), figureText(signed(percent, 0)), figure(value, 2), by);
  });

function aboutGrowth(fit: Fit): string {
  const growth = find(fit, 'growth')!;
  return isToldByLog(growth)
    ? notes.grows(figure(growth.value, 2), figure(2 * growth.standardError, 2))
    : notes.growthUnknown;
}

function aboutGas(fit: Fit, plan: Scenario): string {
  const lnKLa = find(fit, 'lnKLa');
  if (!lnKLa) return notes.gasUnknown(figure(plan.gas.kLaPerH));
  const kLa = Math.exp(lnKLa.value);
  const factor = Math.exp(2 * lnKLa.standardError);
  return isToldByLog(lnKLa)
    ? notes.gas(figure(kLa, 2), figure(kLa / factor, 2), figure(kLa * factor, 2))
    : notes.gasUntold;
}

const aboutLots = (fit: Fit): string[] =>
  fit.estimates
    .filter(({ id }) => id.startsWith('lot'))
    .map(({ id, value, standardError }) =>
      (Math.abs(value) > 2 * standardError ? notes.lotStep : notes.lotSame)(
        estimateTitle(id, fit),
        figureText(signed(value, 2)),
        figure(2 * standardError, 2),
      ),
    );

function aboutScatter({ spread, points }: Fit): string[] {
  const far = points.filter(({ standardised }) => Math.abs(standardised) > 3).length;
  return [
    ...(spread > WIDE ? [notes.scatter(figure(spread, 1))] : []),
    ...(far > 0 ? [far === 1 ? notes.oneFarOff : notes.farOff(far)] : []),
  ];
}

/** What a fit says and what it cannot say, in words. */
export const notesOf = (fit: Fit, plan: Scenario): string[] => [
  ...aboutJump(fit),
  ...aboutCorals(fit),
  ...aboutReadings(fit),
  ...aboutUse(fit),
  ...aboutScatter(fit),
  ...aboutLots(fit),
  aboutGrowth(fit),
  aboutGas(fit, plan),
  ...aboutDoubts(fit),
  notes.alwaysHigh,
];
