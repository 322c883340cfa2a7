const units =
  /(^hours|^days|^dkh|H|Days?|Dkh|DkhPerDay|PhNbs|PhPerH|MgPerL|Practical|C|OmegaAragonite|L|GPerL|G|Hour|Ml|Share)$/;
const ofColumns = /_(h|dkh|nbs|total|mg_l|ppt|c|aragonite|umol_kg|uatm|l|g|pct)$/;
/** Counts and pure numbers; and what stands beside its `unit`, or is a scenario's own. */
const withoutUnit = [
  ...['light', 'flags', 'odds', 'standardised', 'seed', 'members', 'dailyTests'],
  ...['count', 'parts', 'share'],
];
const ownUnits = ['scenario', 'readings', 'estimates', 'habits'];

/** Where a number in JSON is whose name does not end in a unit; a number in a list or a range has the name above. */
export function withoutUnits(value: unknown, name = '', path = ''): string[] {
  if (typeof value === 'number') {
    return units.test(name) || ofColumns.test(name) || withoutUnit.includes(name) ? [] : [path];
  }
  if (typeof value !== 'object' || value === null || ownUnits.includes(name)) return [];
  return Object.entries(value).flatMap(([key, part]: [string, unknown]) => {
    const isRange = ['low', 'middle', 'high'].includes(key) || Array.isArray(value);
    return withoutUnits(part, isRange ? name : key, `${path}.${key}`);
  });
}
