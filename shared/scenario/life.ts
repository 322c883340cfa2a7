import { choice, part, quantity } from './quantity';

export const corals = part('Corals', 'How much alkalinity they take out, and how that grows.', {
  measuredAs: choice(
    'Known as',
    ['use', 'area'],
    'use',
    'Daily use of the whole tank, or a rate per square metre of living coral.',
  ),
  useDkhPerDay: quantity(
    {
      title: 'Alkalinity use',
      unit: 'dKH/day',
      min: 0,
      max: 8,
      slider: [0, 4],
      step: 0.05,
      help: 'Total loss, everything included. Common practice: 0–0.3 new or soft corals, 0.5–1.5 mixed, 1.5–4 dense stony corals.',
      measure:
        'Two tests at the same hour some days apart with dosing known: fall + dose, per day.',
    },
    0.8,
  ),
  rateMmolPerM2PerDay: quantity(
    {
      title: 'Calcification of living coral',
      unit: 'mmol/m²/day',
      min: 0,
      max: 2000,
      slider: [0, 400],
      step: 1,
      help: 'mmol CaCO₃ on one square metre of living surface in a day.',
    },
    100,
  ),
  areaM2: quantity(
    {
      title: 'Living coral surface',
      unit: 'm²',
      min: 0,
      max: 500,
      slider: [0, 5],
      step: 0.01,
    },
    0.3,
  ),
  lightDarkRatio: quantity(
    {
      title: 'Growth in light against dark',
      unit: '×',
      min: 1,
      max: 20,
      slider: [1, 6],
      step: 0.1,
      help: 'Review median about 3 (Gattuso et al. 1999, from memory).',
    },
    3,
  ),
  omegaLaw: choice(
    'Answer to saturation',
    ['gentle', 'proportional'],
    'gentle',
    'gentle: 15 % for each unit of Ω; proportional: in step with Ω − 1.',
  ),
  growthShape: choice(
    'Shape of growth',
    ['branching', 'massive'],
    'branching',
    'Branching corals grow in step with what is there; massive ones by a skin of constant thickness.',
  ),
  temperatureLaw: choice(
    'Answer to temperature',
    ['bell', 'none'],
    'bell',
    'bell: best at 27 °C, none below 18 or above 32 (common practice); relative to the start.',
  ),
  skeletonMgPerCa: quantity(
    {
      title: 'Magnesium in the skeleton',
      unit: 'mmol/mol',
      min: 0,
      max: 200,
      slider: [0, 20],
      step: 0.5,
      help: 'Per mole of calcium; aragonite about 4 (from memory).',
    },
    4,
  ),
  skeletonSrPerCa: quantity(
    {
      title: 'Strontium in the skeleton',
      unit: 'mmol/mol',
      min: 0,
      max: 30,
      slider: [0, 15],
      step: 0.5,
      help: 'Per mole of calcium; aragonite about 9 (from memory).',
    },
    9,
  ),
  growthPercentPerDay: quantity(
    {
      title: 'Growth of use',
      unit: '%/day',
      min: 0,
      max: 3,
      slider: [0, 1],
      step: 0.05,
      help: 'Branching corals double in 3–12 months: 0.2–0.8 % a day (common practice).',
    },
    0.2,
  ),
});

export const photosynthesis = part(
  'Photosynthesis',
  'What makes pH rise by day and fall by night.',
  {
    grossMmolPerLPerDay: quantity(
      {
        title: 'Carbon fixed in the light',
        unit: 'mmol/L/day',
        min: 0,
        max: 10,
        slider: [0, 3],
        step: 0.01,
        help: 'Solved from your pH at lights-on and lights-off, or edited by hand.',
      },
      0.5,
    ),
    refugiumMmolPerLPerDay: quantity(
      {
        title: 'Fixed in a refugium by night',
        unit: 'mmol/L/day',
        min: 0,
        max: 10,
        slider: [0, 2],
        step: 0.01,
        help: 'Algae with a light of their own; harvested, so not breathed out again.',
      },
      0,
    ),
    refugiumFromHour: quantity(
      { title: 'Refugium lit from', unit: 'h', min: 0, max: 23.5, slider: [0, 23], step: 0.5 },
      21,
    ),
    refugiumHours: quantity(
      { title: 'Hours of refugium light', unit: 'h', min: 0, max: 24, step: 0.5 },
      10,
    ),
    respiredShare: quantity(
      {
        title: 'Share of it breathed out again',
        unit: '×',
        min: 0,
        max: 2,
        step: 0.01,
        help: '1 means the tank lives on its own light (common practice).',
      },
      1,
    ),
  },
);

const percent = (title: string, usual: number, help = 'Common practice.') =>
  quantity({ title, unit: '%', min: 0, max: 100, step: 1, help }, usual);

export const food = part('Food', 'The hidden source of CO₂, nitrogen and phosphorus.', {
  gramsPerDay: quantity(
    {
      title: 'Dry food',
      unit: 'g/day',
      min: 0,
      max: 500,
      slider: [0, 20],
      step: 0.1,
      measure: 'Weigh a week of food on a kitchen scale; frozen food is about one fifth dry.',
    },
    1,
  ),
  carbonPercent: percent('Carbon in dry food', 40),
  nitrogenPercent: percent('Nitrogen in dry food', 6),
  phosphorusPercent: percent('Phosphorus in dry food', 1),
  respiredPercent: percent('Carbon breathed out as CO₂', 80),
  releasedPercent: percent(
    'Nitrogen and phosphorus that stay in the water',
    20,
    'The rest leaves by skimmer, algae and bacteria (common practice).',
  ),
});

export const filter = part('Filter and bacteria', 'What bacteria do with nitrogen and carbon.', {
  nitrificationPerH: quantity(
    {
      title: 'Ammonia oxidised',
      unit: '1/h',
      min: 0,
      max: 5,
      slider: [0, 1],
      step: 0.05,
      help: 'Share of the ammonia that a run-in filter oxidises in an hour (common practice).',
    },
    0.5,
  ),
  denitrificationPerDay: quantity(
    {
      title: 'Nitrate turned to nitrogen gas',
      unit: '1/day',
      min: 0,
      max: 2,
      slider: [0, 0.2],
      step: 0.01,
      help: 'Share of the nitrate in a day; gives back one equivalent of alkalinity a mole.',
    },
    0,
  ),
  oxidationPerH: quantity(
    {
      title: 'Acetate and formate oxidised',
      unit: '1/h',
      min: 0,
      max: 5,
      slider: [0, 1],
      step: 0.01,
      help: 'Share in an hour; only then do they count as alkalinity (common practice).',
    },
    0.1,
  ),
});

export const precipitation = part(
  'Precipitation',
  'Chalk that falls out by itself: an illustration, not a prediction.',
  {
    mode: choice(
      'Precipitation',
      ['guarded', 'enabled', 'off'],
      'guarded',
      'guarded: only above Ω 10, since typed use is total loss; enabled: above the Ω set below; off.',
    ),
    law: choice('Rate law', ['burtonWalter1987', 'zhongMucci1989'], 'burtonWalter1987'),
    aboveOmega: quantity(
      { title: 'Starts and ends at', unit: 'Ω', min: 1, max: 30, slider: [1, 15], step: 0.5 },
      5,
    ),
    wettedM2Per100L: quantity(
      {
        title: 'Solid surface in the water',
        unit: 'm²/100 L',
        min: 0,
        max: 20,
        slider: [0, 5],
        step: 0.1,
        help: 'Heaters, pumps, sand that chalk can grow on (common practice).',
      },
      1,
    ),
    crystalM2PerG: quantity(
      {
        title: 'Surface of fresh crystals',
        unit: 'm²/g',
        min: 0,
        max: 20,
        slider: [0, 10],
        step: 0.1,
        help: 'Crystals that float make more surface as they grow: the runaway (1–10, from memory).',
      },
      2,
    ),
    seedG: quantity(
      { title: 'Crystals at the start', unit: 'g', min: 0, max: 100, slider: [0, 5], step: 0.01 },
      0,
    ),
  },
);
