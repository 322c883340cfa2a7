import { testUnit, testUnitsOf } from '../../units/testUnits';
import { ownUnit as unitOfField, readingNames, type ReadingName } from '../reading';

/** What a column of a file may hold: a field of a reading, a date or a time of day alone, or nothing we take. */
export type ColumnTarget = ReadingName | 'date' | 'timeOfDay';

/** One column of a file, as understood or as the keeper set it. */
export interface LogColumn {
  readonly header: string;
  readonly target: ColumnTarget | undefined;
  /** The unit that the header names; undefined where a number still needs one. */
  readonly unit: string | undefined;
}

/** Words that headers use, whole and in lower case, tried in this order. */
const words: readonly (readonly [ColumnTarget, RegExp])[] = [
  ['accuracyDkh', /accuracy|sigma|σ|spread|uncertainty|streuung/],
  ['testsLeft', /tests? left|left in|tests? übrig/],
  ['lot', /\b(lot|batch|charge)\b/],
  ['grams', /\b(grams|amount|dose|gramm|menge|dosis)\b|\bg\b/],
  ['additive', /additive|substance|poured|mittel|zusatz/],
  ['coralsPercent', /coral|livestock|korallen|besatz/],
  ['waterChangePercent', /water.?change|\bwc\b|changed|wasserwechsel/],
  ['event', /\b(event|done|maintenance|ereignis|getan|wartung)\b/],
  ['equipment', /equipment|device|to what|gerät|woran|technik/],
  ['notes', /note|comment|remark|notiz|bemerkung/],
  ['test', /\b(test|kit|method|kind)\b/],
  ['alkalinityDkh', /alkalinity|alkalinität|\balk\b|\bd?kh\b|carbonate hardness|karbonathärte/],
  ['calciumMgPerL', /calcium|kalzium|\bca\b/],
  ['magnesiumMgPerL', /magnesium|\bmg\b(?!\/l)/],
  ['nitrateMgPerL', /nitrate?|\bno3\b/],
  ['phosphateMgPerL', /phosphate?|phosphor|\bpo4\b/],
  ['ammoniaMgPerL', /ammonia|ammonium|ammoniak|\bnh[34]\b/],
  [
    'salinityPractical',
    /salinity|salinität|salzgehalt|\bsalz\b|dichte|\bsal\b|gravity|\bsg\b|conductivity|\bppt\b|\bpsu\b/,
  ],
  ['phNbs', /\bph\b/],
  ['at', /when|wann|date.*time|time.*date|timestamp|^at$/],
  ['date', /\b(date|day|datum|tag)\b/],
  ['timeOfDay', /\b(time|clock|hour|uhrzeit|zeit|uhr)\b/],
  ['tempC', /temp/],
];

/** "alkalinity (meq/L)" → its words and its unit; "SG" is both. */
function split(header: string): { name: string; unit: string } {
  const match = /^(.*?)[([]([^)\]]*)[)\]]\s*$/.exec(header);
  return match ? { name: match[1]!, unit: match[2]!.trim() } : { name: header, unit: '' };
}

/** "PO4-P", "phosphorus": a third of the phosphate. */
const AS_PHOSPHORUS = /po4.?p\b|phosphor(us)?\b/;

/** The unit that a number's header names, or that its name implies. */
function unitIn(own: string, name: string, unit: string): string | undefined {
  const ofP = AS_PHOSPHORUS.test(name) ? testUnit(own, `${unit || 'mg/l'} p`) : undefined;
  if (ofP) return ofP.name;
  if (unit !== '') return testUnit(own, unit)?.name;
  if (testUnitsOf(own).length === 1) return own;
  const spelled = name.split(/[\s_]+/).map((word) => testUnit(own, word)?.name);
  const implied = /gravity|dichte/.test(name)
    ? 'SG 25/25'
    : /conductivity/.test(name)
      ? 'mS/cm at 25 °C'
      : undefined;
  return spelled.find((word) => word !== undefined) ?? implied;
}

/** What a header says of its column. */
export function readHeader(header: string): LogColumn {
  const { name, unit } = split(header.trim().toLowerCase().replaceAll('_', ' '));
  const target = words.find(([, word]) => word.test(name.trim()))?.[0];
  return { header, target, unit: target && unitOf(target, name.trim(), unit) };
}

function unitOf(target: ColumnTarget, name: string, unit: string): string | undefined {
  const own = ownUnit(target);
  return own === undefined ? undefined : unitIn(own, name, unit);
}

/** The unit that a target is kept in; undefined when it is no number. */
export const ownUnit = (target: ColumnTarget): string | undefined =>
  target === 'date' || target === 'timeOfDay' ? undefined : unitOfField(target);

/** Columns that need the keeper's word before anything can be read. */
export const needsUnit = ({ target, unit }: LogColumn): boolean =>
  target !== undefined && ownUnit(target) !== undefined && unit === undefined;

/** The header that our own files give a field. */
function headerOf(name: ReadingName): string {
  const own = ownUnit(name);
  return own ? `${ourNames[name]} (${own})` : ourNames[name];
}

const ourNames: Readonly<Record<ReadingName, string>> = {
  at: 'when',
  alkalinityDkh: 'alkalinity',
  calciumMgPerL: 'calcium',
  magnesiumMgPerL: 'magnesium',
  phNbs: 'pH',
  salinityPractical: 'salinity',
  tempC: 'temperature',
  nitrateMgPerL: 'nitrate',
  ammoniaMgPerL: 'ammonia',
  phosphateMgPerL: 'phosphate',
  test: 'test',
  accuracyDkh: 'accuracy',
  lot: 'lot',
  testsLeft: 'tests left',
  additive: 'poured in',
  grams: 'amount',
  waterChangePercent: 'water changed',
  coralsPercent: 'corals added or taken out',
  event: 'done',
  equipment: 'to what',
  notes: 'notes',
};

export const ourHeaders: readonly string[] = readingNames.map(headerOf);
