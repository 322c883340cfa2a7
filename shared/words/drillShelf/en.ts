export const en = {
  'drill-doser-stuck': {
    title: 'A dosing pump sticks on',
    question: 'How far does a stuck carbonate pump carry alkalinity before its bottle is empty?',
  },
  'drill-empty-reservoir': {
    title: 'Nobody refills the reservoir over a long weekend',
    question: 'How fast do salinity and alkalinity leave their bands when the top-off stops?',
  },
  'drill-power-cut': {
    title: 'A power cut in a storm night',
    question: 'What do twelve hours without pumps do to pH, and the return of everything at once?',
  },
  'drill-second-switch': {
    title: 'A second switch catches the stuck pump',
    question: 'What does a second float switch leave of the same failure?',
  },
  'drill-strong-mix': {
    title: 'The reservoir is stirred to slurry',
    question: 'The bottom sediment is stirred up by mistake: what goes in with the water?',
  },
  'drill-stuck-pump': {
    title: 'The top-off pump sticks on at two in the morning',
    question: 'When does pH pass 8.6 and 9.0, and when is the reservoir empty?',
  },
  'drill-wrong-water': {
    title: 'Fresh salt mixed too weak, and the room shut',
    question:
      'A water change at the wrong salinity while the room’s CO₂ climbs: which limit goes first?',
  },
};
