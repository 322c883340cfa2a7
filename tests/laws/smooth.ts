import { HIGHEST_PH_NBS } from '../../shared/trace/columns';
import type { TankView } from '../../workers/engine/tankView';

/**
 * Whether a water lies where no rate has a corner and the constants hold: growth stops below Ω 1.2
 * and is flat above 6, algae starve without carbon. A corner turns rounding into another step size.
 */
export const isSmooth = ({ omegaAragonite, dicMolPerKg, phNbs }: TankView): boolean =>
  omegaAragonite > 1.25 && omegaAragonite < 5.9 && dicMolPerKg > 2.5e-4 && phNbs < HIGHEST_PH_NBS;
