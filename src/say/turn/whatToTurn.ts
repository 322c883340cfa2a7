import { say } from '../../../shared/words/turn';
import type { Turned } from '../../ask/outcome';
import { plain } from './texts';

/** So little is no turn. */
const LEAST_SHARE = 0.01;

export function whatToTurn({ lever, from, to, first, pumps, scenario }: Turned): string {
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

const doseIn = ({ dosers }: Turned['scenario'], name: string): number =>
  dosers.find((doser) => doser.name === name)?.mlPerDay ?? 0;
