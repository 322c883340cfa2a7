const seasonal = 'A factor in time, such as 1 + 0.2 * cos(2 * pi * day / 365).';

export const en = {
  room: {
    title: 'Room air',
    help: 'The air that the water breathes.',
    co2Ppm: {
      title: 'Room CO₂',
      help: 'Windows open about 450, normal 700, shut 1200 (common practice).',
      measure: 'A CO₂ meter at the height of the tank, morning and evening.',
    },
    co2Factor: { title: 'Room CO₂ through the seasons', help: seasonal },
    co2PpmByHour: {
      title: 'Room CO₂ by hour of day',
      help: '24 numbers from midnight; empty means the same all day.',
    },
  },
  gas: {
    title: 'Gas exchange',
    help: 'How fast CO₂ finds its balance with the room.',
    kLaPerH: {
      title: 'kLa of CO₂',
      help: 'Nobody knows theirs: solve it from pH by day and night, below.',
    },
    enhancement: {
      title: 'Chemical enhancement',
      help: 'CO₂ that reacts inside the surface film crosses faster; it matters over still water.',
    },
    aeration: {
      title: 'Aeration',
      help: 'A plain word for it: still surface; rippled; overflow and skimmer; skimmer drawing outside air.',
    },
    outsideAirPercent: {
      title: 'Share of outside air',
      help: 'Counts when the skimmer draws outside air: that much of what the water breathes is outdoor air of about 425 ppm, the rest the room’s (an estimate).',
    },
    lightsOnPhNbs: { title: 'pH just before lights-on' },
    lightsOffPhNbs: { title: 'pH just before lights-off' },
  },
  lights: {
    title: 'Lights',
    help: 'On and off at the same hours each day.',
    onHour: { title: 'Lights on at' },
    hours: { title: 'Hours of light' },
    rampHours: {
      title: 'Dawn and dusk, each',
      help: 'Inside the hours of light; the light of the day stays the same in sum.',
    },
  },
  evaporation: {
    title: 'Evaporation',
    help: 'Fresh water that leaves; the salt stays.',
    mode: {
      title: 'Known',
      help: 'fixed: litres a day as you measured; byAir: from surface, temperatures and humidity (Shah 2014).',
    },
    surfaceM2: { title: 'Water surface' },
    airTempC: { title: 'Room temperature' },
    humidityPercent: { title: 'Relative humidity' },
    factor: { title: 'Evaporation through the seasons', help: seasonal },
    litresPerDay: {
      title: 'Evaporation',
      measure: 'Mark the top-off reservoir, read the drop after three days, divide by three.',
    },
  },
  temperaturePlan: {
    title: 'Temperature plan',
    point: {
      title: 'Point',
      day: { title: 'Day' },
      tempC: { title: 'Temperature' },
    },
    help: 'Points joined by straight lines, from the start temperature on; empty: constant.',
  },
};
