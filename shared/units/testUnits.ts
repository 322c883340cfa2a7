import { salinityFromConductivity } from '../seawater/conductivity';
import { meqPerLPerDkh } from '../seawater/alkalinity';
import { molarMassGPerMol } from '../seawater/atomicMasses';
import { salinityFromSpecificGravity2525 } from '../seawater/specificGravity';

/** A unit that a test kit, a meter or a file may print, beside the one that a field is kept in. */
interface TestUnit {
  readonly name: string;
  /** As headers and labels spell it, in lower case and without spaces. */
  readonly spellings: readonly string[];
  /** To the field's own unit; may throw a RangeError where the scale ends. */
  readonly toOwn: (value: number) => number;
}

const same = (value: number) => value;
const unit = (name: string, toOwn: (value: number) => number, ...more: string[]): TestUnit => ({
  name,
  spellings: [name.toLowerCase().replaceAll(' ', ''), ...more],
  toOwn,
});

/** mg of CaCO3 for one milliequivalent. */
const mgPerMeq = molarMassGPerMol({ Ca: 1, C: 1, O: 3 }) / 2;
const mgPerL = [unit('mg/L', same, 'ppm', 'mg/l')];
const PO4_G_PER_MOL = molarMassGPerMol({ P: 1, O: 4 });
/** Kits show phosphate, or the phosphorus in it: a third. */
const PO4_PER_P = PO4_G_PER_MOL / molarMassGPerMol({ P: 1 });
/** As "µ" is typed: the sign, the Greek letter, a u. */
const micro = ['µg/l', 'μg/l', 'ug/l', 'ppb'];
const phosphorus = (own: string) => ['p', 'po4-p', 'po4p', 'po₄-p'].map((of) => `${own}${of}`);
/** Meters print conductivity as it would be at 25 °C. */
const METER_TEMP_C = 25;

const units: Readonly<Record<string, readonly TestUnit[]>> = {
  dKH: [
    unit('dKH', same, '°dh', '°dkh', 'kh'),
    unit('meq/L', (meq) => meq / meqPerLPerDkh, 'meq', 'mmol/l'),
    unit(
      'mg/L CaCO₃',
      (mg) => mg / mgPerMeq / meqPerLPerDkh,
      'mg/lcaco3',
      'ppm',
      'ppmcaco3',
      'mg/l',
    ),
  ],
  ppt: [
    unit('ppt', same, 'psu', '‰', 'g/kg', 's'),
    unit('SG 25/25', salinityFromSpecificGravity2525, 'sg', 'specificgravity'),
    unit('mS/cm at 25 °C', (ms) => salinityFromConductivity(ms, METER_TEMP_C), 'ms/cm', 'ms'),
  ],
  '°C': [unit('°C', same, 'c', 'degc'), unit('°F', (f) => ((f - 32) * 5) / 9, 'f', 'degf')],
  'mg/L': mgPerL,
  'mg/L PO₄': [
    unit('mg/L PO₄', same, 'mg/lpo4', 'mg/l', 'ppm', 'ppmpo4', 'po4'),
    unit('mg/L P', (mg) => mg * PO4_PER_P, ...phosphorus('mg/l'), ...phosphorus('ppm')),
    unit('µg/L PO₄', (ug) => ug / 1000, ...micro.flatMap((own) => [own, `${own}po4`, `${own}po₄`])),
    unit('µg/L P', (ug) => (ug * PO4_PER_P) / 1000, ...micro.flatMap(phosphorus)),
    unit('µmol/L', (umol) => (umol * PO4_G_PER_MOL) / 1000, 'μmol/l', 'umol/l', 'µm', 'um'),
  ],
};

/** Every unit that a field kept in `own` is also read in; the first is its own. */
export const testUnitsOf = (own: string): readonly TestUnit[] => units[own] ?? [unit(own, same)];

/** The unit of that spelling, if the field knows it. */
export const testUnit = (own: string, spelling: string): TestUnit | undefined =>
  testUnitsOf(own).find(
    ({ name, spellings }) =>
      name === spelling || spellings.includes(spelling.toLowerCase().replaceAll(' ', '')),
  );
