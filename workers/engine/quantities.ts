import { molarMassGPerMol } from '../../shared/seawater/atomicMasses';
import { indexOf } from '../../shared/species/block';
import { dissolved } from '../../shared/species/species';
import type { LineQuantity } from '../../shared/verdict/lines';
import type { Past } from './past';
import type { TankView } from './tankView';

const CA_G_PER_MOL = dissolved.Ca.molarMassG;
const MG_G_PER_MOL = dissolved.Mg.molarMassG;
const NH3_G_PER_MOL = molarMassGPerMol({ N: 1, H: 3 });

/** Where each watched quantity stands in what is read. */
export const placeOf: Readonly<Record<LineQuantity, number>> = {
  alkalinity: 0,
  ph: 1,
  calcium: 2,
  magnesium: 3,
  salinity: 4,
  temperature: 5,
  oxygen: 6,
  ammonia: 7,
  omega: 8,
  volume: 9,
  phChange: 10,
  alkalinityChange: 11,
};

/** Reads everything that a line may be drawn across in one go, each in its place. */
export function readQuantities(view: TankView, past: Past, into: Float64Array): void {
  into[0] = view.alkalinityDkh;
  into[1] = view.phNbs;
  into[2] = view.mgPerL(indexOf.Ca, CA_G_PER_MOL);
  into[3] = view.mgPerL(indexOf.Mg, MG_G_PER_MOL);
  into[4] = view.salinityPractical;
  into[5] = view.tempC;
  into[6] = view.oxygenMgPerL;
  into[7] = view.mgPerL(indexOf.TAN, NH3_G_PER_MOL) * view.unionisedAmmoniaFraction;
  into[8] = view.omegaAragonite;
  into[9] = view.volumeL;
  into[10] = past.phChange(view);
  into[11] = past.alkalinityChange(view);
}

export const newQuantities = (): Float64Array => new Float64Array(Object.keys(placeOf).length);
