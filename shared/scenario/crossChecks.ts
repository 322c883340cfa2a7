import { limitBands } from './limitBands';
import { momentH } from './clock';
import type { Problem } from './problem';
import type { Scenario } from './schema';

type Check = (scenario: Scenario) => Problem[];

const bandsAreOrdered: Check = ({ limits }) =>
  limitBands(limits)
    .filter(({ low, high }) => low >= high)
    .map(({ id, low, high }) => ({
      path: `limits.${id}Low…`,
      what: `Your limits for ${id}`,
      got: `${low} to ${high}`,
      expected: 'the low one below the high one',
      wayOut: 'Swap them.',
    }));

const additionsComeAfterTheStart: Check = ({ additions, start, days }) =>
  additions.flatMap(({ day, hour }, i) => {
    const timeH = (day - 1) * 24 + hour - start.clockHour;
    if (timeH >= 0 && timeH <= days * 24) return [];
    return [
      {
        path: `additions[${i}]`,
        what: 'One-off addition',
        got: `day ${day} at ${hour} h`,
        expected: `a moment within the trial, which runs ${days} days from ${start.clockHour} h`,
        wayOut: 'Move the addition, or make the trial longer.',
      },
    ];
  });

const faultsHappenInTheTrial: Check = (scenario) => {
  const { start, days } = scenario;
  return (['faults', 'responses'] as const).flatMap((part) =>
    scenario[part].flatMap(({ day, hour }, i) => {
      const timeH = momentH({ day, hour }, start.clockHour);
      if (timeH >= 0 && timeH <= days * 24) return [];
      return [
        {
          path: `${part}[${i}]`,
          what: part === 'faults' ? 'Fault' : 'Response',
          got: `day ${day} at ${hour} h`,
          expected: `a moment within the trial, which runs ${days} days from ${start.clockHour} h`,
          wayOut: 'Move it, or make the trial longer.',
        },
      ];
    }),
  );
};

const faultyPumpsExist: Check = ({ faults, dosers }) =>
  faults.flatMap(({ kind, pump }, i) =>
    !kind.startsWith('doser') || pump <= dosers.length
      ? []
      : [
          {
            path: `faults[${i}].pump`,
            what: 'Dosing pump number',
            got: String(pump),
            expected: `one of the plan’s ${dosers.length} dosing pumps`,
            wayOut: 'Add the pump to the plan, or choose another fault.',
          },
        ],
  );

const sensorFitsTheTank: Check = ({ topOff, tank }) =>
  topOff.reservoirL === 0 || topOff.deadBandL <= tank.volumeL * 0.2
    ? []
    : [
        {
          path: 'topOff.deadBandL',
          what: 'Drop that starts the pump',
          got: `${topOff.deadBandL} L`,
          expected: `at most a fifth of the tank, ${tank.volumeL * 0.2} L`,
          wayOut: 'Give the volume between the two switching levels.',
        },
      ];

const waterLasts: Check = ({ evaporation, days, tank, topOff }) => {
  const lost = evaporation.litresPerDay * days;
  if (topOff.reservoirL > 0 || lost <= tank.volumeL * 0.5) return [];
  return [
    {
      path: 'evaporation.litresPerDay',
      what: 'Evaporation without any top-off',
      got: `${lost.toFixed(0)} L in ${days} days`,
      expected: `at most half the tank, ${tank.volumeL * 0.5} L`,
      wayOut: 'Give the tank a top-off reservoir, or shorten the trial.',
    },
  ];
};

const checks: readonly Check[] = [
  bandsAreOrdered,
  additionsComeAfterTheStart,
  faultsHappenInTheTrial,
  faultyPumpsExist,
  sensorFitsTheTank,
  waterLasts,
];

/** What single fields cannot tell: whether they go together. */
export const crossProblems = (scenario: Scenario): Problem[] =>
  checks.flatMap((check) => check(scenario));
