const practice = 'Common practice.';

export const en = {
  corals: {
    title: 'Corals',
    help: 'How much alkalinity they take out, and how that grows.',
    measuredAs: {
      title: 'Known as',
      help: 'Daily use of the whole tank, or a rate per square metre of living coral.',
    },
    useDkhPerDay: {
      title: 'Alkalinity use',
      help: 'Total loss, everything included: what food and nitrate take is part of it. Common practice: 0–0.3 new or soft corals, 0.5–1.5 mixed, 1.5–4 dense stony corals.',
      measure:
        'Two tests at the same hour some days apart with dosing known: fall + dose, per day.',
    },
    rateMmolPerM2PerDay: {
      title: 'Calcification of living coral',
      help: 'mmol CaCO₃ on one square metre of living surface in a day.',
    },
    areaM2: { title: 'Living coral surface' },
    lightDarkRatio: {
      title: 'Growth in light against dark',
      help: 'Review median about 3 (Gattuso et al. 1999, from memory).',
    },
    omegaLaw: {
      title: 'Answer to saturation',
      help: 'gentle: 15 % for each unit of Ω; proportional: in step with Ω − 1. Both are flat above Ω 6 and end at 1 (common practice): that is the largest choice in the model. Without it an oversupplied tank would end several dKH lower, and a dump reach pH 9 up to half an hour later.',
    },
    growthShape: {
      title: 'Shape of growth',
      help: 'Branching corals grow in step with what is there; massive ones by a skin of constant thickness.',
    },
    temperatureLaw: {
      title: 'Answer to temperature',
      help: 'bell: best at 27 °C, none below 18 or above 32 (common practice); relative to the start.',
    },
    skeletonMgPerCa: {
      title: 'Magnesium in the skeleton',
      help: 'Per mole of calcium; aragonite about 4 (from memory).',
    },
    skeletonSrPerCa: {
      title: 'Strontium in the skeleton',
      help: 'Per mole of calcium; aragonite about 9 (from memory).',
    },
    growthPercentPerDay: {
      title: 'Growth of use',
      help: 'Branching corals double in 3–12 months: 0.2–0.8 % a day (common practice).',
    },
  },
  photosynthesis: {
    title: 'Photosynthesis',
    help: 'What makes pH rise by day and fall by night.',
    grossMmolPerLPerDay: {
      title: 'Carbon fixed in the light',
      help: 'Solved from your pH at lights-on and lights-off, or edited by hand.',
    },
    refugiumMmolPerLPerDay: {
      title: 'Fixed in a refugium by night',
      help: 'Algae with a light of their own; harvested, so not breathed out again.',
    },
    refugiumFromHour: { title: 'Refugium lit from' },
    refugiumHours: { title: 'Hours of refugium light' },
    respiredShare: {
      title: 'Share of it breathed out again',
      help: '1 means the tank lives on its own light (common practice).',
    },
  },
  oxygen: {
    title: 'Oxygen',
    help: 'What the tank breathes: the first thing to run short when pumps stand still.',
    stocking: {
      title: 'Stocking',
      help: 'few: some corals and hardly a fish; usual; crowded. It stands for 0.3, 0.6 or 1.2 mmol of oxygen in a litre a day (common practice), and counts only beyond what fixed carbon and food breathe anyway. It takes oxygen alone: the settled day gives pH as you measure it, and what is breathed beyond that is in it already.',
    },
    respirationMmolPerLPerDay: {
      title: 'Oxygen breathed in the dark',
      help: '0: by the word for stocking. Typed, it beats the word; it is never less than what fixed carbon and food breathe.',
      measure:
        'An oxygen meter after lights-off, pumps and air off for ten minutes: the fall in mg/L × 4.5 is mmol/L a day.',
    },
    respirationPerTenDegrees: {
      title: 'Breathing in water 10 °C warmer',
      help: 'Q10: so many times as much as at the tank’s own temperature, about 2 (common practice); 1: as much. It moves oxygen alone.',
    },
    perCarbon: {
      title: 'Oxygen for each carbon of living matter',
      help: 'The photosynthetic quotient, 1.0–1.2; one over it is the respiratory quotient (from memory).',
    },
  },
  food: {
    title: 'Food',
    help: 'The hidden source of CO₂, nitrogen and phosphorus.',
    gramsPerDay: {
      title: 'Dry food',
      measure:
        'Weigh a week of food on a kitchen scale; frozen food is about one eighth dry (10–15 %, common practice).',
    },
    carbonPercent: { title: 'Carbon in dry food', help: practice },
    nitrogenPercent: { title: 'Nitrogen in dry food', help: practice },
    phosphorusPercent: { title: 'Phosphorus in dry food', help: practice },
    respiredPercent: { title: 'Carbon breathed out as CO₂', help: practice },
    releasedPercent: {
      title: 'Nitrogen and phosphorus that stay in the water',
      help: 'The rest leaves by skimmer, algae and bacteria (common practice).',
    },
  },
  filter: {
    title: 'Filter and bacteria',
    help: 'What bacteria do with nitrogen and carbon.',
    nitrificationPerH: {
      title: 'Ammonia oxidised',
      help: 'Share of the ammonia that a run-in filter oxidises in an hour (common practice).',
    },
    denitrificationPerDay: {
      title: 'Nitrate turned to nitrogen gas',
      help: 'Share of the nitrate in a day; gives back one equivalent of alkalinity a mole.',
    },
    oxidationPerH: {
      title: 'Acetate and formate oxidised',
      help: 'Share in an hour; only then do they count as alkalinity (common practice).',
    },
  },
  precipitation: {
    title: 'Precipitation',
    help: 'Chalk that falls out by itself: an illustration, not a prediction.',
    mode: {
      title: 'Precipitation',
      help: 'off: nothing falls out, which shows a danger at its longest; only above Ω 10; above the Ω set below. When chalk falls nobody can predict: minutes to days.',
    },
    law: { title: 'Rate law' },
    aboveOmega: { title: 'Starts and ends at' },
    wettedM2Per100L: {
      title: 'Solid surface in the water',
      help: 'Heaters, pumps, sand that chalk can grow on (common practice).',
    },
    crystalM2PerG: {
      title: 'Surface of fresh crystals',
      help: 'Crystals that float make more surface as they grow: the runaway (1–10, from memory).',
    },
    seedG: { title: 'Crystals at the start' },
  },
};
