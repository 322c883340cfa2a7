import { wordFor } from '../../../shared/scenario/words';
import { threeFigures } from '../../../shared/recipe/threeFigures';
import { say } from '../../../shared/words/turn';
import type { Turned } from '../../ask/outcome';
import { plain } from './texts';

/** So little is no turn. */
const LEAST_SHARE = 0.01;

export function whatToTurn(turned: Turned): string {
  const { lever, from, to, first, pumps, scenario } = turned;
  const told = say.turn;
  const less = first.kind === 'less' ? first : undefined;
  const stays = !less && Math.abs(to - from) <= LEAST_SHARE * from;
  switch (lever) {
    case 'mix':
      if (stays) return told.leaveMix(plain(from));
      return less
        ? told.mixFirst(plain(from), plain(less.to), less.days, plain(to))
        : told.mix(plain(from), plain(to));
    case 'drip':
      if (stays) return told.leaveDrip(plain(from));
      return less
        ? told.dripFirst(plain(from), plain(less.to), less.days, plain(to))
        : told.drip(plain(from), plain(to));
    case 'hand':
      return handText(turned, stays);
    case 'channel': {
      const [one, two] = pumps;
      const names = [one!.name, two?.name ?? one!.name] as const;
      if (less?.to === 0) return told.channelLater(...names, less.days, plain(to));
      return less
        ? told.channelFirst(...names, plain(less.to), less.days, plain(to))
        : told.channel(...names, plain(to));
    }
    case 'pump': {
      const [own, ...others] = pumps;
      const name = own?.name ?? scenario.dosers.find(({ mlPerDay }) => mlPerDay === to)?.name ?? '';
      if (stays) return told.leavePump(name, plain(from));
      const main = less
        ? told.pumpFirst(name, plain(from), plain(less.to), less.days, plain(to))
        : told.pump(name, plain(from), plain(to));
      const withIt = others.map((other) =>
        less
          ? told.withFirst(other.name, plain(doseIn(scenario, other.name)), plain(other.toMlPerDay))
          : told.with(other.name, plain(other.toMlPerDay)),
      );
      return [main, ...withIt].join(', ');
    }
  }
}

/** What is poured in by hand, and how often. */
function handText({ dose, insteadOf, from, to, first }: Turned, stays: boolean): string {
  const told = say.turn;
  const additive = wordFor(dose!.additive);
  const rhythm = told.rhythm(dose!.everyDays);
  if (insteadOf && to > 0) {
    const { additive: other, everyDays } = insteadOf;
    const before = told.handBefore(
      plain(threeFigures(insteadOf.gramsEach)),
      other === dose!.additive ? '' : wordFor(other),
      everyDays === dose!.everyDays ? '' : told.rhythm(everyDays),
    );
    return first.kind === 'less'
      ? told.handInsteadFirst(additive, rhythm, before, plain(first.to), first.days, plain(to))
      : told.handInstead(additive, rhythm, before, plain(to));
  }
  if (stays) return told.leaveHand(additive, rhythm, plain(from));
  if (first.kind !== 'less') {
    return to === 0
      ? told.handStops(additive, plain(from))
      : told.hand(additive, rhythm, plain(from), plain(to));
  }
  const { days } = first;
  return first.to === 0
    ? told.handLater(additive, rhythm, days, plain(to))
    : told.handFirst(additive, rhythm, plain(from), plain(first.to), days, plain(to));
}

const doseIn = ({ dosers }: Turned['scenario'], name: string): number =>
  dosers.find((doser) => doser.name === name)?.mlPerDay ?? 0;
