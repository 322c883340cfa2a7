import { bringsAlkalinity } from '../../../shared/species/additives';
import { say } from '../../../shared/words/turn';
import { habitDoses } from '../fit/answer';
import type { TurnTold } from '../../ask/outcome';
import type { Around } from './known';

type Doses = NonNullable<TurnTold['handMeanwhile']>;

/** That what is poured in by hand goes on, but for the one that is turned itself; empty where nothing does. */
export function handSentences({ answer }: Around, turned?: { additive: string }): string[] {
  const others = (answer?.habits.doses ?? []).filter(
    ({ additive }) => additive !== turned?.additive,
  );
  return others.length === 0 ? [] : [say.handGoesOn(habitDoses(others))];
}

/** What goes on by hand in smaller parts, and the rest of it as it is. */
export function handInParts({ answer }: Around, meanwhile: Doses): string[] {
  const carbonates = (doses: Doses) =>
    habitDoses(doses.filter(({ additive }) => bringsAlkalinity(additive)));
  const rest = meanwhile.filter(({ additive }) => !bringsAlkalinity(additive));
  return [
    say.handInParts(carbonates(meanwhile), carbonates(answer?.habits.doses ?? [])),
    ...(rest.length > 0 ? [say.handGoesOn(habitDoses(rest))] : []),
  ];
}
