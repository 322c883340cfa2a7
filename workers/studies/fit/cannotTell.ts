import type { Scenario } from '../../../shared/scenario/schema';
import { signed } from '../../../shared/verdict/texts';
import type { Estimate, Fit } from './fit';

/** A number that the log has hardly moved from what was known before. */
const HARDLY = 0.8;
const FEW_READINGS = 4;

const find = (fit: Fit, id: string) => fit.estimates.find((estimate) => estimate.id === id);

const isToldByLog = ({ standardError, priorSigma }: Estimate) =>
  priorSigma === undefined || standardError < HARDLY * priorSigma;

function aboutReadings({ points }: Fit): string[] {
  const count = points.filter(({ kind }) => kind === 'alkalinity').length;
  return count < FEW_READINGS
    ? [
        `Only ${count} alkalinity readings: the line through them can hardly be checked against itself.`,
      ]
    : [];
}

function aboutUse(fit: Fit): string[] {
  const { value, standardError } = find(fit, 'use')!;
  return value < 2 * standardError
    ? ['This consumption cannot be told apart from none at all yet.']
    : [];
}

function aboutGrowth(fit: Fit): string[] {
  const growth = find(fit, 'growth')!;
  return isToldByLog(growth)
    ? [
        `Consumption grows by ${growth.value.toFixed(2)} ± ${(2 * growth.standardError).toFixed(2)} % a day.`,
      ]
    : [
        'Growth cannot be told apart from steady consumption yet: your plan’s growth stands in, give or take 0.3 % a day (common practice).',
      ];
}

function aboutGas(fit: Fit, plan: Scenario): string[] {
  const lnKLa = find(fit, 'lnKLa');
  if (!lnKLa) {
    return [
      `Gas exchange is not known from this log: your plan’s kLa of ${plan.gas.kLaPerH} per hour stands in. Three readings of pH or more, some before lights-on and some before lights-off, would tell.`,
    ];
  }
  const kLa = Math.exp(lnKLa.value);
  const factor = Math.exp(2 * lnKLa.standardError);
  return isToldByLog(lnKLa)
    ? [
        `Gas exchange: kLa ${kLa.toFixed(2)} per hour, from ${(kLa / factor).toFixed(2)} to ${(kLa * factor).toFixed(2)}.`,
      ]
    : [
        'The pH readings do not tell the gas exchange: your plan’s stands in, give or take a factor of two.',
      ];
}

const aboutLots = ({ estimates }: Fit): string[] =>
  estimates
    .filter(({ id }) => id.startsWith('lot'))
    .map(({ title, value, standardError }) =>
      Math.abs(value) > 2 * standardError
        ? `${title}: reads ${signed(value, 2)} ± ${(2 * standardError).toFixed(2)} dKH. That step is not counted as consumption.`
        : `${title}: no step that can be told from chance (${signed(value, 2)} ± ${(2 * standardError).toFixed(2)} dKH).`,
    );

function aboutScatter({ widened, points }: Fit): string[] {
  const far = points.filter(({ standardised }) => Math.abs(standardised) > 3).length;
  return [
    ...(widened > 1
      ? [
          `The readings scatter ${widened.toFixed(1)} times wider than their stated accuracy; every ± here is widened by that.`,
        ]
      : []),
    ...(far > 0
      ? [
          `${far === 1 ? 'One reading lies' : `${far} readings lie`} more than three standard errors off and ${far === 1 ? 'is' : 'are'} marked below. Nothing was left out: test again, or delete what you know to be wrong.`,
        ]
      : []),
  ];
}

/** What a fit says and what it cannot say, in words. */
export const notesOf = (fit: Fit, plan: Scenario): string[] => [
  ...aboutReadings(fit),
  ...aboutUse(fit),
  ...aboutScatter(fit),
  ...aboutLots(fit),
  ...aboutGrowth(fit),
  ...aboutGas(fit, plan),
  'Every ± takes gas exchange and the corals’ answer to saturation to be as in your plan; where they are not, it is too narrow (95 in 100 becomes about 80).',
  'A test that always reads the same amount too high does not move the consumption; one that reads 5 % too high makes it 5 % too high.',
];
