export const en = {
  first: 'First',
  rest: 'The rest of the first hour',
  then: 'Then',
  never: 'Never',
  practice:
    'Common practice: check it against the safety data sheets and your local rules. Sick animals: a qualified aquatic vet.',
  acts: {
    breaker: 'Water on the floor or near sockets: switch off at the breaker, from a dry place.',
    leaveRoom:
      'If the CO₂ comes from a cylinder or a reactor: leave the room, then air it, and close the cylinder from outside its reach.',
    unplugTopOff: 'Unplug the top-off with dry hands.',
    liftHose:
      'Lift the hose’s end above the water in the reservoir: unplugging does not stop a siphon.',
    unplugDoser: 'Unplug that dosing pump with dry hands.',
    unplugHeater: 'Unplug the heater with dry hands.',
    moveWater:
      'Move water or air: a battery air pump, or scoop water up and pour it back. Oxygen goes first.',
    warmSlowly: 'Warm slowly: a second heater, a wrapped tank, no hot water poured in.',
    stopAdding: 'Add nothing more.',
    startWater: 'When power is back: see that return pump and skimmer run again.',
    keepWarm: 'Keep warm: wrap the tank, leave the lid on but for the air.',
    coolSlowly:
      'Let it cool by at most 1 °C an hour: lid off, a fan over the water; see that the top-off keeps up.',
    aerate: 'Aerate: skimmer, air stone, returns at the surface.',
    skimAndSettle: 'Skim, and let the chalk settle; siphon it off later.',
    openWindows: 'Air the room: windows open.',
    measurePh: 'Measure pH, and again every half hour.',
    measureAlkalinity: 'Test alkalinity.',
    measureSalinity: 'Measure salinity.',
    measureTemperature: 'Measure the temperature, and again every half hour.',
    ammoniaTest: 'If fish gasp, test ammonia: high pH makes it poisonous.',
    plainWater: 'Plain fresh water for what evaporates until the cause is found.',
    fillByHand:
      'Fill up with plain fresh water by hand, little by little: salinity falls by no more than 1 in a day.',
    topOffStays: 'The top-off stays on, with plain fresh water if it carried the same additive.',
    topOffStaysOff:
      'Unplug the top-off; when power is back it stays off until the level is where it always is.',
    emptyReservoir: 'Empty the reservoir and rinse it; the wrong mix goes nowhere near the tank.',
    changeInSteps:
      'Change water in small steps, with salt that is measured: salinity moves by less than 1 in a day.',
    twinPump: 'Stop the other pump of a pair too.',
    neverInOneGo: 'Never make up in one go for what was missed.',
    measurePump: 'Run the pump into a measuring cylinder before it doses again.',
    noAcid: 'No acid.',
    noStir: 'Do not stir, and do not rinse the reservoir into the tank.',
    noFeeding: 'Do not feed.',
    noIce: 'No ice and no cold water in the tank.',
    noReturn: 'Do not stay to look, and do not go back in before the room is aired.',
    noTank: 'Do not touch the tank before the power is off.',
  },
};
