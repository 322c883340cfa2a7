export const en = {
  first: {
    title: 'A tank like yours, in three answers',
    howMuch: 'How much water, without rock?',
    whatLives: 'What lives in it?',
    whatBrings: 'What brings alkalinity now?',
    show: 'Put it on the bench',
    skip: 'Skip, I know my way',
    why: 'Show me why alkalinity falls',
    soft: 'new or soft corals',
    mixed: 'a mix of corals',
    stony: 'dense stony corals',
    none: 'nothing yet',
    noneNext: 'Choose limewater under “The top-off” and watch Trial A against Today’s plan.',
    limewater: 'limewater in the top-off',
    limewaterNext:
      'Drag “Strength of the mix” in Trial A; then rehearse a stuck pump in the drills.',
    pump: 'dosing pumps: carbonate and calcium',
    pumpNext:
      'Set your own bottles and doses under “Dosing pumps”; then enter your tests in the log.',
    water: 'water changes',
    waterNext: 'Try another salt mix or a larger change in Trial A.',
    tank: (volume: string) => `My tank, ${volume}`,
    assumed: (volume: string, dweller: string) =>
      `${volume} with ${dweller}; evaporation, use, food and gas exchange are assumed (common practice)`,
    untilMeasured: (evaporates: string, used: string, next: string) =>
      `${evaporates} a day evaporate and ${used} a day are used: both are assumed until you measure them. ${next}`,
  },
};
