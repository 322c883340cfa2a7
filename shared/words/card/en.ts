export const en = {
  title: 'Dose card',
  of: (tank: string) => `Dose card · ${tank}`,
  fileTitle: (tank: string, date: string) => `Dose card, ${tank}, ${date}`,
  print: 'Print the card',
  save: 'Save the card as a file',
  paper: 'Paper',
  letter: 'letter',
  wall: 'Sheet for the wall, for failures',
  putAway: 'Put the card away',
  about: (date: string, litres: string, plan: string) => `${date} · ${litres} L net · ${plan}`,
  hold: 'Hold',
  inside: (low: string, high: string) => `, inside ${low}–${high}.`,
  test: 'Test',
  nextTest: (date: string) => `Next test: ${date}.`,
  testHow: (days: number) =>
    `Then every week, at the same hour; calcium and magnesium once a month, as most keepers do. Enter what you read: this plan is promised for ${days} days.`,
  readings: 'Readings to write in',
  columns: { date: 'Date', dkh: 'dKH', ph: 'pH', calcium: 'Calcium', notes: 'What was done' },
  curve: (target: string) => `Alkalinity as the plan has it, once the water is at ${target} dKH`,
  begin: (target: string) => `once at ${target}`,
  day: (day: number) => `day ${day}`,
  stop: 'Stop',
  care: 'Care',
  simulated: (dkh: string) =>
    `From a simulated tank that uses ${dkh} dKH a day; an estimate, not a guarantee. What the tests say comes first.`,
  stops: {
    tooHigh: (dkh: string, ph: string) =>
      `A test above ${dkh} dKH, or pH above ${ph}: stop all dosing, the additive in the top-off too (fill it with plain fresh water), and test again within the hour.`,
    tooLow: (dkh: string) =>
      `A test below ${dkh} dKH: test again; if it stands, work out a correction. Never make up for it in one go.`,
    tooFast: (dkh: string) => `Alkalinity moved more than ${dkh} dKH in a day: stop, find out why.`,
    salinity: (low: string, high: string) =>
      `Salinity outside ${low}–${high} ppt: check the top-off before anything else.`,
    topOff:
      'Top-off runs on: unplug it with dry hands; if water still runs it siphons, lift the hose. Then pH, air, and plain fresh water.',
    doser:
      'A dosing pump runs on: unplug that one, then test; the top-off stays on, with plain water if it carried the same.',
    floor:
      'Wet floor: breaker first, from a dry place. No power: move water or air first; the top-off stays off until the level is normal. Heater stuck: unplug it, 1 °C an hour at most.',
    bottle: (ml: string, minutes: string, high: string) =>
      `Never more than ${ml} mL in the carbonate bottle: if its pump sticks, ${high} dKH is passed in ${minutes} min.`,
    bottles: 'One of two bottles empty: stop the other too.',
    cut: (line: string, when: string) => `No power, nobody moving air: ${line} ${when} (estimate).`,
    dump: (ph: string, high: string) =>
      `All of the reservoir at once would bring pH ${ph}, above your ${high}: two independent stops on its pump, tested, and it is never filled fuller than this card says.`,
  },
  cautions: {
    lime: 'Calcium hydroxide: serious eye damage, irritates skin and airways (H315, H318, H335). Gloves, goggles, dust mask. In the eye: rinse at once for 15–20 minutes, lids open, then a doctor. Swallowed: rinse the mouth, no vomiting, poison centre.',
    soda: 'Soda ash and calcium chloride irritate the eyes (H319): goggles. Calcium chloride grows hot as it dissolves. Never mix the two parts, never dose them at one spot.',
    lye: 'Sodium hydroxide burns skin and eyes (H314) and eats metals (H290): gloves, goggles; first aid as for limewater powder. Not a beginner’s additive.',
    mains: 'Mains near salt water: residual-current device, drip loop on every cable.',
    sheets:
      'Follow each additive’s safety data sheet; out of children’s reach. Sick animals: ask an aquatic vet.',
  },
};
