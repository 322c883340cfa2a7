export const en = {
  cautions: {
    title: 'Before you touch the tank',
    now: 'Something is going wrong right now? Unplug the top-off with dry hands, then measure.',
    limewater:
      'Calcium hydroxide irritates skin, causes serious eye damage and irritates the airways (H315, H318, H335): gloves and goggles; keep it from children. In the eye: rinse with water for many minutes and get medical help at once. Never add water to quicklime.',
    dataSheet:
      'Follow the safety data sheet of every additive and your local rules. No acids in the tank.',
    stops:
      'Dose clear limewater, not slurry, and only as fast as water evaporates. Use three or more independent stops on a top-off: level switch, second switch, run-time limit, small reservoir (common practice).',
    mains:
      'Mains electricity beside salt water: a residual-current device and a drip loop on every cable.',
    gas: 'CO₂ gas can suffocate in a small room.',
    test: 'Test before you dose, and change slowly. Sick animals: ask a qualified aquatic vet.',
  },
  rests: {
    title: 'What this rests on',
    processes: (name: string) => `Processes in ${name} and their sources`,
    chemistry: 'Sources of the chemistry',
    ph: 'pH is shown on the NBS scale, as hobby probes read; a real probe strays by about 0.1. Above 9.5 the constants leave their range and the screen says only >9.5; magnesium hydroxide is not modelled.',
    perLitre:
      'dKH and mg/L are per litre at the tank’s temperature. Salinity follows from the mass of salt and water; everything dissolved counts as salt.',
    use: 'Use typed in dKH a day is what corals take on the first day, from the start volume. Later they take more or less as saturation (Ω) rises or falls, and more as they grow. What food and its nitrate do comes on top. It is total loss, so chalk falls out by itself only above Ω 10, unless you enable more (an illustration, not a prediction).',
    alkalinity:
      'Alkalinity is never written down by hand: it is counted from the ions each process moves.',
    cycle: 'A trial starts on its settled daily cycle unless you choose otherwise.',
    evaporation:
      'Evaporation typed in litres is fresh water. The top-off answers the level, so what a dosing pump adds is not topped off again.',
  },
};
