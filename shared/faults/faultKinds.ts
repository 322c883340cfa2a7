import type { FaultId, ResponseId } from '../scenario/faults';
import type { Scenario } from '../scenario/schema';
import { say } from '../words/faults';

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
  topOffOn: kind<Fault>(say.faults.topOffOn, ['secondSwitch', 'runLimit']),
  topOffOff: kind<Fault>(say.faults.topOffOff),
  sensorLow: kind<Fault>(say.faults.sensorLow, ['sensorLowL']),
  siphon: kind<Fault>(say.faults.siphon, ['litresPerH']),
  strongMix: kind<Fault>(say.faults.strongMix, ['times']),
  slurry: kind<Fault>(say.faults.slurry),
  doserOn: kind<Fault>(say.faults.doserOn, ['pump']),
  doserOff: kind<Fault>(say.faults.doserOff, ['pump']),
  doserRate: kind<Fault>(say.faults.doserRate, ['pump', 'times']),
  wrongNewWater: kind<Fault>(say.faults.wrongNewWater, ['newWaterSalinity', 'newWaterDkh']),
  heater: kind<Fault>(say.faults.heater, ['endTempC', 'degreesPerH']),
  powerCut: kind<Fault>(say.faults.powerCut, ['gasPercent', 'cooling', 'coolingHours']),
  roomCo2: kind<Fault>(say.faults.roomCo2, ['co2Ppm', 'riseHours']),
  overdose: kind<Fault>(say.faults.overdose, ['additive', 'grams'], false),
};

/** What may be done about it. */
export const responseKinds: Readonly<Record<ResponseId, Kind<Response>>> = {
  aerate: kind<Response>(say.responses.aerate, ['kLaPerH']),
  batteryAir: kind<Response>(say.responses.batteryAir, ['kLaPerH']),
  co2Air: kind<Response>(say.responses.co2Air, ['co2Ppm']),
  carbonatedWater: kind<Response>(say.responses.carbonatedWater, ['co2GramsEach', 'portions']),
  extraChange: kind<Response>(say.responses.extraChange, ['percent'], false),
};
