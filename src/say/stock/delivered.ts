import { toDecimals, toFigures } from '../../../shared/units/digits';
import type { Scenario } from '../../../shared/scenario/schema';
import { figure } from '../../../shared/words/figure';
import { say } from '../../../shared/words/stock';
import type { Delivered, DeliveryTold } from '../../ask/outcome';

/** The bottle of a pump, or the reservoir where none is named. */
export const vesselName = ({ dosers }: Scenario, pump: number | undefined): string =>
  pump === undefined ? say.panel.reservoir : say.panel.bottle(dosers[pump]?.name ?? '');

const ratioText = (value: number) => figure(Math.max(0, value), 2);
const threeFigures = (value: number) => figure(toFigures(value, 3));
const days = (value: number) => figure(toDecimals(value, 1));

/** "0.82 (0.72–0.92)" in three texts. */
function ratioTexts({ ratio, ratioSigma }: Delivered): [string, string, string] {
  return [ratioText(ratio), ratioText(ratio - 2 * ratioSigma), ratioText(ratio + 2 * ratioSigma)];
}

/** Less alkalinity than this a day nobody can tell, dKH; less calcium a week, mg/L. */
const LEAST_DKH = 0.005;
const LEAST_MG_PER_L = 1;

function useText(delivered: Delivered, isRead: boolean): string[] {
  const { unbookedDkhPerDay: by, giveOrTakeDkhPerDay, trueUseDkhPerDay, useDkhPerDay } = delivered;
  if (Math.abs(by) < LEAST_DKH) {
    const mg = delivered.unbookedCalciumMgPerLPerWeek;
    if (delivered.drawn.pump === undefined || Math.abs(mg) < LEAST_MG_PER_L) return [];
    return [(mg > 0 ? say.calciumUp : say.calciumDown)(figure(Math.abs(mg), 0))];
  }
  const doubt = [figure(Math.abs(by), 2), figure(giveOrTakeDkhPerDay, 2)] as const;
  if (!isRead) return [(by > 0 ? say.moreAssumed : say.lessAssumed)(...doubt)];
  const uses = [figure(trueUseDkhPerDay, 2), figure(useDkhPerDay, 2)] as const;
  return [(by > 0 ? say.more : say.less)(...doubt, ...uses)];
}

function pumpTexts(delivered: Delivered, { dosers }: Scenario, pump: number): string[] {
  const { ratio, given, set, aWeek, unbookedDkhPerDay } = delivered;
  const { schedule } = dosers[pump]!;
  const measured =
    schedule.way === 'spread'
      ? say.jugSpread(threeFigures(given))
      : say.jug(threeFigures(schedule.pumpMlPerMin), threeFigures(schedule.pumpMlPerMin * ratio));
  return [
    say.pumpCause,
    measured,
    ...(!aWeek || Math.abs(unbookedDkhPerDay) < LEAST_DKH
      ? []
      : [
          say.putRight(
            ...([threeFigures(given), threeFigures(set)] as const),
            ...([figure(aWeek.putRightDkh, 1), figure(aWeek.goesOnDkh, 1)] as const),
          ),
        ]),
  ];
}

function topOffTexts({ scenario, leakPptPerWeek }: Delivered, { evaporation }: Scenario): string[] {
  const share =
    evaporation.mode === 'fixed'
      ? scenario.evaporation.litresPerDay / evaporation.litresPerDay
      : scenario.evaporation.surfaceM2 / evaporation.surfaceM2;
  const percent = figure(Math.abs(Math.round(100 * (share - 1))));
  return share > 1
    ? [say.topOffCause(percent), say.leak(figure(leakPptPerWeek, 1))]
    : [say.topOffLess(percent), say.byHand];
}

/** What was given against what is set, the answer first. */
export function deliverySentences({ question, delivery }: DeliveryTold): string[] {
  const { now, drawn, isRead } = question;
  if (delivery.kind === 'nothingSet') return [say.nothingSet(vesselName(now, drawn.pump))];
  const { delivered } = delivery;
  const { pump, litres } = drawn;
  const unit = pump === undefined ? 'L' : 'mL';
  const due = say.due(
    ...([threeFigures(unit === 'L' ? litres : litres * 1000), unit] as const),
    ...([days(delivered.setDays), days(drawn.days)] as const),
  );
  if (!delivered.differs) return [say.asSet(...ratioTexts(delivered)), due];
  const amounts = [threeFigures(delivered.given), threeFigures(delivered.set)] as const;
  return pump === undefined
    ? [
        say.topOff(...ratioTexts(delivered), ...amounts),
        ...useText(delivered, isRead),
        ...[...topOffTexts(delivered, now), due],
      ]
    : [
        say.pump(now.dosers[pump]!.name, ...ratioTexts(delivered), ...amounts),
        ...useText(delivered, isRead),
        ...[...pumpTexts(delivered, now, pump), due],
      ];
}
