export const en = {
  window: {
    day: { title: 'On day' },
    hour: { title: 'At' },
  },
  fault: {
    title: 'Fault',
    help: 'A property of a device over a stretch of time.',
    kind: { title: 'What breaks' },
    endsAfterH: {
      title: 'Noticed after',
      help: 'The fault ends then.',
    },
    secondSwitch: {
      title: 'Second switch',
      help: 'A welded relay passes it by, unless it cuts the mains.',
    },
    runLimit: {
      title: 'Run-time limit',
      help: 'In the controller it is of no use when the relay is stuck.',
    },
    sensorLowL: { title: 'Level reads low by' },
    litresPerH: { title: 'Siphon' },
    times: { title: 'Times what was meant' },
    pump: { title: 'Dosing pump number' },
    newWaterSalinity: 'New water mixed to',
    newWaterDkh: 'New water mixes to',
    endTempC: { title: 'Temperature it goes to' },
    degreesPerH: { title: 'How fast' },
    cooling: {
      title: 'Drifts to the room’s temperature',
      help: 'none: the temperature stays. estimated: the time that water and glass of such a tank take, from its volume and surface (estimate). own: by the hours below. The room’s temperature is that of “Evaporation in detail”.',
    },
    coolingHours: {
      title: 'Time constant, if your own',
      help: 'After so long two thirds of the way are gone.',
      measure: 'Heater off for two hours: hours × degrees to the room ÷ degrees lost.',
    },
    gasPercent: {
      title: 'Gas exchange that is left',
      help: 'A still surface exchanges a little (common practice: 5–10 %).',
    },
    co2Ppm: { title: 'Room CO₂ it goes to' },
    riseHours: { title: 'Rises over' },
    additive: { title: 'Substance' },
    grams: { title: 'Amount' },
  },
  response: {
    title: 'Response',
    help: 'What the keeper does about a fault.',
    kind: { title: 'What is done' },
    hours: { title: 'For' },
    kLaPerH: { title: 'Aeration (kLa)' },
    co2Ppm: { title: 'CO₂ of the air blown in' },
    co2GramsEach: {
      title: 'CO₂ in each portion',
      help: 'A litre of strongly carbonated plain water holds about 6 g (common practice).',
    },
    portions: { title: 'Portions' },
    percent: { title: 'Water changed' },
  },
};
