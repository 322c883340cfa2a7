import type { Check } from '../../../reference/check';
import { changeOver, mol, onlyTank } from '../onlyTank';

const volumeL = 300;
const mmolPerLPerDay = 0.5;

export const refugiumTank = (refugiumFromHour: number, refugiumHours: number) =>
  onlyTank({
    days: 3,
    tank: { volumeL },
    photosynthesis: {
      ...{ grossMmolPerLPerDay: 0, refugiumMmolPerLPerDay: mmolPerLPerDay },
      ...{ refugiumFromHour, refugiumHours },
    },
  });

const windows = [
  [21, 10],
  [0, 24],
  [23.5, 1],
  [12.5, 0.5],
  [6, 23.75],
] as const;

export const refugiumChecks = (): Check[] =>
  windows.map(([fromHour, hours]) => {
    const { dic } = changeOver(refugiumTank(fromHour, hours), 24, { dic: (t) => mol(t, 'DIC') });
    return {
      id: `refugium/${fromHour} h/for ${hours} h`,
      quantity: 'carbon that leaves with a day of its algae',
      source: 'what was typed',
      howVerified: 'computed',
      ...{ expected: mmolPerLPerDay, got: (-dic / volumeL) * 1000 },
      ...{ tolerance: 0.0005, unit: 'mmol/L/day' },
    };
  });
