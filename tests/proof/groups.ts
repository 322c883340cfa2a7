import type { Check } from '../reference/check';
import { additiveEffectChecks } from '../reference/checks/additiveEffect';
import { airEquilibriumChecks } from '../reference/checks/airEquilibrium';
import { ammoniaChecks } from '../reference/checks/ammonia';
import { carbonateChecks } from '../reference/checks/carbonate';
import { conductivityChecks } from '../reference/checks/conductivity';
import { constantsChecks } from '../reference/checks/constants';
import { densityChecks } from '../reference/checks/density';
import { gasChecks } from '../reference/checks/gas';
import { hydrometerChecks } from '../reference/checks/hydrometer';
import { limewaterDoseChecks } from '../reference/checks/limewaterDose';
import { portlanditeChecks } from '../reference/checks/portlandite';
import { stoichiometryChecks } from '../reference/checks/stoichiometry';
import { totalsChecks } from '../reference/checks/totals';
import { calciumPerDkhChecks } from '../runs/checks/calciumPerDkh';
import { firstDayChecks } from '../runs/checks/firstDay';
import { limewaterSteadyChecks } from '../runs/checks/limewaterSteady';
import { otherIntegratorChecks } from '../runs/checks/otherIntegrator';
import { recoveryChecks } from '../runs/checks/recovery';
import { saltBalanceChecks } from '../runs/checks/saltBalance';
import { switchesChecks } from '../runs/checks/switches';
import { toleranceChecks } from '../runs/checks/tolerance';
import { waterChangeLimitChecks } from '../runs/checks/waterChangeLimit';
import { yearChecks } from './yearChecks';

/** What is summarised on the page of proof, by the question that it answers. */
export const groups: Record<string, Record<string, () => Check[]>> = {
  'The chemistry of seawater': {
    'carbonate system': carbonateChecks,
    'equilibrium constants': constantsChecks,
    'totals that go with salinity': totalsChecks,
    'water in balance with air': airEquilibriumChecks,
    'gas solubility and transfer': gasChecks,
    'un-ionised ammonia': ammoniaChecks,
    density: densityChecks,
    'hydrometer readings': hydrometerChecks,
    conductivity: conductivityChecks,
  },
  'What a dose does': {
    'limewater, closed and re-aired': limewaterDoseChecks,
    'four additives, closed and re-aired': additiveEffectChecks,
    'weights and formulas': stoichiometryChecks,
    'solubility of calcium hydroxide': portlanditeChecks,
  },
  'Whole runs of the engine': {
    'recovery by aeration': recoveryChecks,
    'limewater against 1.1 dKH a day': limewaterSteadyChecks,
    'first day, undosed': firstDayChecks,
    'calcium for each dKH': calciumPerDkhChecks,
    'water changes alone': waterChangeLimitChecks,
    'salt balance': saltBalanceChecks,
    'pumps and sensors': switchesChecks,
  },
  'The integrator and the books': {
    'a tenth of the tolerance': toleranceChecks,
    'another integrator': otherIntegratorChecks,
    'the books after a year': yearChecks,
  },
};
