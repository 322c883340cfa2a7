import { figure } from '../words/figure';
import { say as dosing } from '../words/dosing';
import { say as faultFields } from '../words/faultFields';
import { say as problems } from '../words/problems';
import { say as quantities } from '../words/quantities';
import { limitBands } from './limitBands';
import { momentH } from './clock';
import type { Problem } from './problem';
import type { Scenario } from './schema';

const say = problems.together;

type Check = (scenario: Scenario) => Problem[];

const bandsAreOrdered: Check = ({ limits }) =>
  limitBands(limits)
    .filter(({ low, high }) => low >= high)
    .map(({ id, low, high }) => ({
      path: `limits.${id}Low…`,
      what: say.yourLimits(quantities.limits[id]),
      got: say.lowToHigh(String(low), String(high)),
      expected: say.lowBelowHigh,
      wayOut: say.swap,
    }));

const additionsComeAfterTheStart: Check = ({ additions, start, days }) =>
  additions.flatMap(({ day, hour }, i) => {
    const timeH = (day - 1) * 24 + hour - start.clockHour;
    if (timeH >= 0 && timeH <= days * 24) return [];
    return [
      {
        path: `additions[${i}]`,
        what: dosing.addition.title,
        got: say.moment(String(day), String(hour)),
        expected: say.withinTrial(String(days), String(start.clockHour)),
        wayOut: say.moveAddition,
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
          what: part === 'faults' ? faultFields.fault.title : faultFields.response.title,
          got: say.moment(String(day), String(hour)),
          expected: say.withinTrial(String(days), String(start.clockHour)),
          wayOut: say.move,
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
            what: faultFields.fault.pump.title,
            got: String(pump),
            expected: say.ofThePumps(String(dosers.length)),
            wayOut: say.addPump,
          },
        ],
  );

const sensorFitsTheTank: Check = ({ topOff, tank }) =>
  topOff.reservoirL === 0 || topOff.deadBandL <= tank.volumeL * 0.2
    ? []
    : [
        {
          path: 'topOff.deadBandL',
          what: dosing.topOff.deadBandL.title,
          got: `${topOff.deadBandL} L`,
          expected: say.fifth(String(tank.volumeL * 0.2)),
          wayOut: say.betweenLevels,
        },
      ];

const waterLasts: Check = ({ evaporation, days, tank, topOff, dosers }) => {
  const dosedLPerDay = dosers.reduce((sum, { mlPerDay }) => sum + mlPerDay / 1000, 0);
  const lost = (evaporation.litresPerDay - dosedLPerDay) * days;
  if (topOff.reservoirL > 0 || lost <= tank.volumeL * 0.5) return [];
  return [
    {
      path: 'evaporation.litresPerDay',
      what: say.withoutTopOff,
      got: say.lostIn(figure(lost, 0), String(days)),
      expected: say.half(String(tank.volumeL * 0.5)),
      wayOut: say.giveTopOff,
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
