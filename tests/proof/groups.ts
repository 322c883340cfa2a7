import type { Check } from '../reference/check';
import { additiveEffectChecks } from '../reference/checks/additiveEffect';
import { airEquilibriumChecks } from '../reference/checks/airEquilibrium';
import { ammoniaChecks } from '../reference/checks/ammonia';
import { carbonateChecks } from '../reference/checks/carbonate';
import { conductivityChecks } from '../reference/checks/conductivity';
import { constantsChecks } from '../reference/checks/constants';
import { densityChecks } from '../reference/checks/density';
import { enhancementChecks } from '../reference/checks/enhancement';
import { evaporationChecks } from '../reference/checks/evaporation';
import { recipeChecks } from '../reference/checks/recipes';
import { nistChecks } from '../reference/checks/nistStrd';
import { slopeResolutionChecks } from '../reference/checks/slopeResolution';
import { precipitationRateChecks } from '../reference/checks/precipitationRates';
import { gasChecks } from '../reference/checks/gas';
import { hydrometerChecks } from '../reference/checks/hydrometer';
import { limewaterDoseChecks } from '../reference/checks/limewaterDose';
import { oxygenChecks } from '../reference/checks/oxygen';
import { portlanditeChecks } from '../reference/checks/portlandite';
import { stoichiometryChecks } from '../reference/checks/stoichiometry';
import { totalsChecks } from '../reference/checks/totals';
import { calciumPerDkhChecks } from '../runs/checks/calciumPerDkh';
import { firstDayChecks } from '../runs/checks/firstDay';
import { limewaterSteadyChecks } from '../runs/checks/limewaterSteady';
import { otherIntegratorChecks } from '../runs/checks/otherIntegrator';
import { recoveryChecks } from '../runs/checks/recovery';
import { seasonSaltsChecks } from '../runs/checks/seasonSalts';
import { saltBalanceChecks } from '../runs/checks/saltBalance';
import { switchesChecks } from '../runs/checks/switches';
import { toleranceChecks } from '../runs/checks/tolerance';
import { waterChangeLimitChecks } from '../runs/checks/waterChangeLimit';
import { nitrogenChecks } from '../runs/processes/checks/nitrogen';
import { organicSaltChecks } from '../runs/processes/checks/organicSalts';
import { hydroxideUptakeChecks } from '../runs/processes/checks/hydroxideUptake';
import { skeletonChecks } from '../runs/processes/checks/skeleton';
import { calciumReactorChecks } from '../runs/processes/checks/calciumReactor';
import { runawayChecks } from '../runs/processes/checks/runaway';
import { oxygenRunChecks } from '../runs/processes/checks/oxygen';
import { refugiumChecks } from '../runs/processes/checks/refugium';
import { tableSaltChecks } from '../runs/processes/checks/tableSalt';
import { growthShapeChecks, growthTemperatureChecks } from '../runs/processes/checks/growth';
import { fullDumpChecks } from '../runs/drills/checks/fullDump';
import { stopsChecks } from '../runs/drills/checks/stops';
import { yearChecks } from './yearChecks';

/** What is summarised on the page of proof, by the question that it answers. */
export const groups: Record<string, Record<string, () => Check[]>> = {
  'The chemistry of seawater': {
    'carbonate system': carbonateChecks,
    'equilibrium constants': constantsChecks,
    'totals that go with salinity': totalsChecks,
    'water in balance with air': airEquilibriumChecks,
    'gas solubility and transfer': gasChecks,
    'oxygen under air': oxygenChecks,
    'un-ionised ammonia': ammoniaChecks,
    density: densityChecks,
    'hydrometer readings': hydrometerChecks,
    conductivity: conductivityChecks,
    evaporation: evaporationChecks,
    'precipitation rates': precipitationRateChecks,
    'CO₂ in the surface film': enhancementChecks,
  },
  'What a dose does': {
    'limewater, closed and re-aired': limewaterDoseChecks,
    'four additives, closed and re-aired': additiveEffectChecks,
    'weights and formulas': stoichiometryChecks,
    'grams in recipes': recipeChecks,
    'solubility of calcium hydroxide': portlanditeChecks,
  },
  'Whole runs of the engine': {
    'recovery by aeration': () => recoveryChecks(),
    'limewater against 1.1 dKH a day': limewaterSteadyChecks,
    'first day, undosed': firstDayChecks,
    'calcium for each dKH': calciumPerDkhChecks,
    'water changes alone': waterChangeLimitChecks,
    'salt balance': saltBalanceChecks,
    'salts weighed for a season, and what a pair leaves': seasonSaltsChecks,
    'pumps and sensors': switchesChecks,
    'nitrogen and alkalinity': nitrogenChecks,
    'acetate and formate': organicSaltChecks,
    'CO₂ for hydroxide': hydroxideUptakeChecks,
    'what a skeleton holds': skeletonChecks,
    'shapes of growth': growthShapeChecks,
    'growth and temperature': growthTemperatureChecks,
    'calcium reactor': calciumReactorChecks,
    'runaway chalk': runawayChecks,
    refugium: refugiumChecks,
    'oxygen breathed, made and aired': oxygenRunChecks,
    'table salt': tableSaltChecks,
    'a full dump of the reservoir': fullDumpChecks,
    'what stops a stuck pump': stopsChecks,
    'recovery by aeration as a response': () => recoveryChecks('response'),
  },
  'The test log': {
    'how well tests tell a slope': slopeResolutionChecks,
    'nonlinear regression, NIST sets': nistChecks,
  },
  'The integrator and the books': {
    'a tenth of the tolerance': toleranceChecks,
    'another integrator': otherIntegratorChecks,
    'the books after a year': yearChecks,
  },
};
