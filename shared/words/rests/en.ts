export const en = {
  cautions: {
    title: 'Before you touch the tank',
    now: 'Something is going wrong right now? People first, then animals, then water. A pump runs on: unplug it with dry hands; a siphon: lift the hose; wet floor: the breaker first; no power: move water or air. Then measure. “Drills” has the first hour of each failure.',
    limewater:
      'Calcium hydroxide irritates skin, causes serious eye damage and irritates the airways (H315, H318, H335): gloves and goggles; keep it from children. In the eye: rinse at once with running water for 15–20 minutes, lids held open, contact lenses out if easy, then a doctor. Swallowed: rinse the mouth, do not make anyone vomit, poison centre or doctor. Powder: dust mask too. Never add water to quicklime.',
    dataSheet:
      'Follow the safety data sheet of every additive and your local rules. No acids in the tank.',
    stops:
      'Dose clear limewater, not slurry, and only as fast as water evaporates. Use three or more independent stops on a top-off: level switch, second switch, run-time limit, small reservoir (common practice).',
    mains:
      'Mains electricity beside salt water: a residual-current device and a drip loop on every cable.',
    others:
      'Soda ash and calcium chloride irritate eyes (H319); calcium chloride grows hot in water. Sodium hydroxide burns skin and eyes (H314) and eats metals (H290): the same first aid, and not a beginner’s additive. Never mix the two parts of a pair, and never dose them at one spot.',
    gas: 'CO₂ gas can suffocate: above 5,000 ppm is no place to work, 40,000 ppm is immediately dangerous. Enriched air only with a meter and an alarm.',
    test: 'Know your readings first, and change slowly. Sick animals: ask a qualified aquatic vet.',
  },
  rests: {
    title: 'What this rests on',
    processes: (name: string) => `Processes in ${name} and their sources`,
    chemistry: 'Sources of the chemistry',
    ph: 'pH is shown on the NBS scale, as hobby probes read; a real probe strays by about 0.1. Above 9.5 the constants leave their range and the screen says only >9.5; magnesium hydroxide is not modelled.',
    perLitre:
      'dKH and mg/L are per litre at the tank’s temperature. Salinity follows from the mass of salt and water; everything dissolved counts as salt.',
    use: 'Use typed in dKH a day is everything that life takes on the first day, food and nitrate included, from the start volume. Later corals take more or less as saturation (Ω) rises or falls, and more as they grow. Chalk falls out by itself only if you turn it on (an illustration, not a prediction).',
    alkalinity:
      'Alkalinity is never written down by hand: it is counted from the ions each process moves.',
    cycle: 'A trial starts on its settled daily cycle unless you choose otherwise.',
    evaporation:
      'Evaporation typed in litres is fresh water. The top-off answers the level, so what a dosing pump adds is not topped off again.',
  },
};
