import { say } from '../words/life';
import { choice, part, quantity, type FieldText } from './quantity';

export const corals = part(say.corals, {
  measuredAs: choice(say.corals.measuredAs, ['use', 'area'], 'use'),
  useDkhPerDay: quantity(
    { ...say.corals.useDkhPerDay, unit: 'dKH/day', min: 0, max: 8, slider: [0, 4], step: 0.05 },
    0.8,
  ),
  rateMmolPerM2PerDay: quantity(
    {
      ...say.corals.rateMmolPerM2PerDay,
      unit: 'mmol/m²/day',
      min: 0,
      max: 2000,
      slider: [0, 400],
      step: 1,
    },
    100,
  ),
  areaM2: quantity(
    { ...say.corals.areaM2, unit: 'm²', min: 0, max: 500, slider: [0, 5], step: 0.01 },
    0.3,
  ),
  lightDarkRatio: quantity(
    { ...say.corals.lightDarkRatio, unit: '×', min: 1, max: 20, slider: [1, 6], step: 0.1 },
    3,
  ),
  omegaLaw: choice(say.corals.omegaLaw, ['gentle', 'proportional'], 'gentle'),
  growthShape: choice(say.corals.growthShape, ['branching', 'massive'], 'branching'),
  temperatureLaw: choice(say.corals.temperatureLaw, ['bell', 'none'], 'bell'),
  skeletonMgPerCa: quantity(
    {
      ...say.corals.skeletonMgPerCa,
      unit: 'mmol/mol',
      min: 0,
      max: 200,
      slider: [0, 20],
      step: 0.5,
    },
    4,
  ),
  skeletonSrPerCa: quantity(
    {
      ...say.corals.skeletonSrPerCa,
      unit: 'mmol/mol',
      min: 0,
      max: 30,
      slider: [0, 15],
      step: 0.5,
    },
    9,
  ),
  growthPercentPerDay: quantity(
    {
      ...say.corals.growthPercentPerDay,
      unit: '%/day',
      min: 0,
      max: 3,
      slider: [0, 1],
      step: 0.05,
    },
    0.2,
  ),
});

export const photosynthesis = part(say.photosynthesis, {
  grossMmolPerLPerDay: quantity(
    {
      ...say.photosynthesis.grossMmolPerLPerDay,
      unit: 'mmol/L/day',
      min: 0,
      max: 10,
      slider: [0, 3],
      step: 0.01,
    },
    0.5,
  ),
  refugiumMmolPerLPerDay: quantity(
    {
      ...say.photosynthesis.refugiumMmolPerLPerDay,
      unit: 'mmol/L/day',
      min: 0,
      max: 10,
      slider: [0, 2],
      step: 0.01,
    },
    0,
  ),
  refugiumFromHour: quantity(
    {
      ...say.photosynthesis.refugiumFromHour,
      unit: 'h',
      min: 0,
      max: 23.5,
      slider: [0, 23],
      step: 0.5,
    },
    21,
  ),
  refugiumHours: quantity(
    { ...say.photosynthesis.refugiumHours, unit: 'h', min: 0, max: 24, step: 0.5 },
    10,
  ),
  respiredShare: quantity(
    { ...say.photosynthesis.respiredShare, unit: '×', min: 0, max: 2, step: 0.01 },
    1,
  ),
});

export const oxygen = part(say.oxygen, {
  stocking: choice(say.oxygen.stocking, ['few', 'usual', 'crowded'], 'usual'),
  respirationMmolPerLPerDay: quantity(
    {
      ...say.oxygen.respirationMmolPerLPerDay,
      unit: 'mmol/L/day',
      min: 0,
      max: 20,
      slider: [0, 3],
      step: 0.05,
    },
    0,
  ),
  respirationPerTenDegrees: quantity(
    {
      ...say.oxygen.respirationPerTenDegrees,
      ...{ unit: '×', min: 1, max: 4, slider: [1, 3], step: 0.1 },
    },
    2,
  ),
  perCarbon: quantity(
    { ...say.oxygen.perCarbon, unit: 'mol/mol', min: 0.8, max: 1.5, slider: [1, 1.3], step: 0.01 },
    1.1,
  ),
});

const percent = (text: FieldText, usual: number) =>
  quantity({ ...text, unit: '%', min: 0, max: 100, step: 1 }, usual);

export const food = part(say.food, {
  gramsPerDay: quantity(
    { ...say.food.gramsPerDay, unit: 'g/day', min: 0, max: 500, slider: [0, 20], step: 0.1 },
    0,
  ),
  carbonPercent: percent(say.food.carbonPercent, 40),
  nitrogenPercent: percent(say.food.nitrogenPercent, 6),
  phosphorusPercent: percent(say.food.phosphorusPercent, 1),
  respiredPercent: percent(say.food.respiredPercent, 80),
  releasedPercent: percent(say.food.releasedPercent, 20),
});

export const filter = part(say.filter, {
  nitrificationPerH: quantity(
    { ...say.filter.nitrificationPerH, unit: '1/h', min: 0, max: 5, slider: [0, 1], step: 0.05 },
    0.5,
  ),
  denitrificationPerDay: quantity(
    {
      ...say.filter.denitrificationPerDay,
      unit: '1/day',
      min: 0,
      max: 2,
      slider: [0, 0.2],
      step: 0.01,
    },
    0,
  ),
  oxidationPerH: quantity(
    { ...say.filter.oxidationPerH, unit: '1/h', min: 0, max: 5, slider: [0, 1], step: 0.01 },
    0.1,
  ),
});

export const precipitation = part(say.precipitation, {
  mode: choice(say.precipitation.mode, ['off', 'guarded', 'enabled'], 'off'),
  law: choice(say.precipitation.law, ['burtonWalter1987', 'zhongMucci1989'], 'burtonWalter1987'),
  aboveOmega: quantity(
    { ...say.precipitation.aboveOmega, unit: 'Ω', min: 1, max: 30, slider: [1, 15], step: 0.5 },
    5,
  ),
  wettedM2Per100L: quantity(
    {
      ...say.precipitation.wettedM2Per100L,
      unit: 'm²/100 L',
      min: 0,
      max: 20,
      slider: [0, 5],
      step: 0.1,
    },
    1,
  ),
  crystalM2PerG: quantity(
    {
      ...say.precipitation.crystalM2PerG,
      unit: 'm²/g',
      min: 0,
      max: 20,
      slider: [0, 10],
      step: 0.1,
    },
    2,
  ),
  seedG: quantity(
    { ...say.precipitation.seedG, unit: 'g', min: 0, max: 100, slider: [0, 5], step: 0.01 },
    0,
  ),
});
