import { hoursOf } from '../../shared/log/localTime';
import type { Reading } from '../../shared/log/reading';
import { wordFor } from '../../shared/scenario/words';
import { eventText } from '../say/log/event';
import { signed } from '../say/texts';
import { figure, figureText } from '../../shared/words/figure';
import { say } from '../../shared/words/logPage';
import type { RanUntil } from '../ask/outcome';
import type { Mark } from '../charts/fanShape';

/** Everything that happened beside the readings of alkalinity, for the month’s chart. */
export function marksOf(
  readings: readonly Reading[],
  ran: readonly RanUntil[],
  startAt: string,
): Mark[] {
  const { marks: told } = say;
  const startH = hoursOf(startAt);
  const tested = readings.filter(({ alkalinityDkh }) => alkalinityDkh !== undefined);
  const done = readings.flatMap((reading): Mark[] => {
    const { at, additive, grams, waterChangePercent, coralsPercent, notes = '' } = reading;
    const noted = [eventText(reading), notes].filter((text) => text !== '').join('. ');
    const timeH = hoursOf(at) - startH;
    return [
      ...(additive && grams
        ? [
            {
              timeH,
              kind: 'poured' as const,
              text: told.poured(figure(grams), wordFor(additive)),
            },
          ]
        : []),
      ...(waterChangePercent
        ? [{ timeH, kind: 'water' as const, text: told.water(figure(waterChangePercent)) }]
        : []),
      ...(coralsPercent
        ? [
            {
              ...{ timeH, kind: 'change' as const },
              text: told.corals(figureText(signed(coralsPercent, 0))),
            },
          ]
        : []),
      ...(noted === '' ? [] : [{ timeH, kind: 'note' as const, text: noted }]),
    ];
  });
  const bottles = tested.flatMap(({ at, lot = '' }, i): Mark[] =>
    i > 0 && lot !== (tested[i - 1]!.lot ?? '')
      ? [{ timeH: hoursOf(at) - startH, kind: 'change', text: told.bottle(lot) }]
      : [],
  );
  const turns = ran.map(({ until }): Mark => {
    return { timeH: hoursOf(until) - startH, kind: 'change', text: told.turned };
  });
  return [...done, ...bottles, ...turns].toSorted((a, b) => a.timeH - b.timeH);
}
