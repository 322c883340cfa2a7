import type { FaultId, ResponseId } from '../scenario/faults';
import type { Scenario } from '../scenario/schema';

type Fault = Scenario['faults'][number];
type Response = Scenario['responses'][number];

interface Kind<T> {
  readonly label: string;
  /** What a keeper sets of it, beside the moment. */
  readonly fields: readonly (keyof T)[];
  /** Whether it lasts; what happens at one moment has no end. */
  readonly lasts: boolean;
}

const kind = <T>(label: string, fields: readonly (keyof T)[] = [], lasts = true): Kind<T> => ({
  ...{ label, fields, lasts },
});

/** What may break, in a keeper's words. Each is honoured by the device that it is a property of. */
export const faultKinds: Readonly<Record<FaultId, Kind<Fault>>> = {
  topOffOn: kind<Fault>('top-off pump sticks on', ['secondSwitch', 'runLimit']),
  topOffOff: kind<Fault>('top-off stops, or its reservoir is empty'),
  sensorLow: kind<Fault>('level sensor reads low', ['sensorLowL']),
  siphon: kind<Fault>('top-off siphons', ['litresPerH']),
  strongMix: kind<Fault>('reservoir mixed at the wrong strength', ['times']),
  slurry: kind<Fault>('reservoir stirred to slurry'),
  doserOn: kind<Fault>('dosing pump sticks on', ['pump']),
  doserOff: kind<Fault>('dosing pump stops', ['pump']),
  doserRate: kind<Fault>('dosing pump gives the wrong amount', ['pump', 'times']),
  wrongNewWater: kind<Fault>('wrong new water at a change', ['newWaterSalinity', 'newWaterDkh']),
  heater: kind<Fault>('heater or chiller fails', ['endTempC', 'degreesPerH']),
  powerCut: kind<Fault>('power cut', ['gasPercent']),
  roomCo2: kind<Fault>('CO₂ of the room rises', ['co2Ppm', 'riseHours']),
  overdose: kind<Fault>('overdose by hand', ['additive', 'grams'], false),
};

/** What may be done about it. */
export const responseKinds: Readonly<Record<ResponseId, Kind<Response>>> = {
  aerate: kind<Response>('aerate harder', ['kLaPerH']),
  co2Air: kind<Response>('blow in air richer in CO₂', ['co2Ppm']),
  carbonatedWater: kind<Response>('carbonated water, a portion an hour', [
    'co2GramsEach',
    'portions',
  ]),
  extraChange: kind<Response>('change water', ['percent'], false),
};
