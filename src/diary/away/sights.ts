import type { Scenario } from '../../../shared/scenario/schema';
import { spanText } from '../../say/clockText';
import { figure } from '../../../shared/words/figure';
import { say } from '../../../shared/words/away';
import type { AwayTold, NobodyLooks } from '../../ask/outcome';
import { filled } from '../../say/away/texts';

type Fault = Scenario['faults'][number];
type SightId = keyof typeof say.sheet.sights;

/** What a sitter sees, the one act that dry hands can do, and how soon the keeper has to know. */
export interface Sight {
  readonly id: SightId;
  readonly sees: string;
  readonly act: string;
  readonly call: string;
}

/** What each failure looks like to somebody without a test kit; what no eye can tell is not here. */
const looksLike = (id: SightId, { kind, endTempC }: Fault, { tank }: Scenario): boolean =>
  ({
    gas: kind === 'roomCo2',
    dark: kind === 'powerCut',
    hot: kind === 'heater' && endTempC > tank.tempC,
    cold: kind === 'heater' && endTempC <= tank.tempC,
    fallsFast: kind === 'topOffOn' || kind === 'siphon',
    standsStill: kind === 'topOffOff',
    bottleEmpty: kind === 'doserOn',
    bottleFull: kind === 'doserOff',
    cloudy: kind === 'slurry',
    floor: false,
    still: false,
  })[id];

/** Harm sooner than this is a call at once, h. */
const AT_ONCE_H = 24;

/** How soon to call: by the soonest harm in any tank that this may be, or by the first line, of what looks like this. */
function callText(failures: NobodyLooks['failures']): string {
  const { calls } = say.sheet;
  if (failures.length === 0) return calls.now;
  const harms = failures.flatMap(({ harm }) => harm?.reach.soonestH ?? []);
  const firsts = failures.flatMap(({ first }) => first?.reach.soonestH ?? []);
  const soonestH = Math.min(...harms, ...firsts);
  if (soonestH === Infinity) return calls.tell;
  const harmH = Math.min(...harms);
  return harmH < Infinity
    ? (soonestH < AT_ONCE_H ? calls.nowHarm : calls.todayHarm)(spanText(harmH))
    : soonestH < AT_ONCE_H
      ? calls.now
      : calls.today;
}

/** What may be seen of this tank, people first, then animals, then water. */
export function sightsOf({ away }: AwayTold, { failures }: NobodyLooks): Sight[] {
  const plan = away.provided.scenario;
  const { limits, topOff, calciumReactor } = plan;
  const hasTopOff = topOff.reservoirL > 0;
  const [reservoir, ...bottles] = away.vessels;
  const daily = filled(reservoir?.dailyL ?? 0);
  const paces = bottles
    .filter(({ dailyL }) => dailyL > 0)
    .map(({ name, dailyL }) => say.sheet.pace(name ?? '', figure(Math.ceil(dailyL * 1000))))
    .join(', ');
  const sights = say.sheet.sights;
  const shown: (readonly [SightId, string, boolean])[] = [
    ['floor', sights.floor.sees(), true],
    ['gas', sights.gas.sees(), calciumReactor.dripLPerH > 0],
    ['dark', sights.dark.sees(), true],
    ['still', sights.still.sees(), true],
    ['hot', sights.hot.sees(figure(limits.tempHighC)), true],
    ['cold', sights.cold.sees(figure(limits.tempLowC)), true],
    ['fallsFast', sights.fallsFast.sees(daily), hasTopOff],
    ['standsStill', sights.standsStill.sees(), hasTopOff],
    ['bottleEmpty', sights.bottleEmpty.sees(paces), paces !== ''],
    ['bottleFull', sights.bottleFull.sees(), paces !== ''],
    ['cloudy', sights.cloudy.sees(), true],
  ];
  return shown.flatMap(([id, sees, isThere]): Sight[] => {
    if (!isThere) return [];
    const own = failures.filter(({ fault }) => looksLike(id, fault, plan));
    // White water has causes that nobody has run.
    const call = id === 'cloudy' ? say.sheet.calls.now : callText(own);
    return [{ id, sees, act: sights[id].act(daily), call }];
  });
}
