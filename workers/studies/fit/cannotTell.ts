import type { Scenario } from '../../../shared/scenario/schema';
import { signed } from '../../../shared/verdict/texts';
import { figure, figureText } from '../../../shared/words/figure';
import { say } from '../../../shared/words/fit';
import type { Estimate, Fit } from './fit';

const { notes } = say;

/** A number that the log has hardly moved from what was known before. */
const HARDLY = 0.8;
const FEW_READINGS = 4;

const find = (fit: Fit, id: string) => fit.estimates.find((estimate) => estimate.id === id);

const isToldByLog = ({ standardError, priorSigma }: Estimate) =>
  priorSigma === undefined || standardError < HARDLY * priorSigma;

function aboutReadings({ points }: Fit): string[] {
  const count = points.filter(({ kind }) => kind === 'alkalinity').length;
  return count < FEW_READINGS ? [notes.fewReadings(count)] : [];
}

function aboutUse(fit: Fit): string[] {
  const { value, standardError } = find(fit, 'use')!;
  return value < 2 * standardError ? [notes.noneAtAll] : [];
}

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

const aboutLots = ({ estimates }: Fit): string[] =>
  estimates
    .filter(({ id }) => id.startsWith('lot'))
    .map(({ title, value, standardError }) =>
      (Math.abs(value) > 2 * standardError ? notes.lotStep : notes.lotSame)(
        title,
        figureText(signed(value, 2)),
        figure(2 * standardError, 2),
      ),
    );

function aboutScatter({ widened, points }: Fit): string[] {
  const far = points.filter(({ standardised }) => Math.abs(standardised) > 3).length;
  return [
    ...(widened > 1 ? [notes.scatter(figure(widened, 1))] : []),
    ...(far > 0 ? [far === 1 ? notes.oneFarOff : notes.farOff(far)] : []),
  ];
}

/** What a fit says and what it cannot say, in words. */
export const notesOf = (fit: Fit, plan: Scenario): string[] => [
  ...aboutReadings(fit),
  ...aboutUse(fit),
  ...aboutScatter(fit),
  ...aboutLots(fit),
  aboutGrowth(fit),
  aboutGas(fit, plan),
  notes.tooNarrow,
  notes.alwaysHigh,
];
