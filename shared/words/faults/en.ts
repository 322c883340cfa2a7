export const en = {
  faults: {
    topOffOn: 'top-off pump sticks on',
    topOffOff: 'top-off stops, or its reservoir is empty',
    sensorLow: 'level sensor reads low',
    siphon: 'top-off siphons',
    strongMix: 'reservoir mixed at the wrong strength',
    slurry: 'reservoir stirred to slurry',
    doserOn: 'dosing pump sticks on',
    doserOff: 'dosing pump stops',
    doserRate: 'dosing pump gives the wrong amount',
    wrongNewWater: 'wrong new water at a change',
    heater: 'heater or chiller fails',
    powerCut: 'power cut',
    roomCo2: 'CO₂ of the room rises',
    overdose: 'overdose by hand',
  },
  responses: {
    aerate: 'aerate harder',
    co2Air: 'blow in air richer in CO₂',
    carbonatedWater: 'carbonated water, a portion an hour',
    extraChange: 'change water',
  },
};
