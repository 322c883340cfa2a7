import { threeFigures } from '../../../shared/recipe/threeFigures';
import { bringsAlkalinity } from '../../../shared/species/additives';
import type { SimulationOptions } from '../../engine/simulation';
import type { ByHand, Dose } from '../forecast/habit';
import { asItGoesOn } from '../forecast/goingOn';
import type { Correction } from '../plan/correct';
import { correctBefore } from '../plan/correctBefore';
import type { PlanQuestion } from '../plan/threePlans';
import { dividedDose } from './hand';

export const LONGEST_CORRECTION_DAYS = 64;

/** What brings the water to the target while no turn does. */
export interface UntilKnown {
  readonly correction: Correction;
  /** What goes in by hand meanwhile, instead of what does as the log shows; undefined where that goes on. */
  readonly byHand: readonly Dose[] | undefined;
}

const isWay = ({ kind }: Correction): boolean =>
  kind === 'raise' || kind === 'rises' || kind === 'wait';

const isTooMuchAtOnce = ({ kind }: Correction): boolean =>
  kind === 'tooFast' || kind === 'tooHighPh';

const isDivided = (dose: Dose): boolean => dividedDose(dose) === dose;

/**
 * With what runs left as it is, and what is poured in by hand going on; where that alone moves the water
 * too fast, with the same in smaller parts.
 */
export function untilKnown(question: PlanQuestion, options: SimulationOptions): UntilKnown {
  const { now, byHand } = question;
  const by = (goesOn: ByHand | undefined) =>
    correctBefore(
      question,
      asItGoesOn({ now, byHand: goesOn }, LONGEST_CORRECTION_DAYS),
      'sodiumBicarbonate',
      options,
    );
  const asItIs = { correction: by(byHand), byHand: undefined };
  const carbonates = byHand?.doses.filter(({ additive }) => bringsAlkalinity(additive)) ?? [];
  const isLow = now.tank.alkalinityDkh < question.targetDkh;
  if (!isLow || isWay(asItIs.correction) || carbonates.every(isDivided)) return asItIs;
  const others = byHand!.doses.filter((dose) => !carbonates.includes(dose));
  const parts = carbonates.map(dividedDose).map((dose) => ({
    ...{ ...dose, gramsEach: threeFigures(dose.gramsEach) },
  }));
  const doses = [...parts, ...others];
  const divided = by({ ...byHand!, doses });
  if (isWay(divided)) return { correction: divided, byHand: doses };
  return isTooMuchAtOnce(asItIs.correction) ? { ...asItIs, byHand: doses } : asItIs;
}
